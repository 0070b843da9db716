import type { EstimateInput } from './evidence-input.js';
import { lognormal, normalShare, share, uniform } from './latent.js';
import type { Priors } from './priors.js';
import { at } from './unknowns.js';

/** What can be the matter on the side of the filter. */
export const filterCauses = {
  'nothing-wrong': 'nothing is wrong with the filter or its sensor',
  soot: 'the filter is full of soot',
  ash: 'the filter is full of ash',
  'sensor-zero': 'the sensor does not read zero at rest',
  'hose-leaking': 'a hose of the sensor leaks',
  'hose-plugged': 'a hose of the sensor is plugged',
  'hoses-swapped': 'the hoses of the sensor are swapped',
  'sensor-dead': 'the sensor does not move',
  'restriction-before': 'something is in the way before the filter',
  'restriction-behind': 'something is in the way behind the filter',
  'core-damaged': 'the filter is cracked, melted through or missing',
  'wet-after-wash': 'the filter is still wet from a wash',
  'figures-wrong': 'the figures of the control unit are wrong',
} as const;

export type FilterCause = keyof typeof filterCauses;

/** How a cause changes what the sensor shows. All values are for one point. */
export interface Distortion {
  /** On the true drop. */
  readonly factor: number;
  /** Added to what the sensor shows whatever the flow, Pa. */
  readonly offset: number;
  /** A pipe-like restriction that the sensor sees, over ρ Q². */
  readonly pipe: number;
}

/** An explanation; ash has two, for it can lie on the walls or fill the ends of the channels. */
export type HypothesisId = Exclude<FilterCause, 'ash'> | 'ash-layer' | 'ash-plug';

export const causeOf = (id: HypothesisId): FilterCause => (id === 'ash-layer' || id === 'ash-plug' ? 'ash' : id);

/** One explanation of everything that was seen. */
export interface Hypothesis {
  readonly id: HypothesisId;
  /** Weight before anything is measured; of all hypotheses they need not sum to 1. */
  readonly weight: number;
  readonly sootLoad: (point: Float64Array) => number;
  readonly ashLoad: (point: Float64Array) => number;
  /** Median share of the ash that lies in plugs. */
  readonly plugShare: number;
  readonly distortion: (point: Float64Array) => Distortion;
  /** Restriction outside the filter over ρ Q², before or behind it. */
  readonly elsewhere?: { readonly where: 'before' | 'behind'; readonly pipe: (point: Float64Array) => number };
  /** Share of the inlet cells that are open at the face. */
  readonly openFace?: (point: Float64Array) => number;
  /** Share of the gas that passes a leak of the filter. */
  readonly leak?: (point: Float64Array) => number;
  /** Soot that comes in over that of a sound engine, median, where the explanation needs more than usual. */
  readonly sootExcess?: number;
  /** Factor of the control unit's soot figure over the truth. */
  readonly figureGain?: (point: Float64Array) => number;
}

type Reason = NonNullable<EstimateInput['vehicle']['reason']>;
type Reasons = Readonly<Record<Reason, number>>;

/** Why vehicles come, by cause (common practice, no source). */
const usualReasons: Reasons = { lamp: 0.65, 'low-power': 0.3, smoke: 0.05 };
const inTheWay: Reasons = { lamp: 0.5, 'low-power': 0.45, smoke: 0.05 };
const reasons: Readonly<Partial<Record<HypothesisId, Reasons>>> = {
  soot: inTheWay,
  'ash-layer': inTheWay,
  'ash-plug': inTheWay,
  'restriction-before': inTheWay,
  'restriction-behind': inTheWay,
  'core-damaged': { lamp: 0.45, 'low-power': 0.1, smoke: 0.45 },
};

const chanceOfReason = (id: HypothesisId, { reason }: EstimateInput['vehicle']): number =>
  reason === undefined ? 1 : (reasons[id] ?? usualReasons)[reason];

const undistorted: Distortion = { factor: 1, offset: 0, pipe: 0 };

/** Ash that takes a filter to the end of its service, kg/m³ (common practice, no source). */
const ashService = 40;

/** A pipe that takes this much at the highest flow that was read, Pa; median and spread (common practice, no source). */
const pipeDrop = 1.2e4;
const pipeSpread = 2.5;

/**
 * The explanations with their weights (common practice, no source: no count of returned vehicles was found; weights of
 * trade-practice kind with wide spreads). Ash is the likelier the further the filter has gone.
 *
 * @param highestRhoQQ - ρ Q² at the highest flow that was read, N·m²
 */
