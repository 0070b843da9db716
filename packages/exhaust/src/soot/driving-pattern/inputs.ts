import { type CheckedOf, list, quantity } from '@wallflow/calculation';
import { massFlow, moleFraction, temperature, time, velocity } from '@wallflow/units';
import { chosenKinetics, type kineticsConstants } from '../oxidation/inputs.js';
import { type SootKinetics, sootOxidationRate } from '../oxidation/kernel.js';
import type { DrivingStretch } from './kernel.js';

const stretch = {
  duration: quantity(time, { symbol: 't', label: 'Duration', range: '0 s < x <= 100 h', example: '20 min', units: ['min', 'h', 's'] }),
  speed: quantity(velocity, {
    symbol: 'v',
    label: 'Mean speed',
    range: '0 <= x <= 200 km/h',
    example: '30 km/h',
    units: ['km/h', 'mph', 'm/s'],
  }),
  sootFlow: quantity(massFlow, {
    symbol: '\\dot m_{in}',
    label: 'Engine-out soot',
    range: '0 <= x <= 360 g/h',
    usual: ['0 g/h', '60 g/h', { above: 'a healthy diesel engine leaves some 0.3 to 20 g/h' }],
    example: '1.5 g/h',
    units: ['g/h', 'mg/s'],
  }),
  filterTemperature: quantity(temperature, {
    symbol: 'T',
    label: 'Filter temperature',
    range: '0 <= x <= 1000 °C',
    usual: [
      '50 °C',
      '600 °C',
      { below: 'colder than a filter some minutes after a start', above: 'the filter is then in an active regeneration' },
    ],
    example: '180 °C',
    units: ['degC', 'K', 'degF'],
  }),
  nitrogenDioxide: quantity(moleFraction, {
    symbol: 'x_{NO_2}',
    label: 'Nitrogen dioxide before the filter',
    range: '0 <= x <= 2000 ppm',
    example: '60 ppm',
    units: ['ppm'],
  }),
  oxygen: quantity(moleFraction, {
    symbol: 'x_{O_2}',
    label: 'Oxygen before the filter',
    range: '0 <= x <= 21 %',
    example: '12 %',
    units: ['%'],
    default: ['10 %', 'lean diesel exhaust at part load'],
  }),
};

export const drivingPatternInput = list(stretch, {
  label: 'Driving pattern',
  description: 'Stretches of driving in their order; the pattern is repeated.',
  min: 1,
  max: 24,
  example: [
    { duration: '5 min', speed: '0 km/h', sootFlow: '1 g/h', filterTemperature: '115 °C', nitrogenDioxide: '30 ppm', oxygen: '16 %' },
    { duration: '19 min', speed: '22 km/h', sootFlow: '1.5 g/h', filterTemperature: '180 °C', nitrogenDioxide: '40 ppm', oxygen: '14 %' },
  ],
});

type Values<S> = { readonly [Key in keyof S]: number };
type KineticsChoice = Parameters<typeof chosenKinetics>[0];

/** Rates of a pattern's stretches by the chosen laws. */
export function stretchesOf(
  input: KineticsChoice & { readonly pattern: readonly CheckedOf<typeof stretch>[] },
  constants: Values<typeof kineticsConstants>,
): { readonly kinetics: SootKinetics; readonly stretches: DrivingStretch[] } {
  const kinetics = chosenKinetics(input, constants);
  const stretches = input.pattern.map(({ duration, speed, sootFlow, filterTemperature, ...gas }) => ({
    duration,
    speed,
    sootFlow,
    rate: sootOxidationRate(kinetics, { ...gas, temperature: filterTemperature }, constants.gasConstant).total,
  }));
  return { kinetics, stretches };
}
