import { rinsesToReach, shareAfterRinses } from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const volume = fc.double({ min: 1e-5, max: 1e-2, noNaN: true });
const input = fc.record({ heldVolume: volume, rinseVolume: volume });

it('the same water in more portions never leaves more behind', () => {
  fc.assert(
    fc.property(input, fc.integer({ min: 1, max: 20 }), ({ heldVolume, rinseVolume }, rinses) => {
      const fewer = shareAfterRinses({ heldVolume, rinseVolume: rinseVolume / rinses }, rinses);
      const more = shareAfterRinses({ heldVolume, rinseVolume: rinseVolume / (rinses + 1) }, rinses + 1);
      expect(more).toBeLessThanOrEqual(fewer * (1 + 1e-12));
    }),
  );
});

it('the number of rinses is the first that is enough', () => {
  fc.assert(
    fc.property(input, fc.double({ min: 1e-4, max: 0.99, noNaN: true }), (rinse, share) => {
      const needed = rinsesToReach(rinse, share);
      expect(shareAfterRinses(rinse, needed)).toBeLessThanOrEqual(share * (1 + 1e-9));
      if (needed > 0) expect(shareAfterRinses(rinse, needed - 1)).toBeGreaterThan(share);
    }),
  );
});
