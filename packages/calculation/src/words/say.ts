/** Texts of one language by the English text, templates with `{1}` where a value stands. */
export type Dictionary = ReadonlyMap<string, string>;

// A calculation computes without waiting, so that one language at a time is spoken.
let spokenNow: Dictionary | undefined;

/** Do something in a language. */
export function speaking<T>(dictionary: Dictionary | undefined, work: () => T): T {
  const before = spokenNow;
  spokenNow = dictionary ?? before;
  try {
    return work();
  } finally {
    spokenNow = before;
  }
}

/** A whole text in the language that is spoken; one that the language does not have stays as it is. */
export function spoken(text: string): string {
  return spokenNow?.get(text) ?? text;
}

/** How a sentence with values stands in a catalogue of texts: `Rinse {1} times.` */
export function template(parts: readonly string[]): string {
  return parts.reduce((text, part, index) => `${text}{${index}}${part}`);
}

/**
 * A sentence that a calculation says, with values in it: say`Rinse ${3} times.` A language has it by its words, with `{1}` for the
 * first value, and may put the values in another order.
 */
export function say(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const texts = values.map((value) => (typeof value === 'string' ? spoken(value) : String(value)));
  const other = spokenNow?.get(template(parts));
  if (other !== undefined) return other.replaceAll(/\{(\d+)\}/g, (_, place: string) => texts[Number(place) - 1] ?? '');
  return parts.reduce((text, part, index) => `${text}${texts[index - 1] ?? ''}${part}`);
}
