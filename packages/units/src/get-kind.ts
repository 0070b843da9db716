import { kinds } from './generated/kinds.js';
import type { Kind } from './kind.js';
import type { KindName } from './types.js';

/** A kind by its name, as a program reads it from data; undefined for anything else. */
export function getKind(name: string): Kind<KindName> | undefined {
  return Object.hasOwn(kinds, name) ? (kinds[name as KindName] as unknown as Kind<KindName>) : undefined;
}
