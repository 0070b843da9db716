import * as wf from '@wallflow/calculation';
import { cautions } from '@wallflow/exhaust/shared';
import { mass } from '@wallflow/units';
import { batteryForResets, resetPractice, safeSideOfAsh, savedBeforeClearing, stayingCountdown } from '../sources.js';
import { resetInputs } from './inputs.js';
import { ashToEnter, changes, type ResetAnswer, type ResetVerdict, resetAnswer } from './kernel.js';
import { proofWords } from './proofs.js';
import { openProofs, resetRows, storedValues } from './rows.js';

const verdicts = {
  reset: 'reset to zero, or clear',
  set: 'set to the value shown here, or printed on the part',
  relearn: 'relearn',
  confirm: 'let the vehicle confirm it by its own test',
  leave: 'leave as it is',
  'not-yet': 'not yet',
} as const satisfies Record<ResetVerdict, string>;

const answers = {
  all: 'all that this work has made true may be done',
  some: 'some may be done, some not yet',
  none: 'nothing may be reset yet',
} as const satisfies Record<ResetAnswer, string>;

const grams = (symbol: string, label: string, digits: number) => wf.quantityOutput(mass, { symbol, label, digits, units: ['g', 'kg'] });

const counted = <const Key extends string>(gives: Key) =>
  wf.solved(gives, 'allowed + waiting + left = count(values.verdict)', {}, undefined, undefined, 'Counted in the table of stored values.');

const doIt = 'Do only what the table allows, by the procedure of the vehicle maker. Then drive, and read codes and counters again.';

