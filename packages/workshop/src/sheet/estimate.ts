import { chanceText, type FilterCause, type FilterEstimate, type Range } from '../estimate/index.js';
import { jobEstimate } from '../job/estimate-data.js';
import type { Dates } from '../job/forecast-of.js';
import type { QuoteLine } from '../job/quote-of.js';
import type { JobResult } from '../job/run-job.js';
import type { Block } from './blocks.js';
import type { Claim, Fault } from './claims.js';

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
      claims: [`fault before ${faultOf(estimateBefore)}`],
    },
    { type: 'facts', rows, ...(found.verification === undefined ? {} : { claims: [`work ${found.verification.verdict}`] as const }) },
    ...(chosen === undefined
      ? []
      : [
          {
            type: 'paragraph' as const,
            text: `To do first, before the work: ${lowerFirst(chosen.title)}. ${chosen.why}`,
            claims: [`do ${chosen.id}`] as const,
          },
        ]),
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

/** A cause leads from here on. */
const leadingFrom = 0.6;

const faults: Readonly<Record<FilterCause, Fault>> = {
  'nothing-wrong': 'none',
  'figures-wrong': 'none',
  soot: 'deposits',
  ash: 'deposits',
  'sensor-zero': 'sensor',
  'sensor-dead': 'sensor',
  'hose-leaking': 'sensor',
  'hose-plugged': 'sensor',
  'hoses-swapped': 'sensor',
  'restriction-before': 'elsewhere',
  'restriction-behind': 'elsewhere',
  'core-damaged': 'broken',
  'wet-after-wash': 'wet',
};

/** Where the fault lies by the estimate, if one place leads. */
function faultOf({ causes }: FilterEstimate): Fault {
  const sums = new Map<Fault, number>();
  for (const { id, probability } of causes) sums.set(faults[id], (sums.get(faults[id]) ?? 0) + probability);
  return [...sums].find(([, sum]) => sum > leadingFrom)?.[0] ?? 'open';
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
      head: ['option', 'brings', 'risk', 'time', ...(found.quote === undefined ? [] : ['price']), 'why'],
      rows: found.plan.map((option) => [
        option.chosen ? `${option.title} (to do first)` : option.title,
        option.expected,
        option.risk,
        option.minutes === 0 ? '' : `${option.minutes} min`,
        ...(found.quote === undefined ? [] : [priceText(found.quote.find((line) => line.option === option.id))]),
        option.why,
      ]),
    },
  ];
}

/** The price of an option, or of its work alone where the material has no price yet. */
function priceText(line: QuoteLine | undefined): string {
  if (line === undefined || line.work === 0) return '';
  return line.total === undefined ? `${line.work.toFixed(2)} and material` : line.total.toFixed(2);
}

const roughly = (value: number) => Number(value.toPrecision(2)).toLocaleString('en-GB', { useGrouping: false });

const dateText = (dates: Dates | undefined) => (dates === undefined ? '' : `: around ${dates.p50}, between ${dates.p5} and ${dates.p95}`);

/** What the forecast claims, where it is printed. */
export function forecastClaims(result: JobResult): readonly Claim[] {
  const forecast = jobEstimate(result)?.forecast;
  if (forecast === undefined || result.job.use === undefined) return [];
  const when = ({ p50 }: Range) => (p50 === 0 ? 'now' : 'later');
  return [`regeneration ${when(forecast.regeneration.distance)}`, `ash due ${when(forecast.ashService.distance)}`];
}

/** When the filter will ask for attention again, for the customer; nothing where nobody said how it is driven. */
export function forecastTexts(result: JobResult): readonly string[] {
  const forecast = jobEstimate(result)?.forecast;
  if (forecast === undefined || result.job.use === undefined) return [];
  const { regeneration, ashService } = forecast;
  const when = (one: { readonly distance: Range; readonly days?: Range; readonly dates?: Dates }) =>
    `in about ${roughly(one.distance.p50)} km (${roughly(one.distance.p5)} to ${roughly(one.distance.p95)} km)${one.days === undefined ? '' : `, that is about ${roughly(one.days.p50)} days${dateText(one.dates)}`}`;
  const next =
    regeneration.distance.p50 === 0
      ? 'The filter will regenerate at once, or needs the work named here first.'
      : `The filter will want to regenerate ${when(regeneration)}.`;
  return [
    regeneration.completes === false ? `${next} No usual trip is long enough for that: drive once a week for half an hour.` : next,
    ashService.distance.p50 === 0 ? 'Its ash is at the limit now.' : `Its ash will be due ${when(ashService)}.`,
  ];
}
