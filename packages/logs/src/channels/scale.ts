import { differenceInUnit, getKind, type KindName, unitInfo } from '@wallflow/units';

/** From a number in a column to SI: `(number + offset) * factor`, as a multiplication that a loop over millions of cells can do. */
export interface Scale {
  readonly factor: number;
  readonly offset: number;
}

/** The exact factor of a unit as text, `5/9` or `1000*60`, worked from left to right. */
function factorOf(text: string): number {
  let value = 1;
  let divide = false;
  for (const token of text.split(/([*/])/)) {
    if (token === '*' || token === '/') divide = token === '/';
    else value = divide ? value / Number(token) : value * Number(token);
  }
  return value;
}

/** The scale of a unit of a kind; undefined for a unit that the kind does not have, or one that counts the other way round. */
export function scaleOf(kind: KindName, unit: string): Scale | undefined {
  const info = unitInfo(kind, unit);
  if (info === undefined || info.reciprocal === true) return undefined;
  return { factor: factorOf(info.factor), offset: Number(info.offset ?? 0) };
}

/** A number of SI in a unit of a kind. */
export function inUnit(kind: KindName, si: number, unit: string): number {
  const found = getKind(kind);
  return found === undefined ? Number.NaN : found.in(found.si(si), unit as never);
}

/** A small difference of SI in a unit of a kind. */
export function differenceIn(kind: KindName, si: number, unit: string): number {
  return differenceInUnit(kind, si, unit);
}
