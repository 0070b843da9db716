import { audit, replay } from '@wallflow/calculation/audit';
import { dynamicViscosityCalculation, gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { describe, expect, it } from 'vitest';
import { allCalculations, registry } from '../../support/calculations.js';

const input = { gasPressure: '1.013 ± 0.005 bar', gasTemperature: '250 °C' };
const versions = { '@wallflow/exhaust': '0.1.0' };
const record = audit(gasDensityCalculation, input, { versions, at: '2026-03-02T09:30:00Z' });

describe('the record of a run', () => {
  it('holds what went in, what stood in, the versions and what came out', () => {
    expect(record).toMatchObject({
      format: 'wallflow-audit/1',
      calculation: { id: 'gas-density', version: gasDensityCalculation.version },
      versions,
      at: '2026-03-02T09:30:00Z',
      input,
      defaults: [{ path: ['molarMass'], reason: expect.any(String) }],
      result: { ok: true },
    });
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
  });

  it('keeps a refused run too, and input that JSON cannot hold as far as it can be said', () => {
    const refused = audit(gasDensityCalculation, { gasPressure: '1 kg' });
    expect(refused.result).toMatchObject({ ok: false, issues: [{ code: 'wrong_kind' }, { code: 'missing_input' }] });
    const circle: Record<string, unknown> = {};
    circle.self = circle;
    expect(JSON.stringify(audit(gasDensityCalculation, circle)).length).toBeLessThan(20_000);
  });

  it('replays as the same, after a way through JSON too, for every calculation', () => {
    for (const calculation of allCalculations) {
      const kept = JSON.parse(JSON.stringify(audit(calculation, calculation.example)));
      expect(replay(kept, registry.get), calculation.id).toEqual({
        same: true,
        version: { recorded: calculation.version, now: calculation.version },
      });
    }
    expect(replay(audit(gasDensityCalculation, {}), registry.get)).toMatchObject({ same: true });
  });

  it('says where it differs, and with which versions', () => {
    const older = {
      ...record,
      calculation: { ...record.calculation, version: '0.9.0' },
      result: { ...record.result, outputs: { density: 0.7 } },
    };
    expect(replay(older, registry.get)).toMatchObject({
      same: false,
      version: { recorded: '0.9.0', now: gasDensityCalculation.version },
      differences: [{ path: ['outputs', 'density'], recorded: 0.7 }],
    });
    const other = { ...record, calculation: { ...record.calculation, id: dynamicViscosityCalculation.id } };
    expect(replay(other, registry.get)).toMatchObject({ same: false });
    const nearly = { ...record, result: { ...record.result, method: 'another' } };
    expect(replay(nearly, registry.get)).toMatchObject({ differences: [{ path: ['method'], recorded: 'another' }] });
  });

  it('counts the last bits of a number as nothing, and a thousandth as something', () => {
    if (!record.result.ok) throw new Error('refused');
    const density = Number(record.result.outputs.density);
    const changed = (value: number) => ({ ...record, result: { ...record.result, outputs: { density: value } } });
    expect(replay(changed(density * (1 + 1e-12)), registry.get)).toMatchObject({ same: true });
    expect(replay(changed(density * 1.001), registry.get)).toMatchObject({ same: false });
    expect(replay(changed(density * 1.001), registry.get, { within: 0.01 })).toMatchObject({ same: true });
  });

  it('does not take what is no record, or knows no calculation for', () => {
    for (const none of [null, 1, 'x', [], {}, { format: 'wallflow-audit/1' }]) {
      expect(replay(none, registry.get)).toMatchObject({ same: false, reason: 'not_a_record' });
    }
    expect(replay(record, () => undefined)).toMatchObject({ same: false, reason: 'unknown_calculation' });
  });
});
