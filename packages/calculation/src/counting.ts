import type { When } from './rule.js';

/** What decides whether an input counts: when it does, and what stands in for it where it is not given. */
export interface Counting {
  readonly key: string;
  readonly when: readonly When[];
  readonly standard?: unknown;
}

/** Keys of the inputs that count with these values, `value` as given or, failing that, what stands in for it. */
export function countingKeys(form: { readonly fields: readonly Counting[] }, value: (key: string) => unknown): ReadonlySet<string> {
  const counting = new Set<string>();
  const holds = (when: When): boolean =>
    [when.key, ...(when.or ?? [])].some((key) => {
      const target = form.fields.find((field) => field.key === key);
      if (target !== undefined && !counting.has(key)) return false;
      const given = value(key) ?? target?.standard;
      return when.is === undefined ? given !== undefined : when.is.includes(given as string);
    });
  for (const { key, when } of form.fields) if (when.every(holds)) counting.add(key);
  return counting;
}
