import {
  choiceWithDefault,
  constant,
  count,
  defineCalculation,
  flag,
  list,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  text,
} from '@wallflow/calculation';
import { differentialPressure, electricCurrent, energy, power, temperature, time, voltage } from '@wallflow/units';
import * as z from 'zod';

/** Heat of a resistor over pulses: small, with every type of input, and easy to work out by hand. */
export const heater = defineCalculation({
  id: 'heater-energy',
  version: '2.1.0',
  subject: 'gas',
  title: 'Heater energy',
  purpose: 'How much heat do these pulses give?',
  method: 'voltage times current times time',
  inputs: z.strictObject({
    voltage: quantity(voltage, {
      symbol: 'U',
      label: 'Voltage',
      above: '0 V',
      max: '60 V',
      usual: ['10 V', '30 V'],
      usualReason: 'two vehicle systems',
      example: '12.0 V',
    }),
    current: quantity(electricCurrent, {
      symbol: 'I',
      label: 'Current',
      min: '0 A',
      max: '100 A',
      usual: ['0.1 A', '50 A'],
      usualReason: { below: 'a broken wire', above: 'a short circuit' },
      example: '2.50 A',
    }),
    pulses: list(
      z.strictObject({ duration: quantity(time, { symbol: 't', label: 'Duration', min: '0 s', max: '1 h', example: '30 s' }) }),
      {
        label: 'Pulses',
        min: 1,
        max: 3,
        example: [{ duration: '30 s' }, { duration: '1 min' }],
      },
    ),
    losses: quantityWithDefault(power, {
      symbol: 'P_l',
      label: 'Losses',
      min: '0 W',
      max: '1 kW',
      example: '0 W',
      default: '0 W',
      defaultReason: 'well insulated',
    }),
    mode: choiceWithDefault({
      label: 'Mode',
      options: { on: 'switched on', off: 'switched off' },
      example: 'on',
      default: 'on',
      defaultReason: 'usual',
    }),
    repeats: count({ symbol: 'n', label: 'Repeats', min: 1, max: 5, example: 1 }),
    checked: flag({ label: 'Checked', example: true }),
    name: text({ label: 'Name', example: 'A', maxLength: 5 }),
    backPressure: optional(
      quantity(differentialPressure, {
        symbol: 'p',
        label: 'Pressure',
        min: '-1 psi',
        max: '10 psi',
        example: '1 psi',
      }),
    ),
    fluidTemperature: optional(quantity(temperature, { symbol: 'T', label: 'Fluid', min: '0 °C', max: '100 °C', example: '20 °C' })),
  }),
  intermediates: {
    power: quantityOutput(power, { symbol: 'P', label: 'Power', units: ['W'] }),
    perPascal: optional(quantityOutput(energy, { symbol: 'E_p', label: 'Something optional' })),
  },
  outputs: { energy: quantityOutput(energy, { symbol: 'E', label: 'Heat', digits: 5, units: ['kJ', 'J'] }) },
  constants: { base: constant(power, 0, { symbol: 'P_0', label: 'Base load', source: 'law' }) },
  steps: [
    { gives: 'power', tex: '[[power]] = [[voltage]]\\,[[current]]', source: 'law', locator: 'Eq. 1' },
    { gives: 'perPascal', text: 'Only with a pressure: [[backPressure]].' },
    { gives: 'energy', tex: '[[energy]] = [[repeats]]\\left([[power]]-[[losses]]\\right)\\sum t' },
  ],
  assumptions: [{ code: 'steady', text: 'Steady voltage.' }],
  limits: [],
  cautions: [{ code: 'hot', text: 'Hot.' }],
  sources: { law: { type: 'book', by: 'A. Author', title: 'A Book', year: 1900, mark: 'read' } },
  compute(input) {
    const watts = input.mode === 'off' ? 0 : input.voltage * input.current;
    if (watts < input.losses) return noSolution('the losses exceed the power', ['losses']);
    const seconds = input.pulses.reduce((sum, pulse) => sum + pulse.duration, 0);
    return { power: watts, perPascal: input.backPressure, energy: input.repeats * (watts - input.losses) * seconds };
  },
  advise: ({ energy: heat }) => (heat > 1000 ? [{ tone: 'do', text: 'Wait.' }] : []),
});

export const good = {
  voltage: '12 V',
  current: '2.5 A',
  pulses: [{ duration: '30 s' }, { duration: '1 min' }],
  repeats: 1,
  checked: 'yes',
  name: 'A',
};
