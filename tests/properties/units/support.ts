import { type Kind, type KindName, kinds, unitInfo } from '@wallflow/units';
import fc from 'fast-check';

export interface KindUnit {
  readonly kind: Kind<KindName>;
  readonly unit: string;
}

/** Every kind as one that takes the name of any unit. */
export const anyKinds: readonly Kind<KindName>[] = Object.values(kinds) as unknown as readonly Kind<KindName>[];

/** Every unit of every kind. */
export const allUnits: readonly KindUnit[] = anyKinds.flatMap((kind) => kind.units.map((unit) => ({ kind, unit })));

export function info({ kind, unit }: KindUnit) {
  const found = unitInfo(kind.kind, unit);
  if (found === undefined) throw new Error(`${kind.kind} has no unit ${unit}`);
  return found;
}

/** A decimal number as a person types it, with 1 to `digits` digits, not zero. */
export function decimalText(digits: number, exponents: { readonly min: number; readonly max: number }): fc.Arbitrary<string> {
  const mantissa = fc.integer({ min: 1, max: 10 ** digits - 1 });
  return fc.tuple(mantissa, fc.integer(exponents), fc.boolean()).map(([whole, exponent, negative]) => {
    return `${negative ? '-' : ''}${whole}e${exponent}`;
  });
}

/** Whether values below zero do not exist. */
export function isFloored(kind: Kind<KindName>): boolean {
  return !kind.parse(-1e9, kind.baseUnit).ok;
}
