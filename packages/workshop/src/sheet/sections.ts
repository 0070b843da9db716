import { issueText, type Outputs } from '@wallflow/calculation';
import { mass } from '@wallflow/units';
import { chanceText, type FilterEstimate } from '../estimate/index.js';
import { jobEstimate, type ReductantData, reductantData, type VerificationData, verified } from '../job/estimate-data.js';
import { type Attempt, type Evaluation, numberOf, succeeded, unsureText, wordOf } from '../job/evaluation.js';
import type { JobResult } from '../job/run-job.js';
import { asTyped } from '../job/typed-readings.js';
import type { Block, Tone, VerdictLine } from './blocks.js';
import type { Claim, HeatWord } from './claims.js';
import { filterLine, isReadOpen } from './filter-line.js';
import { shown } from './shown.js';

const conditionTone: Readonly<Record<string, Tone>> = {
  clean: 'good',
  'in-service': 'good',
  blocked: 'bad',
  loaded: 'bad',
  reversed: 'bad',
  'suspiciously-low': 'bad',
  'zero-fault': 'bad',
  contradiction: 'bad',
};
const changeTone: Readonly<Record<string, Tone>> = {
  cleaned: 'good',
  unchanged: 'bad',
  worse: 'open',
  'no-signal': 'bad',
  'too-low': 'bad',
};
/** Verdicts that say nothing of how far the resistance fell. */
const noFall = new Set(['no-signal', 'too-low', 'before-too-low', 'not-comparable', 'unclear']);
const resetTone: Readonly<Record<string, Tone>> = { all: 'good', none: 'bad' };
const permissionTone: Readonly<Record<string, Tone>> = { permitted: 'good', refused: 'bad' };

/** Why there is no result, in words. */
export function reasonText(attempt: Attempt): string {
  if (succeeded(attempt)) return '';
  return attempt.issues
    .map((issue) => (issue.code === 'no_solution' ? `${capital(issue.reason)}.`.replace(/([.!?])\.$/, '$1') : issueText(issue)))
    .join(' ');
}

function nextStep(attempt: Attempt | undefined): string {
  return succeeded(attempt) ? `. ${shown(attempt, 'next')}` : '';
}

function verdictLine(question: string, attempt: Attempt | undefined, tones: Readonly<Record<string, Tone>>, more = ''): VerdictLine[] {
  if (attempt === undefined) return [];
  if (!succeeded(attempt)) return [{ question, answer: `not known. ${reasonText(attempt)}`, tone: 'open' }];
  const unsure = unsureText(attempt);
  const answer = `${shown(attempt, 'verdict')}${more}`;
  if (unsure !== undefined) return [{ question, answer: `${answer}. Not sure: ${unsure.replace(/^[^:]*: /, '')}`, tone: 'open' }];
  return [{ question, answer, tone: tones[wordOf(attempt, 'verdict')] ?? 'open' }];
}

/** How many of the refusals are due to the load alone: too much of it, or too little to be worth burning. */
function loadRefusals(attempt: Evaluation): { readonly tooMuch: boolean; readonly tooLittle: boolean } {
  const values = { ...attempt.result.intermediates, ...attempt.result.outputs } as Readonly<Record<string, unknown>>;
  const { countedLoad: load, countedUncertainty: uncertainty, highestLoad: highest } = values;
  if (typeof load !== 'number' || typeof uncertainty !== 'number' || typeof highest !== 'number')
    return { tooMuch: false, tooLittle: false };
  const least = attempt.calculation.spec.constants.leastShare?.value ?? 0;
  return { tooMuch: load > highest, tooLittle: load < least * (highest + uncertainty) };
}

/** Whether too little soot is all that stands against a regeneration: then there is nothing to refuse, only nothing to do. */
export function isNotNeeded(attempt: Attempt | undefined): boolean {
  if (!succeeded(attempt) || numberOf(attempt, 'refusals') !== 1) return false;
  const { tooMuch, tooLittle } = loadRefusals(attempt);
  return tooLittle && !tooMuch;
}

const openButUnsure =
  'The filter reads open, so there is no need to heat it; the readings cannot rule out a load that is too high to heat it with';

