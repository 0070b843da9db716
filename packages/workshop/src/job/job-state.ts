import { issueText } from '@wallflow/calculation';
import { chanceText, nextTests, type PlanOptionId } from '../estimate/index.js';
import { jobSections } from './description.js';
import { type JobEstimate, jobEstimate } from './estimate-data.js';
import { type Attempt, succeeded } from './evaluation.js';
import type { JobFile } from './job-file.js';
import { jobIssueText } from './job-issue-text.js';
import { checkJobFile } from './job-issues.js';
import type { JobOutcome, JobResult } from './run-job.js';
import { valueAt } from './section.js';

/** A section of the job in which something was entered. */
export interface KnownThing {
  readonly section: string;
  readonly title: string;
}

/** What a job can give once more is known. */
export type JobVerdict = 'estimate' | 'permission' | 'verification' | 'reset' | 'forecast' | 'quote' | 'reductant';

/** Something that is not known yet, and what it would bring: bits about the cause, or a verdict that cannot be given without it. */
export interface MissingThing {
  readonly id: string;
  readonly title: string;
  readonly brings:
    | { readonly kind: 'bits'; readonly bits: number; readonly minutes: number; readonly question: string }
    | { readonly kind: 'verdict'; readonly verdict: JobVerdict };
}

/** Something that may, or must not, be done now. */
export interface DeedOfState {
  readonly id: PlanOptionId | 'reset';
  readonly title: string;
  readonly why: string;
}

/** Where a job stands: what is known, what is missing and what it would bring, what may be done and what must not. */
export interface JobState {
  readonly known: readonly KnownThing[];
  /** Values that stand in for what was not entered. */
  readonly assumed: readonly string[];
  readonly missing: readonly MissingThing[];
  readonly allowed: readonly DeedOfState[];
  readonly forbidden: readonly DeedOfState[];
}

/** A further test that tells less than this is not worth naming, bits. */
const worthTelling = 0.02;

function isEntered(given: unknown, findingIfEmpty: boolean): boolean {
  if (given === undefined || given === null) return false;
  if (Array.isArray(given)) return given.length > 0 || findingIfEmpty;
  return typeof given !== 'object' || Object.keys(given).length > 0;
}

function knownOf(raw: unknown): KnownThing[] {
  return jobSections.flatMap(({ as, key, title, place, places, noneIsFinding }) => {
    const given =
      as === 'head'
        ? Object.values(places as Readonly<Record<string, readonly string[]>>).map((at) => valueAt(raw, at))
        : [valueAt(raw, place)];
    return given.some((one) => isEntered(one, noneIsFinding)) ? [{ section: key, title }] : [];
  });
}

interface Row {
  readonly condition: string;
  readonly result: string;
}

function conditionsOf(attempt: Attempt | undefined, result: 'refuse' | 'unknown'): readonly string[] {
  if (!succeeded(attempt)) return [];
  const { conditions } = attempt.result.outputs as { readonly conditions?: readonly Row[] };
  return (conditions ?? []).filter((row) => row.result === result).map(({ condition }) => condition);
}

/** The permission that counts now: after the work, where it was read after it. */
const permissionNow = ({ permissionBefore, permissionAfter }: JobResult) => permissionAfter ?? permissionBefore;

const opens = (id: string, title: string, verdict: JobVerdict): MissingThing => ({ id, title, brings: { kind: 'verdict', verdict } });

/** What opens a verdict that a job without readings, or with little besides them, cannot give. */
function missingEntries(job: JobFile, result: JobResult | undefined): MissingThing[] {
  const { engine, filter, readings, logs, reset, use, quote, reductant } = job;
  const sized = engine.displacement !== undefined || filter.filterVolume !== undefined || filter.filterDiameter !== undefined;
  const [before, after] = [readings?.before ?? logs?.before, readings?.after ?? logs?.after];
  return [
    ...(before === undefined ? [opens('readings.before', 'Readings before the work', 'estimate')] : []),
    ...(sized ? [] : [opens('engine.displacement', 'Displacement of the engine, or the size of the filter', 'estimate')]),
    ...(result === undefined
      ? []
      : conditionsOf(permissionNow(result), 'unknown').map((title) => opens(`permission.${title}`, title, 'permission'))),
    ...(after === undefined ? [opens('readings.after', 'Readings after the work', 'verification')] : []),
    ...(reset === undefined ? [opens('reset', 'What was done to the filter and its parts', 'reset')] : []),
    ...(use?.trips === undefined ? [opens('use.trips', 'Usual trips', 'forecast')] : []),
    ...(quote?.hourlyRate === undefined ? [opens('quote.hourlyRate', 'Price of an hour of work', 'quote')] : []),
    ...(reductant === undefined ? [opens('reductant', 'A test of the reductant or of its dosing', 'reductant')] : []),
  ];
}

