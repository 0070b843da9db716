import * as wf from '@wallflow/calculation';
import { draw, usCustomary } from '@wallflow/calculation/display';
import { length, ratio } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const own = wf.commonPractice('a rule for this test');

function measured(picture: wf.Picture) {
  return wf.defineCalculation({
    id: 'measured-length',
    version: '1.0.0',
    subject: 'filter',
    title: 'Length in millimetres',
    purpose: 'How long is it?',
    method: 'a rule',
    inputs: {
      rod: wf.quantity(length, { symbol: 'l', label: 'Rod', range: '0 <= l <= 1 m', example: '60 mm' }),
      allowed: wf.optional(wf.quantity(length, { symbol: 'l_0', label: 'Allowed', range: '0 <= l <= 1 m', example: '50 mm' })),
    },
    constants: { scale: wf.constant(ratio, 2, { symbol: 'f', label: 'Twice', source: own }) },
    outputs: { twice: wf.quantityOutput(length, { symbol: 'L', label: 'Twice the rod', units: ['mm', 'in'] }) },
    steps: [wf.formula('twice', 'scale * rod', own)],
    picture,
    compute: ({ rod }, { constants }) => ({ twice: constants.scale * rod }),
  });
}

const byAllowed = measured(
  wf.gauge('twice', [
    ['bad', 'below zero', '-allowed'],
    ['good', 'as allowed', 'allowed'],
    ['bad', 'too long'],
  ]),
);

function drawn(calculation: ReturnType<typeof measured>, input: Record<string, string>, options = {}) {
  return draw(calculation, input, calculation.calculate(input as never), options);
}

describe('a gauge', () => {
  it('has its reading with ±, its bands to their ends, and the band that the reading lies in', () => {
    // By hand: twice 20 ± 1 mm, against an allowed 50 mm.
    expect(drawn(byAllowed, { rod: '20 ± 1 mm', allowed: '50 mm' })).toMatchObject({
      type: 'gauge',
      label: 'Twice the rod',
      reading: { value: 40, spread: 2 },
      bands: [
        { label: 'below zero', upTo: { value: -50 }, here: false },
        { label: 'as allowed', upTo: { value: 50, text: '50 mm' }, here: true },
        { label: 'too long', here: false },
      ],
    });
    expect(drawn(byAllowed, { rod: '26 mm', allowed: '50 mm' })).toMatchObject({ bands: [{}, { here: false }, { here: true }] });
  });

  it('follows the unit that is chosen, and the system', () => {
    // 25.4 mm are an inch.
    const inch = { reading: { value: 2 }, bands: [{}, { upTo: { value: 4 } }, {}] };
    const input = { rod: '25.4 mm', allowed: '101.6 mm' };
    expect(drawn(byAllowed, input, { units: { twice: 'in' } })).toMatchObject(inch);
    expect(drawn(byAllowed, input, { system: usCustomary })).toMatchObject(inch);
  });

  it('is not drawn where an end of a band is not known', () => {
    expect(drawn(byAllowed, { rod: '20 mm' })).toBeUndefined();
  });

  it('of a name that does not exist throws when it is defined', () => {
    expect(() => measured(wf.gauge('thrice', [['good', 'any']]))).toThrow('unknown name thrice');
  });
});

describe('bars', () => {
  const both = measured(wf.bars({ rod: 'The rod', twice: 'Twice', allowed: 'Allowed' }));

  it('stand in one unit, without those that are not known', () => {
    expect(drawn(both, { rod: '20 mm' })).toMatchObject({
      bars: [
        { label: 'The rod', value: 20 },
        { label: 'Twice', value: 40 },
      ],
    });
  });

  it('have other words in another language', () => {
    const other = wf.withTexts(both, { language: 'de', calculations: { 'measured-length': { 'picture.1': 'Der Stab' } }, sentences: {} });
    expect(drawn(other as typeof both, { rod: '20 mm' })).toMatchObject({ bars: [{ label: 'Der Stab' }, { label: 'Twice' }] });
  });
});