/** Whether the load alone refuses although the filter reads open: the range of the estimate reaches too high, not the filter. */
function isOpenButUnsure(attempt: Evaluation, condition: Evaluation | undefined, estimate: FilterEstimate | undefined): boolean {
  const { tooMuch, tooLittle } = loadRefusals(attempt);
  const byLoad = tooMuch && numberOf(attempt, 'refusals') === (tooLittle ? 2 : 1);
  return byLoad && condition !== undefined && filterLine(condition, estimate).state === 'sound';
}

/** The permission, in line with what the readings say of the filter. */
function permissionLine(
  question: string,
  attempt: Attempt | undefined,
  condition: Evaluation | undefined,
  estimate: FilterEstimate | undefined,
): VerdictLine[] {
  if (!succeeded(attempt)) return verdictLine(question, attempt, permissionTone);
  if (isNotNeeded(attempt)) return [{ question, answer: 'not needed: there is too little soot to burn', tone: 'good' }];
  if (isOpenButUnsure(attempt, condition, estimate)) return [{ question, answer: `refused. ${openButUnsure}`, tone: 'open' }];
  return verdictLine(question, attempt, permissionTone, nextStep(attempt));
}

/** What the line of a permission claims. */
function heatWord(attempt: Attempt | undefined): HeatWord {
  if (!succeeded(attempt)) return 'not-known';
  if (isNotNeeded(attempt)) return 'not-needed';
  const word = wordOf(attempt, 'verdict');
  return word === 'permitted' || word === 'refused' ? word : 'not-known';
}

const claiming = (lines: readonly VerdictLine[], claim: Claim): VerdictLine[] => lines.map((line) => ({ ...line, claims: [claim] }));

/** The filter in the verdicts: the words of its deciding reading where all readings agree with it, else what they add to it. */
function conditionLine(when: 'before' | 'after', condition: Evaluation | undefined, estimate: FilterEstimate | undefined): VerdictLine[] {
  const lines = verdictLine(`Filter ${when}`, condition, conditionTone);
  if (condition === undefined) return lines;
  const { state, together } = filterLine(condition, estimate);
  if (together === '') return claiming(lines, `filter ${when} ${state}`);
  const open = isReadOpen(condition);
  const verdict = shown(condition, 'verdict');
  const read = open ? 'open by this reading' : `${verdict} by this reading`;
  const answer =
    state === 'filling-up'
      ? `${read}, but ${together}`
      : state === 'doubtful'
        ? `${read}, but most likely ${together}`
        : open
          ? `${read}; by all readings ${together}`
          : `${verdict}; most likely ${together}`;
  const toned = (line: VerdictLine): Tone => (state !== 'not-clear' ? 'bad' : open ? 'open' : line.tone);
  return claiming(
    lines.map((line) => ({ ...line, answer, tone: toned(line) })),
    `filter ${when} ${state}`,
  );
}

/** What the work is worth: the readings at comparable flow, held back where the estimate after the work leaves a doubt. */
function workLine(result: JobResult): VerdictLine[] {
  const { comparison } = result;
  const lines = verdictLine('Result of the work', comparison, changeTone, fallText(comparison));
  const claim = workClaim(result);
  if (claim === undefined) return lines;
  const doubt = doubtText(result);
  return claiming(doubt === undefined ? lines : lines.map((line) => ({ ...line, answer: doubt, tone: 'open' as const })), claim);
}

/** What sheet and data say of the work, as one value. */
export function workClaim(result: JobResult): Claim | undefined {
  const { comparison } = result;
  if (comparison === undefined) return undefined;
  const compared: VerificationData['verdict'] = succeeded(comparison)
    ? (verified[wordOf(comparison, 'verdict')] ?? 'not-comparable')
    : 'not-comparable';
  return `work ${jobEstimate(result)?.verification?.verdict ?? compared}`;
}

/** Where the comparison alone would call it cleaned, and the estimate after the work does not. */
export function doubtText(result: JobResult): string | undefined {
  const { comparison, estimateAfter } = result;
  const called = succeeded(comparison) && wordOf(comparison, 'verdict') === 'cleaned';
  if (!called || estimateAfter === undefined || workClaim(result) === 'work proved') return undefined;
  return `improved, not proved${fallText(comparison)}: the chance that something still restricts the exhaust is ${chanceText(estimateAfter.restricted)}`;
}

