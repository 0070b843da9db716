import { type EvaluationRow, type EvaluationSummary, evaluationVersion, ranking, summarise } from '@wallflow/workshop/cases';
import { filterCauses } from '@wallflow/workshop/estimate';
import { readEvaluation } from '../../../tests/support/evaluation.js';
import type { AnswersView, EstimateView, GoalView } from '../../src/data/estimate-evidence.js';

const percent = (share: number, digits = 0) => `${(100 * share).toFixed(digits)} %`;

function answers(summary: EvaluationSummary): AnswersView {
  const { above, permitted } = summary;
  return {
    first: percent(summary.first),
    statedFirst: percent(summary.statedFirst),
    firstTwo: percent(summary.firstTwo),
    brier: summary.brier.toFixed(2),
    sootCovered: percent(summary.sootCovered),
    ashCovered: percent(summary.ashCovered),
    aboveSeen: percent(above.seen, 1),
    aboveStated: percent(above.stated, 1),
    permittedCases: permitted.cases,
    permittedSeen: percent(permitted.seen, 1),
    permittedStated: percent(permitted.stated, 1),
    fewDraws: percent(summary.fewDraws, 1),
    reliability: summary.reliability.map(({ from, to, count, stated, seen }) => ({
      range: `${percent(from)} to ${percent(to)}`,
      count,
      stated,
      seen,
      statedText: percent(stated, 1),
      seenText: percent(seen, 1),
    })),
    confusion: [...summary.confusion]
      .map(([hidden, counts]) => {
        const cases = [...counts.values()].reduce((sum, count) => sum + count, 0);
        return {
          hidden: filterCauses[hidden],
          cases,
          right: percent((counts.get(hidden) ?? 0) / cases),
          taken: [...counts]
            .filter(([said]) => said !== hidden)
            .sort((a, b) => b[1] - a[1])
            .map(([said, count]) => `${filterCauses[said]}: ${count}`),
        };
      })
      .sort((a, b) => b.cases - a.cases),
  };
}

/** A case whose cause is not among the first two even after the trials. */
function failureOf({ seed, cause, trials }: EvaluationRow): { readonly seed: number; readonly hidden: string; readonly said: string } {
  const [first, second] = ranking(trials);
  const said = [first, second].flatMap((id) => (id === undefined ? [] : filterCauses[id])).join('; then: ');
  return { seed, hidden: filterCauses[cause], said };
}

/** Seeds that were used while estimate and generator were made. */
const lookedAtTo = 300;

interface Plans {
  readonly heating: number;
  readonly damaged: number;
}

/** The goals that were set before anything was judged. */
export function goalsOf(readings: EvaluationSummary, trials: EvaluationSummary, { heating, damaged }: Plans): GoalView[] {
  const atLeast = (goal: string, least: number, seen: number): GoalView => ({
    goal: `${goal}: ${percent(least)} or more`,
    seen: percent(seen, 1),
    met: seen >= least,
  });
  const covered = (goal: string, seen: number): GoalView => ({
    goal: `${goal}: 85 to 95 %`,
    seen: percent(seen, 1),
    met: seen >= 0.85 && seen <= 0.95,
  });
  const above = (goal: string, { cases, seen, stated }: EvaluationSummary['permitted']): GoalView => ({
    goal: `${goal}: no more of those with a stated chance of at most 5 % are above 5 g/L than stated`,
    seen: cases === 0 ? 'no such vehicle' : `${percent(seen, 1)} of ${cases}; stated ${percent(stated, 1)}`,
    // What was not seen is not met.
    met: cases > 0 && seen <= stated,
  });
  return [
    atLeast('From readings, the hidden cause comes first', 0.75, readings.first),
    atLeast('From readings, the hidden cause is among the first two', 0.95, readings.firstTwo),
    atLeast('With trials, the hidden cause comes first', 0.9, trials.first),
    covered('From readings, soot lies within its 90 % range', readings.sootCovered),
    covered('From readings, ash lies within its 90 % range', readings.ashCovered),
    covered('With trials, soot lies within its 90 % range', trials.sootCovered),
    covered('With trials, ash lies within its 90 % range', trials.ashCovered),
    above('From readings', readings.permitted),
    above('With trials', trials.permitted),
    {
      goal: 'No plan with heat damages the filter',
      seen: heating === 0 ? 'no vehicle got such a plan' : `${damaged} of ${heating} such plans`,
      met: heating > 0 && damaged === 0,
    },
  ];
}

/** What the stored answers to generated cases were worth. */
export function estimateView(): EstimateView {
  const rows = readEvaluation();
  const [readings, trials] = [summarise(rows, 'readings'), summarise(rows, 'trials')];
  const heating = rows.filter(({ readings, trials }) => [readings, trials].some(({ plan }) => plan === 'regenerate'));
  const damagedPlans = heating.filter(({ damaged }) => damaged).length;
  const allowed = rows.filter(({ heated }) => heated);
  return {
    version: evaluationVersion,
    cases: rows.length,
    firstVehicle: rows[0]?.seed ?? 0,
    lastVehicle: rows.at(-1)?.seed ?? 0,
    lookedAtTo,
    goals: goalsOf(readings, trials, { heating: heating.length, damaged: damagedPlans }),
    readings: answers(readings),
    trials: answers(trials),
    plansThatHeat: heating.length,
    damagedPlans,
    // None of n: the share p with (1 - p)^n = 0.05.
    damagedAtMost: percent(1 - 0.05 ** (1 / Math.max(1, allowed.length)), 1),
    allowedByLoad: allowed.length,
    damagedByLoad: allowed.filter(({ damaged }) => damaged).length,
    failures: rows.filter(({ cause, trials }) => !ranking(trials).slice(0, 2).includes(cause)).map(failureOf),
  };
}