export function hypothesesFor({ vehicle, controlUnit }: EstimateInput, priors: Priors, highestRhoQQ: number): Hypothesis[] {
  const { complaint = true, washedRecently = false, sensor } = vehicle;
  const trigger = priors.trigger.median;
  const ashPrior = priors.ashLoad;
  const weighed = vehicle.weighedAsh !== undefined && vehicle.filter?.volume !== undefined;
  const ashIsHigh = 1 - normalShare(Math.log(ashService / ashPrior.median) / Math.log(ashPrior.spread));
  const ashWeight = Math.min(0.6, Math.max(0.02, ashIsHigh));
  // Anywhere between two regenerations; where the control unit asks late for one, somewhat more.
  const usualSoot = (point: Float64Array) => {
    const part = normalShare(point[at.soot]!);
    return (0.05 + part + 0.35 * part ** 6) * trigger;
  };
  // With more than that, ash is the cause.
  const belowService = (load: number) => load / (1 + (load / ashService) ** 4) ** 0.25;
  const usualAsh = (point: Float64Array) => {
    const load = lognormal(point[at.ash]!, ashPrior.median, ashPrior.spread);
    return weighed ? load : belowService(load);
  };
  const muchAsh = (point: Float64Array) => (weighed ? usualAsh(point) : lognormal(point[at.ash]!, Math.max(50, ashPrior.median), 1.5));
  const fault = (point: Float64Array) => point[at.fault]!;
  const pipe = (point: Float64Array) => lognormal(fault(point), pipeDrop, pipeSpread) / Math.max(highestRhoQQ, 1e-9);
  // A face that deposits bridge; most are open.
  const openFace = (point: Float64Array) => share(fault(point), 0.9, 1.6);
  const usual = { sootLoad: usualSoot, ashLoad: usualAsh, plugShare: 0.6, distortion: () => undistorted };
  const oneTap = sensor === 'one-tap' ? 1 : sensor === 'across-filter' ? 0 : 0.35;
  const behind = { where: 'behind', pipe } as const;
  // A vehicle that comes for another reason is mostly sound: of cars in traffic 5 to 9 % had a removed or defective filter.
  const sound = complaint ? 0.14 : 2.5;
  const all: readonly Hypothesis[] = [
    { ...usual, id: 'nothing-wrong', weight: sound },
    { ...usual, id: 'soot', weight: 0.42, sootLoad: (point) => lognormal(point[at.soot]!, 1.9 * trigger, 1.6), openFace, sootExcess: 1.5 },
    { ...usual, id: 'ash-layer', weight: ashWeight * 0.4, ashLoad: muchAsh, plugShare: 0.25, openFace },
    { ...usual, id: 'ash-plug', weight: ashWeight * 0.6, ashLoad: muchAsh, plugShare: 0.8, openFace },
    { ...usual, id: 'sensor-zero', weight: 0.07, distortion: (point) => ({ ...undistorted, offset: 3000 * fault(point) }) },
    {
      ...usual,
      id: 'hose-leaking',
      weight: 0.06,
      distortion: (point) => ({ ...undistorted, factor: uniform(fault(point), 0.03, 0.85) }),
    },
    {
      ...usual,
      id: 'hose-plugged',
      weight: 0.03,
      distortion: (point) => ({ factor: uniform(fault(point), 0, 0.5), offset: 400 * point[at.gain]!, pipe: 0 }),
    },
    { ...usual, id: 'hoses-swapped', weight: 0.012, distortion: () => ({ ...undistorted, factor: -1 }) },
    { ...usual, id: 'sensor-dead', weight: 0.03, distortion: (point) => ({ factor: 0, offset: 1500 * fault(point), pipe: 0 }) },
    { ...usual, id: 'restriction-before', weight: 0.04, elsewhere: { where: 'before', pipe } },
    {
      ...usual,
      id: 'restriction-behind',
      weight: 0.06 * oneTap,
      elsewhere: behind,
      distortion: (point) => ({ ...undistorted, pipe: pipe(point) }),
    },
    { ...usual, id: 'restriction-behind', weight: 0.06 * (1 - oneTap), elsewhere: behind },
    {
      ...usual,
      id: 'core-damaged',
      weight: 0.045,
      distortion: (point) => ({ ...undistorted, factor: uniform(fault(point), 0.02, 0.85) }),
      leak: (point) => Math.exp(Math.log(1e-3) + (Math.log(0.5) - Math.log(1e-3)) * normalShare(-fault(point))),
    },
    {
      ...usual,
      id: 'wet-after-wash',
      weight: washedRecently ? 0.5 : 0.003,
      sootLoad: (point: Float64Array) => uniform(point[at.soot]!, 0, 0.5) * trigger,
      distortion: (point: Float64Array) => ({ ...undistorted, factor: lognormal(Math.abs(fault(point)), 1.3, 1.5) }),
    },
    // Nobody can say that of figures that were not read.
    {
      ...usual,
      id: 'figures-wrong',
      weight: controlUnit?.sootMass === undefined ? 0 : 0.05,
      figureGain: (point) => uniform(fault(point), 0, 3),
    },
  ];
  return all
    .map((hypothesis) => ({ ...hypothesis, weight: hypothesis.weight * chanceOfReason(hypothesis.id, vehicle) }))
    .filter(({ weight }) => weight > 0);
}