function fallText(comparison: Attempt | undefined): string {
  const fell = succeeded(comparison) && !noFall.has(wordOf(comparison, 'verdict'));
  if (!fell || numberOf(comparison, 'improvement') <= 0) return '';
  return ` (${shown(comparison, 'improvement')} less resistance, ± ${shown(comparison, 'improvementUncertainty')})`;
}

/** What a customer asks first: how was it, how is it, did it help. */
export function resultVerdicts(result: JobResult): Block {
  return {
    type: 'verdicts',
    lines: [
      ...conditionLine('before', result.before.condition, result.estimateBefore),
      ...conditionLine('after', result.after?.condition, result.estimateAfter),
      ...workLine(result),
    ],
  };
}

function resetLine({ reset }: JobResult): VerdictLine[] {
  const lines = verdictLine('Reset or relearn', reset, resetTone, nextStep(reset));
  return succeeded(reset) ? claiming(lines, `reset ${wordOf(reset, 'verdict') as 'all' | 'some' | 'none'}`) : lines;
}

/** What may be done now, for the workshop. */
export function workshopVerdicts(result: JobResult): Block {
  const { before, after, estimateBefore, estimateAfter, permissionBefore, permissionAfter } = result;
  return {
    type: 'verdicts',
    lines: [
      ...claiming(
        permissionLine('Forced regeneration before the work', permissionBefore, before.condition, estimateBefore),
        `heat before ${heatWord(permissionBefore)}`,
      ),
      ...claiming(
        permissionLine('Forced regeneration now', permissionAfter, after?.condition, estimateAfter),
        `heat now ${heatWord(permissionAfter)}`,
      ),
      ...resetLine(result),
    ],
  };
}

export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** What flow and temperature did to the reading, in words. */
export function comparisonBlocks({ comparison }: JobResult): Block[] {
  if (comparison === undefined) return [];
  const heading: Block = { type: 'heading', text: 'Before and after at comparable flow' };
  if (!succeeded(comparison)) return [heading, { type: 'paragraph', text: reasonText(comparison) }];
  if (noFall.has(wordOf(comparison, 'verdict')))
    return [heading, { type: 'paragraph', text: `Nothing is proven by this comparison. ${capital(shown(comparison, 'verdict'))}.` }];
  const flow = numberOf(comparison, 'flowEffect');
  const heat = numberOf(comparison, 'temperatureEffect');
  const percent = (factor: number) => `${Math.abs((factor - 1) * 100).toFixed(0)} % ${factor >= 1 ? 'more' : 'less'}`;
  return [
    heading,
    {
      type: 'paragraph',
      text:
        `The raw reading fell by ${shown(comparison, 'rawReduction')}. That alone proves nothing: the second reading was taken with ${percent(flow)} volume flow ` +
        `and gas of ${percent(heat)} viscosity, because it was ${heat >= 1 ? 'hotter' : 'cooler'}. ` +
        `The filter as it was would have read ${shown(comparison, 'unchangedDrop')} under the later conditions. ` +
        `Free of flow and temperature the resistance fell by ${shown(comparison, 'improvement')} ± ${shown(comparison, 'improvementUncertainty')} (standard uncertainty).`,
    },
    {
      type: 'facts',
      rows: [
        ['Flow resistance before', shown(comparison, 'resistanceBefore')],
        ['Flow resistance after', shown(comparison, 'resistanceAfter')],
        [
          'Pressure drop after ÷ clean filter, calculated',
          `${shown(comparison, 'cleanMultiple')} ± ${shown(comparison, 'cleanMultipleUncertainty')}`,
        ],
      ],
    },
  ];
}

function sootText(attempt: Attempt): string {
  if (!succeeded(attempt)) return `not estimated. ${reasonText(attempt)}`;
  const most = `at most ${shown(attempt, 'mostSootMass')} (${shown(attempt, 'mostSootLoad')})`;
  if (wordOf(attempt, 'verdict') === 'within-clean')
    return `too little to detect from pressure drop; this does not prove the filter is free of soot: ${most}`;
  return `${shown(attempt, 'sootMass')} (${shown(attempt, 'sootLoad')}) by pressure drop, at least ${shown(attempt, 'leastSootMass')}, ${most}`;
}

