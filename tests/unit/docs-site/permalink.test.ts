import { group, list, quantity, text } from '@wallflow/calculation';
import { absolutePressure } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { fromInput, toInput } from '../../../docs-site/src/calculator/form-input.js';
import { emptyValues } from '../../../docs-site/src/calculator/form-values.js';
import { fromHash, toHash } from '../../../docs-site/src/calculator/permalink.js';
import { allCalculations } from '../../support/calculations.js';

const density = allCalculations.find((calculation) => calculation.id === 'gas-density');
const fields = density === undefined ? [] : fieldsData(density.spec.inputs);

describe('fromHash', () => {
  it('names what today’s calculation does not ask for, instead of dropping it', () => {
    const link = fromHash(fields, '#version=1.0.0&pressure=101.3+kPa&gasTemperature=250+degC');
    expect(link?.unread).toEqual(['pressure = 101.3 kPa']);
    expect(fromHash(fields, '#version=1.0.0&gasTemperature=250+degC')?.unread).toEqual([]);
  });
});

describe('a group of inputs', () => {
  const pressure = quantity(absolutePressure, { symbol: 'p', label: 'Pressure', range: '0.5 <= x <= 1.1 bar', example: '1 bar' });
  const notes = list({ note: text({ label: 'Note', example: 'dry' }) }, { label: 'Notes', min: 0, max: 3, example: [] });
  const grouped = fieldsData(z.strictObject({ ambient: group({ pressure, notes }, { label: 'Ambient conditions' }) }));

  it('goes through a link and comes back as it was', () => {
    const input = { ambient: { pressure: '986 mbar', notes: [{ note: 'dry' }, { note: 'windy' }] } };
    const hash = toHash(grouped, { version: '1.0.0', values: fromInput(grouped, input) });
    expect(hash).toBe('#version=1.0.0&ambient.pressure=986+mbar&ambient.notes.1.note=dry&ambient.notes.2.note=windy');
    const back = fromHash(grouped, hash);
    expect(back?.unread).toEqual([]);
    expect(toInput(grouped, back?.values ?? {})).toEqual(input);
  });
});

describe('toHash', () => {
  it('is readable: keys, numbers and units as they stand in the form', () => {
    const values = fromInput(fields, { gasPressure: '101.3 kPa', gasTemperature: '250 ± 5 °C' });
    expect(toHash(fields, { version: '1.0.0', values })).toBe('#version=1.0.0&gasPressure=101.3+kPa&gasTemperature=250+±+5+degC');
  });

  it('keeps chosen units and stated results', () => {
    const values = fromInput(fields, { gasPressure: '101.3 kPa' });
    const hash = toHash(fields, { version: '1.0.0', values, units: { density: 'g/L' }, stated: { density: '0.675 kg/m³' } });
    expect(hash).toContain('show.density=g/L');
    expect(fromHash(fields, hash)).toMatchObject({ version: '1.0.0', units: { density: 'g/L' }, stated: { density: '0.675 kg/m³' } });
  });
});

describe('fromHash', () => {
  it('takes no notice of the name of a place on the page', () => {
    expect(fromHash(fields, '#sources')).toBeUndefined();
    expect(fromHash(fields, '')).toBeUndefined();
  });

  it('keeps what cannot be understood as it was typed', () => {
    const values = { ...emptyValues(fields), gasPressure: { text: '10%1 = & # + kPa?', unit: 'kPa' } };
    const link = fromHash(fields, toHash(fields, { version: '1.0.0', values }));
    expect(link?.values.gasPressure).toEqual(values.gasPressure);
  });

  it('survives nonsense', () => {
    for (const hash of ['#=', '#%E0%A4%A=1', '#gasPressure=%zz', '#__proto__=1&constructor=2', '#pressure.1.x=3', '#version', '#a=b=c']) {
      expect(() => fromHash(fields, hash)).not.toThrow();
    }
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });

  it('does not grow lists beyond what the input allows', () => {
    const list = allCalculations
      .map((calculation) => fieldsData(calculation.spec.inputs))
      .find((own) => own.some((field) => field.type === 'list'));
    const field = list?.find((candidate) => candidate.type === 'list');
    if (list === undefined || field === undefined) throw new Error('no calculation takes a list');
    const key = field.item[0]?.key ?? '';
    const link = fromHash(list, `#${field.key}.99999.${key}=1&${field.key}.1.${key}=2`);
    expect(link?.values[field.key]).toMatchObject({ rows: [{}] });
  });
});

describe('every published calculation', () => {
  it.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))(
    '%s: the example comes back from its link',
    (_, calculation) => {
      const own = fieldsData(calculation.spec.inputs);
      const values = fromInput(own, calculation.example as Record<string, unknown>);
      const link = fromHash(own, toHash(own, { version: calculation.version, values }));
      expect(link?.values).toEqual(values);
      expect(toInput(own, link?.values ?? {})).toEqual(toInput(own, values));
    },
  );

  it.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))(
    '%s: the form gives what the example gives',
    (_, calculation) => {
      const own = fieldsData(calculation.spec.inputs);
      const input = toInput(own, fromInput(own, calculation.example as Record<string, unknown>));
      const [direct, byForm] = [calculation.run(calculation.example), calculation.run(input)];
      expect(byForm.ok).toBe(true);
      if (direct.ok && byForm.ok) expect(byForm.outputs).toEqual(direct.outputs);
    },
  );
});
