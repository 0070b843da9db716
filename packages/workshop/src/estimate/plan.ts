import { chanceText } from './answer.js';
import type { FilterCause } from './causes.js';
import type { FilterEstimate } from './estimate.js';
import { nextTests } from './next-test.js';

export type PlanOptionId =
  | 'test-more'
  | 'repair-first'
  | 'leave'
  | 'drive'
  | 'regenerate'
  | 'clean-on-vehicle'
  | 'clean-off-vehicle'
  | 'replace';

/** One thing that could be done now. */
export interface PlanOption {
  readonly id: PlanOptionId;
  readonly title: string;
  readonly chosen: boolean;
  /** What it is expected to bring. */
  readonly expected: string;
  readonly risk: string;
  /** Working time, minutes (common practice, no source). */
  readonly minutes: number;
  /** Why it is, or is not, the thing to do. */
  readonly why: string;
}

/** Greatest chance of a load above the limit at which heat may be used: a rule that no estimate overrides. */
export const greatestRiskOfHeat = 0.05;
/** A cause leads from here on; below it another test comes first, if one would tell enough. */
const leadingFrom = 0.6;
const tellsEnough = 0.15;

interface Facts {
  readonly likely: (...ids: readonly FilterCause[]) => number;
  readonly overLimit: number;
  readonly restricted: number;
  /** Chance of the likeliest cause. */
  readonly leading: number;
  /** Whether enough draws carry these chances for anything to be done by them. */
  readonly carried: boolean;
  readonly testTitle: string | undefined;
}

type Rule = Omit<PlanOption, 'chosen' | 'why'> & { readonly wanted: (facts: Facts) => boolean; readonly why: (facts: Facts) => string };

const sensorCauses = ['sensor-zero', 'sensor-dead', 'hose-leaking', 'hose-plugged', 'hoses-swapped', 'figures-wrong'] as const;
const elsewhere = ['restriction-before', 'restriction-behind'] as const;

/** In the order in which they are weighed: the first that is wanted is chosen. */
const rules: readonly Rule[] = [
  {
    id: 'repair-first',
    title: 'Repair the sensor, its hoses or the part in the way, then read again',
    expected: 'readings that can be believed',
    risk: 'none for the filter',
    minutes: 60,
    wanted: ({ likely }) => likely(...sensorCauses) > leadingFrom || likely(...elsewhere) > leadingFrom,
    why: ({ likely }) =>
      `The chance that sensor or hoses are at fault is ${chanceText(likely(...sensorCauses))}, that another part is in the way ${chanceText(likely(...elsewhere))}.`,
  },
  {
    id: 'replace',
    title: 'Replace the filter',
    expected: 'a whole filter',
    risk: 'cost; the cause that broke the old one breaks the next',
    minutes: 120,
    wanted: ({ likely }) => likely('core-damaged') > leadingFrom,
    why: ({ likely }) => `The chance that the filter is cracked or missing is ${chanceText(likely('core-damaged'))}.`,
  },
  {
    id: 'leave',
    title: 'Leave the filter alone',
    expected: 'nothing changes, because nothing is wrong with it',
    risk: 'a cause that the readings do not show stays',
    minutes: 0,
    wanted: ({ likely, restricted }) => likely('nothing-wrong') > leadingFrom && restricted < 0.1,
    why: ({ likely, restricted }) =>
      `The chance that nothing is wrong with it is ${chanceText(likely('nothing-wrong'))}, that something restricts the exhaust ${chanceText(restricted)}.`,
  },
  {
    id: 'regenerate',
    title: 'Forced regeneration, if every condition of the permission passes',
    expected: 'most of the soot burns; ash stays',
    risk: 'a load above the limit can melt the filter',
    minutes: 40,
    wanted: ({ likely, overLimit }) => likely('soot') > leadingFrom && overLimit <= greatestRiskOfHeat,
    why: ({ likely, overLimit }) =>
      `The chance of soot as the cause is ${chanceText(likely('soot'))}, of a load above the limit ${chanceText(overLimit)}; heat needs ${chanceText(greatestRiskOfHeat)} or less.`,
  },
  {
    id: 'clean-off-vehicle',
    title: 'Take the filter off and clean it',
    expected: 'soot and most of the ash come out; the weight shows it',
    risk: 'caustic fluid and dust for the workshop; none from heat',
    minutes: 240,
    wanted: ({ likely, overLimit, restricted }) =>
      restricted > 0.5 &&
      (likely('ash') > 0.5 || likely('soot', 'ash') > leadingFrom || (likely('soot') > 0.5 && overLimit > greatestRiskOfHeat)),
    why: ({ likely, overLimit }) =>
      `Soot or ash is the cause with ${chanceText(likely('soot', 'ash'))}; the chance of a load above the limit for heat is ${chanceText(overLimit)}.`,
  },
  {
    id: 'test-more',
    title: 'Test more before anything is done',
    expected: 'a cause that is sure enough to act on',
    risk: 'none',
    minutes: 20,
    wanted: () => true,
    why: ({ carried, leading, testTitle }) => {
      if (!carried) return 'The readings fit no explanation well enough to act by them: read them again.';
      const cause = leading >= leadingFrom ? `One cause leads with ${chanceText(leading)}.` : 'No cause leads clearly.';
      return testTitle === undefined ? cause : `${cause} The test that tells most for its time: ${testTitle}.`;
    },
  },
  {
    id: 'clean-on-vehicle',
    title: 'Clean the filter on the vehicle',
    expected: 'part of the soot comes loose; ash stays',
    risk: 'fluid in the exhaust, and a wet filter that must dry before it is heated',
    minutes: 150,
    wanted: () => false,
    why: ({ likely }) =>
      `It leaves ash where it is (chance of ash as the cause ${chanceText(likely('ash'))}), and its result cannot be weighed.`,
  },
  {
    id: 'drive',
    title: 'Drive it hot on a main road',
    expected: 'soot burns slowly',
    risk: 'with a load above the limit as dangerous as any other heat',
    minutes: 45,
    wanted: () => false,
    why: ({ overLimit, restricted }) =>
      restricted > 0.5
        ? `A restricted filter is not heated on the road; the chance of a load above the limit is ${chanceText(overLimit)}.`
        : 'Nothing shows that it is needed.',
  },
];

/** Every option with what it brings and risks, and which one is chosen. The permission for heat has further conditions. */
export function planOf(estimate: FilterEstimate, sootLimit: number): PlanOption[] {
  const [next] = nextTests(estimate);
  const [first] = estimate.causes;
  const chances = new Map(estimate.causes.map(({ id, probability }) => [id, probability]));
  const facts: Facts = {
    likely: (...ids) => ids.reduce((sum, id) => sum + (chances.get(id) ?? 0), 0),
    overLimit: estimate.chanceOfSootAbove(sootLimit),
    restricted: estimate.restricted,
    leading: first?.probability ?? 0,
    carried: estimate.issues.every(({ code }) => code === 'no_reading'),
    testTitle: next === undefined || next.bits < 0.02 ? undefined : next.title.charAt(0).toLowerCase() + next.title.slice(1),
  };
  const testFirst = !facts.carried || ((first?.probability ?? 0) < leadingFrom && (next?.bits ?? 0) > tellsEnough);
  const chosen = testFirst ? 'test-more' : rules.find(({ wanted }) => wanted(facts))?.id;
  return rules
    .map(({ id, title, expected, risk, minutes, why }) => ({ id, title, chosen: id === chosen, expected, risk, minutes, why: why(facts) }))
    .sort((a, b) => Number(b.chosen) - Number(a.chosen));
}
