import { readable } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { toInput } from '../../../docs-site/src/calculator/form-input.js';
import { emptyValues } from '../../../docs-site/src/calculator/form-values.js';
import { viewResult } from '../../../docs-site/src/calculator/result-view.js';
import { allCalculations } from '../../support/calculations.js';

function calculation(id: string) {
  const found = allCalculations.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`${id} is not published`);
  return { found, fields: fieldsData(found.spec.inputs) };
}

describe('viewResult', () => {
  it('shows values in the unit that was chosen', () => {
    const { found, fields } = calculation('gas-density');
    const view = viewResult(found, fields, { gasPressure: '101.3 kPa', gasTemperature: '250 °C' }, { density: 'g/L' });
    expect(view.ok && view.values[0]?.unit).toBe('g/L');
  });

  it('drops a unit that the output never had', () => {
    const { found, fields } = calculation('gas-density');
    const view = viewResult(found, fields, { gasPressure: '101.3 kPa', gasTemperature: '250 °C' }, { density: 'mbar', constructor: 'x' });
    expect(view.ok && view.values[0]?.unit).toBe('kg/m3');
  });

  it('names a field by its label and repeats what was given and what would be right', () => {
    const { found, fields } = calculation('gas-density');
    const view = viewResult(found, fields, { gasPressure: '9999 kPa', gasTemperature: '250 °C' });
    if (view.ok) throw new Error('accepted');
    expect(view.issues).toHaveLength(1);
    expect(view.issues[0]).toMatchObject({ code: 'out_of_range', fields: ['gasPressure'] });
    expect(view.issues[0]?.text).toBe('Absolute pressure of the gas: "9999 kPa" is out of range; it must be at most 1000 kPa.');
  });

  it('puts the answer first', () => {
    for (const found of allCalculations) {
      const view = viewResult(found, fieldsData(found.spec.inputs), found.example);
      if (!view.ok) throw new Error(found.id);
      const last = found.spec.answer as string;
      if (view.values.some((value) => value.key === last)) expect(view.values[0]?.key, found.id).toBe(last);
    }
  });

  it('says which input makes the result uncertain', () => {
    const { found, fields } = calculation('gas-density');
    const view = viewResult(found, fields, { gasPressure: '101.3 ± 1 kPa', gasTemperature: '250 ± 1 °C' });
    if (!view.ok) throw new Error('refused');
    expect(view.budget[0]?.entries.map((entry) => entry.label)).toEqual(['Absolute pressure of the gas', 'Gas temperature']);
    expect(view.budget[0]?.entries.reduce((sum, entry) => sum + entry.share, 0)).toBeCloseTo(1, 12);
    expect(view.values[0]?.text).toContain('±');
  });
});

describe('an empty form', () => {
  it.each(allCalculations.map(({ id }) => id))('of %s asks in words, without a key or a path', (id) => {
    const { found, fields } = calculation(id);
    const view = viewResult(found, fields, toInput(fields, emptyValues(fields)));
    const asked = view.ok ? [] : view.issues.map(({ text }) => text);
    expect(asked.filter((text) => /\[\d+\]|\b[a-z]{2,}[A-Z]/.test(text))).toEqual([]);
  });

  it('names the row of a list and which of its readings can stand for each other', () => {
    const { found, fields } = calculation('dosing-test');
    const view = viewResult(found, fields, toInput(fields, emptyValues(fields)));
    const texts = view.ok ? [] : view.issues.map(({ text }) => text);
    expect(texts).toContainEqual(expect.stringMatching(/^Runs, row 1: enter either \S.* or \S.*\.$/));
  });
});

