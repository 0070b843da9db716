// The files of the example jobs, made from their stories: the one-dimensional model of the filter gives the drop, a seeded
// generator the scatter. No vehicle was measured. `write-jobs.ts` writes them, a test holds that they are what comes out here.
import { channelProfile, filterChannels, gasDensity, loadChannels, sutherlandViscosity } from '@wallflow/exhaust';
import { type Hidden, type Story, stories } from './stories.js';

const inch = 0.0254;
const ambient = 98_600;
const material = {
  wallPermeability: 3e-13,
  forchheimerCoefficient: 0,
  entranceExitCoefficient: 0.628,
  sootPermeability: 2e-14,
  ashPermeability: 7e-14,
};
const packing = { sootPackingDensity: 95, ashPackingDensity: 400 };

const engines = {
  van: {
    displacement: '2.0 L',
    diameter: 0.1438,
    length: 0.1778,
    cells: 300,
    mil: 11,
    substrate: 'silicon-carbide',
    states: [
      { speed: 0, air: 0, gas: 70 },
      { speed: 800, air: 48, gas: 125 },
      { speed: 1800, air: 112, gas: 168 },
      { speed: 2800, air: 186, gas: 212 },
    ],
  },
  bus: {
    displacement: '3.9 L',
    diameter: 0.1905,
    length: 0.2032,
    cells: 200,
    mil: 12,
    substrate: 'cordierite',
    states: [
      { speed: 0, air: 0, gas: 70 },
      { speed: 700, air: 81, gas: 118 },
      { speed: 1500, air: 187, gas: 164 },
      { speed: 2200, air: 300, gas: 206 },
    ],
  },
} as const;

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

function trueDrop(
  channels: NonNullable<ReturnType<typeof filterChannels>>,
  volume: number,
  hidden: Hidden,
  air: number,
  celsius: number,
): number {
  const loaded = loadChannels(channels, {
    sootMass: hidden.soot * volume,
    ashMass: hidden.ash * volume,
    ashPlugShare: hidden.plugShare,
    ...packing,
  });
  if (loaded === undefined || air === 0) return 0;
  const temperature = celsius + 273.15;
  let drop = 0;
  // Pressure in the filter and drop depend on each other; a few rounds settle them.
  for (let round = 0; round < 6; round += 1) {
    const density = gasDensity({ temperature, pressure: ambient + drop / 2, molarMass: 0.0289656 }, 8.314462618);
    const viscosity = sutherlandViscosity(temperature, {
      referenceViscosity: 1.716e-5,
      referenceTemperature: 273,
      sutherlandTemperature: 111,
    });
    const profile = channelProfile(loaded, { volumeFlow: (air * 1.015) / 3600 / density, viscosity, density }, material);
    drop = profile.channelDrop + profile.contractionDrop + profile.expansionDrop;
  }
  return drop;
}

function logOf({ engine, hidden }: Story, seed: number): string {
  const { diameter, length, cells, mil, states } = engines[engine];
  const frontalArea = (Math.PI / 4) * diameter ** 2;
  const channels = filterChannels({
    cellDensity: cells / inch ** 2,
    wallThickness: mil * 1e-3 * inch,
    frontalArea,
    filterLength: length,
    plugLength: 0.008,
    layout: 'alternate',
    inletWidthRatio: 1,
  });
  if (channels === undefined) throw new Error('no channels');
  const random = seeded(seed);
  // Twelve uniform numbers make a normal one that needs no logarithm, so that no digit depends on the machine.
  const normal = () => Array.from({ length: 12 }, random).reduce((sum, value) => sum + value, -6);
  const rows = ['time [s];engineSpeed [rpm];airMassFlow [kg/h];gasTemperature [°C];pressureDrop [mbar]'];
  const highest = states.at(-1);
  let time = 0;
  for (const { speed, air, gas } of states) {
    const clean = trueDrop(channels, frontalArea * length, hidden, air, gas);
    const pipe = (hidden.pipe ?? 0) * (air / (highest?.air ?? 1)) ** 2;
    const mean = clean * (hidden.seen ?? 1) + pipe;
    for (let row = 0; row < 31; row += 1) {
      const shown = mean * (1 + 0.008 * normal()) + (hidden.offset ?? 0) + 30 + 12 * normal();
      const cellsOfRow = [
        String(time),
        speed === 0 ? '0' : (speed + 5 * normal()).toFixed(0),
        (air * (1 + 0.006 * normal())).toFixed(1),
        (gas + 0.4 * normal()).toFixed(0),
        (shown / 100).toFixed(1),
      ];
      rows.push(cellsOfRow.join(';').replaceAll('.', ','));
      time += 2;
    }
  }
  return `${rows.join('\n')}\n`;
}

function jobOf(story: Story, index: number): Readonly<Record<string, unknown>> {
  const { title, vehicle, odometer, complaint, history, trials, reductant, use } = story;
  const { displacement, diameter, length, cells, mil, substrate } = engines[story.engine];
  return {
    format: 'wallflow-job/2',
    title,
    reference: `COUNTY-${String(index + 1).padStart(2, '0')}`,
    date: '2026-03-12',
    vehicle: { description: vehicle, odometer },
    technician: 'Workshop at the mill',
    complaint,
    history,
    ambient: { pressure: '986 hPa', temperature: '14 °C' },
    engine: { displacement, strokes: 'four-stroke' },
    filter: {
      filterDiameter: `${(diameter * 1000).toFixed(1)} mm`,
      filterLength: `${(length * 1000).toFixed(1)} mm`,
      cellDensity: `${cells} cpsi`,
      wallThickness: `${mil} mil`,
      substrate,
    },
    logs: { before: 'before.csv' },
    ...(trials === undefined ? {} : { trials: { before: trials } }),
    permission: { before: { failedAttempts: 0, faultCodes: true, place: 'outdoors' } },
    ...(reductant === undefined ? {} : { reductant }),
    ...(use === undefined ? {} : { use }),
  };
}

const asJson = (value: unknown) => `${JSON.stringify(value, undefined, 2)}\n`;

/** The files of each example job, by folder and name. */
export function exampleJobs(): ReadonlyArray<{ readonly story: Story; readonly files: Readonly<Record<string, string>> }> {
  return stories.map((story, index) => {
    const { cause, plan, reductantCause, hidden } = story;
    return {
      story,
      files: {
        'job.json': asJson(jobOf(story, index)),
        'before.csv': logOf(story, 100 + index),
        'answer.json': asJson({
          cause,
          firstTwo: [cause],
          plan,
          ...(reductantCause === undefined ? {} : { reductantCause }),
          sootLoad: `${hidden.soot} g/L`,
          ashLoad: `${hidden.ash} g/L`,
        }),
      },
    };
  });
}
