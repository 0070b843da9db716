import { describe, expect, it } from 'vitest';
import { symbolicSteps } from '../../../docs-site/plugins/calculations/calculation-data.js';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { formulasOf, symbolsOf } from '../../../docs-site/plugins/calculations/formulas.js';
import { viewResult } from '../../../docs-site/src/calculator/result-view.js';
import { allCalculations } from '../../support/calculations.js';

describe('the working of every calculation', () => {
  it.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('of %s is set without doubt', (_, calculation) => {
    const inputs = fieldsData(calculation.spec.inputs);
    const example = viewResult(calculation, inputs, calculation.example);
    if (!example.ok) throw new Error('refused');
    const formulas = { ...symbolsOf({ inputs, example, constants: [] } as never), ...formulasOf({ example }, symbolicSteps(calculation)) };
    expect(Object.keys(formulas).length).toBeGreaterThan(0);
  });
});
