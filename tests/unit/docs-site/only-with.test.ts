import { calculations } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';
import { onlyWith } from '../../../docs-site/plugins/calculations/only-with.js';
import { methodFor, unusedBy } from '../../../docs-site/src/calculator/method-of.js';
import type { FieldData } from '../../../docs-site/src/data/types.js';

function found(id: string) {
  const calculation = calculations.find((one) => one.id === id);
  if (calculation === undefined) throw new Error(`no ${id}`);
  return onlyWith(calculation);
}

describe('inputs that count with some options only', () => {
  it('are those that the definition says', () => {
    const flow = found('exhaust-mass-flow');
    expect(flow.get('airMassFlow')).toEqual({ choice: 'airFrom', options: ['air-mass-signal'] });
    expect(flow.get('engineSpeed')).toEqual({ choice: 'airFrom', options: ['air-mass-per-stroke', 'speed-density'] });
    expect(flow.get('manifoldPressure')).toEqual({ choice: 'airFrom', options: ['speed-density'] });
  });

  it('leave out what counts with every option, and what is not missed with any', () => {
    expect(found('exhaust-mass-flow').has('fuelMassFlow')).toBe(false);
    // Where it is stated it counts with any substrate; its example is the value of one of them.
    expect(found('regeneration-heat').has('bulkDensity')).toBe(false);
  });
});

const choice: FieldData = {
  type: 'choice',
  key: 'from',
  label: 'Air flow from',
  optional: false,
  example: 'Sensor',
  options: [
    { key: 'sensor', label: 'Sensor' },
    { key: 'stroke', label: 'Stroke' },
  ],
};
const text = (key: string, option: string) =>
  ({
    type: 'text',
    key,
    label: key,
    optional: true,
    maxLength: 9,
    example: '1',
    onlyWith: { choice: 'from', options: [option] },
  }) as const;
const fields = [choice, text('signal', 'sensor'), text('charge', 'stroke')];

describe('the method of what is typed', () => {
  it('is chosen with it, until one was chosen by hand', () => {
    expect(methodFor(fields, text('signal', 'sensor'), { from: { text: '', unit: '' } })).toEqual({ choice: 'from', option: 'sensor' });
    expect(methodFor(fields, text('charge', 'stroke'), { from: { text: 'sensor', unit: '', example: true } })?.option).toBe('stroke');
    expect(methodFor(fields, text('charge', 'stroke'), { from: { text: 'sensor', unit: '', own: true } })).toBeUndefined();
  });

  it('tells an input that it leaves out, and the way to the one that uses it', () => {
    const values = { from: { text: 'sensor', unit: '', own: true } } as const;
    expect(unusedBy(fields, text('charge', 'stroke'), values)).toEqual({
      note: 'Not used: “Air flow from” is set to “Sensor”.',
      choice: 'from',
      option: 'stroke',
      label: 'Stroke',
    });
    expect(unusedBy(fields, text('signal', 'sensor'), values)).toBeUndefined();
  });
});
