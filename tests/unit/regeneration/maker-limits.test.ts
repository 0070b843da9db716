import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const calculation = registry.get('regeneration-permission');
const good = calculation?.example as Record<string, unknown>;

function ask(change: Record<string, unknown>) {
  const result = calculation?.run({ ...good, ...change });
  if (!result?.ok) throw new Error(JSON.stringify(result?.ok === false ? result.issues : 'no calculation'));
  const outputs = result.outputs as unknown as {
    verdict: string;
    next: string;
    refusedBy?: string;
    conditions: { condition: string; result: string; measured?: string; limit: string; reason: string; action?: string }[];
  };
  const loose = result.warnings.filter((warning) => warning.code === 'maker_limit_looser');
  return { ...outputs, loose, intermediates: result.intermediates as Record<string, number | undefined> };
}

/** Of every maker's limit: tighter than practice, looser, and beyond all reason; with a reading that only the last would let through. */
const limits: readonly (readonly [string, string, string, string, Record<string, unknown>])[] = [
  ['makerMaximumSootLoad', '4.8 g/L', '5.5 g/L', '20 g/L', { sootLoad: '14 g/L', measuredSootLoad: undefined }],
  ['makerMaximumAttempts', '1', '3', '20', { failedAttempts: 9 }],
  ['makerMaximumSensorZero', '1.5 mbar', '5 mbar', '40 mbar', { pressureSensorZero: '30 mbar' }],
  ['makerMinimumCoolantTemperature', '80 °C', '70 °C', '10 °C', { coolantTemperature: '20 °C' }],
  ['makerMaximumCoolantTemperature', '95 °C', '105 °C', '130 °C', { coolantTemperature: '118 °C' }],
  ['makerMinimumOilTemperature', '70 °C', '50 °C', '0 °C', { oilTemperature: '10 °C' }],
  ['makerMaximumOilTemperature', '110 °C', '120 °C', '180 °C', { oilTemperature: '150 °C' }],
  ['makerMaximumFuelInOil', '3 %', '5 %', '50 %', { fuelInOil: '30 %' }],
  ['makerMinimumFuelLevel', '30 %', '20 %', '1 %', { fuelLevel: '2 %' }],
  ['makerMinimumRestVoltage', '12.5 V', '12.2 V', '9 V', { batteryAtRest: '10 V' }],
  ['makerMinimumRunningVoltage', '13.8 V', '13.1 V', '11 V', { batteryRunning: '12 V' }],
  ['makerMinimumClearance', '2.5 m', '1.5 m', '0.01 m', { clearance: '5 cm' }],
];

const count = (key: string, text: string) => (key === 'makerMaximumAttempts' ? Number(text) : text);

describe("a maker's limit", () => {
  it('is known here for every input that takes one, but for the least load, which can waste fuel only', () => {
    const taken = Object.keys(calculation?.spec.inputs.shape ?? {}).filter((key) => key.startsWith('maker'));
    expect([...limits.map(([key]) => key), 'makerMinimumSootLoad'].sort()).toEqual(taken.sort());
  });

  it.each(limits)('%s: tighter than practice is free', (key, tighter) => {
    const found = ask({ [key]: count(key, tighter) });
    expect(found.loose).toEqual([]);
    expect(found.verdict).toBe('permitted');
  });

  it.each(limits)('%s: looser than practice is warned of by name', (key, _, looser) => {
    const found = ask({ [key]: count(key, looser) });
    expect(found.loose).toHaveLength(1);
    expect(found.loose[0]?.path).toEqual([key]);
    expect(found.loose[0]?.text).toContain(looser);
    expect(found.verdict).toBe('permitted');
  });

  it.each(limits)('%s: beyond the outer bound is refused with its reason, even where the reading is good', (key, _, __, beyond) => {
    const found = ask({ [key]: count(key, beyond) });
    expect(found.verdict).toBe('refused');
    const row = found.conditions.find((entry) => entry.result === 'refuse');
    expect(row?.condition).toMatch(/maker/);
    expect(row?.measured).toContain(beyond);
    expect(row?.reason.length).toBeGreaterThan(20);
    expect(row?.action).toMatch(/unit/);
  });

  it.each(limits)('%s: beyond the outer bound it lets no reading through', (key, _, __, beyond, reading) => {
    const refused = ask({ [key]: count(key, beyond), ...reading }).conditions.filter((entry) => entry.result === 'refuse');
    expect(refused.length).toBeGreaterThan(1);
  });

  it('of a 24 V system is held against twice the voltage', () => {
    const truck = { batteryAtRest: '25.2 V', batteryRunning: '28 V' };
    expect(ask({ ...truck, makerMinimumRestVoltage: '25 V' }).loose).toEqual([]);
    expect(ask({ ...truck, makerMinimumRestVoltage: '24.4 V' }).loose).toHaveLength(1);
    expect(ask({ ...truck, makerMinimumRestVoltage: '12.2 V' }).verdict).toBe('refused');
  });

  it('that lets a load through which practice would not still asks for the room of its uncertainty', () => {
    expect(
      ask({ substrate: 'silicon-carbide', sootLoad: '9.5 g/L', measuredSootLoad: undefined, makerMaximumSootLoad: '10 g/L' }).verdict,
    ).toBe('refused');
  });
});

