import {
  channelProfile,
  deepBedState,
  diluteAirViscosity,
  filterChannels,
  filtrationArea,
  loadChannels,
  type WallProperties,
} from '@wallflow/exhaust';
import { makeRandomSource, type RandomSource } from '@wallflow/numerics/sampling';
import { causeOf, type FilterCause, type HypothesisId } from '../estimate/causes.js';
import type { EstimateInput, SpeedReading, Trials } from '../estimate/evidence-input.js';
import type { HeatedFilter } from './burning-damages.js';

/** An invented vehicle with a hidden cause, and what a technician would read of it. */
export interface GeneratedCase {
  readonly seed: number;
  readonly truth: {
    readonly cause: FilterCause;
    /** kg/m³ */
    readonly sootLoad: number;
    readonly ashLoad: number;
  };
  readonly filter: HeatedFilter;
  /** What is read without any trial. */
  readonly input: EstimateInput;
  /** What the trials would show if they were made. */
  readonly trials: Required<Pick<Trials, 'hoses' | 'tailPipe' | 'gaugeBeside' | 'backPressureLost' | 'rod'>>;
  readonly zero: number;
  /** Soot and ash by weighing against a new filter, kg; only where the weight of a new one is known. */
  readonly weighedLoad?: number;
  /** Flow resistance after a completed regeneration over that before it, as read; only for a vehicle that may be heated. */
  readonly resistanceRatio: number;
}

interface Draw extends RandomSource {
  between(low: number, high: number): number;
  /** As likely in each decade. */
  log(low: number, high: number): number;
  chance(probability: number): boolean;
  pick<T>(options: ReadonlyArray<readonly [T, number]>): T;
}

function drawing(seed: number): Draw {
  const source = makeRandomSource(seed);
  return {
    ...source,
    between: (low, high) => low + (high - low) * source.uniform(),
    log: (low, high) => low * (high / low) ** source.uniform(),
    chance: (probability) => source.uniform() < probability,
    pick: (options) => {
      let left = source.uniform() * options.reduce((sum, [, weight]) => sum + weight, 0);
      for (const [option, weight] of options) {
        left -= weight;
        if (left <= 0) return option;
      }
      return options[options.length - 1]![0];
    },
  };
}

/**
 * How often each cause is hidden in a case. Of filters that read high in a workshop about half are full of soot and a sixth full of
 * ash, the rest shared among sensor, hoses, another part and a broken core (common practice, no source); some vehicles are sound.
 */
const causeWeights: ReadonlyArray<readonly [HypothesisId, number]> = [
  ['soot', 43],
  ['ash-plug', 9],
  ['ash-layer', 6],
  ['nothing-wrong', 11],
  ['sensor-zero', 6],
  ['sensor-dead', 3],
  ['hose-leaking', 5],
  ['hose-plugged', 2],
  ['hoses-swapped', 1.5],
  ['restriction-behind', 5],
  ['restriction-before', 2],
  ['core-damaged', 4.5],
  ['wet-after-wash', 2],
];

const gasConstant = 287.05;

interface Deposits {
  /** What the filter has run, m. */
  readonly distance: number;
  /** Distance since the last regeneration that was completed, m. */
  readonly sinceRegeneration: number;
  /** What a control unit would reckon that counts the soot of a sound engine, kg/m³. */
  readonly countedSoot: number;
  /** Soot load at which this control unit asks for a regeneration, kg/m³. */
  readonly trigger: number;
  readonly sootLoad: number;
  readonly ashLoad: number;
  readonly plugShare: number;
  /** Share of the inlet cells that soot has not bridged at the face. */
  readonly openFace: number;
}

