import type { Texts } from '@wallflow/calculation';

const letters = new Map(
  [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter, at) => [
    letter,
    String.fromCodePoint(0x1d5d4 + ((at + 26) % 52)),
  ]),
);

/** A text of a language that nobody speaks, in which every letter is another; marks where values stand are kept. */
export function pseudoText(text: string): string {
  return text
    .split(/(\{\d+\}|\[\[\w+\]\])/)
    .map((part, at) => (at % 2 === 1 ? part : [...part].map((letter) => letters.get(letter) ?? letter).join('')))
    .join('');
}

/** All texts in that language. */
export function pseudoTexts({ calculations, sentences }: Texts): Texts {
  const other = (texts: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, pseudoText(text)]));
  return {
    language: 'x-pseudo',
    calculations: Object.fromEntries(Object.entries(calculations).map(([id, texts]) => [id, other(texts)])),
    sentences: other(sentences),
  };
}
