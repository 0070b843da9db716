/**
 * Signs that a terminal or a browser obeys instead of showing: control characters other than tab and line end, and those that turn
 * the direction of writing. The joiners of letters and pictures are none of them.
 */
const obeyed = /[^\P{Cc}\t\n]|[\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/gu;

/** Text that came from outside, fit for a terminal or a page: signs that would be obeyed are written out, as `\u001b`. */
export function visibleText(text: string): string {
  return text.replace(obeyed, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
