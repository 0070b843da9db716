import type { Hypothesis } from './causes.js';
import type { EstimateInput } from './evidence-input.js';
import { type Body, compactionOf, dropAt, plugShareOf, type Resistance, resistanceOf } from './filter-model.js';
import { type GasModel, gasModel, idleBelow } from './gas-state.js';
import { lognormal } from './latent.js';
import { at } from './unknowns.js';

/** What one point says of the vehicle, for one explanation. */
export interface VehicleState {
  readonly point: Float64Array;
  readonly hypothesis: Hypothesis;
  readonly sootLoad: number;
  readonly ashLoad: number;
  readonly volume: number;
  readonly resistance: Resistance;
  /** The same filter without soot and ash. */
  readonly clean: () => Resistance | undefined;
  /** The same filter after nine tenths of its soot have burnt. */
  readonly burnt: () => Resistance | undefined;
}

export function stateOf(
  point: Float64Array,
  hypothesis: Hypothesis,
  bodyAt: (point: Float64Array) => Body | undefined,
): VehicleState | undefined {
  const body = bodyAt(point);
  if (body === undefined) return undefined;
  const plugShare = plugShareOf(point, hypothesis.plugShare);
  const [sootLoad, ashLoad] = [hypothesis.sootLoad(point), hypothesis.ashLoad(point)];
  const openFace = hypothesis.openFace?.(point) ?? 1;
  const resistance = resistanceOf(body, { sootLoad, ashLoad, plugShare, openFace });
  if (resistance === undefined) return undefined;
  return {
    point,
    hypothesis,
    sootLoad,
    ashLoad,
    volume: body.volume,
    resistance,
    clean: () => resistanceOf(body, { sootLoad: 0, ashLoad: 0, plugShare, openFace: 1 }),
    burnt: () => resistanceOf(body, { sootLoad: 0.1 * sootLoad, ashLoad, plugShare, openFace }),
  };
}

/** Something that was read: its value, and what a state would give. */
export interface Observation {
  /** For sentences: "the reading at 2200 rpm". */
  readonly name: string;
  readonly kind: 'reading' | 'zero' | 'back-pressure' | 'trial' | 'control-unit';
  readonly value: number;
  /** Expected value and scale of its error. */
  readonly predict: (state: VehicleState) => readonly [number, number];
}

/** Relative error of model and flow, reading by reading, beside what is common to all; at idle flow and pulsation spoil it. */
const modelError = { idle: 0.2, raised: 0.08 };
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

const combined = (...parts: readonly number[]) => Math.hypot(...parts);

/** Median and spread of the drop of pipe and silencer behind a filter at the highest flow that was read, Pa. */
const tailDrop = 1200;
const tailSpread = 1.9;

/** All that was read, as observations of a state. */
export function observationsOf(input: EstimateInput, highestRhoQQ: number): Observation[] {
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
  if (controlUnit.sootMass !== undefined) {
    list.push({
      name: "the control unit's soot figure",
      kind: 'control-unit',
      value: controlUnit.sootMass,
      predict: (state) => {
        const { sootLoad, volume, hypothesis, point } = state;
        const expected = sootLoad * volume * (hypothesis.figureGain?.(point) ?? 1);
        // About 1 g/L and a fifth in road tests; one in ten is far off.
        return [expected, combined(1.2 * volume, 0.25 * expected)];
      },
    });
  }
  if (controlUnit.ashMass !== undefined) {
    list.push({
      name: "the control unit's ash figure",
      kind: 'control-unit',
      value: Math.log(Math.max(controlUnit.ashMass, 1e-4)),
      // Reckoned from distance or fuel, not measured.
      predict: ({ ashLoad, volume }) => [Math.log(Math.max(ashLoad * volume, 1e-4)), 0.7],
    });
  }
  return list;
}