describe('inputs that stand for each other', () => {
  const { found, fields } = calculation('soot-mass-from-pressure-drop');

  it('name each other, as the definition says', () => {
    const insteadOf = Object.fromEntries(fields.map((field) => [field.key, field.insteadOf]));
    expect(insteadOf).toMatchObject({ filterDiameter: ['filterVolume'], filterVolume: ['filterDiameter'] });
    expect(insteadOf.filterLength).toBeUndefined();
  });

  it('are asked for once, also while others are missing', () => {
    const view = viewResult(found, fields, {});
    if (view.ok) throw new Error('accepted');
    const about = view.issues.filter(({ fields: own }) => own.includes('filterDiameter') || own.includes('filterVolume'));
    expect(about.map(({ text }) => text)).toEqual(['Enter either Filter diameter or Filter volume.']);
    expect(view.issues.length).toBeGreaterThan(1);
  });

  it('are asked for once when nothing else is missing, and not at all when one is given', () => {
    const { filterDiameter, ...rest } = found.example as Record<string, unknown>;
    const without = viewResult(found, fields, rest);
    expect(without.ok ? [] : without.issues.map(({ text }) => text)).toEqual(['Enter either Filter diameter or Filter volume.']);
    expect(viewResult(found, fields, { ...rest, filterDiameter }).ok).toBe(true);
  });
});

describe('money', () => {
  it('is written like a bill, in results, working and tables', () => {
    const { found, fields } = calculation('cleaning-batch-plan');
    const view = viewResult(found, fields, found.example);
    if (!view.ok) throw new Error('refused');
    const amounts = [...view.values, ...view.intermediates].filter(({ label }) => label.endsWith('in your currency'));
    expect(amounts.length).toBeGreaterThan(1);
    for (const { text } of amounts) expect(text).toMatch(/^\d+\.\d\d$/);
    const step = view.steps.find(({ label }) => label.startsWith('Cost of the shopping'));
    expect(step?.valueText).toMatch(/^\d+\.\d\d$/);
    expect(step?.numbersTex ?? '').not.toMatch(/\.\d{3}/);
    const costs = view.tables.flatMap(({ texts }) => texts.flatMap(({ cost }) => cost ?? []));
    expect(costs.length).toBeGreaterThan(0);
    for (const cost of costs) expect(cost).toMatch(/^\d+\.\d\d$/);
  });

  it('that is only estimated keeps its few digits', () => {
    const { found, fields } = calculation('clean-or-replace');
    const view = viewResult(found, fields, found.example);
    if (!view.ok) throw new Error('refused');
    for (const { text } of view.values.filter(({ label }) => label.endsWith('in your currency'))) expect(text).not.toMatch(/\d{3,}\.\d\d/);
  });
});

describe('every example', () => {
  it('says nothing twice in its warnings and its advice', () => {
    for (const found of allCalculations) {
      const view = viewResult(found, fieldsData(found.spec.inputs), found.example);
      if (!view.ok) throw new Error(found.id);
      const said = [...view.warnings, ...view.advice].map(({ text }) => text);
      expect(said.length, found.id).toBe(new Set(said).size);
      for (const { text } of view.advice)
        expect(
          view.values.map((value) => value.text),
          found.id,
        ).not.toContain(text);
    }
  });

  it('names what a drawing of several lines of one kind shows upwards', () => {
    const { found, fields } = calculation('one-dimensional-pressure-drop');
    const view = viewResult(found, fields, found.example);
    if (!view.ok) throw new Error('refused');
    expect(view.tables.find(({ plot }) => plot !== undefined)?.plot?.up).toBe('Differential pressure');
  });
});

describe('readable', () => {
  it.each([
    ['4350000000 1/m³', '4.35 × 10⁹ 1/m³'],
    ['21797897000 1/m³', '2.1797897 × 10¹⁰ 1/m³'],
    ['2e-9 m²', '2 × 10⁻⁹ m²'],
    ['1.50e-13 m²', '1.5 × 10⁻¹³ m²'],
    ['0.675 kg/m³', '0.675 kg/m³'],
    ['101325 Pa', '101325 Pa'],
    ['360 ± 5 mbar', '360 ± 5 mbar'],
    ['SAE 2000-01-1016', 'SAE 2000-01-1016'],
  ])('writes %s as %s', (text, shown) => {
    expect(readable(text)).toBe(shown);
  });
});