describe('a typed soot load and one from the readings', () => {
  const both = (typed: string, measured: string, change: Record<string, unknown> = {}) =>
    ask({ sootLoad: typed, sootLoadUncertainty: '1 g/L', measuredSootLoad: measured, measuredSootLoadUncertainty: '1 g/L', ...change });
  const load = (found: ReturnType<typeof ask>) => found.conditions.find((row) => row.condition.startsWith('Soot load not above'));

  it('are both shown, and the larger counts, whichever it is', () => {
    for (const [typed, measured] of [
      ['2.5 g/L', '3.5 g/L'],
      ['3.5 g/L', '2.5 g/L'],
    ] as const) {
      const found = both(typed, measured);
      expect(found.intermediates.countedLoad).toBeCloseTo(3.5, 9);
      expect(load(found)?.measured).toContain('3.5 g/L');
      expect(load(found)?.measured).toContain('2.5 g/L');
    }
  });

  it('count with the uncertainty: a smaller one that reaches higher is the larger', () => {
    const found = both('3 g/L', '2.6 g/L', { measuredSootLoadUncertainty: '3 g/L' });
    expect(found.intermediates.countedLoad).toBeCloseTo(2.6, 9);
    expect(found.verdict).toBe('refused');
  });

  it('refuse where they differ beyond both uncertainties, and the likely reason is named', () => {
    const low = both('3 g/L', '11 g/L', { substrate: 'silicon-carbide' });
    expect(low.verdict).toBe('refused');
    expect(low.refusedBy).toContain('soot loads agree');
    expect(low.conditions.find((row) => row.condition.includes('soot loads agree'))?.reason).toMatch(
      /control unit believes a wrong sensor/,
    );
    const high = both('4.6 g/L', '1.6 g/L', { substrate: 'silicon-carbide' });
    expect(high.verdict).toBe('refused');
    expect(high.conditions.find((row) => row.condition.includes('soot loads agree'))?.reason).toMatch(/hose/);
  });

  it('do not refuse each other within the uncertainties', () => {
    expect(both('2.4 g/L', '3.4 g/L').conditions.find((row) => row.condition.includes('soot loads agree'))?.result).toBe('pass');
  });

  it('do alone as before', () => {
    expect(ask({ sootLoad: undefined, measuredSootLoad: '3.4 g/L' }).verdict).toBe('permitted');
    expect(ask({ sootLoad: '3.4 g/L', measuredSootLoad: undefined }).verdict).toBe('permitted');
    expect(ask({ sootLoad: undefined, measuredSootLoad: undefined }).verdict).toBe('unknown');
  });
});

it('shows no key of a program in the table of conditions', () => {
  const rows = ask({}).conditions;
  expect(Object.keys(rows[0] ?? {})).not.toContain('code');
});

it('writes a negative number with a minus, as a printed table does', () => {
  const { conditions } = ask({ pressureSensorZero: '-2 mbar' });
  const zero = conditions.find((row) => row.condition.includes('reads zero'));
  expect([zero?.measured, zero?.limit].join('; ')).toMatch(/^−2 mbar; at least −\d/);
  expect(JSON.stringify(conditions)).not.toMatch(/-\d+ (mbar|°C|K|V)/);
});
