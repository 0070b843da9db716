import { isRefusal, list, quantity, quantityWithDefault, type Refusal } from '@wallflow/calculation';
import { massFlow, moleFraction, temperature, time, velocity } from '@wallflow/units';
import * as z from 'zod';
import { chosenKinetics, type kineticsConstants } from '../oxidation/inputs.js';
import { type SootKinetics, sootOxidationRate } from '../oxidation/kernel.js';
import type { DrivingStretch } from './kernel.js';

const stretch = z.strictObject({
  duration: quantity(time, { symbol: 't', label: 'Duration', above: '0 s', max: '100 h', example: '20 min', units: ['min', 'h', 's'] }),
  speed: quantity(velocity, {
    symbol: 'v',
    label: 'Mean speed',
    min: '0 km/h',
    max: '200 km/h',
    example: '30 km/h',
    units: ['km/h', 'mph', 'm/s'],
  }),
  sootFlow: quantity(massFlow, {
    symbol: '\\dot m_{in}',
    label: 'Soot that comes in',
    min: '0 g/h',
    max: '360 g/h',
    usual: ['0 g/h', '60 g/h'],
    usualReason: 'a healthy diesel engine leaves some 0.3 to 20 g/h',
    example: '1.5 g/h',
    units: ['g/h', 'mg/s'],
  }),
  temperature: quantity(temperature, {
    symbol: 'T',
    label: 'Filter temperature',
    min: '0 °C',
    max: '1000 °C',
    usual: ['50 °C', '600 °C'],
    usualReason: { below: 'colder than a filter some minutes after a start', above: 'the filter is then in an active regeneration' },
    example: '180 °C',
    units: ['degC', 'K', 'degF'],
  }),
  nitrogenDioxide: quantity(moleFraction, {
    symbol: 'x_{NO_2}',
    label: 'Nitrogen dioxide before the filter',
    min: '0 ppm',
    max: '2000 ppm',
    example: '60 ppm',
    units: ['ppm'],
  }),
  oxygen: quantityWithDefault(moleFraction, {
    symbol: 'x_{O_2}',
    label: 'Oxygen before the filter',
    min: '0 %',
    max: '21 %',
    example: '12 %',
    units: ['%'],
    default: '10 %',
    defaultReason: 'lean diesel exhaust at part load',
  }),
});

export const drivingPatternInput = list(stretch, {
  label: 'Driving pattern',
  description: 'Stretches of driving in their order; the pattern is repeated.',
  min: 1,
  max: 24,
  example: [
    { duration: '5 min', speed: '0 km/h', sootFlow: '1 g/h', temperature: '115 °C', nitrogenDioxide: '30 ppm', oxygen: '16 %' },
    { duration: '19 min', speed: '22 km/h', sootFlow: '1.5 g/h', temperature: '180 °C', nitrogenDioxide: '40 ppm', oxygen: '14 %' },
  ],
});

type Values<S> = { readonly [Key in keyof S]: number };
type KineticsChoice = Parameters<typeof chosenKinetics>[0];
type StretchInput = z.output<typeof stretch>;

/** Rates of a pattern's stretches by the chosen laws. */
export function stretchesOf(
  input: KineticsChoice & { readonly pattern: readonly StretchInput[] },
  constants: Values<typeof kineticsConstants>,
): { readonly kinetics: SootKinetics; readonly stretches: DrivingStretch[] } | Refusal {
  const kinetics = chosenKinetics(input, constants);
  if (isRefusal(kinetics)) return kinetics;
  const stretches = input.pattern.map(({ duration, speed, sootFlow, ...gas }) => ({
    duration,
    speed,
    sootFlow,
    rate: sootOxidationRate(kinetics, gas, constants.gasConstant).total,
  }));
  return { kinetics, stretches };
}
