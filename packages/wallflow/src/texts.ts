/**
 * What calculations say, as a catalogue that another language can replace.
 *
 * @module
 */
import { type Texts, textsOf } from '@wallflow/calculation';
import { calculations as exhaustCalculations } from '@wallflow/exhaust/calculations';
import { calculations as workshopCalculations } from '@wallflow/workshop';
import { sentences } from './generated/sentences.js';

export { comparedTexts, type Texts, withTexts } from '@wallflow/calculation';

/** All texts of all calculations in a language that they have; English is what they are written in. */
export function texts(language: 'en'): Texts {
  return {
    language,
    calculations: textsOf([...exhaustCalculations, ...workshopCalculations]),
    sentences: Object.fromEntries(sentences.map((sentence) => [sentence, sentence])),
  };
}
