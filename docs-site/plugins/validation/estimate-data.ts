import { type EvaluationRow, type EvaluationSummary, evaluationVersion, ranking, summarise } from '@wallflow/workshop/cases';
import { filterCauses } from '@wallflow/workshop/estimate';
import { readEvaluation } from '../../../tests/support/evaluation.js';
import type { AnswersView, EstimateView } from '../../src/data/estimate-evidence.js';

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

/** What the stored answers to generated cases were worth. */
export function estimateView(): EstimateView {
  const rows = readEvaluation();
  const heating = rows.filter(({ readings, trials }) => [readings, trials].some(({ plan }) => plan === 'regenerate'));
  const allowed = rows.filter(({ heated }) => heated);
  return {
    version: evaluationVersion,
    cases: rows.length,
    readings: answers(summarise(rows, 'readings')),
    trials: answers(summarise(rows, 'trials')),
    plansThatHeat: heating.length,
    damagedPlans: heating.filter(({ damaged }) => damaged).length,
    allowedByLoad: allowed.length,
    damagedByLoad: allowed.filter(({ damaged }) => damaged).length,
    failures: rows.filter(({ cause, trials }) => !ranking(trials).slice(0, 2).includes(cause)).map(failureOf),
  };
}
