import { cornerWall, type FilterGeometryInput, filterChannels, touchingWidthRatio } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const options = { numRuns: 500, seed: 20_240_229 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyGeometry: fc.Arbitrary<FilterGeometryInput> = fc.record({
  cellDensity: number(31_000, 1_550_000),
  wallThickness: number(25e-6, 1e-3),
  frontalArea: number(1e-3, 0.5),
  filterLength: number(0.1, 1),
  plugLength: number(0, 0.04),
  layout: fc.constantFrom('alternate' as const, 'three-to-one' as const),
  inletWidthRatio: number(0.5, 3),
});

describe('cells of a filter', () => {
  it('never overlap: wall is left between the corners of diagonal neighbours, and less is open than the face', () => {
    fc.assert(
      fc.property(anyGeometry, (given) => {
        const geometry = given.layout === 'alternate' ? given : { ...given, inletWidthRatio: 1 };
        const channels = filterChannels(geometry);
        if (channels === undefined) return;
        const { inletWidth, outletWidth, inletCount, outletCount } = channels;
        const pitch = 1 / Math.sqrt(geometry.cellDensity);
        expect(Math.max(inletWidth, outletWidth)).toBeLessThan(pitch);
        expect(cornerWall(geometry.cellDensity, channels)).toBeGreaterThan(0);
        expect((inletCount * inletWidth ** 2 + outletCount * outletWidth ** 2) / geometry.frontalArea).toBeLessThan(1);
        expect((inletWidth + outletWidth + 2 * geometry.wallThickness) / (2 * pitch)).toBeCloseTo(1, 12);
      }),
      options,
    );
  });

  it('are refused from the ratio on at which the wider ones touch, on either side of 1', () => {
    fc.assert(
      fc.property(anyGeometry, fc.boolean(), number(0.001, 0.3), (given, wideOutlets, beyond) => {
        const touching = touchingWidthRatio(given.cellDensity, given.wallThickness);
        fc.pre(Number.isFinite(touching));
        const at = (ratio: number) => filterChannels({ ...given, layout: 'alternate', inletWidthRatio: wideOutlets ? 1 / ratio : ratio });
        expect(at(touching * (1 + beyond))).toBeUndefined();
        expect(at(1 + (touching - 1) / (1 + beyond))).toBeDefined();
      }),
      options,
    );
  });

  it('fit at the limit that the refusal names', () => {
    const geometry = registry.get('filter-geometry');
    if (geometry === undefined) throw new Error('no filter-geometry');
    for (const [cellDensity, wallThickness, wrong] of [
      ['200 cpsi', '12 mil', '1.6'],
      ['200 cpsi', '8 mil', '1.3'],
      ['300 cpsi', '9 mil', '1.5'],
      ['300 cpsi', '9 mil', '0.6'],
    ] as const) {
      const filter = { cellDensity, wallThickness, filterDiameter: '144 mm', filterLength: '152 mm' };
      const refused = geometry.run({ ...filter, inletWidthRatio: wrong });
      const [issue] = refused.ok ? [] : refused.issues;
      const limit = issue?.code === 'inconsistent_inputs' ? /(\d+\.\d+)\.$/.exec(issue.reason)?.[1] : undefined;
      if (limit === undefined) throw new Error(`no limit for ${cellDensity}`);
      expect(geometry.run({ ...filter, inletWidthRatio: limit }).ok).toBe(true);
      const further = Number(limit) + (Number(limit) > 1 ? 0.01 : -0.01);
      expect(geometry.run({ ...filter, inletWidthRatio: String(further) }).ok).toBe(false);
    }
  });
});
