import { type PassVerdictInput, passVerdict } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const input: PassVerdictInput = {
  firstDrop: 36_000,
  lowestBefore: 13_200,
  lastDrop: 9_200,
  uncertainty: 300,
  now: { drop: 9_192, uncertainty: 277 },
  limits: { clean: 4_500, accepted: 5_175, takeOff: 6_750, lowest: 3_825 },
  plateau: { drop: 4_870, uncertainty: 830 },
  nextGain: { share: 0.23, uncertainty: 0.03 },
  leastGain: 0.1,
};
const at = (drop: number, uncertainty = 100) => ({ lastDrop: drop, now: { drop, uncertainty }, uncertainty });
const small = { share: 0.02, uncertainty: 0.01 };

describe('whether another pass is worth it', () => {
  it('goes on while the gain is there and the plateau may be near a clean filter', () => {
    expect(passVerdict(input)).toBe('another-pass');
  });

  it('takes the filter off when the plateau is surely above 1.5 times clean, however much a pass still gains', () => {
    expect(passVerdict({ ...input, plateau: { drop: 8_000, uncertainty: 500 } })).toBe('take-off');
  });

  it('does not take it off on a plateau that is only perhaps that high', () => {
    expect(passVerdict({ ...input, plateau: { drop: 8_000, uncertainty: 700 } })).toBe('another-pass');
    expect(passVerdict({ ...input, plateau: { drop: 6_000, uncertainty: 100 } })).toBe('another-pass');
  });

  it('stops at a gain that is surely small: by flow between the limits, take off above them, plain stop if clean is not known', () => {
    expect(passVerdict({ ...input, ...at(6_000), plateau: undefined, nextGain: small })).toBe('between');
    expect(passVerdict({ ...input, ...at(9_200), plateau: undefined, nextGain: small })).toBe('take-off');
    expect(passVerdict({ ...input, ...at(9_200), limits: undefined, nextGain: small })).toBe('stop');
  });

  it('does not stop on a gain that may still be worth it', () => {
    expect(passVerdict({ ...input, nextGain: { share: 0.08, uncertainty: 0.02 } })).toBe('unclear');
  });

  it('is clean at what clean reads, and surely within what is accepted, but not perhaps within it', () => {
    expect(passVerdict({ ...input, lastDrop: 4_500 })).toBe('clean');
    expect(passVerdict({ ...input, ...at(4_900) })).toBe('clean');
    expect(passVerdict({ ...input, ...at(5_000) })).not.toBe('clean');
  });

  it('does not believe a drop surely below a clean filter', () => {
    expect(passVerdict({ ...input, ...at(3_600) })).toBe('too-open');
    expect(passVerdict({ ...input, ...at(3_700) })).toBe('clean');
  });

  it('calls a rise above the start worse, one above an earlier pass rising, and a fall within the error unclear', () => {
    expect(passVerdict({ ...input, lastDrop: 37_000 })).toBe('worse');
    expect(passVerdict({ ...input, lastDrop: 14_100 })).toBe('rising');
    expect(passVerdict({ ...input, lowestBefore: 36_000, lastDrop: 35_500, plateau: undefined })).toBe('unclear');
  });
});

describe('passes that are still worth it', () => {
  const plan = registry.get('cleaning-pass-plan');
  const run = (drops: readonly number[], leastGain: string) => {
    const result = plan?.run({
      readings: drops.map((drop, pass) => ({ pass, drop: `${drop} mbar` })),
      leastGain,
      dropUncertainty: '0.1 mbar',
    });
    if (result?.ok !== true) throw new Error('refused');
    return { count: (result.outputs as { passesWorth?: number }).passesWorth, codes: result.warnings.map(({ code }) => code) };
  };

  it('are left out, with a warning, where the curve falls too slowly to count them', () => {
    // 200 + 800 × 0.95^n: the gain falls below 1 % only after 52 passes more.
    expect(run([1000, 960, 922, 885.9], '1 %')).toEqual({ count: undefined, codes: ['passes_unknown'] });
  });

  it('are counted where it bends', () => {
    // 60 + 240 / 2^n: gains of 25, 16.7 and 10 % follow the third reading.
    expect(run([300, 180, 120], '12 %')).toEqual({ count: 2, codes: [] });
  });
});