/** A load as somebody typed it, control unit or own estimate. */
function typedLoad(inputs: Readonly<Record<string, unknown>> | undefined): string | undefined {
  const [load, mass, uncertainty] = [asTyped(inputs?.sootLoad), asTyped(inputs?.sootMass), asTyped(inputs?.sootLoadUncertainty)];
  if (load === undefined && mass === undefined) return undefined;
  const grams = mass === undefined ? undefined : `${mass} in the whole filter`;
  return `${[load, grams].filter((text) => text !== undefined).join(', and ')}${load === undefined ? ',' : ''}${uncertainty === undefined ? '' : ` ± ${uncertainty}`} (control unit or own estimate)`;
}

export function sootBlocks({ before, after, job }: JobResult): Block[] {
  const rows: (readonly [string, string | undefined])[] = [
    ['Before, from the drop alone', sootText(before.soot)],
    ['Before, as entered', typedLoad(job.permission.before)],
    ['After, from the drop alone', after === undefined ? undefined : sootText(after.soot)],
    ['After, as entered', typedLoad(job.permission.after)],
  ];
  return [
    { type: 'heading', text: 'Soot by one drop, whatever soot and wall' },
    {
      type: 'paragraph',
      text: 'Bounds that hold for every published soot and wall, from one reading. The ranges above use all readings and typical values; they decide.',
    },
    { type: 'facts', rows: rows.filter((row): row is readonly [string, string] => row[1] !== undefined) },
  ];
}

interface ConditionRow {
  readonly condition: string;
  readonly result: string;
  readonly measured?: string;
  readonly limit: string;
  readonly reason: string;
  readonly basis: string;
}

function conditionRows(evaluation: Evaluation): readonly ConditionRow[] {
  return (evaluation.result.outputs as Readonly<Record<string, unknown>>).conditions as readonly ConditionRow[];
}

export function permissionBlocks(
  when: string,
  attempt: Attempt | undefined,
  condition: Evaluation | undefined,
  estimate: FilterEstimate | undefined,
): Block[] {
  if (attempt === undefined) return [];
  const heading: Block = { type: 'heading', text: `Permission for a forced regeneration, ${when}` };
  if (!succeeded(attempt)) return [heading, { type: 'paragraph', text: reasonText(attempt) }];
  const rows = conditionRows(attempt);
  const refusing = rows.filter((entry) => entry.result === 'refuse');
  const unknown = rows.filter((entry) => entry.result === 'unknown');
  const table: Block = {
    type: 'table',
    caption: 'Conditions that refuse',
    head: ['condition', 'found', 'limit', 'why', 'basis'],
    rows: refusing.map((entry) => [entry.condition, entry.measured ?? '', entry.limit, entry.reason, entry.basis]),
  };
  const open: Block = {
    type: 'paragraph',
    text: `Not checked, so treated as failed: ${unknown.map((entry) => entry.condition).join('; ')}.`,
  };
  const counts = `${shown(attempt, 'passed')} conditions pass, ${shown(attempt, 'refusals')} refuse, ${shown(attempt, 'unknowns')} were not checked`;
  if (isNotNeeded(attempt))
    return [heading, { type: 'paragraph', text: `Not needed: there is too little soot to burn. ${capital(counts)}.` }];
  return [
    heading,
    {
      type: 'paragraph',
      text: `${capital(shown(attempt, 'verdict'))}: ${counts}. ${isOpenButUnsure(attempt, condition, estimate) ? `${openButUnsure}.` : `Next: ${shown(attempt, 'next')}`}`,
    },
    ...(refusing.length === 0 ? [] : [table]),
    ...(unknown.length === 0 ? [] : [open]),
  ];
}

function outputFacts(evaluation: Evaluation): Block {
  const fields: Outputs = evaluation.calculation.spec.outputs;
  const rows = Object.entries(fields)
    .filter(([key, field]) => field.type !== 'table' && (evaluation.result.outputs as Readonly<Record<string, unknown>>)[key] !== undefined)
    .map(([key, field]) => [field.label, shown(evaluation, key)] as const);
  return { type: 'facts', rows };
}

