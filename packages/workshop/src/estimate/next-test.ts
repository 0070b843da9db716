import { mutualInformation } from '@wallflow/numerics/sampling';
import { causeOf, type FilterCause, filterCauses, type HypothesisId } from './causes.js';
import type { FilterEstimate } from './estimate.js';
import type { SpeedReading } from './evidence-input.js';
import { normalShare } from './latent.js';
import { type Observation, observationsOf, type VehicleState } from './observations.js';
import { discreteTrials } from './trials.js';

/** What one further test would tell. */
export interface TestValue {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  /** Time that it takes, minutes. */
  readonly minutes: number;
  /** How much it is expected to tell of the cause, bits. */
  readonly bits: number;
  /** The two outcomes that matter most, and what each would leave. */
  readonly outcomes: readonly TestOutcome[];
}

export interface TestOutcome {
  readonly outcome: string;
  readonly chance: number;
  readonly leadingCause: string;
  readonly probability: number;
}

type ByHypothesis = ReadonlyMap<HypothesisId, number>;

/** A test as the chances of its outcomes for each explanation. */
interface Forecast {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly minutes: number;
  readonly outcomes: ReadonlyArray<{ readonly name: string; readonly chances: ByHypothesis }>;
}

const rated = 2500 / 60;

/** All tests that were not made yet, most telling per minute first. */
export function nextTests(estimate: FilterEstimate): TestValue[] {
  const { states, weights } = estimate.draws;
  const hypotheses = new Map<HypothesisId, number>();
  states.forEach(({ hypothesis: { id } }, k) => {
    hypotheses.set(id, (hypotheses.get(id) ?? 0) + weights[k]!);
  });
  return [...discreteForecasts(estimate, hypotheses), ...readingForecasts(estimate, hypotheses)]
    .map((forecast) => valueOfTest(forecast, hypotheses))
    .sort((a, b) => b.bits / b.minutes - a.bits / a.minutes || a.id.localeCompare(b.id));
}

function discreteForecasts(estimate: FilterEstimate, hypotheses: ByHypothesis): Forecast[] {
  const { trials = {} } = estimate.draws.input;
  return discreteTrials
    .filter(({ key }) => trials[key] === undefined)
    .map(({ key, title, question, minutes, outcomes, usual, special }) => ({
      id: key,
      title,
      question,
      minutes,
      outcomes: Object.entries(outcomes).map(([outcome, name]) => ({
        name,
        chances: new Map([...hypotheses.keys()].map((id) => [id, (special[id] ?? usual)[outcome] ?? 0])),
      })),
    }));
}

/** Readings that could be taken: with the engine off, and at the speeds that are missing. */
function readingForecasts(estimate: FilterEstimate, hypotheses: ByHypothesis): Forecast[] {
  const { input, states, weights } = estimate.draws;
  const { vehicle, readings, zero } = input;
  const forecasts: Forecast[] = [];
  const add = (id: string, title: string, question: string, minutes: number, observation: Observation | undefined) => {
    if (observation !== undefined)
      forecasts.push({ id, title, question, minutes, outcomes: bins(observation, states, weights, hypotheses) });
  };
  const highest = Math.max(0, ...readings.map(({ engineSpeed }) => engineSpeed));
  const base = { vehicle, readings: [], trials: {}, controlUnit: {} };
  if (zero === undefined) {
    add(
      'zero-reading',
      'Read the sensor with the engine off',
      'Ignition on, engine stopped for 30 s: what does the pressure sensor show?',
      2,
      observationsOf({ ...base, zero: { pressureDrop: 0 } }, estimate.priors, 1)[0],
    );
  }
  for (const [id, title, engineSpeed] of [
    ['raised-speed', 'Read the pressure drop at raised speed', Math.max(rated, highest)],
    ['middle-speed', 'Read the pressure drop half-way between idle and the highest speed', Math.max(rated, highest) * 0.6],
  ] as const) {
    if (readings.some((reading) => Math.abs(reading.engineSpeed / engineSpeed - 1) < 0.2)) continue;
    const reading: SpeedReading = { engineSpeed, pressureDrop: 0 };
    const speed = Math.round((engineSpeed * 60) / 100) * 100;
    const question = `Warm engine, no load, ${speed} rpm held for 30 s: what does the pressure sensor show?`;
    add(id, title, question, 3, observationsOf({ ...base, readings: [reading] }, estimate.priors, 1)[0]);
  }
  return forecasts;
}

