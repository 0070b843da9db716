import { describe, expect, it } from 'vitest';
import { registry } from '../support/calculations.js';
import { compareCurve, readMeasuredCurves } from '../support/measured-curve.js';

describe.each(readMeasuredCurves())('$id: $title', (curve) => {
  const rows = compareCurve(curve, registry);

  it('runs every model at every point, or says why it cannot', () => {
    if (curve.notComputable === undefined) expect(rows).toHaveLength(curve.points.length);
    else expect(rows).toEqual([]);
    // A mass that is read back from a drop may be nothing, a drop may not.
    const masses = new Set(curve.models.filter(({ output }) => /sootMass/i.test(output)).map(({ name }) => name));
    for (const { models } of rows) {
      for (const [name, { value }] of Object.entries(models)) {
        if (masses.has(name)) expect(value).toBeGreaterThanOrEqual(0);
        else expect(value).toBeGreaterThan(0);
      }
    }
  });

  it.each(curve.checks)('$model, points $from to $to, keeps what is said of it', ({ model, from, to, least, most, warning }) => {
    for (const row of rows.slice(from, to + 1)) {
      const found = row.models[model];
      if (found === undefined) throw new Error(`no model ${model}`);
      const codes = found.warnings.map((given) => given.code);
      if (least !== undefined) expect.soft(found.difference, row.at).toBeGreaterThanOrEqual(least);
      if (most !== undefined) expect.soft(found.difference, row.at).toBeLessThanOrEqual(most);
      if (warning !== undefined) expect.soft(codes, row.at).toContain(warning);
    }
  });
});
