import { describe, expect, it } from 'vitest';
import { entryAt, pastedRows, withEntry, withRowAdded, withRowRemoved } from '../../../docs-site/src/calculator/edit-values.js';
import { toInput } from '../../../docs-site/src/calculator/form-input.js';
import { asExample, emptyValues, isBlank, keysOfExample } from '../../../docs-site/src/calculator/form-values.js';
import { changeUnit, quantityEntry } from '../../../docs-site/src/calculator/unit-text.js';
import type { Entry, FieldData } from '../../../docs-site/src/data/types.js';

const flow: FieldData = {
  type: 'quantity',
  key: 'flow',
  label: 'Flow',
  optional: false,
  kind: 'massFlow',
  symbolTex: '\\dot m',
  units: [
    { id: 'kg/h', symbol: 'kg/h' },
    { id: 'g/s', symbol: 'g/s' },
  ],
  unit: 'kg/h',
  range: 'from 0 kg/h to 5000 kg/h',
  example: '180 kg/h',
};
const name: FieldData = { type: 'text', key: 'name', label: 'Name', optional: true, maxLength: 20, example: 'idle' };
const fields: readonly FieldData[] = [
  flow,
  { type: 'list', key: 'points', label: 'Points', optional: false, min: 1, max: 5, item: [name, flow] },
];

describe('the values of a form', () => {
  it('start empty, with the rows that a list needs at least', () => {
    const values = emptyValues(fields);
    expect(entryAt(values, ['flow'])).toEqual({ text: '', unit: 'kg/h' });
    expect(values.points).toEqual({ rows: [{ name: { text: '', unit: '' }, flow: { text: '', unit: 'kg/h' } }] });
  });

  it('start with the unit of the example, not with the first that is offered', () => {
    const values = emptyValues([{ ...flow, unit: 'g/s', example: '50 g/s' }]);
    expect(values.flow).toEqual({ text: '', unit: 'g/s' });
  });

  it('change at one place and nowhere else', () => {
    const before = emptyValues(fields);
    const after = withEntry(before, ['points', 0, 'flow'], { text: '5', unit: 'g/s' });
    expect(entryAt(after, ['points', 0, 'flow'])).toEqual({ text: '5', unit: 'g/s' });
    expect(entryAt(before, ['points', 0, 'flow'])).toEqual({ text: '', unit: 'kg/h' });
    expect(after.flow).toBe(before.flow);
  });

  it('leave empty fields out of the input', () => {
    const values = withEntry(emptyValues(fields), ['points', 0, 'flow'], { text: '5', unit: 'g/s' });
    expect(toInput(fields, values)).toEqual({ points: [{ flow: '5 g/s' }] });
  });
});

describe('values of the example', () => {
  const example = asExample({ flow: { text: '180', unit: 'kg/h' }, points: { rows: [{ name: { text: 'idle', unit: '' } }] } });

  it('are marked, in rows too, until they are replaced', () => {
    expect(keysOfExample(example)).toEqual(['flow', 'points']);
    expect(keysOfExample(withEntry(example, ['flow'], { text: '175', unit: 'kg/h', own: true }))).toEqual(['points']);
  });

  it('stay marked when their unit is changed', () => {
    const flow = entryAt(example, ['flow']) as Entry;
    expect(changeUnit('massFlow', flow, 'g/s')).toMatchObject({ text: '50', unit: 'g/s', example: true });
  });

  it('are none in an empty form', () => {
    expect(isBlank(emptyValues(fields))).toBe(true);
    expect(keysOfExample(emptyValues(fields))).toEqual([]);
    expect(isBlank(withEntry(emptyValues(fields), ['points', 0, 'name'], { text: 'idle', unit: '' }))).toBe(false);
  });
});

describe('rows', () => {
  it('are added with the units of the row above', () => {
    const list = { rows: [{ name: { text: 'idle', unit: '' }, flow: { text: '5', unit: 'g/s' } }] };
    expect(withRowAdded(list, [name, flow]).rows[1]).toEqual({ name: { text: '', unit: '' }, flow: { text: '', unit: 'g/s' } });
  });

  it('are removed by their place', () => {
    const list = { rows: [{ name: { text: 'a', unit: '' } }, { name: { text: 'b', unit: '' } }] };
    expect(withRowRemoved(list, 0).rows).toEqual([{ name: { text: 'b', unit: '' } }]);
  });

  it.each([
    ['tabs', 'idle\t5\nfast\t60'],
    ['semicolons and decimal commas', 'idle;5\nfast;60'],
    ['commas and empty lines', 'idle,5\r\n\r\nfast, 60\n'],
  ])('are pasted with %s', (_, text) => {
    const { rows } = pastedRows(text, [name, flow], ['', 'g/s']);
    expect(rows).toHaveLength(2);
    expect(rows[1]).toEqual({ name: { text: 'fast', unit: '', own: true }, flow: { text: '60', unit: 'g/s', own: true } });
  });

  it('take a choice by its words or by its key', () => {
    const options = [{ key: 'hot', label: 'Hot engine' }];
    const state: FieldData = { type: 'choice', key: 'state', label: 'State', optional: false, options, example: 'Hot engine' };
    const { rows } = pastedRows('hot engine;5\nhot;6\nlukewarm;7', [state, flow], ['', 'kg/h']);
    expect(rows.map((row) => row.state)).toEqual(['hot', 'hot', 'lukewarm'].map((text) => ({ text, unit: '', own: true })));
  });

  it('keep decimal commas when the cells are parted otherwise', () => {
    expect(pastedRows('idle;5,5', [name, flow], ['', 'g/s']).rows[0]?.flow).toEqual({ text: '5,5', unit: 'g/s', own: true });
  });

  it('move a unit that stands in a cell into the select', () => {
    const { rows } = pastedRows('idle;5,5 kg/s\nfast;60', [name, flow], ['', 'g/s'], quantityEntry);
    expect(rows.map((row) => row.flow)).toEqual([
      { text: '5,5', unit: 'kg/s', own: true },
      { text: '60', unit: 'g/s', own: true },
    ]);
  });
});
