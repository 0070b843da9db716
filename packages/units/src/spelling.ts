/** Longest text that is looked at; a quantity needs far less. */
export const longestText = 200;

const spaces = /[\s\u00a0\u2000-\u200a\u202f\u205f\u3000]+/g;
/** Controls, and format characters such as those that turn the direction of writing, but not tab and line ends. */
const control = /[^\P{C}\t\n\r]/u;

export function hasControlCharacter(text: string): boolean {
  return control.test(text);
}

/** A text cut to what is worth repeating, never through the middle of a sign. */
export function shortText(text: string): string {
  return text.length <= longestText ? text : text.slice(0, longestText).replace(/[\ud800-\udbff]$/, '');
}

const alreadyPlain = /^(?! )(?!.*(?: {2}|''| $))[ -~]*$/;

/** One plain form for the many signs people and keyboards produce: spaces, minus, superscripts, quotation marks. */
export function plainText(text: string): string {
  if (alreadyPlain.test(text)) return text;
  return text
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+/g, '^$&')
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(spaces, ' ')
    .replace(/[−–‐‑]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/[’‘′]/g, "'")
    .replace(/[”“]|''/g, '"')
    .trim();
}

/**
 * The form in which unit spellings are compared. Spaces, signs of multiplication, full stops, brackets and underscores
 * are dropped, so that `J/(kg·K)`, `J/kg K` and `J/(kg.K)` are one spelling, and so are `fl. oz` and `floz`, or
 * `meter` and `metre`.
 */
export function plainUnit(text: string): string {
  return plainText(text)
    .replace(/[ .·⋅∙•*()[\]{}_^]/g, '')
    .replace(/(?<=[a-z])-(?=[a-z])/gi, '')
    .replace(/μ/g, 'u')
    .replace(/°/g, 'deg')
    .replace(/Ω/g, 'ohm')
    .replace(/(met|lit)er/gi, '$1re')
    .replace(/^\//, '1/');
}

/** A milli or mega, a nano or newton: letters whose case changes the unit. */
const letterWithMeaning = /(?<![a-z])[mn](?=pa|bar|g|l|w|j|v|a(?!ss)|s|m|d|n|hz|ohm)/gi;

/** Whether two plain spellings differ only where upper and lower case mean the same: `KPA` and `kPa`, never `mPa` and `MPa`. */
export function sameButForHarmlessCase(typed: string, known: string): boolean {
  if (typed === known) return true;
  if (typed.length !== known.length || typed.toLowerCase() !== known.toLowerCase()) return false;
  return [...known.matchAll(letterWithMeaning)].every(({ index, 0: letter }) => typed[index] === letter);
}
