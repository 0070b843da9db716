import { fieldOf, type InputField, itemSchema, shapeOf } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod/mini';
import { allCalculations, registry } from '../../support/calculations.js';

const own = allCalculations.filter(({ spec }) => spec.subject === 'soot' || spec.subject === 'regeneration');

/** Fields that stand beside each other in one form, list by list. */
function forms(schema: z.core.$ZodObject): InputField[][] {
  const fields = shapeOf(schema).flatMap(([, child]) => fieldOf(child) ?? []);
  const inner = shapeOf(schema).flatMap(([, child]) => {
    const item = fieldOf(child)?.type === 'list' ? itemSchema(child) : undefined;
    return item === undefined ? [] : forms(item);
  });
  return [fields, ...inner];
}

describe.each(own.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  it('has no two inputs of one label', () => {
    for (const fields of forms(calculation.spec.inputs)) {
      const labels = fields.map(({ label }) => label);
      expect(labels).toEqual([...new Set(labels)]);
    }
  });

  it('says no key of a program to a reader', () => {
    const { assumptions, limits, cautions, steps, title, purpose } = calculation.spec;
    const coded = [...assumptions, ...limits, ...cautions].map(({ text }) => text);
    const said = [title, purpose, ...coded, ...steps.map((step) => step.text ?? '')].map((text) => text.replace(/\[\[\w+\]\]/g, ''));
    for (const text of said) expect(text).not.toMatch(/[a-z][A-Z]|[a-z]_[a-z]{2}|undefined|null\b/);
  });
});

it('packs ash as densely where the drop is counted as where its room is', () => {
  const densityOf = (id: string, key: string) => {
    const schema = registry.get(id)?.spec.inputs.shape[key];
    const field = schema === undefined ? undefined : fieldOf(schema);
    const text = field !== undefined && 'default' in field ? String(field.default) : '';
    const read = field?.type === 'quantity' ? field.kind.parse(text) : undefined;
    return read?.ok ? (read.quantity as number) : Number.NaN;
  };
  const dropped = densityOf('loaded-pressure-drop', 'ashPackingDensity');
  expect(dropped).toBeGreaterThan(0);
  for (const [id, key] of [
    ['ash-distribution', 'ashPackingDensity'],
    ['ash-distribution', 'ashLayerPackingDensity'],
    ['ash-rod-depth', 'ashPackingDensity'],
  ] as const)
    expect(densityOf(id, key)).toBe(dropped);
});
