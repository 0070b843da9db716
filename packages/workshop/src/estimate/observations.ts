import type { Hypothesis } from './causes.js';
import type { EstimateInput } from './evidence-input.js';
import { type Body, type Content, compactionOf, dropAt, plugShareOf, type Resistance, resistanceOf } from './filter-model.js';
import { type GasModel, gasModel } from './gas-state.js';
import { idleBelow } from './idle.js';
import { lognormal } from './latent.js';
import type { Priors } from './priors.js';
import { at } from './unknowns.js';

/** What one point says of the vehicle, for one explanation. */
export interface VehicleState {
  readonly point: Float64Array;
  readonly hypothesis: Hypothesis;
  readonly sootLoad: number;
  readonly ashLoad: number;
  readonly volume: number;
  readonly resistance: Resistance;
  readonly body: Body;
  /** The same filter without soot and ash. */
  clean(): Resistance | undefined;
  /** The same filter after nine tenths of its soot have burnt. */
  burnt(): Resistance | undefined;
}

/**
 * States of one explanation. What the last point needed is kept: most steps of a fit move unknowns that leave the filter and
 * what is in it as they are.
 */
export function stateSource(hypothesis: Hypothesis, bodyAt: (point: Float64Array) => Body | undefined) {
  let last: { readonly body: Body; readonly content: Content; readonly resistance: Resistance | undefined } | undefined;
  return (point: Float64Array): VehicleState | undefined => {
    const body = bodyAt(point);
    if (body === undefined) return undefined;
    const content: Content = {
      sootLoad: hypothesis.sootLoad(point),
      ashLoad: hypothesis.ashLoad(point),
      plugShare: plugShareOf(point, hypothesis.plugShare),
      openFace: hypothesis.openFace?.(point) ?? 1,
    };
    if (last === undefined || last.body !== body || !sameContent(last.content, content))
      last = { body, content, resistance: resistanceOf(body, content) };
    const { resistance } = last;
    if (resistance === undefined) return undefined;
    return new State(point, hypothesis, body, content, resistance);
  };
}

const sameContent = (a: Content, b: Content) =>
  a.sootLoad === b.sootLoad && a.ashLoad === b.ashLoad && a.plugShare === b.plugShare && a.openFace === b.openFace;

class State implements VehicleState {
  readonly sootLoad: number;
  readonly ashLoad: number;
  readonly volume: number;

  constructor(
    readonly point: Float64Array,
    readonly hypothesis: Hypothesis,
    readonly body: Body,
    private readonly content: Content,
    readonly resistance: Resistance,
  ) {
    this.sootLoad = content.sootLoad;
    this.ashLoad = content.ashLoad;
    this.volume = body.volume;
  }

  clean(): Resistance | undefined {
    return resistanceOf(this.body, { ...this.content, sootLoad: 0, ashLoad: 0, openFace: 1 });
  }

  burnt(): Resistance | undefined {
    return resistanceOf(this.body, { ...this.content, sootLoad: 0.1 * this.sootLoad });
  }
}

/** Something that was read: its value, and what a state would give. */
export interface Observation {
  /** For sentences: "the reading at 2200 rpm". */
  readonly name: string;
  readonly kind: 'reading' | 'zero' | 'back-pressure' | 'trial' | 'control-unit' | 'history';
  readonly value: number;
  /** Expected value and scale of its error. */
  readonly predict: (state: VehicleState) => readonly [number, number];
  /** ln of its chance, for what has not one error but several shapes; the scale above is then for words only. */
  readonly logChance?: (state: VehicleState) => number;
}

/** Relative error of model and flow, reading by reading, beside what is common to all; at idle flow and pulsation spoil it. */
const modelError = { idle: 0.2, raised: 0.06 };
/** Pulsation, steps of the sensor and condensate in the hoses, Pa. */
const lowError = 70;
const zeroSpread = 120;
const gainSpread = 0.025;
/** Zero of a sensor in order, Pa; one in ten is off by far more (common practice, no source). */
const zeroOf = (point: Float64Array) => zeroSpread * point[at.zero]! * (1 + 0.25 * point[at.zero]! ** 2);
/** Half a millibar either way, Pa. */
export const millibarRounding = 29;

