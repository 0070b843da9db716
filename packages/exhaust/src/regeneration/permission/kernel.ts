/** Answer of one condition. What is not known is never a pass. */
export type ConditionResult = 'pass' | 'refuse' | 'unknown';

/** Answer of the gate. */
export type PermissionVerdict = 'permitted' | 'refused' | 'unknown';

/** Refused as soon as one condition refuses; permitted only if every condition passes; otherwise unknown. */
export function permissionVerdict(results: readonly ConditionResult[]): PermissionVerdict {
  if (results.includes('refuse')) return 'refused';
  return results.length > 0 && results.every((result) => result === 'pass') ? 'permitted' : 'unknown';
}

/** A span that a value must lie in; either end may be missing, `mostExcluded` takes the upper end itself out. */
export interface Span {
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  readonly mostExcluded?: boolean;
}

/** Where a value stands against a span: the result and the room to the nearer limit, negative beyond it. */
export interface SpanCheck {
  readonly result: ConditionResult;
  readonly margin?: number;
  readonly side?: 'low' | 'high';
}

/** Check a measured value, or one that is not known, against a span. */
export function checkSpan(value: number | undefined, { least, most, mostExcluded = false }: Span): SpanCheck {
  if (value === undefined) return { result: 'unknown' };
  const below = least === undefined ? Infinity : value - least;
  const above = most === undefined ? Infinity : most - value;
  const side = below < above ? 'low' : 'high';
  const margin = Math.min(below, above);
  const out = margin < 0 || (mostExcluded && above <= 0);
  return { result: out ? 'refuse' : 'pass', margin, side };
}

/** Check an answer of yes or no, or one that is not known. */
export function checkAnswer(answer: boolean | undefined, wanted: boolean): ConditionResult {
  if (answer === undefined) return 'unknown';
  return answer === wanted ? 'pass' : 'refuse';
}
