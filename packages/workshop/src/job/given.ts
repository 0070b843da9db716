import type { Kind, KindName } from '@wallflow/units';

/** A quantity that was typed, in SI; its ± where one was typed with it. */
export interface GivenNumber {
  readonly value: number;
  readonly uncertainty?: number;
}

/** What was typed as text, or as a record of number, unit and ±; undefined where nothing usable was, which other checks report. */
export function givenNumber<K extends KindName>(kind: Kind<K>, given: unknown): GivenNumber | undefined {
  if (typeof given === 'string') {
    const parsed = kind.parse(given);
    if (!parsed.ok) return undefined;
    return { value: parsed.quantity, ...(parsed.uncertainty === undefined ? {} : { uncertainty: parsed.uncertainty }) };
  }
  if (typeof given !== 'object' || given === null) return undefined;
  const { value, unit, uncertainty } = given as { readonly value?: unknown; readonly unit?: unknown; readonly uncertainty?: unknown };
  if ((typeof value !== 'number' && typeof value !== 'string') || typeof unit !== 'string') return undefined;
  const parsed = kind.parse(`${value} ${unit}`.trim());
  if (!parsed.ok) return undefined;
  const off = Number(uncertainty);
  if (uncertainty === undefined || !Number.isFinite(off)) return { value: parsed.quantity };
  return { value: parsed.quantity, uncertainty: off / kind.differenceIn(1, parsed.unit, parsed.quantity) };
}

/** The value alone, in SI. */
export function givenValue<K extends KindName>(kind: Kind<K>, given: unknown): number | undefined {
  return givenNumber(kind, given)?.value;
}
