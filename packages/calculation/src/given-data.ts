/** Texts up to this length are kept as they are; a quantity needs far less. */
const longestText = 1000;
const mostEntries = 20;
const deepest = 4;

function cut(text: string, length: number): string {
  // Never through the middle of a sign.
  return text.length <= length ? text : `${text.slice(0, length - 1).replace(/[\ud800-\udbff]$/, '')}…`;
}

/** What JSON has no word for. */
function named(value: unknown): string {
  if (typeof value === 'bigint') return value < 10n ** 20n && value > -(10n ** 20n) ? String(value) : 'a very long number';
  return typeof value === 'object' ? 'an object' : typeof value === 'function' ? 'a function' : `a ${typeof value}`;
}

function isPlainRecord(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

function bounded(value: unknown, depth: number): unknown {
  if (value === undefined || value === null || typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : String(value);
  if (typeof value === 'string') return cut(value, longestText);
  if (typeof value !== 'object') return named(value);
  if (depth >= deepest) return '…';
  if (Array.isArray(value)) {
    const kept = value.slice(0, mostEntries).map((entry) => bounded(entry, depth + 1));
    return value.length > mostEntries ? [...kept, '…'] : kept;
  }
  if (!isPlainRecord(value)) return named(value);
  const keys = Object.keys(value);
  const kept = keys.slice(0, mostEntries).map((key) => [cut(key, 60), bounded((value as Record<string, unknown>)[key], depth + 1)]);
  return Object.fromEntries(keys.length > mostEntries ? [...kept, ['…', '…']] : kept);
}

/**
 * What was given, as an issue carries it: unchanged where it is a text of usual length, a number or a small record; otherwise
 * cut, so that an issue is plain data of bounded size whatever the input was. Never throws.
 */
export function givenData(value: unknown): unknown {
  try {
    return bounded(value, 0);
  } catch {
    // A trap or a getter that throws.
    return named(value);
  }
}

/** A record `{ value, unit, uncertainty }` as a person writes it. */
function asWritten(data: unknown): string | undefined {
  if (typeof data !== 'object' || data === null || !('value' in data && 'unit' in data)) return undefined;
  const { value, unit, uncertainty } = data as Readonly<Record<string, unknown>>;
  if ([value, unit].some((part) => typeof part !== 'string' && typeof part !== 'number')) return undefined;
  const known = typeof uncertainty === 'string' || typeof uncertainty === 'number';
  return `${value}${known ? ` ± ${uncertainty}` : ''} ${unit}`;
}

/** What was given, short enough to repeat in a sentence. Never throws. */
export function givenText(value: unknown): string {
  const bare = givenData(value);
  const data = asWritten(bare) ?? bare;
  return `"${cut(typeof data === 'string' ? data : (JSON.stringify(data) ?? 'undefined'), 58)}"`;
}

/** A name that came from outside, short enough to repeat in a sentence. */
export function shortName(name: string): string {
  return cut(name, 60);
}
