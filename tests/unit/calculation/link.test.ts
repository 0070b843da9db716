import { formOf } from '@wallflow/calculation';
import { linkFields, linkHash, readLinkHash } from '@wallflow/calculation/link';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

describe('a link to a calculation', () => {
  it('brings back the input of every example, which gives the same result', () => {
    for (const calculation of allCalculations) {
      const hash = linkHash({ version: calculation.version, input: calculation.example as Record<string, unknown>, units: { x: 'mm' } });
      const link = readLinkHash(linkFields(formOf(calculation.spec.inputs)), hash);
      expect(link, calculation.id).toMatchObject({ version: calculation.version, units: { x: 'mm' }, stated: {}, unread: [] });
      const [before, after] = [calculation.runUnknown(calculation.example), calculation.runUnknown(link?.input)];
      expect(after.ok && after.outputs, calculation.id).toEqual(before.ok && before.outputs);
    }
  });

  it('stays readable, and writes records as texts', () => {
    const hash = linkHash({ version: '1.0.0', input: { flow: { value: 120, unit: 'kg/h', uncertainty: 5 }, place: { height: '3 m' } } });
    expect(hash).toBe('#version=1.0.0&flow=120+±+5+kg/h&place.height=3+m');
  });

  it('says what it holds that is no input, and reads nothing from a place on a page', () => {
    const fields = [{ key: 'flow' }, { key: 'runs', max: 2, inner: [{ key: 'mass' }] }];
    expect(readLinkHash(fields, '#flow=1+kg&runs.1.mass=2+g&runs.3.mass=3+g&__proto__=x&flow.2=4')).toEqual({
      input: { flow: '1 kg', runs: [{ mass: '2 g' }] },
      units: {},
      stated: {},
      unread: ['runs.3.mass = 3 g', '__proto__ = x', 'flow.2 = 4'],
    });
    expect(readLinkHash(fields, '#working')).toBeUndefined();
    expect(readLinkHash(fields, '#flow=%E0%A4')?.input).toEqual({ flow: '%E0%A4' });
  });
});