export function cleaningBlocks({ cleaning, job }: JobResult): Block[] {
  if (!succeeded(cleaning)) return [];
  const ratio = String(job.cleaning?.dilutionRatio ?? '');
  return [
    { type: 'heading', text: 'Cleaning mix' },
    {
      type: 'facts',
      rows: [
        ['Mix', `${ratio} by parts, that is ${shown(cleaning, 'concentrateShare')} concentrate`],
        ['Per pass', shown(cleaning, 'volumePerPass')],
        ['Concentrate', shown(cleaning, 'concentrateVolume')],
        ['Demineralised water, with rinse', shown(cleaning, 'demineralisedWater')],
      ],
    },
  ];
}

export function reductantBlocks(result: JobResult): Block[] {
  const done = result.reductant.filter(succeeded);
  if (done.length === 0) return [];
  const together = reductantData(result);
  return [
    { type: 'heading', text: 'Reductant side' },
    ...done.map(outputFacts),
    ...(together === undefined ? [] : [togetherText(together)]),
  ];
}

/** Fluid and quantity multiply to one dose; that is the diagnosis, not either of them alone. */
function togetherText({ causes, dose }: ReductantData): Block {
  const [first] = causes;
  const percent = (share: number) => Math.round(share * 100);
  const cause = first === undefined ? '' : ` Most likely ${first.title} (${chanceText(first.probability)}).`;
  return {
    type: 'paragraph',
    text: `Together: ${percent(dose.p5)} to ${percent(dose.p95)} % of the urea that the catalyst should get reaches it.${cause}`,
  };
}

interface ResetRow {
  readonly what: string;
  readonly verdict: string;
  readonly value?: number;
  readonly why: string;
  readonly first?: string;
}

/** Rows of the reset advice: those that the work has touched, and the names of those that are left as they are. */
function resetRows(reset: Evaluation) {
  const field = reset.calculation.spec.outputs.values;
  const wordsOf = (key: string): Readonly<Record<string, string>> => {
    const column = field?.type === 'table' ? field.columns[key] : undefined;
    return column?.type === 'choice' ? column.options : {};
  };
  const [words, names] = [wordsOf('verdict'), wordsOf('what')];
  const rows = (reset.result.outputs as Readonly<Record<string, unknown>>).values as readonly ResetRow[];
  const value = (grams: number | undefined) => (grams === undefined ? '' : mass.format(mass.si(grams), 'g', { digits: 3 }));
  return {
    touched: rows
      .filter(({ verdict }) => verdict !== 'leave')
      .map((row) => ({
        what: names[row.what] ?? row.what,
        may: words[row.verdict] ?? row.verdict,
        value: value(row.value),
        why: row.why,
        first: row.first ?? '',
      })),
    left: rows.filter(({ verdict }) => verdict === 'leave').map(({ what }) => names[what] ?? what),
  };
}

/** What may be reset, in short; why stands in the annex. */
export function resetBlocks({ reset }: JobResult): Block[] {
  if (!succeeded(reset)) return [];
  const { touched } = resetRows(reset);
  return [
    { type: 'heading', text: 'What may be reset or relearned' },
    ...(touched.length === 0
      ? [{ type: 'paragraph' as const, text: `${capital(shown(reset, 'verdict'))}.` }]
      : [
          {
            type: 'table' as const,
            caption: 'Values that the work has touched',
            head: ['what', 'what to do', 'value', 'to be proven first'],
            rows: touched.map((row) => [row.what, row.may, row.value, row.first]),
          },
        ]),
  ];
}

/** Why each value may or may not be reset, and what is left as it is. */
export function resetReasonBlocks({ reset }: JobResult): Block[] {
  if (!succeeded(reset)) return [];
  const { touched, left } = resetRows(reset);
  return [
    { type: 'heading', text: 'Why values may be reset or must wait' },
    ...(touched.length === 0
      ? []
      : [
          {
            type: 'table' as const,
            caption: 'What a wrong reset would hide',
            head: ['what', 'what to do', 'why'],
            rows: touched.map((row) => [row.what, row.may, row.why]),
          },
        ]),
    ...(left.length === 0 ? [] : [{ type: 'paragraph' as const, text: `Left as they are: ${left.join('; ')}.` }]),
  ];
}