/** A filter by the one-dimensional model with soot in the wall: not the closed form that the estimate uses. */
function filterDrop(draw: Draw, displacement: number, light: boolean) {
  const volume = displacement * (light ? draw.between(0.95, 1.75) : draw.between(1.3, 2.2));
  const filterLength = Math.cbrt((4 * volume) / Math.PI) * draw.between(0.85, 1.3);
  const cells = draw.pick([
    [{ cellDensity: 300, wall: 11 }, light ? 6 : 2],
    [{ cellDensity: 200, wall: 12.5 }, light ? 3 : 6],
    [{ cellDensity: 320, wall: 9.5 }, 1],
  ]);
  const inletWidthRatio = draw.chance(0.35) ? draw.between(1.1, 1.3) : 1;
  const channels = filterChannels({
    cellDensity: cells.cellDensity / 0.0254 ** 2,
    wallThickness: cells.wall * 25.4e-6,
    frontalArea: volume / filterLength,
    filterLength,
    plugLength: draw.between(4e-3, 8e-3),
    layout: 'alternate',
    inletWidthRatio,
  })!;
  const wall: WallProperties = {
    wallPermeability: draw.log(2.2e-13, 5.4e-13),
    forchheimerCoefficient: draw.log(1e6, 1e8),
    entranceExitCoefficient: draw.between(0.6, 1.1),
  };
  const sootDensity = draw.between(55, 125);
  const sootPermeability = draw.log(1.4e-12, 3.3e-12) / sootDensity;
  const collectors = { porosity: draw.between(0.42, 0.6), wallSootDensity: draw.between(6, 12) };
  const percolationFactor = Math.cbrt(1 - collectors.porosity) * draw.between(1.04, 1.1);
  const pressed = draw.between(0, 1);
  const drop = (
    { sootLoad, ashLoad, plugShare, openFace }: Deposits,
    volumeFlow: number,
    temperature: number,
    pressure: number,
  ): number => {
    const wallVolume = filtrationArea(channels) * channels.wallThickness;
    const openShare = Math.max(0, 1 - ashLoad / 30);
    const sootMass = sootLoad * volume;
    const inWall = deepBedState(sootMass, wallVolume, { ...collectors, percolationFactor, openShare });
    const flow = {
      volumeFlow: volumeFlow / openFace,
      viscosity: diluteAirViscosity(temperature),
      density: pressure / (gasConstant * temperature),
    };
    const loaded = loadChannels(channels, {
      sootMass: sootMass - inWall.wallSootMass,
      ashMass: ashLoad * volume,
      ashPlugShare: plugShare,
      sootPackingDensity: sootDensity,
      ashPackingDensity: 420,
    });
    if (loaded === undefined) return Number.NaN;
    // Gas slips along the walls of pores the more, the thinner it is.
    const slip = 1 + 0.25 * (temperature / 520 - 1);
    const of = (permeability: number) => {
      const profile = channelProfile(
        loaded,
        flow,
        {
          ...wall,
          wallPermeability: wall.wallPermeability * inWall.permeabilityRatio * slip,
          sootPermeability: permeability * slip,
          ashPermeability: 7e-14,
        },
        2,
      );
      return profile.channelDrop + profile.contractionDrop + profile.expansionDrop;
    };
    const plain = of(sootPermeability);
    return plain < 2e4 ? plain : of(sootPermeability * (1 - 0.4 * pressed * Math.min(1, plain / 2e4 - 1)));
  };
  return { drop, volume, length: filterLength };
}

/** Exhaust mass flow of an engine without load, kg/s, with recirculated gas taken off and the temperature of its exhaust, K. */
function engineState(draw: Draw, displacement: number, light: boolean, ambient: number) {
  const recirculation = {
    idle: draw.chance(0.3) ? 0 : draw.between(0.05, light ? 0.55 : 0.3),
    raised: draw.chance(0.5) ? 0 : draw.between(0, light ? 0.3 : 0.15),
  };
  const efficiency = draw.between(0.85, 1);
  const warm = { idle: draw.between(370, 440), raised: draw.between(430, 500) };
  return (engineSpeed: number, idle: boolean) => {
    const manifold = ambient * (idle ? draw.between(0.94, 1) : draw.between(1, 1.12));
    const charge = (displacement * engineSpeed * manifold * efficiency) / (2 * gasConstant * draw.between(298, 325));
    const share = idle ? recirculation.idle : recirculation.raised;
    return {
      air: charge * (1 - share),
      exhaust: charge * (1 - share) * (idle ? 1.011 : 1.018),
      temperature: (idle ? warm.idle : warm.raised) + 6 * draw.normal(),
    };
  };
}

