import { dewPointHardy, molarMassOfMoistAir, vapourPressureBuck, vapourPressureGoff } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

describe('humidity', () => {
  // 40 CFR 1065.645 examples.
  it('gives the printed dew point for the printed vapour pressure', () => {
    expect(dewPointHardy(925.717)).toBeCloseTo(279.001, 3);
  });

  it('gives the moist-air molar mass of 40 CFR 1065.640', () => {
    expect(molarMassOfMoistAir(0.0169) * 1000).toBeCloseTo(28.7805, 4);
  });

  // Goff counts in the temperature scale of 1948, Hardy in that of 1990, in which water boils at 99.974 °C.
  it('undoes Goff by Hardy within 0.03 K from −10 °C to 100 °C, and within 0.12 K down to −50 °C', () => {
    for (let celsius = -50; celsius <= 100; celsius += 1) {
      const temperature = 273.15 + celsius;
      expect(Math.abs(dewPointHardy(vapourPressureGoff(temperature)) - temperature)).toBeLessThan(celsius < -10 ? 0.12 : 0.03);
    }
  });

  it('differs between Goff and Buck by at most 0.1 % from 0 °C to 50 °C', () => {
    for (let celsius = 0; celsius <= 50; celsius += 1) {
      const temperature = 273.15 + celsius;
      expect(Math.abs(vapourPressureBuck(temperature) / vapourPressureGoff(temperature) - 1)).toBeLessThan(1e-3);
    }
  });

  // 100 % at -50 °C is 6.4 Pa; at 0 °C that is 1.05 %, at 20 °C 0.27 %.
  it.each([
    ['-50 °C', '0.01 %', true],
    ['0 °C', '0.9 %', true],
    ['0 °C', '1.2 %', false],
    ['20 °C', '0.2 %', true],
    ['20 °C', '0.4 %', false],
    ['20 °C', '50 %', false],
  ])('says whether the dew point of %s and %s is beyond its equation: %s', (airTemperature, relativeHumidity, beyond) => {
    const result = registry.get('intake-air-humidity')!.run({ airTemperature, relativeHumidity, ambientPressure: '101.3 kPa' });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    expect(result.warnings.some((warning) => warning.code === 'dew_point_range')).toBe(beyond);
  });
});
