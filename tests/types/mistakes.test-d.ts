import { type AnyCalculation, present } from '@wallflow/calculation';
import { gasDensity } from '@wallflow/exhaust';
import { oneDimensionalPressureDropCalculation } from '@wallflow/exhaust/calculations/filter';
import { dynamicViscosityCalculation, gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { absolutePressure, differentialPressure, gaugePressure, type Quantity, temperature } from '@wallflow/units';
import { filterConditionCalculation } from '@wallflow/workshop';
import { describe, expectTypeOf, test } from 'vitest';

// Twenty-two mistakes that people make when they embed a calculation. Eighteen do not compile, as shown here. Four do: a sum of
// two kinds, which is a plain number (it is refused again where a quantity is asked for); plain numbers in the wrong order in a
// kernel; a text with a unit of the wrong kind, which is an issue when it runs; an id that no registry holds, which gives `undefined`.

const gas = { gasPressure: '1 bar', gasTemperature: '20 °C' } as const;
const result = gasDensityCalculation.calculate(gas);
const profile = oneDimensionalPressureDropCalculation.calculate(oneDimensionalPressureDropCalculation.example);

describe('units', () => {
  test('1: a unit that does not exist', () => {
    // @ts-expect-error mBar is spelt mbar
    differentialPressure(95, 'mBar');
  });

  test('2: a unit of another kind', () => {
    // @ts-expect-error kg is not a unit of pressure
    differentialPressure(95, 'kg');
  });

  test('3: a gauge pressure for a differential one', () => {
    // @ts-expect-error two kinds
    const drop: Quantity<'differentialPressure'> = gaugePressure(95, 'mbar');
    expectTypeOf(drop).toBeNumber();
  });

  test('4: an absolute pressure written as a differential one', () => {
    // @ts-expect-error two kinds
    differentialPressure.format(absolutePressure(95, 'mbar'));
  });

  test('5: a number in a unit that its kind does not have', () => {
    // @ts-expect-error bar is not a unit of temperature
    temperature.in(temperature(20, 'degC'), 'bar');
  });
});

describe('inputs', () => {
  test('6: a misspelt input of a kernel', () => {
    // @ts-expect-error it is called pressure
    gasDensity({ presure: 101300, temperature: 523.15, molarMass: 0.02896559 });
  });

  test('7: a misspelt input of calculate', () => {
    // @ts-expect-error it is called gasPressure
    gasDensityCalculation.calculate({ gasPresure: '1 bar', gasTemperature: '20 °C' });
  });

  test('8: a misspelt input of run', () => {
    // @ts-expect-error it is called gasPressure
    gasDensityCalculation.run({ gasPresure: '1 bar', gasTemperature: '20 °C' });
  });

  test('9: a wrong unit in a record', () => {
    // @ts-expect-error kg is not a unit of pressure
    gasDensityCalculation.run({ ...gas, gasPressure: { value: 1, unit: 'kg' } });
  });

  test('10: a choice that does not exist', () => {
    // @ts-expect-error it is called sutherland
    dynamicViscosityCalculation.run({ gasTemperature: '20 °C', model: 'sutherlnd' });
  });

  test('11: a branded quantity as an input', () => {
    // @ts-expect-error its unit stands beside it
    gasDensityCalculation.run({ ...gas, gasPressure: absolutePressure(1, 'bar') });
  });
});

describe('results', () => {
  test('12: outputs without a look at ok', () => {
    // @ts-expect-error a failure has no outputs
    gasDensityCalculation.run(gas).outputs;
  });

  test('13: a misspelt output', () => {
    // @ts-expect-error it is called density
    result.outputs.densty;
  });

  test('14: an output of another kind', () => {
    // @ts-expect-error a density is not a mass
    const mass: Quantity<'mass'> = result.outputs.density;
    expectTypeOf(mass).toBeNumber();
  });

  test('15: a misspelt key in the units to present', () => {
    present(gasDensityCalculation, result, { units: { density: 'kg/m3' } });
    // @ts-expect-error it is called density
    present(gasDensityCalculation, result, { units: { densty: 'kg/m3' } });
  });

  test('16: a wrong unit to present', () => {
    // @ts-expect-error kPa is not a unit of density
    present(gasDensityCalculation, result, { units: { density: 'kPa' } });
  });

  test('17: a wrong key of what was presented', () => {
    const { outputs } = present(gasDensityCalculation, result);
    expectTypeOf(outputs.density.label).toBeString();
    // @ts-expect-error it is called density
    outputs.densty;
  });

  test('18: the result of another calculation', () => {
    // @ts-expect-error a viscosity is no density
    present(dynamicViscosityCalculation, result);
  });
});

describe('the same for tables, verdicts and calculations whose types are not known', () => {
  test('columns of a table are known with their units', () => {
    present(oneDimensionalPressureDropCalculation, profile, { units: { profile: { distanceFromInlet: 'in' } } });
    // @ts-expect-error psi is not a unit of length
    present(oneDimensionalPressureDropCalculation, profile, { units: { profile: { distanceFromInlet: 'psi' } } });
    // @ts-expect-error it is called distanceFromInlet
    present(oneDimensionalPressureDropCalculation, profile, { units: { profile: { distanceFromInlt: 'in' } } });
  });

  test('a choice has no unit', () => {
    const condition = filterConditionCalculation.calculate(filterConditionCalculation.example);
    // @ts-expect-error a verdict has no unit
    present(filterConditionCalculation, condition, { units: { verdict: 'mbar' } });
  });

  test('any calculation is presented as a record by key', () => {
    const any = gasDensityCalculation as AnyCalculation;
    const shown = present(any, any.calculate({}), { units: { density: 'kg/m3' } });
    expectTypeOf(shown.outputs.density?.label).toEqualTypeOf<string | undefined>();
  });
});
