// The two logs of the demo job, made from physics: no vehicle was measured, and one filter can give every row. The one-dimensional
// model of the filter gives the drop, a seeded generator the scatter of the sensors. A test holds that the files beside this one are
// what comes out here; `write-logs.ts` writes them.
import { channelProfile, type FilterFlow, filterChannels, gasDensity, loadChannels, sutherlandViscosity } from '@wallflow/exhaust';

/** A steady engine state: air mass flow in kg/h, gas at the filter in °C, coolant in °C. */
interface State {
  readonly seconds: number;
  readonly speed: number;
  readonly air: number;
  readonly gas: number;
  readonly coolant: number;
}

interface Filling {
  readonly sootMass: number;
  readonly ashMass: number;
  readonly ashPlugShare: number;
}

const inch = 0.0254;
const celsius = 273.15;
const gasConstant = 8.314462618;
const molarMass = 0.0289656;
const sutherland = { referenceViscosity: 1.716e-5, referenceTemperature: 273, sutherlandTemperature: 111 };
/** The yard: 230 m above the sea. */
const ambient = 98_600;
const sensorZero = 60;

const diameter = 0.1905;
const length = 0.2032;
const channels = filterChannels({
  cellDensity: 200 / inch ** 2,
  wallThickness: 0.012 * inch,
  frontalArea: (Math.PI / 4) * diameter ** 2,
  filterLength: length,
  plugLength: 0.01,
  layout: 'alternate',
  inletWidthRatio: 1,
});
const material = {
  wallPermeability: 3e-13,
  forchheimerCoefficient: 0,
  entranceExitCoefficient: 0.628,
  sootPermeability: 1.7e-14,
  ashPermeability: 7.4e-14,
};
const packing = { sootPackingDensity: 95, ashPackingDensity: 400 };

/** Uniform numbers from 0 to 1 that are the same on every machine (a 32-bit mixing generator). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Drop over the filter in Pa at a mass flow in kg/s and a temperature in K. */
function dropOf(massFlow: number, temperature: number, filling: Filling): number {
  if (channels === undefined) throw new Error('no channels');
  const loaded = loadChannels(channels, { ...filling, ...packing });
  if (loaded === undefined || massFlow === 0) return 0;
  let drop = 0;
  // Pressure in the filter and drop depend on each other; a few rounds settle them.
  for (let round = 0; round < 6; round += 1) {
    const density = gasDensity({ temperature, pressure: ambient + drop / 2, molarMass }, gasConstant);
    const flow: FilterFlow = { volumeFlow: massFlow / density, viscosity: sutherlandViscosity(temperature, sutherland), density };
    const profile = channelProfile(loaded, flow, material);
    drop = profile.channelDrop + profile.contractionDrop + profile.expansionDrop;
  }
  return drop;
}

interface Row {
  readonly time: number;
  readonly speed: number;
  readonly air: number;
  readonly gas: number;
  readonly drop: number;
  readonly coolant: number;
}

/** One row a second through all states, with three seconds of change between two of them. */
function drive(states: readonly State[], filling: Filling, seed: number): readonly Row[] {
  const random = seeded(seed);
  // Twelve uniform numbers make a normal one that needs no logarithm, so that no digit depends on the machine.
  const normal = () => Array.from({ length: 12 }, random).reduce((sum, value) => sum + value, -6);
  const rows: Row[] = [];
  let last = states[0];
  for (const state of states) {
    for (let second = 0; second < state.seconds; second += 1) {
      const share = last === undefined || last === state ? 1 : Math.min(1, (second + 1) / 3);
      const between = (from = 0, to = 0) => from + (to - from) * share;
      const speed = between(last?.speed, state.speed);
      const air = between(last?.air, state.air) * (1 + 0.006 * normal());
      const gas = between(last?.gas, state.gas) + 0.4 * normal();
      // A hundredth and a half of the air is fuel.
      const drop = dropOf((air * 1.015) / 3600, gas + celsius, filling);
      rows.push({
        time: rows.length,
        speed: speed === 0 ? 0 : speed + 6 * normal(),
        air,
        gas,
        drop: drop * (1 + 0.008 * normal()) + sensorZero + 12 * normal(),
        coolant: state.coolant + 0.3 * normal(),
      });
    }
    last = state;
  }
  return rows;
}

const header = [
  'time [s]',
  'engineSpeed [rpm]',
  'airMassFlow [kg/h]',
  'gasTemperature [°C]',
  'pressureDrop [mbar]',
  'coolantTemperature [°C]',
];

/** With semicolons between the cells the numbers have decimal commas, as tools of other countries write them. */
function table(rows: readonly Row[], separator: ',' | ';'): string {
  const lines = rows.map(({ time, speed, air, gas, drop, coolant }) => {
    const cells = [String(time), speed.toFixed(0), air.toFixed(1), gas.toFixed(0), (drop / 100).toFixed(1), coolant.toFixed(0)];
    return cells.join(separator).replaceAll('.', separator === ';' ? ',' : '.');
  });
  return `${[header.join(separator), ...lines].join('\n')}\n`;
}

/** What lies in the filter before and after the work, and how the engine was run each time. */
export function demoLogs(): Readonly<Record<'before.csv' | 'after.csv', string>> {
  const before = drive(
    [
      { seconds: 40, speed: 0, air: 0, gas: 84, coolant: 84 },
      { seconds: 60, speed: 700, air: 80.8, gas: 118, coolant: 85 },
      { seconds: 60, speed: 1500, air: 187.2, gas: 164, coolant: 86 },
      { seconds: 60, speed: 2200, air: 300.5, gas: 206, coolant: 88 },
      { seconds: 45, speed: 700, air: 80.8, gas: 121, coolant: 87 },
    ],
    { sootMass: 0.064, ashMass: 0.07, ashPlugShare: 0.6 },
    11,
  );
  const after = drive(
    [
      { seconds: 40, speed: 0, air: 0, gas: 72, coolant: 80 },
      { seconds: 60, speed: 700, air: 80.8, gas: 112, coolant: 84 },
      { seconds: 60, speed: 1500, air: 181.3, gas: 150, coolant: 85 },
      { seconds: 60, speed: 2200, air: 285.7, gas: 184, coolant: 86 },
      { seconds: 45, speed: 700, air: 80.8, gas: 114, coolant: 86 },
    ],
    { sootMass: 0.003, ashMass: 0.035, ashPlugShare: 0 },
    12,
  );
  return { 'before.csv': table(before, ','), 'after.csv': table(after, ';') };
}
