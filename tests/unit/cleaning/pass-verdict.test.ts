import { type PassVerdictInput, passVerdict } from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

const input: PassVerdictInput = {
  firstDrop: 36_000,
  lastDrop: 9_200,
  uncertainty: 300,
  goal: 4_500,
  plateau: { drop: 4_870, uncertainty: 830 },
  nextGain: 0.23,
  leastGain: 0.1,
};

describe('whether another pass is worth it', () => {
  it('goes on while the gain is there and the plateau can reach a clean filter', () => {
    expect(passVerdict(input)).toBe('another-pass');
  });

  it('takes the filter off when the plateau is surely above a clean one, however much a pass still gains', () => {
    expect(passVerdict({ ...input, plateau: { drop: 8_000, uncertainty: 500 } })).toBe('take-off');
  });

  it('does not take it off on a plateau that is only perhaps above a clean one', () => {
    expect(passVerdict({ ...input, plateau: { drop: 6_000, uncertainty: 900 } })).toBe('another-pass');
  });

  it('stops at a small gain, and says take off only if clean is known and not reached', () => {
    expect(passVerdict({ ...input, nextGain: 0.05, goal: undefined })).toBe('stop');
    expect(passVerdict({ ...input, nextGain: 0.05 })).toBe('take-off');
  });

  it('is clean at the goal itself and not above it', () => {
    expect(passVerdict({ ...input, lastDrop: 4_500 })).toBe('clean');
    expect(passVerdict({ ...input, lastDrop: 4_501 })).not.toBe('clean');
  });

  it('calls a rise beyond the error worse, and a fall within the error unclear', () => {
    expect(passVerdict({ ...input, lastDrop: 37_000 })).toBe('worse');
    expect(passVerdict({ ...input, lastDrop: 35_500, plateau: undefined, nextGain: 0.2 })).toBe('unclear');
  });
});