const binCount = 8;

/** Outcomes of a reading as ranges of equal chance, from what the draws of each cause would show. */
function bins(
  observation: Observation,
  states: readonly VehicleState[],
  weights: Float64Array,
  hypotheses: ByHypothesis,
): Forecast['outcomes'] {
  const shown = states.flatMap((state, k) => {
    const weight = weights[k]!;
    if (weight < 1e-5) return [];
    const [expected, scale] = observation.predict(state);
    return [{ id: state.hypothesis.id, expected, scale, weight }];
  });
  const sorted = [...shown].sort((a, b) => a.expected - b.expected);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  const edges: number[] = [];
  let below = 0;
  for (const { expected, weight } of sorted) {
    below += weight / total;
    if (below > (edges.length + 1) / binCount && edges.length < binCount - 1) edges.push(expected);
  }
  const ends = [Number.NEGATIVE_INFINITY, ...edges, Number.POSITIVE_INFINITY];
  const share = (end: number, expected: number, scale: number) =>
    Number.isFinite(end) ? normalShare((end - expected) / scale) : end > 0 ? 1 : 0;
  return ends.slice(1).map((to, k) => {
    const from = ends[k]!;
    const sums = new Map<HypothesisId, number>();
    for (const { id, expected, scale, weight } of shown) {
      sums.set(id, (sums.get(id) ?? 0) + weight * (share(to, expected, scale) - share(from, expected, scale)));
    }
    const chances = new Map([...hypotheses].map(([id, probability]) => [id, probability > 0 ? (sums.get(id) ?? 0) / probability : 0]));
    return { name: rangeName(from, to), chances };
  });
}

const millibar = (value: number) => `${(value / 100).toPrecision(2).replace(/\.0$/, '')} mbar`;

function rangeName(from: number, to: number): string {
  if (!Number.isFinite(from)) return `below ${millibar(to)}`;
  if (!Number.isFinite(to)) return `above ${millibar(from)}`;
  return `${millibar(from)} to ${millibar(to)}`;
}

/** Mutual information of cause and outcome, and what each outcome would leave. */
function valueOfTest({ id, title, question, minutes, outcomes }: Forecast, hypotheses: ByHypothesis): TestValue {
  const joints = outcomes.map(({ name, chances }) => ({ name, joint: byCause(hypotheses, (hypothesis) => chances.get(hypothesis) ?? 0) }));
  const bits = mutualInformation(
    [...byCause(hypotheses, () => 1).values()],
    joints.map(({ joint }) => [...joint.values()]),
  );
  const told: TestOutcome[] = [];
  for (const { name, joint } of joints) {
    const chance = [...joint.values()].reduce((sum, value) => sum + value, 0);
    let leading: FilterCause | undefined;
    let most = 0;
    for (const [cause, value] of joint) if (value / chance > most) [leading, most] = [cause, value / chance];
    if (leading !== undefined) told.push({ outcome: name, chance, leadingCause: filterCauses[leading], probability: most });
  }
  return { id, title, question, minutes, bits, outcomes: told.sort((a, b) => b.chance - a.chance).slice(0, 2) };
}

function byCause(hypotheses: ByHypothesis, factor: (id: HypothesisId) => number): Map<FilterCause, number> {
  const sums = new Map<FilterCause, number>();
  for (const [id, probability] of hypotheses) sums.set(causeOf(id), (sums.get(causeOf(id)) ?? 0) + probability * factor(id));
  return sums;
}
