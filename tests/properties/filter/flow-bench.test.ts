import { benchDropAt, benchRatioUncertainty, benchVerdict, type FlowStateOfDrop } from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const limits = { lowest: 0.85, highest: 1.15 };
const share = fc.double({ min: 0, max: 1, noNaN: true });
const state: fc.Arbitrary<FlowStateOfDrop> = fc.record({
  volumeFlow: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
  viscosity: fc.double({ min: 1.6e-5, max: 2.1e-5, noNaN: true }),
  density: fc.double({ min: 0.6, max: 1.5, noNaN: true }),
});

it('a drop converted there and back, with the inertial part that it has there, is the drop again', () => {
  fc.assert(
    fc.property(state, state, share, (bench, ofNew, inertialShare) => {
      const there = benchDropAt(2000, bench, ofNew, inertialShare);
      const back = benchDropAt(there.drop, ofNew, bench, there.inertialShare);
      expect(back.drop).toBeCloseTo(2000, 6);
      expect(back.inertialShare).toBeCloseTo(inertialShare, 9);
    }),
  );
});

it('the uncertainty of the flow counts as a small change of the flow changes the drop', () => {
  fc.assert(
    fc.property(state, state, share, (bench, ofNew, inertialShare) => {
      const step = 1e-5;
      const at = (factor: number) => benchDropAt(2000, { ...bench, volumeFlow: bench.volumeFlow * factor }, ofNew, inertialShare).drop;
      const slope = (at(1 - step) - at(1 + step)) / (2 * step * at(1));
      const there = benchDropAt(2000, bench, ofNew, inertialShare).inertialShare;
      expect(benchRatioUncertainty({ drop: 0, flow: 1, baseline: 0 }, there)).toBeCloseTo(slope, 6);
    }),
  );
});

it('passes no reading outside the limits, however exact, and none more on a worse bench', () => {
  const ratio = fc.double({ min: 0, max: 3, noNaN: true });
  const uncertainty = fc.double({ min: 0, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(ratio, uncertainty, uncertainty, (found, fine, more) => {
      const verdict = benchVerdict(found, fine, limits);
      if (found < limits.lowest || found > limits.highest) expect(verdict).not.toBe('pass');
      const worse = benchVerdict(found, fine + more, limits);
      if (worse !== 'not-decided') expect(worse).toBe(verdict);
    }),
  );
});