export const resetAdviceCalculation = wf.defineCalculation({
  id: 'reset-advice',
  subject: 'workshop',
  title: 'What may be reset after this work?',
  purpose: 'What may be reset or relearned after this work, to which value, and what must not?',
  keywords: 'reset, relearn, adaptation, counter, ash, clear codes, learned value, changed part',
  method: 'each stored value against the work done and what is proven; unknown is not proven',
  inputs: resetInputs,
  example: {
    emissionComplete: true,
    saved: true,
    batterySupport: true,
    causeRepaired: true,
    dropVerified: true,
    ashBasis: 'weighed',
    residualAsh: '35 g',
  },
  outputs: {
    verdict: wf.choiceOutput({ label: 'May it be reset?', options: answers }),
    next: wf.textOutput({ label: 'Do this next' }),
    values: wf.tableOutput({
      label: 'Stored values',
      columns: {
        what: wf.choiceOutput({ label: 'Stored value', options: storedValues }),
        verdict: wf.choiceOutput({ label: 'What to do', options: verdicts }),
        value: wf.optional(grams('m', 'Value to enter', 3)),
        uncertainty: wf.optional(grams('u(m)', 'Its uncertainty', 2)),
        why: wf.textOutput({ label: 'Why' }),
        first: wf.optional(wf.textOutput({ label: 'To be proven first' })),
      },
    }),
    open: wf.tableOutput({
      label: 'To be proven first',
      columns: {
        wanted: wf.textOutput({ label: 'Proof' }),
        answer: wf.choiceOutput({ label: 'Answer so far', options: { no: 'no', unknown: 'not known' } }),
        action: wf.textOutput({ label: 'What to do' }),
        waiting: wf.countOutput({ symbol: 'n', label: 'Values that wait for it' }),
      },
    }),
    ashToSet: wf.optional(grams('m_{set}', 'Ash to enter', 3)),
    ashUpper: wf.optional(grams('m_{max}', 'The same ash with its uncertainty added', 3)),
    allowed: wf.countOutput({ symbol: 'n_a', label: 'Values that may be changed' }),
    waiting: wf.countOutput({ symbol: 'n_w', label: 'Values that must wait' }),
    left: wf.countOutput({ symbol: 'n_l', label: 'Values to leave as they are' }),
  },
  answer: 'verdict',
  steps: [
    wf.statement(
      'values',
      'Work on the filter: [[filterWork]]. What the work did not make untrue is left; the rest is changed only when every proof is a yes.',
      resetPractice,
    ),
    wf.statement('open', 'Each proof that is missing, once. Not known counts like no.', savedBeforeClearing),
    wf.cases('ashToSet', { "filterWork == 'new'": '0', otherwise: 'max(residualAsh, ashUncertainty)' }, safeSideOfAsh),
    wf.formula('ashUpper', 'residualAsh + ashUncertainty'),
    counted('allowed'),
    counted('waiting'),
    counted('left'),
    wf.verdict('verdict', { none: 'allowed == 0', some: 'waiting > 0', all: 'otherwise' }, resetPractice),
  ],
  assumptions: {
    answers_true: 'The answers are what was seen and measured on this vehicle, not what is hoped.',
    stored_value_true: 'What is left as it is was true before the work.',
  },
  limits: {
    names_differ: 'Vehicles store these values under other names, and not every vehicle has each of them.',
    wrong_before: 'A counter that somebody reset wrongly before stays wrong: weigh the ash, and compare.',
    exchange_routine: 'For an exchange filter the routine of the vehicle maker may differ: that routine comes first.',
  },
  cautions: [
    { code: 'never_reset_untrue', text: 'Never reset a counter that the work has not made true.' },
    cautions.noDefeat,
    cautions.makerFirst,
    cautions.sensorFirst,
    cautions.hotExhaust,
  ],
  sources: [batteryForResets, stayingCountdown],
  compute(input, { warn }) {
    const { filterWork, residualAsh, ashUncertainty } = input;
    if (filterWork === 'new' && residualAsh !== undefined && residualAsh > 0)
      return wf.inconsistentInputs('a new filter holds no ash; with ash in it, it is an exchange filter', ['residualAsh'], ['filterWork']);
    const rows = resetRows(input);
    const ash = rows.find(({ code }) => code === 'ash')?.verdict;
    const measured = ash === 'set' ? residualAsh : undefined;
    const ashToSet = ash === 'reset' ? 0 : measured === undefined ? undefined : ashToEnter(measured, ashUncertainty);
    if (residualAsh !== undefined && ash === 'leave')
      warn('ash_not_used', 'The ash that was given is not used: this work does not change the ash value.', ['residualAsh']);
    if (measured !== undefined && measured < ashUncertainty)
      warn('ash_within_uncertainty', 'The ash is smaller than its uncertainty, so the uncertainty is entered.', ['residualAsh']);
    const open = openProofs(rows, input);
    return {
      verdict: resetAnswer(rows.map(({ verdict }) => verdict)),
      next: open[0]?.action ?? doIt,
      values: rows.map(({ code, verdict, why, missing }) => ({
        what: code,
        verdict,
        value: code === 'ash' ? ashToSet : code === 'soot' ? sootToSet(verdict, input.mostSoot) : undefined,
        uncertainty: code === 'ash' && measured !== undefined ? ashUncertainty : undefined,
        why,
        first: missing.length === 0 ? undefined : missing.map((proof) => wf.spoken(proofWords[proof].wanted)).join('; '),
      })),
      open,
      ashToSet,
      ashUpper: measured === undefined ? undefined : measured + ashUncertainty,
      allowed: rows.filter(({ verdict }) => changes(verdict)).length,
      waiting: rows.filter(({ verdict }) => verdict === 'not-yet').length,
      left: rows.filter(({ verdict }) => verdict === 'leave').length,
    };
  },
  advise({ verdict, next, ashToSet }, { filterWork, causeRepaired, emissionComplete }) {
    const silence = { tone: 'do-not' as const, text: 'Do not reset or clear anything just to put out a lamp.' };
    const ash = { tone: 'do-not' as const, text: 'Do not set the ash to zero: only a new filter holds none.' };
    const again = { tone: 'note' as const, text: 'The cause is not proven repaired: the filter will load again.' };
    const sheet = { tone: 'note' as const, text: 'Write every reset on the job sheet, with the old value and the reason.' };
    const steps = verdict === 'none' || verdict === 'all' ? [next] : ['Do only what the table allows now.', next];
    return [
      ...steps.map((text) => ({ tone: 'do' as const, text })),
      ...(emissionComplete === false
        ? [{ tone: 'do-not' as const, text: 'Do not reset anything while an emission part is missing or not working.' }]
        : []),
      silence,
      ...(filterWork === 'new' && ashToSet === 0 ? [] : [ash]),
      ...(filterWork !== 'none' && causeRepaired !== true ? [again] : []),
      ...(verdict === 'none' ? [] : [sheet]),
    ];
  },
});

function sootToSet(verdict: ResetVerdict, mostSoot: number | undefined): number | undefined {
  if (verdict === 'reset') return 0;
  return verdict === 'set' ? mostSoot : undefined;
}
