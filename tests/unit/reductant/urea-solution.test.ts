import {
  indexSlope,
  iso22241Limits,
  molarityFromIndexDifference,
  qualityVerdict,
  refractiveIndexAt20,
  ureaMolarity,
  ureaSolutionDensity,
  ureaSolutionDensityAt20,
} from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

const fractionOf = (gramsPerGramOfWater: number) => gramsPerGramOfWater / (1 + gramsPerGramOfWater);

describe('urea in water', () => {
  // Pace 1986, grams of urea per gram of water at a molarity, 25 °C; from memory, as are the two index points.
  it.each([
    [6, 0.495],
    [8, 0.755],
  ])('%f mol/L is %f g of urea per g of water', (molarity, grams) => {
    expect(ureaMolarity(fractionOf(grams))).toBeCloseTo(molarity, 2);
  });

  // The cubic of the source worked by hand: 117.66 · 0.05 + 29.753 · 0.0025 + 185.56 · 0.000125 = 5.98058.
  it('follows the cubic in the index', () => {
    expect(molarityFromIndexDifference(0.05)).toBeCloseTo(5.98058, 5);
    expect(molarityFromIndexDifference(0)).toBe(0);
  });

  it('meets water and the middle of ISO 22241-1', () => {
    expect(refractiveIndexAt20(0)).toBeCloseTo(1.33299, 10);
    expect(refractiveIndexAt20(0.325)).toBeCloseTo(1.38285, 10);
    expect(ureaSolutionDensityAt20(0)).toBeCloseTo(998.207, 9);
    expect(ureaSolutionDensityAt20(0.325)).toBeCloseTo(1090, 9);
  });

  // The relation at 25 °C itself gives 1086.652 kg/m³ for 32.5 %; the line of the trade from 20 °C gives 1088.
  it('stays within 2 kg/m³ of the relation at 25 °C', () => {
    expect(Math.abs(ureaSolutionDensity(0.325, 298.15) - 1086.652)).toBeLessThan(2);
  });

  // Lorentz–Lorenz: (n² − 1)(n² + 2)/(6 n) · 0.4/1090 with n = 1.38285.
  it('loses index with temperature as its density asks for', () => {
    const n = 1.38285;
    const expected = (((n * n - 1) * (n * n + 2)) / (6 * n)) * (0.4 / 1090);
    expect(indexSlope(0.325) / expected).toBeCloseTo(1, 1);
  });

  it('knows the limits of ISO 22241-1:2019', () => {
    expect(iso22241Limits).toEqual({ ureaFraction: [0.318, 0.332], refractiveIndex: [1.3814, 1.3843], density: [1087, 1093] });
  });
});

describe('verdict on quality', () => {
  const limits = [10, 20] as const;
  it.each([
    [15, 1, 'within'],
    [10, 1, 'near-lower-limit'],
    [8, 1, 'too-weak'],
    [20, 1, 'near-upper-limit'],
    [22, 1, 'too-strong'],
    [9.5, 1, 'near-lower-limit'],
  ])('%f ± %f is %s', (value, uncertainty, verdict) => {
    expect(qualityVerdict(value, uncertainty, limits)).toBe(verdict);
  });
});
