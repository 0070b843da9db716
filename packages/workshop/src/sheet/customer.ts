import { type Evaluation, numberOf, succeeded, unsureText, wordOf } from '../job/evaluation.js';
import type { JobResult } from '../job/run-job.js';
import type { Block } from './blocks.js';
import type { Claim } from './claims.js';
import { forecastClaims, forecastTexts } from './estimate.js';
import { filterLine, isReadOpen } from './filter-line.js';
import { readingsPlot, readingsUsed } from './readings.js';
import { capital, doubtText, reasonText, resultVerdicts, workClaim } from './sections.js';
import { shown } from './shown.js';

const workWords: Readonly<Record<string, string>> = {
  none: 'Nothing was done to the filter itself.',
  'on-vehicle': 'The filter was cleaned on the vehicle.',
  'off-vehicle': 'The filter was taken off, cleaned and fitted again.',
  new: 'A new filter was fitted.',
  exchange: 'A reconditioned exchange filter was fitted.',
};

function times(condition: Evaluation): string {
  return numberOf(condition, 'cleanRatio').toPrecision(2);
}

/** The filter before the work, as one would say it at the counter. */
function foundText({ before: { condition }, estimateBefore }: JobResult): string {
  const { state, together } = filterLine(condition, estimateBefore);
  const ratio = `about ${times(condition)} times the resistance of a clean filter`;
  if (isReadOpen(condition)) {
    const open = `as far as the hoses of its sensor are tight: ${ratio}`;
    switch (state) {
      case 'filling-up':
        return `The particulate filter still let the exhaust through, ${open}. But all readings together show that it is ${together}.`;
      case 'doubtful':
        return `The particulate filter read open, ${open}. But all readings together show something else as most likely: ${together}.`;
      case 'not-clear':
        return `The particulate filter read open, ${open}. All readings together do not decide yet: ${together}.`;
      default:
        return `The particulate filter was not blocked, ${open}.`;
    }
  }
  const verdict = wordOf(condition, 'verdict');
  if (verdict !== 'blocked' && verdict !== 'loaded') {
    const most = together === '' ? '' : ` All readings together show as most likely: ${together}.`;
    return `The state of the particulate filter was not clear from the readings. ${wordOf(condition, 'why')}${most}`;
  }
  if (state === 'doubtful')
    return `The reading was that of a ${verdict} filter, ${ratio}. But all readings together show something else as most likely: ${together}.`;
  return shapeText(condition) ?? `The particulate filter was ${verdict}: the exhaust met ${ratio}.`;
}

/** A restriction that does not behave like a filter may sit elsewhere, and the customer must not be told otherwise. */
function shapeText(condition: Evaluation): string | undefined {
  const shape = wordOf(condition, 'growthShape');
  if (shape === 'filter-like' || shape === 'unknown') return undefined;
  return `The exhaust was restricted, about ${times(condition)} times a clean filter. Whether the filter or another part is in the way was not clear from the readings.`;
}

function doneText({ job, cleaning }: JobResult): readonly string[] {
  const work = workWords[String(job.reset?.filterWork)];
  const passes = job.cleaning?.passes;
  const mix = succeeded(cleaning) && passes !== undefined ? `It was cleaned with liquid, in ${String(passes)} passes.` : undefined;
  return [work, mix, ...(job.resets ?? [])].filter((text): text is string => text !== undefined);
}

/** What soot cannot explain after a burn-off that was verified. */
const ashLeft =
  'After a complete regeneration soot cannot explain what is left: it is ash, which only a clean off the vehicle or a new filter takes away.';

function betterText(result: JobResult): string {
  const { comparison, job } = result;
  const doubt = doubtText(result);
  if (comparison === undefined) return 'Not measured yet after the work.';
  if (!succeeded(comparison)) return `Not proven. ${reasonText(comparison)}`;
  const lower = `${shown(comparison, 'improvement')} (± ${shown(comparison, 'improvementUncertainty')})`;
  const ash = job.reset?.regenerationVerified === true ? ` ${ashLeft}` : '';
  switch (wordOf(comparison, 'verdict')) {
    case 'cleaned':
      return doubt === undefined
        ? `The resistance of the filter is lower by ${lower}, at comparable flow. That is as far as a clean should bring it.`
        : `${capital(doubt)}.`;
    case 'improved':
    case 'improved-unproven':
      return `The resistance of the filter is lower by ${lower}, at comparable flow. That it is as open as a clean filter is not proven.${ash}`;
    case 'unchanged':
      return `No change that is larger than what the readings may be off.${ash}`;
    case 'worse':
      return 'The reading is higher than before. Either the filter got worse, or a hose of its sensor leaked before.';
    default:
      return `Not proven: ${shown(comparison, 'verdict').replace(/^not (?:proven|comparable): /, '')}.`;
  }
}

function sureText(result: JobResult): readonly string[] {
  const { before, after, comparison, job } = result;
  const judged = [
    ['Filter before', before.condition],
    ['Filter after', after?.condition],
    ['Result of the work', comparison],
  ] as const;
  const unsure = judged.flatMap(([question, one]) => {
    const text = succeeded(one) ? unsureText(one) : undefined;
    return text === undefined ? [] : [`${question}: ${text.replace(/^[^:]*: /, '')}`];
  });
  const zero =
    (after ?? before).zero === undefined
      ? 'The sensor was not read with the engine off, so an error of its zero is not excluded.'
      : undefined;
  const codes =
    job.faultCodes?.after === undefined
      ? 'Fault codes were not read after the work.'
      : job.faultCodes.after.length === 0
        ? 'Fault codes were read after the work: none is stored.'
        : `Fault codes still stored: ${job.faultCodes.after.join('; ')}.`;
  const basis =
    'Readings of the vehicle, warm and steady, against the calculated drop of a clean filter of this size, which is uncertain by about half.';
  const typical = !result.assumed.some(({ of }) => of === 'filter')
    ? undefined
    : 'The size of the filter was not known in full; values typical for this engine stand in for it.';
  return [
    basis,
    ...(typical === undefined ? [] : [typical]),
    ...(zero === undefined ? [] : [zero]),
    ...unsure,
    ...(after === undefined ? [] : [codes]),
  ];
}

function part(heading: string, texts: readonly string[], claims: readonly Claim[] = []): Block[] {
  const [only = ''] = texts;
  if (texts.length === 0) return [];
  return [
    { type: 'heading', text: heading },
    texts.length === 1 ? { type: 'paragraph', text: only, claims } : { type: 'list', items: texts, claims },
  ];
}

const defined = (claim: Claim | undefined): readonly Claim[] => (claim === undefined ? [] : [claim]);

/** The first page: what was wrong, what was done, how much better, what next, how sure. Cautions for the workshop stand later. */
export function customerBlocks(result: JobResult): Block[] {
  const { job } = result;
  return [
    ...part(
      'What was wrong',
      [foundText(result), ...(job.rootCause === undefined ? [] : [`Cause: ${job.rootCause}`])],
      [`filter before ${filterLine(result.before.condition, result.estimateBefore).state}`],
    ),
    ...part('What was done', doneText(result)),
    ...part('How much better', [betterText(result)], defined(workClaim(result))),
    readingsUsed(result),
    ...readingsPlot(result),
    ...part(
      'What next',
      [...(job.advice ?? []), ...forecastTexts(result), ...(job.nextCheck === undefined ? [] : [`Next check: ${job.nextCheck}`])],
      forecastClaims(result),
    ),
    resultVerdicts(result),
    ...part('How sure', sureText(result)),
    { type: 'page-end' },
  ];
}