/** A filter of the fleet: ash comes with distance, but oil use differs by far more than distance does. */
function ashOfFleet(
  draw: Draw,
  light: boolean,
  wanted: readonly [number, number],
): { readonly distance: number; readonly ashLoad: number } {
  for (;;) {
    const distance = draw.between(3e7, light ? 3.2e8 : 4.5e8);
    const ashLoad = 9e-8 * Math.exp(0.7 * draw.normal()) * distance;
    if (ashLoad >= wanted[0] && ashLoad <= wanted[1]) return { distance, ashLoad };
  }
}

function depositsFor(draw: Draw, cause: HypothesisId, light: boolean): Deposits {
  const trigger = light ? draw.between(4, 7) : draw.between(2.6, 4.6);
  // What a sound engine takes to fill the filter to its trigger.
  const interval = light ? draw.between(2.5e5, 9e5) : draw.between(3e5, 1.5e6);
  const ash = causeOf(cause) === 'ash';
  const { distance, ashLoad } = ashOfFleet(draw, light, ash ? [45, 100] : [0, 34]);
  const plugShare = !ash ? draw.between(0.3, 0.9) : cause === 'ash-layer' ? draw.between(0.05, 0.3) : draw.between(0.75, 0.95);
  const soot = cause === 'soot';
  const sootLoad = trigger * (soot ? draw.between(1.15, 2.7) : ash ? draw.between(0.3, 1.1) : draw.between(0.05, 1));
  // Too much soot has two reasons: an engine that makes more, which the control unit does not know, or regenerations cut short.
  const excess = soot && draw.chance(0.5) ? draw.between(1.6, 4) : 1;
  const cutShort = soot && excess === 1 ? draw.between(1, 1.6) : 1;
  return {
    distance,
    ashLoad,
    plugShare,
    openFace: soot && draw.chance(0.2) ? draw.between(0.5, 0.95) : 1,
    sootLoad,
    trigger,
    sinceRegeneration: ((interval * sootLoad) / (trigger * excess)) * cutShort * draw.between(0.85, 1.15),
    countedSoot: (sootLoad / excess) * (1 + 0.12 * draw.normal()),
  };
}

/** What the control unit shows of the filter, kg: most count soot from the engine, others take it from the drop. */
function figuresOf(draw: Draw, deposits: Deposits, volume: number, sootByDrop: number): NonNullable<EstimateInput['controlUnit']> {
  const { countedSoot, distance, trigger } = deposits;
  const load = draw.chance(0.06) ? trigger * draw.between(0, 2) : draw.chance(0.6) ? countedSoot : sootByDrop;
  const ashLoad = draw.chance(0.08) ? 0 : 9e-8 * distance * draw.between(0.7, 1.3);
  const grams = (value: number) => Math.round(Math.max(0, value) * volume * 1000) / 1000;
  return { sootMass: grams(load), ...(draw.chance(0.6) ? { ashMass: grams(ashLoad) } : {}) };
}

/** Why the vehicle came in. */
function reasonFor(draw: Draw, cause: HypothesisId): NonNullable<EstimateInput['vehicle']['reason']> {
  if (cause === 'core-damaged')
    return draw.pick([
      ['smoke', 45],
      ['lamp', 45],
      ['low-power', 10],
    ]);
  const inTheWay = cause === 'soot' || causeOf(cause) === 'ash' || cause.startsWith('restriction');
  return draw.pick([
    ['smoke', 4],
    ['lamp', inTheWay ? 50 : 66],
    ['low-power', inTheWay ? 46 : 30],
  ]);
}

