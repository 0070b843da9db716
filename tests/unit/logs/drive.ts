import { type LogOptions, type LogReading, readLog, shown } from '@wallflow/logs';

/** What the log shows while the bus of the story stands in the yard: engine off, idling, at raised speed. */
export const states = [
  { speed: 0, air: 0, temperature: 90, drop: 0.6 },
  { speed: 700, air: 80, temperature: 118, drop: 18 },
  { speed: 2200, air: 300, temperature: 206, drop: 95 },
] as const;

export interface Row {
  readonly time: number;
  readonly speed: number;
  readonly air: number;
  readonly temperature: number;
  readonly drop: number;
}

/** 45 s of each state, one row a second; the last digits move a little, so that no signal stands still. */
export const rows: readonly Row[] = states.flatMap((state, part) =>
  Array.from({ length: 45 }, (_, second) => ({
    time: part * 45 + second,
    speed: state.speed + (state.speed === 0 ? 0 : [-4, 0, 4][second % 3]!),
    air: state.air + (state.air === 0 ? 0 : [-0.5, 0, 0.5][second % 3]!),
    temperature: state.temperature + [-0.5, 0, 0.5][(second + 1) % 3]!,
    drop: Number((state.drop + [-0.1, 0, 0.1][(second + 2) % 3]!).toFixed(1)),
  })),
);

export interface Shape {
  readonly titles?: readonly string[];
  readonly separator?: string;
  readonly decimal?: '.' | ',';
  readonly lineEnd?: string;
  /** Lines above the titles and below the rows. */
  readonly above?: readonly string[];
  readonly units?: readonly string[];
  readonly below?: readonly string[];
  /** How the cells of a row are written. */
  readonly cells?: (row: Row, index: number) => readonly (string | number)[];
  readonly line?: (cells: readonly string[], index: number) => string | readonly string[];
  readonly endsWithLine?: boolean;
}

export const usualTitles = [
  'Time [s]',
  'Engine speed [rpm]',
  'MAF [kg/h]',
  'Exhaust temperature before DPF [°C]',
  'DPF differential pressure [mbar]',
];
export const usualCells = ({ time, speed, air, temperature, drop }: Row) => [time, speed, air, temperature, drop];

/** The same drive in any shape. */
export function log(shape: Shape = {}): string {
  const {
    titles = usualTitles,
    separator = ',',
    decimal = '.',
    lineEnd = '\n',
    above = [],
    units,
    below = [],
    endsWithLine = true,
  } = shape;
  const cells = shape.cells ?? usualCells;
  const write = (cell: string | number) => (typeof cell === 'number' ? String(cell).replace('.', decimal) : cell);
  const lines = rows.flatMap((row, index) => {
    const written = cells(row, index).map(write);
    return shape.line?.(written, index) ?? written.join(separator);
  });
  const header = titles.length === 0 ? [] : [titles.join(separator)];
  return (
    [...above, ...header, ...(units === undefined ? [] : [units.join(separator)]), ...lines, ...below].join(lineEnd) +
    (endsWithLine ? lineEnd : '')
  );
}

/** What the windows say, rounded as a person reads them: speed in rpm, air in kg/h, temperature in °C, drop in mbar. */
export function windowsOf(reading: LogReading): (number | undefined)[][] {
  const round = (value: number | undefined, digits: number) => (value === undefined ? undefined : Number(value.toFixed(digits)));
  return reading.windows.map(({ values }) => [
    round(values.engineSpeed && shown('engineSpeed', values.engineSpeed.mean, 'rpm'), -0),
    round(values.airMassFlow && shown('airMassFlow', values.airMassFlow.mean, 'kg/h'), 0),
    round(values.gasTemperature && shown('gasTemperature', values.gasTemperature.mean, 'degC'), 0),
    round(values.pressureDrop && shown('pressureDrop', values.pressureDrop.mean, 'mbar'), 0),
  ]);
}

/** The three windows of the drive. */
export const truth = [
  [0, 0, 90, 1],
  [700, 80, 118, 18],
  [2200, 300, 206, 95],
];

/** Read, or fail with what the reader says. */
export function reading(content: string | Uint8Array, options?: LogOptions): LogReading {
  const result = readLog(content, options);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result;
}
