import { readFileSync } from 'node:fs';
import { differentialPressure, temperature, unitInfo } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const readme = readFileSync(new URL('../../../packages/units/README.md', import.meta.url), 'utf8');

describe('the readme of the units', () => {
  it('says what its example gives', () => {
    const drop = differentialPressure(360, 'mbar');
    const typed = differentialPressure.parse('36,0 ± 0,5 kPa');
    const shown = [
      [drop, "differentialPressure(360, 'mbar'); // "],
      [differentialPressure.in(drop, 'kPa'), "differentialPressure.in(drop, 'kPa'); // "],
      [`'${differentialPressure.format(drop, 'psi', { digits: 4 })}'`, '{ digits: 4 }); // '],
      [typed.ok && typed.uncertainty, 'typed.uncertainty; // '],
      [`'${temperature.format(temperature(20, 'degC'), 'degF')}'`, "'degF'); // "],
    ] as const;
    for (const [value, call] of shown) expect(readme).toContain(`${call}${value}`);
    expect(unitInfo('volume', 'gal_US')?.factor).toBe('0.003785411784');
  });

  it('names spellings that are read', () => {
    const bullet = readme.split('\n').find((line) => line.startsWith('- `9.5 kPa`')) ?? '';
    const spellings = [...bullet.matchAll(/`([^`]+)`/g)].map(([, text = '']) => text);
    expect(spellings.length).toBeGreaterThan(6);
    for (const text of spellings) expect((text.includes('°C') ? temperature : differentialPressure).parse(text).ok).toBe(true);
  });
});
