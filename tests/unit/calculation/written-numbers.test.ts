import { type AnyCalculation, citation, present, type Source, textsOf } from '@wallflow/calculation';
import { expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

/** `3e-13`, as programs write numbers; not a part of a name. */
const programNotation = /(?<![\w.-])\d+(?:\.\d+)?e[-+]?\d+(?!\w)/i;

function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Everything that a person reads of a calculation and of its example. */
function readOf(calculation: AnyCalculation): string[] {
  const explained = calculation.explain(calculation.example);
  if (!explained.ok) throw new Error(`${calculation.id}: the example is refused`);
  const { result, steps } = explained;
  const { warnings, assumptions, advice } = result;
  const sources = Object.values(calculation.spec.sources as Record<string, Source>).map(citation);
  return textsIn([textsOf([calculation]), sources, steps, warnings, assumptions, advice, present(calculation, result)]);
}

it('no person reads a number in the notation of programs', () => {
  const found = allCalculations.flatMap((calculation) =>
    readOf(calculation)
      .filter((text) => programNotation.test(text))
      .map((text) => `${calculation.id}: ${text}`),
  );
  expect(found).toEqual([]);
});
