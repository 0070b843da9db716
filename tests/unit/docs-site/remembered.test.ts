import { describe, expect, it } from 'vitest';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { fromInput } from '../../../docs-site/src/calculator/form-input.js';
import { fitting, merged, stands, typedHere, usable, withRemembered } from '../../../docs-site/src/calculator/remembered.js';
import { rememberedInputs } from '../../../docs-site/src/data/remembered-inputs.js';
import type { FormValues } from '../../../docs-site/src/data/types.js';
import { allCalculations } from '../../support/calculations.js';

const found = allCalculations.find((calculation) => calculation.id === 'clean-pressure-drop');
if (found === undefined) throw new Error('not published');
const fields = fieldsData(found.spec.inputs);
const example: FormValues = fromInput(fields, found.example as Record<string, unknown>);
const none = new Map<string, string>();
const diameter = { kind: 'length', text: '144', unit: 'mm' };
const depth = { kind: 'length', text: '152', unit: 'mm' };

describe('what is remembered of a form', () => {
  it('is what was typed about filter and engine, and no reading', () => {
    const values: FormValues = {
      ...example,
      filterDiameter: { text: ' 144 ', unit: 'mm', own: true },
      exhaustVolumeFlow: { text: '180', unit: 'm3/h', own: true },
    };
    expect(typedHere(fields, values, none)).toEqual({ filterDiameter: diameter });
  });

  it('is nothing of the example, nothing empty, and nothing that was refused', () => {
    expect(typedHere(fields, example, none)).toEqual({});
    const values: FormValues = { ...example, filterDiameter: { text: 'round', unit: 'mm', own: true } };
    expect(typedHere(fields, values, new Map([['filterDiameter', 'is not a number']]))).toEqual({});
  });

  it('names inputs that calculations ask for', () => {
    const known = new Set(allCalculations.flatMap((calculation) => fieldsData(calculation.spec.inputs).map(({ key }) => key)));
    for (const key of rememberedInputs) expect(known, key).toContain(key);
  });
});

describe('two filters', () => {
  const before = { filterDiameter: diameter, filterLength: depth };

  it('are never mixed: another value on another page leaves only what was typed there', () => {
    const other = { filterDiameter: { ...diameter, text: '190' } };
    expect(merged(before, other, new Set())).toEqual(other);
  });

  it('are told from a correction in the same form, and from an addition', () => {
    const corrected = { filterDiameter: { ...diameter, text: '145' } };
    expect(merged(before, corrected, new Set(['filterDiameter']))).toEqual({ ...before, ...corrected });
    const more = { cellDensity: { kind: 'cellDensity', text: '200', unit: 'cpsi' } };
    expect(merged(before, more, new Set())).toEqual({ ...before, ...more });
  });
});

describe('the filter from before', () => {
  it('fits by key and kind, and a choice only where it exists', () => {
    expect(fitting(fields, { filterDiameter: diameter, displacement: { kind: 'volume', text: '2', unit: 'L' } })).toEqual({
      filterDiameter: diameter,
    });
    expect(fitting(fields, { filterDiameter: { ...diameter, kind: 'volume' } })).toEqual({});
    expect(fitting(fields, { layout: { kind: 'choice', text: 'none such', unit: '' } })).toEqual({});
  });

  it('fills in its values and empties what stands for them', () => {
    const volume = { kind: 'volume', text: '2.5', unit: 'L' };
    const values = withRemembered(fields, { ...example, filterDiameter: { text: '190', unit: 'mm' } }, { filterVolume: volume });
    expect(values.filterVolume).toEqual({ text: '2.5', unit: 'L' });
    expect(values.filterDiameter).toEqual({ text: '', unit: 'mm' });
    expect(values.gasTemperature).toBe(example.gasTemperature);
    expect(stands(values, { filterVolume: volume })).toBe(true);
    expect(stands(example, { filterVolume: volume })).toBe(false);
  });

  it('is nothing where something else was stored', () => {
    expect(usable({ filterDiameter: diameter })).toEqual({ filterDiameter: diameter });
    for (const stored of [null, 5, 'x', [1], { filterDiameter: 5 }, { filterDiameter: { ...diameter, text: 'x'.repeat(500) } }])
      expect(usable(stored)).toEqual({});
    expect(usable({ pressureDrop: { kind: 'differentialPressure', text: '360', unit: 'mbar' } })).toEqual({});
  });
});