const rpm = (speed: number) => `${Math.round((speed * 60) / 10) * 10} rpm`;

/** What the sensor would show at a state of the gas. */
export function shownDrop(state: VehicleState, gas: GasModel): number {
  const { point, hypothesis, resistance } = state;
  const { muQ, rhoQQ } = gas(point);
  const trueDrop = dropAt(resistance, muQ, rhoQQ, compactionOf(point));
  const { factor, offset, pipe } = hypothesis.distortion(point);
  const gain = 1 + gainSpread * (hypothesis.id === 'hose-plugged' ? 0 : point[at.gain]!);
  return gain * (factor * trueDrop + pipe * rhoQQ) + zeroOf(point) + offset;
}

/** Independent errors together; plain sums of squares, for this runs for every draw. */
const combined = (a: number, b: number, c = 0) => Math.sqrt(a * a + b * b + c * c);

/** Median and spread of the drop of pipe and silencer behind a filter at the highest flow that was read, Pa. */
const tailDrop = 1200;
const tailSpread = 1.9;

/** All that was read, as observations of a state. */
export function observationsOf(input: EstimateInput, priors: Priors, highestRhoQQ: number): Observation[] {
  const { vehicle, readings, zero, backPressures = [], trials = {}, controlUnit = {} } = input;
  const ambient = vehicle.ambientPressure ?? 101_325;
  const list: Observation[] = [];
  for (const reading of readings) {
    const gas = gasModel(reading, ambient + Math.max(0, reading.pressureDrop) / 2, vehicle);
    const own = reading.uncertainty ?? millibarRounding;
    const relative = reading.engineSpeed < idleBelow ? modelError.idle : modelError.raised;
    list.push({
      name: `the reading at ${rpm(reading.engineSpeed)}`,
      kind: 'reading',
      value: reading.pressureDrop,
      predict: (state) => {
        const shown = shownDrop(state, gas);
        return [shown, combined(relative * shown, lowError, own)];
      },
    });
  }
  if (zero !== undefined) {
    const own = zero.uncertainty ?? millibarRounding;
    list.push({
      name: 'the reading with the engine off',
      kind: 'zero',
      value: zero.pressureDrop,
      predict: ({ point, hypothesis }) => [zeroOf(point) + hypothesis.distortion(point).offset, combined(20, own)],
    });
  }
  for (const reading of backPressures) {
    const gas = gasModel(reading, ambient + Math.max(0, reading.backPressure) / 2, vehicle);
    const own = reading.uncertainty ?? 100;
    list.push({
      name: `the back-pressure at ${rpm(reading.engineSpeed)}`,
      kind: 'back-pressure',
      value: reading.backPressure,
      predict: (state) => {
        const { muQ, rhoQQ } = gas(state.point);
        const drop = dropAt(state.resistance, muQ, rhoQQ, compactionOf(state.point));
        const tail = lognormal(state.point[at.tail]!, tailDrop, tailSpread) / Math.max(highestRhoQQ, 1e-9);
        const { elsewhere, distortion, id } = state.hypothesis;
        const behind = elsewhere?.where === 'behind' ? elsewhere.pipe(state.point) : 0;
        // A leak of the filter itself takes the back-pressure away with the drop.
        const passed = id === 'core-damaged' ? distortion(state.point).factor : 1;
        const expected = passed * drop + (tail + behind) * rhoQQ;
        return [expected, combined(0.1 * expected, 150, own)];
      },
    });
  }
  if (trials.resistanceRatio !== undefined) {
    list.push({
      name: 'the change over a completed regeneration',
      kind: 'trial',
      value: trials.resistanceRatio,
      predict: (state) => {
        const after = state.burnt();
        return [after === undefined ? 1 : after.viscous / state.resistance.viscous, 0.12];
      },
    });
  }
  if (trials.particleNumber !== undefined) {
    list.push({
      name: 'the particle number at idle',
      kind: 'trial',
      value: Math.log(trials.particleNumber),
      predict: (state) => {
        const passed = state.hypothesis.leak?.(state.point) ?? 0;
        // Per cubic metre: a sound filter some 2000 in a cubic centimetre, raw exhaust some ten million.
        return [Math.log(2e9 + 1e13 * passed), Math.log(4)];
      },
    });
  }
  if (trials.weighedLoad !== undefined) {
    list.push({
      name: 'the weight of soot and ash',
      kind: 'trial',
      value: trials.weighedLoad,
      predict: ({ sootLoad, ashLoad, volume }) => [(sootLoad + ashLoad) * volume, combined(5e-3, 0.05 * trials.weighedLoad!)],
    });
  }
  if (vehicle.distanceSinceRegeneration !== undefined) {
    const { sootRate } = priors;
    list.push({
      name: 'the distance since the last completed regeneration',
      kind: 'history',
      value: Math.log(Math.max(vehicle.distanceSinceRegeneration, 1e4)),
      // Some soot stays after a regeneration; a fault of the engine, not known here, brings more over the same distance.
      predict: ({ sootLoad, hypothesis: { sootExcess = 1 } }) => [
        Math.log((0.3 + sootLoad) / (sootExcess * sootRate.median)),
        Math.hypot(Math.log(sootRate.spread), Math.log(sootExcess)),
      ],
    });
  }
  if (controlUnit.sootMass !== undefined) list.push(sootFigure(controlUnit.sootMass, input));
  if (controlUnit.ashMass !== undefined && controlUnit.ashMass > 0) {
    // Counted from distance or fuel, not measured: beside the distance it tells little that is new.
    const own = vehicle.distance === undefined ? 0.9 : 2;
    list.push({
      name: "the control unit's ash figure",
      kind: 'control-unit',
      value: Math.log(Math.max(controlUnit.ashMass, 1e-4)),
      predict: ({ ashLoad, volume }) => [Math.log(Math.max(ashLoad * volume, 1e-4)), own],
    });
  }
  return list;
}

