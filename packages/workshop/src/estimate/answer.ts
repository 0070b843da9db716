import type { FilterEstimate, Range } from './estimate.js';
import { nextTests } from './next-test.js';

/** An estimate in the words of somebody beside the vehicle. */
export interface Answer {
  readonly verdict: 'restricted' | 'not-restricted' | 'not-clear';
  /** Verdict, causes, content, next test, how sure: a line each. */
  readonly lines: readonly string[];
}

/** From this chance on a verdict is given; below it the readings do not decide. */
const sureFrom = 0.9;

/** Chance in whole per cent, never said to be certain. */
export function chanceText(probability: number): string {
  if (probability > 0.99) return 'over 99 %';
  if (probability < 0.01) return 'under 1 %';
  return `${Math.round(probability * 100)} %`;
}

const two = (value: number) => (value >= 10 ? Math.round(value).toString() : value.toPrecision(2).replace(/\.0$/, ''));
const rangeText = ({ p5, p50, p95 }: Range) => `${two(p5)} to ${two(p95)} g/L, most likely about ${two(p50)}`;

/** Five lines: is it restricted, by what, how much is in it, what to test next, how sure. */
export function answerOf(estimate: FilterEstimate): Answer {
  const { restricted, causes, sootLoad, ashLoad, issues, draws } = estimate;
  const verdict = restricted >= sureFrom ? 'restricted' : restricted <= 1 - sureFrom ? 'not-restricted' : 'not-clear';
  const hosesTested = draws.input.trials?.hoses === 'tight';
  const head =
    verdict === 'restricted'
      ? `Restricted: ${chanceText(restricted)} sure that something is in the way of the exhaust.`
      : verdict === 'not-restricted'
        ? `Not restricted: ${chanceText(1 - restricted)} sure${hosesTested ? '' : ', if the hoses of the sensor are tight'}.`
        : `Not clear from these readings: the chance of a restriction is ${chanceText(restricted)}.`;
  const [first, second] = causes;
  const cause = [first, second]
    .filter((entry) => entry !== undefined && entry.probability >= 0.05)
    .map((entry) => `${entry?.title} (${chanceText(entry?.probability ?? 0)})`)
    .join('; then: ');
  const [next] = nextTests(estimate);
  const known = draws.input.vehicle.filter?.volume !== undefined;
  return {
    verdict,
    lines: [
      head,
      `Most likely: ${cause}.`,
      `In the filter: soot ${rangeText(sootLoad)}; ash ${rangeText(ashLoad)}.`,
      next === undefined || next.bits < 0.02
        ? 'No single test would change much.'
        : `Test next: ${lowerFirst(next.title)} (${next.minutes} min). ${next.question}`,
      issues.some(({ code }) => code === 'too_few_draws')
        ? 'How sure: the readings fit no explanation well. Read them again before you act on this.'
        : `How sure: 90 % ranges, ${known ? 'with the filter as entered' : 'with a filter typical for this engine'}; the readings alone do not allow heat.`,
    ],
  };
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