function testsOf(result: JobResult | undefined): MissingThing[] {
  const estimate = result?.estimateAfter ?? result?.estimateBefore;
  return (estimate === undefined ? [] : nextTests(estimate))
    .filter(({ bits }) => bits >= worthTelling)
    .map(({ id, title, bits, minutes, question }) => ({ id, title, brings: { kind: 'bits', bits, minutes, question } }));
}

const heats: ReadonlySet<PlanOptionId> = new Set(['regenerate', 'drive']);

/** Why heat must not be used; every reason that stands, for one that is mended leaves the others. */
function whyNoHeat(result: JobResult, { permission }: JobEstimate): string {
  const attempt = permissionNow(result);
  const [refusing, open] = [conditionsOf(attempt, 'refuse'), conditionsOf(attempt, 'unknown')];
  const { chanceAboveLimit, greatestChance } = permission;
  return [
    ...(chanceAboveLimit > greatestChance
      ? [`The chance of a load above the limit is ${chanceText(chanceAboveLimit)}; heat needs ${chanceText(greatestChance)} or less.`]
      : []),
    ...(refusing.length === 0 ? [] : [`Refused by: ${refusing.join('; ')}.`]),
    ...(open.length === 0 ? [] : [`Not checked, so treated as failed: ${open.join('; ')}.`]),
    ...(succeeded(attempt) ? [] : attempt.issues.map(issueText)),
  ].join(' ');
}

const unread: DeedOfState = {
  id: 'regenerate',
  title: 'Forced regeneration',
  why: 'Nothing is known of the filter yet: unknown never passes.',
};

interface ResetRow {
  readonly what: string;
  readonly verdict: string;
  readonly why: string;
}

function resetDeeds(reset: Attempt | undefined, waiting: boolean): DeedOfState[] {
  if (!succeeded(reset)) return [];
  const { values } = reset.result.outputs as unknown as { readonly values: readonly ResetRow[] };
  const field = reset.calculation.spec.outputs.values;
  const words = field?.type === 'table' && field.columns.verdict?.type === 'choice' ? field.columns.verdict.options : {};
  return values
    .filter(({ verdict }) => verdict !== 'leave' && (verdict === 'not-yet') === waiting)
    .map(({ what, verdict, why }) => ({ id: 'reset', title: `${what}: ${words[verdict] ?? ''}`, why }));
}

function deedsOf(result: JobResult, found: JobEstimate | undefined): Pick<JobState, 'allowed' | 'forbidden'> {
  if (found === undefined) return { allowed: [], forbidden: [unread, ...resetDeeds(result.reset, true)] };
  const noHeat = found.permission.verdict !== 'permitted';
  const isForbidden = (id: PlanOptionId) => noHeat && heats.has(id);
  const deed = ({ id, title, why }: JobEstimate['plan'][number]): DeedOfState => ({ id, title, why });
  const heatWhy = noHeat ? whyNoHeat(result, found) : '';
  return {
    allowed: [...found.plan.filter(({ id }) => !isForbidden(id)).map(deed), ...resetDeeds(result.reset, false)],
    forbidden: [
      ...found.plan.filter(({ id }) => isForbidden(id)).map((option) => ({ ...deed(option), why: heatWhy })),
      ...resetDeeds(result.reset, true),
    ],
  };
}

/** Where a job stands, from its file as far as it was filled in and from what came of it. Never throws on data. */
export function jobState(raw: unknown, outcome: JobOutcome): JobState {
  if (outcome.ok) return stateOf(outcome.result);
  const checked = checkJobFile(raw);
  const missing = checked.ok
    ? missingEntries(checked.job, undefined)
    : checked.issues.map((issue) => opens(issue.where, jobIssueText(issue), 'estimate'));
  return { known: knownOf(raw), assumed: [], missing, allowed: [], forbidden: [unread] };
}

/** Where a job stands that gave a result. The tests that tell most for their time come first. */
export function stateOf(result: JobResult): JobState {
  return {
    known: knownOf(result.job),
    assumed: result.assumed.map(({ text }) => text),
    missing: [...testsOf(result), ...missingEntries(result.job, result)],
    ...deedsOf(result, jobEstimate(result)),
  };
}