/** How control units come to their soot figure (common practice, no source): shares, which need not sum to 1. */
const figureBasis = { counted: 0.55, byDrop: 0.35, anything: 0.1 };
const tailed = (residual: number, scale: number) => (1 + (residual * residual) / 4) ** -2.5 / scale;

/**
 * The soot figure of the control unit is counted from the engine, or taken from the drop as if all of it were soot; one in ten is
 * anything.
 */
function sootFigure(figure: number, { vehicle, readings }: EstimateInput): Observation {
  const highest = readings.at(-1);
  const ambient = vehicle.ambientPressure ?? 101_325;
  const gas = highest === undefined ? undefined : gasModel(highest, ambient + Math.max(0, highest.pressureDrop) / 2, vehicle);
  const counted = ({ sootLoad, volume, hypothesis, point }: VehicleState): readonly [number, number] => {
    const { sootExcess, figureGain } = hypothesis;
    // An engine that makes more soot than it should is not known to the control unit.
    const expected = (sootLoad * volume * (figureGain?.(point) ?? 1)) / Math.sqrt(sootExcess ?? 1);
    // About 1 g/L and a fifth in road tests.
    return [expected, combined(1.2 * volume, (sootExcess === undefined ? 0.25 : 0.5) * expected)];
  };
  return {
    name: "the control unit's soot figure",
    kind: 'control-unit',
    value: figure,
    predict: counted,
    logChance: (state) => {
      const { volume, point, body } = state;
      const [expected, scale] = counted(state);
      let chance = figureBasis.counted * tailed((figure - expected) / scale, scale) + figureBasis.anything / (20 * volume);
      const line = highest === undefined ? undefined : body.scale();
      if (line !== undefined && gas !== undefined && highest !== undefined) {
        const load = (Math.max(0, highest.pressureDrop) / gas(point).muQ - line.clean) / line.perLoad;
        const byDrop = Math.min(25, Math.max(0, load)) * volume;
        const own = combined(1.5 * volume, 0.4 * byDrop);
        chance += figureBasis.byDrop * tailed((figure - byDrop) / own, own);
      }
      return Math.log(chance);
    },
  };
}
