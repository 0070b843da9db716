import type { Warning } from './issue.js';
import type { ChoiceOutput, Outputs } from './outputs.js';
import { say } from './words/say.js';

type Values = Readonly<Record<string, unknown>>;

function wordsOf(field: ChoiceOutput, value: unknown): string {
  return typeof value === 'string' ? (field.options[value] ?? value) : say`no answer`;
}

/**
 * A warning for every verdict that another value within the uncertainty of the inputs would change. A verdict that the given ±
 * does not support must not read like one that it does.
 */
export function unsureChoices(fields: Outputs, nominal: Values, others: readonly Values[]): Warning[] {
  return Object.entries(fields).flatMap(([key, field]) => {
    if (field.type !== 'choice') return [];
    const different = [...new Set(others.map((values) => values[key]).filter((value) => value !== nominal[key]))];
    if (different.length === 0) return [];
    const could = different.map((value) => `“${wordsOf(field, value)}”`).join(say` or `);
    return [{ code: 'verdict_unsure', output: key, text: say`${field.label}: within the ± that was given it could as well be ${could}.` }];
  });
}
