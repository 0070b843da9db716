/** What may be done with a stored value. The first four change it. */
export type ResetVerdict = 'reset' | 'set' | 'relearn' | 'confirm' | 'leave' | 'not-yet';

/** Answer for all values together. */
export type ResetAnswer = 'all' | 'some' | 'none';

/** What the work would allow, and which answers must be yes before. */
export interface Ruling<P extends string> {
  readonly verdict: Exclude<ResetVerdict, 'not-yet'>;
  readonly proofs: readonly P[];
}

/** Answers by proof: yes, no, or not known. */
export type Answers<P extends string> = Readonly<Record<P, boolean | undefined>>;

/** A value is changed only when every proof is a yes; a no and an unknown both wait. What is left alone needs no proof. */
export function judge<P extends string>(
  { verdict, proofs }: Ruling<P>,
  answers: Answers<P>,
): { readonly verdict: ResetVerdict; readonly missing: readonly P[] } {
  const missing = verdict === 'leave' ? [] : proofs.filter((proof) => answers[proof] !== true);
  return { verdict: missing.length > 0 ? 'not-yet' : verdict, missing };
}

/** Whether the verdict changes what the vehicle has stored. */
export function changes(verdict: ResetVerdict): boolean {
  return verdict !== 'leave' && verdict !== 'not-yet';
}

/** None while no value may be changed; some while one still waits; otherwise all that the work has made true. */
export function resetAnswer(verdicts: readonly ResetVerdict[]): ResetAnswer {
  if (!verdicts.some(changes)) return 'none';
  return verdicts.includes('not-yet') ? 'some' : 'all';
}

/**
 * Ash to enter, in the unit of the inputs: the measured one, but never less than its uncertainty, because a weighing cannot
 * tell less than that from nothing. A cleaned filter is therefore never entered as free of ash.
 */
export function ashToEnter(measured: number, uncertainty: number): number {
  return Math.max(measured, uncertainty);
}
