import { faultCountdown, lawProfiles } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const light = lawProfiles['eu-light-duty'].faults.quality;
const heavy = lawProfiles['eu-heavy-duty'].faults;
const severity = ['none', 'warning', 'counting', 'low-level', 'severe', 'no-restart'];

describe('countdown over the stages of a law', () => {
  it('never goes back to a milder stage with more distance', () => {
    let last = -1;
    for (let distance = 0; distance <= 1_000_000; distance += 1000) {
      const rank = severity.indexOf(faultCountdown(light, { distance }).stage);
      expect(rank).toBeGreaterThanOrEqual(last);
      last = rank;
    }
    expect(severity[last]).toBe('no-restart');
  });

  it('changes stage exactly at the limit', () => {
    expect(faultCountdown(light, { distance: 799_999 }).stage).toBe('counting');
    expect(faultCountdown(light, { distance: 800_000 }).stage).toBe('no-restart');
    expect(faultCountdown(heavy.quality, { engineTime: 36_000 }).stage).toBe('low-level');
    expect(faultCountdown(heavy.level, { level: 0.1 }).stage).toBe('warning');
    expect(faultCountdown(heavy.level, { level: 0 }).stage).toBe('severe');
  });

  it('says what is left until the next stage', () => {
    expect(faultCountdown(light, { distance: 300_000 }).left.distance).toBe(500_000);
    expect(faultCountdown(heavy.quality, { engineTime: 0 }).left.engineTime).toBe(36_000);
    expect(faultCountdown(heavy.level, { level: 0.08 }).left.level).toBeCloseTo(0.055, 12);
  });

  it('takes whichever limit comes first and names what it does not know', () => {
    const stages = lawProfiles['us-guidance-2025'].faults.quality;
    expect(faultCountdown(stages, { distance: 0, engineTime: 160 * 3600 }).stage).toBe('severe');
    expect(faultCountdown(stages, { distance: 8400 * 1609.344 }).stage).toBe('severe');
    expect(faultCountdown(stages, { distance: 1000 }).unknown).toEqual(['engineTime']);
  });

  it('has no stage after the last one', () => {
    expect(faultCountdown(light, { distance: 2e6 }).next).toBeUndefined();
  });
});

describe('the countdown calculation', () => {
  const calculation = registry.get('fault-countdown');
  const run = (input: unknown) => {
    const result = calculation?.run(input);
    if (!result?.ok) throw new Error('refused');
    return result;
  };

  it('keeps the stage while a repair is not confirmed, and counts no further', () => {
    const { outputs } = run({
      rule: 'eu-light-duty',
      fault: 'quality',
      faultState: 'repaired-unconfirmed',
      distanceSinceDetection: '300 km',
    });
    expect(outputs).toMatchObject({ stage: 'counting', nextStage: undefined, distanceToStage: undefined });
  });

  it('refuses a fault for which the rule holds nothing, and a state that is not known', () => {
    for (const input of [
      { rule: 'eu-light-duty', fault: 'tampering', distanceSinceDetection: '10 km' },
      { rule: 'eu-heavy-duty', fault: 'quality' },
    ]) {
      const result = calculation?.run(input);
      expect(result?.ok).toBe(false);
    }
  });

  it('says in basis and warnings that a limit is from memory', () => {
    const { outputs, warnings } = run({ rule: 'eu-light-duty', fault: 'quality', distanceSinceDetection: '300 km' });
    expect(outputs.basis).toContain('from memory');
    expect(warnings.map((warning) => warning.code)).toContain('from_memory');
  });

  it('advises against clearing codes, and defers to the maker', () => {
    const { advice } = run({ rule: 'eu-heavy-duty', fault: 'quality', engineTimeSinceDetection: '2 h' });
    expect(advice.some((line) => line.tone === 'do-not' && line.text.includes('clear codes'))).toBe(true);
    expect(calculation?.spec.cautions.map((caution) => caution.code)).toEqual(
      expect.arrayContaining(['no_defeat', 'maker_procedure_first']),
    );
  });
});
