/** Longest text that is looked at; a quantity needs far less. */
export const longestText = 200;

const spaces = /[\s\u00a0\u2000-\u200a\u202f\u205f\u3000]+/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff]/;

export function hasControlCharacter(text: string): boolean {
  return control.test(text);
}

/** One plain form for the many signs people and keyboards produce: spaces, minus, superscripts, micro, dots. */
export function plainText(text: string): string {
  return text
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/⁻/g, '-')
    .replace(/¹/g, '1')
    .normalize('NFKC')
    .replace(spaces, ' ')
    .replace(/[−–‐‑]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/[’‘]/g, "'")
    .trim();
}

/** The form in which unit spellings are compared: no spaces, one sign for products, degrees and micro. */
export function plainUnit(text: string): string {
  return plainText(text)
    .replace(/\s+/g, '')
    .replace(/[·⋅∙*]/g, '.')
    .replace(/[μµ]/g, 'u')
    .replace(/[°º]/g, 'deg')
    .replace(/\^/g, '')
    .replace(/\[|\]/g, '');
}
