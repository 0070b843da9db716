import { chanceText } from '../estimate/index.js';
import { jobEstimate } from '../job/estimate-data.js';
import type { JobResult } from '../job/run-job.js';
import type { Block } from './blocks.js';

const digits = (value: number) => (value >= 10 ? Math.round(value).toString() : value.toPrecision(2).replace(/\.0$/, ''));

/** Causes that are less likely than this are left out. */
const worthShowing = 0.02;

/** What the readings before the work point to, what was weighed as a plan, and what the estimate after the work says. */
export function estimateBlocks(result: JobResult): Block[] {
  const { estimateBefore, estimateAfter } = result;
  const found = jobEstimate(result);
  if (estimateBefore === undefined || found === undefined) return [];
  const chosen = found.plan.find((option) => option.chosen);
  const range = ({ p5, p95 }: { readonly p5: number; readonly p95: number }) => `${digits(p5)} to ${digits(p95)} g/L`;
  const rows: (readonly [string, string])[] = [
    ['Something restricts the exhaust, before', chanceText(estimateBefore.restricted)],
    ['Soot before, 90 % range', range(estimateBefore.sootLoad)],
    ['Ash before, 90 % range', range(estimateBefore.ashLoad)],
  ];
  if (estimateAfter !== undefined) {
    rows.push(
      ['Something restricts the exhaust, after', chanceText(estimateAfter.restricted)],
      ...(result.job.reset?.filterWork === 'new'
        ? ([['Soot after', 'none: a new filter was fitted']] as const)
        : ([
            ['Soot after, 90 % range', range(estimateAfter.sootLoad)],
            ['Soot above the limit for heat, after', chanceText(found.permission.chanceAboveLimit)],
          ] as const)),
    );
  }
  return [
    { type: 'heading', text: 'What the readings point to' },
    {
      type: 'paragraph',
      text: `Causes before the work, by everything that was read: ${estimateBefore.causes
        .filter(({ probability }) => probability >= worthShowing)
        .map(({ title, probability }) => `${title} (${chanceText(probability)})`)
        .join('; ')}.`,
    },
    { type: 'facts', rows },
    ...(chosen === undefined
      ? []
      : [{ type: 'paragraph' as const, text: `To do first, before the work: ${lowerFirst(chosen.title)}. ${chosen.why}` }]),
    ...(found.nextTest === undefined || found.nextTest.bits < 0.02
      ? []
      : [
          {
            type: 'paragraph' as const,
            text: `${estimateAfter === undefined ? 'Test next' : 'What would make the result surer'}: ${found.nextTest.question}`,
          },
        ]),
  ];
}

const lowerFirst = (text: string) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** Every option that was weighed before the work, with why it was or was not chosen. */
export function planBlocks(result: JobResult): Block[] {
  const found = jobEstimate(result);
  if (found === undefined) return [];
  return [
    { type: 'heading', text: 'What could be done before the work' },
    {
      type: 'table',
      caption: 'Options, that to do first at the top',
      head: ['option', 'brings', 'risk', 'time', 'why'],
      rows: found.plan.map((option) => [
        option.chosen ? `${option.title} (to do first)` : option.title,
        option.expected,
        option.risk,
        option.minutes === 0 ? '' : `${option.minutes} min`,
        option.why,
      ]),
    },
  ];
}
