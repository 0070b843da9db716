import { describe, expect, it } from 'vitest';
import { registry } from '../../support/calculations.js';

const proven = {
  emissionComplete: true,
  saved: true,
  batterySupport: true,
  causeRepaired: true,
  regenerationVerified: true,
  dropVerified: true,
  sensorsPlausible: true,
};

function resultOf(input: Readonly<Record<string, unknown>>) {
  const result = registry.get('reset-advice')?.run(input);
  if (!result?.ok) throw new Error('refused as input');
  return result;
}

function advised(input: Readonly<Record<string, unknown>>, tone: string) {
  return resultOf(input)
    .advice.filter((advice) => advice.tone === tone)
    .map(({ text }) => text)
    .join(' ');
}

describe('advice on resets', () => {
  it('always warns against a reset that only puts out a lamp', () => {
    for (const filterWork of ['none', 'on-vehicle', 'off-vehicle', 'new', 'exchange', 'unknown']) {
      expect(advised({ filterWork }, 'do-not')).toContain('just to put out a lamp');
      expect(advised({ filterWork, ...proven }, 'do-not')).toContain('just to put out a lamp');
    }
  });

  it('warns against ash set to zero for every filter but a new one', () => {
    expect(advised({ filterWork: 'on-vehicle', ...proven }, 'do-not')).toContain('Do not set the ash to zero');
    expect(advised({ filterWork: 'exchange', ...proven }, 'do-not')).toContain('Do not set the ash to zero');
    expect(advised({ filterWork: 'new', ...proven }, 'do-not')).not.toContain('ash');
  });

  it('says that a filter will load again while the cause is not repaired, a new one as well', () => {
    expect(advised({ filterWork: 'new', ...proven, causeRepaired: false }, 'note')).toContain('load again');
    expect(advised({ filterWork: 'new', ...proven }, 'note')).not.toContain('load again');
  });

  it('refuses plainly while an emission part is missing', () => {
    expect(advised({ filterWork: 'new', ...proven, emissionComplete: false }, 'do-not')).toContain('emission part is missing');
  });

  it('lists what was taken as not worked on', () => {
    const listed = resultOf({ filterWork: 'none', ...proven, oilChanged: true }).assumptions.map(({ text }) => text);
    expect(listed.join(' ')).toContain('NOx sensor');
    expect(listed.join(' ')).not.toContain('Engine oil changed');
  });

  it('warns when a measured ash is not used, or smaller than its uncertainty', () => {
    const codes = (input: Readonly<Record<string, unknown>>) => resultOf({ ...proven, ...input }).warnings.map(({ code }) => code);
    const weighed = { ashBasis: 'weighed', residualAsh: '3 g' };
    expect(codes({ filterWork: 'on-vehicle', ...weighed })).toContain('ash_not_used');
    expect(codes({ filterWork: 'off-vehicle', ...weighed })).toContain('ash_within_uncertainty');
    expect(codes({ filterWork: 'off-vehicle', ...weighed, ashUncertainty: '2 g' })).toEqual([]);
  });
});
