import { registry } from '@wallflow/exhaust/calculations';
import { expect, it } from 'vitest';

function dosing(runs: string[]) {
  const result = registry.get('dosing-test')?.run({
    runs: runs.map((collectedVolume) => ({ collectedVolume, duration: '60 s' })),
    nominalVolume: '100 mL',
    nominalDuration: '60 s',
    discardFirst: false,
    drip: 'none',
    spray: 'even',
  });
  if (result?.ok !== true) throw new Error('refused');
  return { verdict: (result.outputs as { verdict: string }).verdict, advice: result.advice.map(({ text }) => text).join(' ') };
}

// ±10 % tolerance, ±2 % reading, 5 % greatest spread: a single run speaks beyond 17 % only.
it('one run far outside the band is low or high on this run, and is to be repeated', () => {
  expect(dosing(['82 mL'])).toMatchObject({ verdict: 'low-once', advice: expect.stringContaining('twice more') });
  expect(dosing(['120 mL'])).toMatchObject({ verdict: 'high-once', advice: expect.stringContaining('twice more') });
  expect(dosing(['86 mL']).verdict).toBe('too-few-runs');
  expect(dosing(['100 mL']).verdict).toBe('too-few-runs');
});

it('runs that are low together point to a clogged nozzle or a low pressure', () => {
  expect(dosing(['82 mL', '82 mL', '81 mL'])).toMatchObject({ verdict: 'low', advice: expect.stringContaining('partly clogged') });
});
