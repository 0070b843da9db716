import { defineCalculation, formula, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import { dynamicViscosityCalculation, gasDensityCalculation } from '@wallflow/exhaust/calculations';
import type { gasDensityCalculation as fromSubject } from '@wallflow/exhaust/calculations/gas';
import { differentialPressure, gaugePressure, type Quantity } from '@wallflow/units';
import { filterConditionCalculation } from '@wallflow/workshop';
import { expectTypeOf, test } from 'vitest';

const passing = defineCalculation({
  id: 'passing',
  version: '1.0.0',
  subject: 'filter',
  title: 'Passing',
  purpose: 'Passes.',
  method: 'none',
  inputs: {
    pressureDrop: quantity(differentialPressure, { symbol: 'p', label: 'Drop', range: '0 Pa <= x <= 1 bar', example: '1 mbar' }),
    zero: quantity(differentialPressure, {
      symbol: 'z',
      label: 'Zero',
      range: '0 Pa <= x <= 1 bar',
      default: ['0 Pa', 'x'],
    }),
    gauge: optional(quantity(gaugePressure, { symbol: 'g', label: 'Gauge', range: '0 Pa <= x <= 1 bar', example: '1 mbar' })),
  },
  outputs: { drop: quantityOutput(differentialPressure, { symbol: 'p', label: 'Drop' }) },
  steps: [formula('drop', 'pressureDrop')],
  sources: [{ type: 'derivation', title: 'x', mark: 'read' }],
  compute(input) {
    expectTypeOf(input.pressureDrop).toEqualTypeOf<Quantity<'differentialPressure'>>();
    expectTypeOf(input.zero).toEqualTypeOf<Quantity<'differentialPressure'>>();
    expectTypeOf(input.gauge).toEqualTypeOf<Quantity<'gaugePressure'> | undefined>();
    return { drop: input.pressureDrop };
  },
});

test('outputs carry their kind', () => {
  const result = passing.calculate({ pressureDrop: '1 mbar' });
  expectTypeOf(result.outputs.drop).toEqualTypeOf<Quantity<'differentialPressure'>>();
  // @ts-expect-error a differential pressure is not a gauge pressure
  const wrong: Quantity<'gaugePressure'> = result.outputs.drop;
  expectTypeOf(wrong).toBeNumber();
});

test('an input that is needed cannot be left out, one with a default can', () => {
  // @ts-expect-error pressureDrop is missing
  passing.calculate({ zero: '1 mbar' });
  passing.calculate({ pressureDrop: { value: 1, unit: 'mbar' } });
});

test('mistakes in the input of run and explain do not compile', () => {
  const good = { pressureDrop: '1 mbar' };
  passing.run({ ...good, zero: '1 mbar' });
  // @ts-expect-error an input that does not exist
  passing.run({ ...good, zeroes: '1 mbar' });
  // @ts-expect-error kg is not a unit of pressure
  passing.run({ pressureDrop: { value: 1, unit: 'kg' } });
  // @ts-expect-error a number in SI is no input: its unit stands beside it
  passing.run({ pressureDrop: differentialPressure(1, 'mbar') });
  // @ts-expect-error a bare number has no unit
  passing.explain({ pressureDrop: 100 });
  // @ts-expect-error data of unknown origin goes to runUnknown
  passing.run(JSON.parse('{}') as unknown);
  passing.runUnknown(JSON.parse('{}'));
  // @ts-expect-error a choice that does not exist
  dynamicViscosityCalculation.run({ gasTemperature: '20 °C', model: 'sutherlnd' });
});

test('a result is narrowed by ok', () => {
  const result = passing.runUnknown({});
  if (result.ok) expectTypeOf(result.outputs.drop).toEqualTypeOf<Quantity<'differentialPressure'>>();
  // @ts-expect-error a failure has no outputs
  else result.outputs;
});

test('units of another kind are refused as display units', () => {
  // @ts-expect-error kg is not a unit of pressure
  quantityOutput(differentialPressure, { symbol: 'p', label: 'Drop', units: ['kg'] });
});

test('a published definition is known by its own types', () => {
  const result = gasDensityCalculation.run({ gasPressure: '1 bar', gasTemperature: '20 °C' });
  if (!result.ok) return;
  expectTypeOf(result.outputs.density).toEqualTypeOf<Quantity<'density'>>();
  // @ts-expect-error the output is called density
  result.outputs.densty;
  // @ts-expect-error the input is called pressure
  gasDensityCalculation.calculate({ gasPresure: '1 bar', gasTemperature: '20 °C' });
  // @ts-expect-error a temperature is needed
  gasDensityCalculation.calculate({ gasPressure: '1 bar' });
  expectTypeOf<typeof fromSubject>().toEqualTypeOf<typeof gasDensityCalculation>();
});

test('a verdict is compared with its own words only', () => {
  const { verdict } = filterConditionCalculation.calculate(filterConditionCalculation.example).outputs;
  expectTypeOf(verdict === 'blocked').toBeBoolean();
  // @ts-expect-error there is no such verdict
  expectTypeOf(verdict === 'bloked').toBeBoolean();
});

test('units, rows and columns of a prepared calculation are those of its inputs', () => {
  const prepared = prepare(gasDensityCalculation, { units: { gasPressure: 'bar' }, given: { molarMass: '28.96 g/mol' } });
  prepared.row({ gasPressure: 1, gasTemperature: '20 °C' });
  prepared.row({ gasPressure: '1,5', gasTemperature: '20 °C', molarMass: '18 g/mol' });
  // @ts-expect-error no unit was said for temperatures
  prepared.row({ gasPressure: 1, gasTemperature: 20 });
  // @ts-expect-error the input is called gasPressure
  prepared.row({ pressure: 1, gasTemperature: '20 °C' });
  // @ts-expect-error a row needs a temperature
  prepared.row({ gasPressure: 1 });
  // @ts-expect-error kg is not a unit of pressure
  prepare(gasDensityCalculation, { units: { gasPressure: 'kg' } });
  // @ts-expect-error an input that does not exist
  prepare(gasDensityCalculation, { units: { pressure: 'bar' } });
  const { results } = prepared.columns({ gasPressure: new Float64Array(2), gasTemperature: ['20 °C'] }, { units: { density: 'kg/m3' } });
  expectTypeOf(results.density).toEqualTypeOf<Float64Array>();
  // @ts-expect-error bar is not a unit of density
  prepared.columns({ gasPressure: [1], gasTemperature: ['20 °C'] }, { units: { density: 'bar' } });
  // @ts-expect-error a result that does not exist
  prepared.columns({ gasPressure: [1], gasTemperature: ['20 °C'] }, { results: ['densty'] });
  const viscosity = prepare(dynamicViscosityCalculation);
  // @ts-expect-error a choice that does not exist
  viscosity.row({ gasTemperature: '20 °C', model: 'sutherlnd' });
});
