import { differentialPressure, temperature } from '@wallflow/units';
import { succeeded } from '../job/evaluation.js';
import { dropOf, type FlowReading, type MeasuredSide } from '../job/measured-side.js';
import type { JobResult } from '../job/run-job.js';
import type { SteadyReading } from '../job/steady.js';
import type { Block, PlotSeries } from './blocks.js';
import { shown } from './shown.js';

interface JudgedRow {
  readonly state: string;
  readonly pressureDrop: number;
  readonly cleanDrop: number;
  readonly cleanRatio: number;
  readonly dropAtReference: number;
  readonly verdict: string;
}

const mbar = (value: number, digits = 3) => differentialPressure.format(differentialPressure.si(value), 'mbar', { digits });
const celsius = (value: number) => temperature.format(temperature.si(value), 'degC', { digits: 3 });

function judgedRows(side: MeasuredSide): readonly JudgedRow[] {
  if (!succeeded(side.condition)) return [];
  return (side.condition.result.intermediates as Readonly<Record<string, unknown>>).readingsJudged as readonly JudgedRow[];
}

function verdictWords(side: MeasuredSide, verdict: string): string {
  const field = side.condition.calculation.spec.outputs.verdict;
  return field?.type === 'choice' ? (field.options[verdict] ?? verdict) : verdict;
}

/** The drop as it was typed, or the middle of the log with its scatter. */
function asRead({ typed, mean, uncertainty }: SteadyReading): string {
  if (typed?.pressureDrop !== undefined) return typed.pressureDrop;
  const { pressureDrop } = mean;
  if (pressureDrop === undefined) return '';
  const off = uncertainty.pressureDrop;
  return off === undefined || !(off >= 1) ? mbar(pressureDrop) : `${mbar(pressureDrop)} ± ${mbar(off, 1)}`;
}

/** The reading that each side is judged by, as it was typed or logged. */
export function readingsUsed({ before, after }: JobResult): Block {
  const used = ({ deciding }: MeasuredSide) => `${asRead(deciding.steady)} at ${deciding.state}`;
  return {
    type: 'facts',
    rows: [['Reading before', used(before)] as const, ...(after === undefined ? [] : [['Reading after', used(after)] as const])],
  };
}

/** The reading with the engine off, which was subtracted from the others. */
function zeroRow(side: MeasuredSide, when: string): readonly (readonly string[])[] {
  return side.zero === undefined ? [] : [[when, 'off', '', '', asRead(side.zero), '', '', '', '', 'zero of the sensor']];
}

function row(side: MeasuredSide, when: string, reading: FlowReading, judged: JudgedRow | undefined): readonly string[] {
  return [
    when,
    reading.state,
    celsius(reading.steady.mean.gasTemperature ?? 0),
    shown(reading.volumeFlow, 'exhaustVolumeFlow'),
    asRead(reading.steady),
    mbar(dropOf(reading, side.zero)),
    judged === undefined ? '' : mbar(judged.cleanDrop),
    judged === undefined ? '' : judged.cleanRatio.toPrecision(2),
    judged === undefined ? '' : mbar(judged.dropAtReference),
    judged === undefined ? '' : verdictWords(side, judged.verdict),
  ];
}

/** One row per steady reading of both logs. */
export function readingsTable({ before, after }: JobResult): Block {
  const rows = ([['before', before], ...(after === undefined ? [] : [['after', after]])] as [string, MeasuredSide][]).flatMap(
    ([when, side]) => {
      const judged = judgedRows(side);
      return [...zeroRow(side, when), ...side.readings.map((reading, index) => row(side, when, reading, judged[index]))];
    },
  );
  return {
    type: 'table',
    caption: 'Readings, middle of steady running; the drop is less the reading with the engine off',
    head: ['', 'engine', 'gas', 'flow', 'as read', 'drop', 'clean filter', 'times clean', 'at 200 m³/h, 200 °C', 'this reading says'],
    rows,
  };
}

function seriesOf(side: MeasuredSide, role: 'before' | 'after'): PlotSeries | undefined {
  const judged = judgedRows(side);
  const deciding = judged[side.readings.indexOf(side.deciding)];
  if (deciding === undefined || deciding.dropAtReference === 0) return undefined;
  // Flow at the viscosity of 200 °C, so that all readings lie on one straight line for a filter that does not change.
  const equivalent = (entry: JudgedRow) => (entry.pressureDrop / entry.dropAtReference) * 200;
  const points = judged
    .filter((entry) => entry.dropAtReference !== 0)
    .map((entry) => ({ x: equivalent(entry), y: entry.pressureDrop / 100, label: entry.state }));
  return { label: role, role, points, slope: deciding.dropAtReference / 100 / 200 };
}

function cleanSeries(side: MeasuredSide): PlotSeries | undefined {
  const deciding = judgedRows(side)[side.readings.indexOf(side.deciding)];
  if (deciding === undefined || deciding.cleanRatio === 0) return undefined;
  return {
    label: 'clean filter, calculated',
    role: 'clean',
    points: [],
    slope: deciding.dropAtReference / deciding.cleanRatio / 100 / 200,
  };
}

/** Drop against flow, both at the viscosity of 200 °C: the steepness of a line is the resistance. */
export function readingsPlot({ before, after }: JobResult): Block[] {
  const series = [
    seriesOf(before, 'before'),
    after === undefined ? undefined : seriesOf(after, 'after'),
    cleanSeries(after ?? before),
  ].filter((entry): entry is PlotSeries => entry !== undefined);
  if (series.length === 0) return [];
  return [
    {
      type: 'plot',
      title: 'Pressure drop against flow',
      description: `Steeper means more blocked. ${series.map((entry) => `${entry.label}: ${(entry.slope * 200).toPrecision(3)} mbar at 200 m³/h`).join('; ')}.`,
      xLabel: 'flow at the viscosity of 200 °C, m³/h',
      yLabel: 'pressure drop, mbar',
      series,
    },
  ];
}
