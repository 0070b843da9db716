import { fileURLToPath } from 'node:url';
import { textsOf } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { comparedTexts, texts } from '../../../packages/wallflow/src/texts.js';
import { allCalculations } from '../../support/calculations.js';
import { recorded } from '../../support/record.js';
import { sentencesInCode } from '../../support/sentences.js';

const generated = fileURLToPath(new URL('../../../packages/wallflow/src/generated/', import.meta.url));
const calculations = textsOf(allCalculations);
const described = (subject: string) =>
  new Set(allCalculations.filter((one) => one.subject === subject).flatMap((one) => Object.values(calculations[one.id] ?? {})));
const sentences = Object.fromEntries(sentencesInCode(described).map((sentence) => [sentence, sentence]));

describe('the catalogue of texts', () => {
  it('has every sentence that the code of calculations says; `npm run record` writes it', () => {
    const head = '// Every sentence that calculations say of a result. Written by `npm run record`.\n';
    const present = `${head}export const sentences: readonly string[] = ${JSON.stringify(Object.keys(sentences), undefined, 2)};\n`;
    expect(recorded(`${generated}sentences.ts`, present)).toBe(present);
  });

  it('is the file that a translation starts from; `npm run record` writes it', () => {
    const present = `${JSON.stringify({ language: 'en', calculations, sentences }, undefined, 2)}\n`;
    expect(recorded(`${generated}texts.en.json`, present)).toBe(present);
  });

  it('has no text that somebody has still to write', () => {
    const undone = Object.entries(calculations).flatMap(([id, own]) =>
      Object.keys(own).flatMap((key) => (own[key]?.includes('TODO') ? [`${id}: ${key}`] : [])),
    );
    expect(undone).toEqual([]);
  });

  it('is what a program gets', () => {
    expect(texts('en')).toEqual({ language: 'en', calculations, sentences });
  });

  it('names what another language lacks, and what it has that nothing asks for', () => {
    const english = { language: 'en', calculations, sentences };
    expect(comparedTexts(english, english)).toEqual({ missing: [], stale: [] });
    const { title: _, ...others } = calculations['gas-density'] ?? {};
    const other = { ...english, calculations: { ...calculations, 'gas-density': { ...others, 'input.gone.label': 'Gone' } } };
    expect(comparedTexts(other, english)).toEqual({ missing: ['gas-density: title'], stale: ['gas-density: input.gone.label'] });
  });
});
