import { describe, expect, it } from 'vitest';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { countingFields } from '../../../docs-site/src/calculator/counting.js';
import { emptyValues } from '../../../docs-site/src/calculator/form-values.js';
import type { FieldData, FormValues } from '../../../docs-site/src/data/types.js';
import { allCalculations } from '../../support/calculations.js';

function fieldsOf(id: string): FieldData[] {
  const found = allCalculations.find((calculation) => calculation.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return fieldsData(found.spec.inputs);
}

function shown(fields: readonly FieldData[], values: FormValues): string[] {
  const place = { fields, path: [] };
  return countingFields(fields, place, place, values).map(({ key }) => key);
}

describe('a form shows', () => {
  const fields = fieldsOf('exhaust-mass-flow');
  const empty = emptyValues(fields);
  const from = (method: string): FormValues => ({ ...empty, airFrom: { text: method, unit: '' } });

  it('only the inputs of the method that is chosen', () => {
    expect(shown(fields, from('speed-density'))).toContain('manifoldPressure');
    expect(shown(fields, from('speed-density'))).not.toContain('airMassFlow');
    expect(shown(fields, from('air-mass-signal'))).toContain('airMassFlow');
    expect(shown(fields, from('air-mass-signal'))).not.toContain('manifoldPressure');
  });

  it('those of the default while none is chosen', () => {
    const smoke = fieldsOf('thermal-conductivity');
    expect(shown(smoke, emptyValues(smoke))).not.toContain('lambda');
    expect(shown(smoke, { ...emptyValues(smoke), model: { text: 'mixture', unit: '' } })).toContain('lambda');
  });

  it('what goes with another input only where that is given', () => {
    const [one, two]: FieldData[] = [
      { type: 'text', key: 'one', label: 'One', optional: true, maxLength: 9, example: '1' },
      { type: 'text', key: 'two', label: 'Two', optional: true, maxLength: 9, example: '2', when: [{ key: 'one' }] },
    ] as const;
    if (one === undefined || two === undefined) throw new Error('no fields');
    expect(shown([one, two], emptyValues([one, two]))).toEqual(['one']);
    expect(shown([one, two], { ...emptyValues([one, two]), one: { text: 'x', unit: '' } })).toEqual(['one', 'two']);
  });

  it('in a row what a choice outside of it asks for', () => {
    const row: FieldData = {
      type: 'text',
      key: 'mass',
      label: 'Mass',
      optional: true,
      maxLength: 9,
      example: '1',
      when: [{ key: 'by', is: ['mass'] }],
    };
    const by: FieldData = { type: 'text', key: 'by', label: 'By', optional: false, maxLength: 9, example: 'mass' };
    const around = { fields: [by], path: [] };
    const values = (text: string): FormValues => ({ by: { text, unit: '' }, rows: { rows: [{}] } });
    const inRow = (text: string) => countingFields([row], { fields: [row], path: ['rows', 0] }, around, values(text)).length;
    expect([inRow('mass'), inRow('volume')]).toEqual([1, 0]);
  });
});
