import { logSumExp, sampleByFit, weightedQuantiles } from '@wallflow/numerics/sampling';
import type { Range } from './estimate.js';
import { lognormal, uniform } from './latent.js';

/** What can be the matter on the side of the reductant. */
export const reductantCauses = {
  'nothing-wrong': 'fluid, dosing, catalyst and sensors are in order',
  'weak-fluid': 'the fluid is too weak',
  'low-quantity': 'too little is injected: nozzle, deposit, pump or line',
  'weak-and-low': 'the fluid is too weak and too little of it is injected',
  catalyst: 'the catalyst converts too little',
  sensor: 'a NOx sensor reads wrongly',
  'too-cold': 'the catalyst is too cold to convert',
} as const;

export type ReductantCause = keyof typeof reductantCauses;

/** Readings of the reductant side as plain numbers; what was not read is left out. */
export interface ReductantInput {
  /** Mass share of urea, and its standard uncertainty. */
  readonly ureaFraction?: { readonly value: number; readonly uncertainty?: number };
  /** Quantity of a dosing test over the nominal one, and its standard uncertainty. */
  readonly delivered?: { readonly value: number; readonly uncertainty?: number };
  /** Share of the NOx that the two sensors show as converted, with a warm catalyst. */
  readonly conversion?: { readonly value: number; readonly uncertainty?: number };
  /** Catalyst temperature during that, K. */
  readonly catalystTemperature?: number;
}

export interface ReductantEstimate {
  /** Most likely first; the probabilities sum to 1. */
  readonly causes: ReadonlyArray<{ readonly id: ReductantCause; readonly title: string; readonly probability: number }>;
  /** Urea that reaches the exhaust over that of full fluid in full quantity. */
  readonly dose: Range;
  readonly effectiveSize: number;
}

/** Urea of the fluid as it must be, ISO 22241-1. */
const fullStrength = 0.325;
/** Below this a catalyst converts little, K; a few hundred degrees are usual (common practice, no source). */
const coldCatalyst = 473;

interface State {
  readonly urea: number;
  readonly delivered: number;
  readonly catalyst: number;
  readonly sensorGain: number;
  readonly cold: boolean;
}

interface Hypothesis {
  readonly id: ReductantCause;
  /** Common practice, no source: no count of faults was found. */
  readonly weight: number;
  readonly weak: boolean;
  readonly low: boolean;
  readonly catalyst?: boolean;
  readonly sensor?: boolean;
  readonly cold?: boolean;
}

const hypotheses: readonly Hypothesis[] = [
  { id: 'nothing-wrong', weight: 0.2, weak: false, low: false },
  { id: 'weak-fluid', weight: 0.1, weak: true, low: false },
  { id: 'low-quantity', weight: 0.33, weak: false, low: true },
  { id: 'weak-and-low', weight: 0.05, weak: true, low: true },
  { id: 'catalyst', weight: 0.08, weak: false, low: false, catalyst: true },
  { id: 'sensor', weight: 0.2, weak: false, low: false, sensor: true },
  { id: 'too-cold', weight: 0.06, weak: false, low: false, cold: true },
];

function stateOf(point: Float64Array, { weak, low, catalyst, sensor, cold }: Hypothesis): State {
  const [fluid, quantity, health, gain] = [point[0]!, point[1]!, point[2]!, point[3]!];
  return {
    // Made to 31.8 to 33.2 %; a weak one holds anything down to a fifth.
    urea: weak ? uniform(fluid, 0.2, 0.316) : fullStrength + 0.003 * fluid,
    delivered: low ? uniform(quantity, 0.2, 0.93) : 1 + 0.03 * quantity,
    catalyst: catalyst === true ? uniform(health, 0.3, 0.85) : Math.min(0.99, 0.95 + 0.015 * health),
    sensorGain: sensor === true ? lognormal(gain, 1.6, 1.6) : lognormal(gain, 1, 1.06),
    cold: cold === true,
  };
}

const doseOf = ({ urea, delivered }: State) => (urea / fullStrength) * delivered;

/** Share of the NOx that the sensors would show as converted: what the dose allows, or what the catalyst can. */
function shownConversion(state: State): number {
  const ability = state.cold ? 0.3 : state.catalyst;
  const converted = Math.min(ability, doseOf(state) * 0.98);
  return 1 - (1 - converted) * state.sensorGain;
}

/**
 * One estimate of the reductant side: weak fluid and low quantity multiply to one dose, which is what the catalyst gets.
 * The same seed gives the same estimate. Never throws on numbers within physics.
 */
export function estimateReductant(input: ReductantInput, seed = 1): ReductantEstimate {
  const { ureaFraction, delivered, conversion, catalystTemperature } = input;
  const observed = [ureaFraction, delivered, conversion].flatMap((reading) => (reading === undefined ? [] : [reading.value]));
  const parts = hypotheses.map((hypothesis, index) => {
    const result = sampleByFit(
      {
        dimension: 4,
        observed,
        degreesOfFreedom: 4,
        predict: (point, expected, scale) => {
          const state = stateOf(point, hypothesis);
          let k = 0;
          const put = (value: number, spread: number) => {
            expected[k] = value;
            scale[k] = spread;
            k += 1;
          };
          if (ureaFraction !== undefined) put(state.urea, ureaFraction.uncertainty ?? 0.003);
          if (delivered !== undefined) put(state.delivered, Math.hypot(0.02, delivered.uncertainty ?? 0.02));
          if (conversion !== undefined) put(shownConversion(state), Math.hypot(0.04, conversion.uncertainty ?? 0));
          return true;
        },
      },
      { draws: 300, seed: seed * 100 + index },
    );
    // A temperature that was read settles whether the catalyst is cold.
    const warm = catalystTemperature === undefined ? 0.5 : catalystTemperature > coldCatalyst ? 0.98 : 0.1;
    const temperature = hypothesis.cold === true ? 1 - warm : warm;
    return { hypothesis, result, logWeight: Math.log(hypothesis.weight) + Math.log(temperature) + result.logEvidence };
  });
  const total = logSumExp(parts.map(({ logWeight }) => logWeight));
  const doses: number[] = [];
  const weights: number[] = [];
  for (const { hypothesis, result, logWeight } of parts) {
    result.points.forEach((point, k) => {
      doses.push(doseOf(stateOf(point, hypothesis)));
      weights.push(Math.exp(logWeight - total) * result.weights[k]!);
    });
  }
  const [p5 = Number.NaN, p50 = Number.NaN, p95 = Number.NaN] = weightedQuantiles(doses, weights, [0.05, 0.5, 0.95]);
  return {
    causes: parts
      .map(({ hypothesis: { id }, logWeight }) => ({ id, title: reductantCauses[id], probability: Math.exp(logWeight - total) }))
      .sort((a, b) => b.probability - a.probability),
    dose: { p5, p50, p95 },
    effectiveSize: 1 / weights.reduce((sum, weight) => sum + weight * weight, 0),
  };
}
