import {
  diluteAirViscosity,
  diluteArgon,
  diluteCarbonDioxideViscosity,
  diluteNitrogen,
  diluteOxygen,
  diluteWaterViscosity,
} from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

describe('dilute-gas viscosity against published check points', () => {
  // Lemmon and Jacobsen, Int. J. Thermophysics 25 (2004), Table V, zero density, µPa·s.
  it.each([
    ['nitrogen', diluteNitrogen, 100, 6.90349],
    ['nitrogen', diluteNitrogen, 300, 17.8771],
    ['oxygen', diluteOxygen, 100, 7.70243],
    ['oxygen', diluteOxygen, 300, 20.6307],
    ['argon', diluteArgon, 100, 8.1894],
    ['argon', diluteArgon, 300, 22.7241],
  ] as const)('%s at %s', (_, gas, temperature, published) => {
    const ours = diluteAirViscosity(temperature, gas) * 1e6;
    expect(Math.abs(ours / published - 1)).toBeLessThan(5e-6);
  });

  it.each([
    [100, 7.09559],
    [300, 18.523],
  ])('air at %s K', (temperature, published) => {
    expect(Math.abs((diluteAirViscosity(temperature) * 1e6) / published - 1)).toBeLessThan(5e-6);
  });

  // Fenghour and others, J. Phys. Chem. Ref. Data 27 (1998), Table 3, µPa·s at about one bar: density adds under 0.1 %.
  it.each([
    [220, 11.06],
    [300, 15.02],
    [800, 35.09],
  ])('carbon dioxide at %s K', (temperature, published) => {
    expect(Math.abs((diluteCarbonDioxideViscosity(temperature) * 1e6) / published - 1)).toBeLessThan(1e-3);
  });

  // IAPWS R12-08, Table 4, at 1 kg/m³, µPa·s: that density changes the viscosity by 1 % at 160 °C and 0.1 % at 900 °C.
  it.each([
    [433.15, 14.538324, 0.01],
    [873.15, 32.619287, 0.002],
    [1173.15, 44.217245, 0.001],
  ])('water vapour at %s K', (temperature, published, tolerance) => {
    expect(Math.abs((diluteWaterViscosity(temperature) * 1e6) / published - 1)).toBeLessThan(tolerance);
  });
});