/** Seeds side by side start a random source nearly alike: scatter them (multiplication by the golden ratio, Knuth vol. 3, 6.4). */
const scattered = (seed: number): number => Math.imul(seed ^ (seed >>> 15), 0x9e3779b1) >>> 1;

/** Where a gauge finds most of the back-pressure lost. */
function lostPressure(odds: (chance: number) => boolean, cause: HypothesisId): NonNullable<Trials['backPressureLost']> {
  if (cause === 'restriction-behind' && odds(0.93)) return 'behind-filter';
  if (cause === 'restriction-before' && odds(0.93)) return 'before-filter';
  if ((cause === 'soot' || cause === 'wet-after-wash' || causeOf(cause) === 'ash') && odds(0.93)) return 'across-filter';
  return odds(0.1) ? 'across-filter' : 'nowhere';
}

/** Make one case: the same seed gives the same vehicle. */
export function generateCase(seed: number): GeneratedCase {
  for (let attempt = 0; ; attempt += 1) {
    const made = attemptCase(drawing(scattered(seed * 64 + attempt)), seed);
    if (made !== undefined) return made;
  }
}

function attemptCase(draw: Draw, seed: number): GeneratedCase | undefined {
  const displacement = draw.pick([
    [1.6e-3, 2],
    [2e-3, 4],
    [2.2e-3, 3],
    [3e-3, 2],
    [4.6e-3, 1],
    [6.7e-3, 1],
    [7.7e-3, 1],
  ]);
  const light = displacement < 3.4e-3;
  const ambient = draw.between(88e3, 103e3);
  const cause = draw.pick(causeWeights);
  const deposits = depositsFor(draw, cause, light);
  const filter = filterDrop(draw, displacement, light);
  const engine = engineState(draw, displacement, light, ambient);
  const speeds = [light ? draw.between(740, 880) : draw.between(560, 700), light ? 1800 : 1300, light ? 2800 : 2000].map((rpm) => rpm / 60);
  const states = speeds.map((engineSpeed, index) => {
    const gas = engine(engineSpeed, index === 0);
    let drop = 0;
    // The drop itself presses the gas together before the filter.
    for (let turn = 0; turn < 3; turn += 1) {
      const pressure = ambient + drop / 2;
      const volumeFlow = (gas.exhaust * gasConstant * gas.temperature) / pressure;
      drop = filter.drop(deposits, volumeFlow, gas.temperature, pressure);
    }
    const volumeFlow = (gas.exhaust * gasConstant * gas.temperature) / ambient;
    return { engineSpeed, ...gas, drop, volumeFlow, rhoQQ: (ambient / (gasConstant * gas.temperature)) * volumeFlow ** 2 };
  });
  if (!states.every(({ drop }) => Number.isFinite(drop) && drop < 9e4)) return undefined;
  const fast = states[2]!;
  const zero = cause === 'sensor-zero' ? (draw.chance(0.5) ? 1 : -1) * draw.between(1200, 6000) : 90 * draw.normal();
  const leak = draw.between(0.05, 0.6);
  const passed = draw.between(0.05, 0.6);
  const stuck = draw.between(0, 600);
  const wet = draw.between(1.1, 2.2);
  const pipe = draw.between(7e3, 3.5e4) / fast.rhoQQ;
  const seen = (drop: number, rhoQQ: number): number => {
    if (cause === 'hose-leaking') return leak * drop;
    if (cause === 'hose-plugged') return 0.5 * leak * drop + stuck / 2;
    if (cause === 'hoses-swapped') return -drop;
    if (cause === 'sensor-dead') return stuck;
    if (cause === 'core-damaged') return passed * drop;
    if (cause === 'restriction-behind') return drop + pipe * rhoQQ;
    if (cause === 'wet-after-wash') return wet * drop;
    return drop;
  };
  const shown = (value: number) => Math.round((value + zero) / 100) * 100;
  const readings: SpeedReading[] = states.map(({ engineSpeed, drop, rhoQQ, temperature }, index) => {
    // Pulsation, lag and dropouts that were left out leave a reading that is less sure at idle.
    const spread = index === 0 ? 0.08 : 0.025;
    return {
      engineSpeed: Math.round(engineSpeed * 60) / 60,
      pressureDrop: shown(seen(drop, rhoQQ) * (1 + spread * draw.normal()) + 25 * draw.normal()),
      ...(draw.chance(0.7) ? { gasTemperature: temperature + 6 * draw.normal() } : {}),
    };
  });
  // The load that a sound filter without ash would need for the drop that is shown.
  const dropOf = (sootLoad: number) =>
    filter.drop({ ...deposits, sootLoad, ashLoad: 0 }, fast.volumeFlow, fast.temperature, ambient + fast.drop / 2);
  const [clean, loaded] = [dropOf(0), dropOf(deposits.trigger)];
  const sootByDrop = deposits.trigger * Math.min(4, Math.max(0, (seen(fast.drop, fast.rhoQQ) - clean) / (loaded - clean)));
  const burnt = filter.drop(
    { ...deposits, sootLoad: deposits.sootLoad * draw.between(0.05, 0.35) },
    fast.volumeFlow,
    fast.temperature,
    ambient,
  );
  const ratioShown =
    (seen(burnt, fast.rhoQQ) / (Math.abs(seen(fast.drop, fast.rhoQQ)) < 100 ? 100 : seen(fast.drop, fast.rhoQQ))) *
    (1 + 0.06 * draw.normal());
  const complaint = cause !== 'nothing-wrong' || draw.chance(0.5);
  const still = cause === 'sensor-dead' ? stuck : cause === 'hose-plugged' ? stuck / 2 : 0;
  const odds = (outcome: number) => draw.chance(outcome);
  return {
    seed,
    truth: { cause: causeOf(cause), sootLoad: deposits.sootLoad, ashLoad: deposits.ashLoad },
    filter: { volume: filter.volume, length: filter.length, light },
    zero: shown(still),
    resistanceRatio: Math.max(0, ratioShown),
    ...(draw.chance(0.5) ? { weighedLoad: (deposits.sootLoad + deposits.ashLoad) * filter.volume + 3e-3 * draw.normal() } : {}),
    input: {
      vehicle: {
        displacement,
        ambientPressure: ambient,
        complaint,
        ...(complaint && draw.chance(0.9) ? { reason: reasonFor(draw, cause) } : {}),
        // One filter in twenty was renewed without a note: the odometer shows more than it has run.
        ...(draw.chance(0.9) ? { distance: deposits.distance * (draw.chance(0.05) ? draw.between(1.2, 3) : 1) } : {}),
        ...(cause === 'wet-after-wash' || draw.chance(0.03) ? { washedRecently: true } : {}),
        ...(draw.chance(0.6) ? { distanceSinceRegeneration: deposits.sinceRegeneration } : {}),
      },
      readings,
      zero: { pressureDrop: shown(still) },
      ...(draw.chance(0.7) ? { controlUnit: figuresOf(draw, deposits, filter.volume, sootByDrop) } : {}),
    },
    trials: {
      hoses:
        cause === 'hose-leaking' && odds(0.9)
          ? 'leaking'
          : cause === 'hose-plugged' && odds(0.9)
            ? 'blocked'
            : cause === 'hoses-swapped' && odds(0.95)
              ? 'swapped'
              : odds(0.95)
                ? 'tight'
                : 'leaking',
      tailPipe: (cause === 'core-damaged' ? odds(0.88) : odds(0.04)) ? 'sooty' : 'clean',
      gaugeBeside: (cause.startsWith('hose') || cause.startsWith('sensor') ? odds(0.92) : odds(0.03)) ? 'differs' : 'agrees',
      backPressureLost: lostPressure(odds, cause),
      rod: (cause === 'ash-plug' ? odds(0.88) : odds(0.05)) ? 'short' : 'full-length',
    },
  };
}
