import { weightedEmission } from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const amount = fc.double({ min: 0, max: 1000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

it('lies between the two emissions, and the two adjustments are all that lies between them', () => {
  fc.assert(
    fc.property(amount, amount, share, (without, during, part) => {
      const { average, upward, downward } = weightedEmission({ without, during, share: part });
      const slack = 1e-9 * (without + during + 1);
      expect(average).toBeGreaterThanOrEqual(Math.min(without, during) - slack);
      expect(average).toBeLessThanOrEqual(Math.max(without, during) + slack);
      expect(upward + downward).toBeCloseTo(during - without, 6);
    }),
  );
});
