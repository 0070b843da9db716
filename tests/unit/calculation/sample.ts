import {
  choice,
  constant,
  count,
  defineCalculation,
  flag,
  formula,
  list,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  type Source,
  text,
} from '@wallflow/calculation';
import { differentialPressure, electricCurrent, energy, power, temperature, time, voltage } from '@wallflow/units';

const law: Source = { type: 'book', by: 'A. Author', title: 'A Book', year: 1900, mark: 'read' };

/** Heat of a resistor over pulses: small, with every type of input, and easy to work out by hand. */
export const heater = defineCalculation({
  id: 'heater-energy',
  version: '2.1.0',
  subject: 'gas',
  title: 'Heater energy',
  purpose: 'How much heat do these pulses give?',
  method: 'voltage times current times time',
  inputs: {
    voltage: quantity(voltage, {
      symbol: 'U',
      label: 'Voltage',
      range: '0 < x <= 60 V',
      usual: ['10 V', '30 V', 'two vehicle systems'],
      example: '12.0 V',
    }),
    current: quantity(electricCurrent, {
      symbol: 'I',
      label: 'Current',
      range: '0 <= x <= 100 A',
      usual: ['0.1 A', '50 A', { below: 'a broken wire', above: 'a short circuit' }],
      example: '2.50 A',
    }),
    pulses: list(
      { duration: quantity(time, { symbol: 't', label: 'Duration', range: '0 s <= x <= 1 h', example: '30 s' }) },
      {
        label: 'Pulses',
        min: 1,
        max: 3,
        example: [{ duration: '30 s' }, { duration: '1 min' }],
      },
    ),
    losses: quantity(power, {
      symbol: 'P_l',
      label: 'Losses',
      range: '0 W <= x <= 1 kW',
      default: ['0 W', 'well insulated'],
    }),
    mode: choice({
      label: 'Mode',
      options: { on: 'switched on', off: 'switched off' },
      default: ['on', 'usual'],
    }),
    repeats: count({ symbol: 'n', label: 'Repeats', min: 1, max: 5, example: 1 }),
    checked: flag({ label: 'Checked', example: true }),
    name: text({ label: 'Name', example: 'A', maxLength: 5 }),
    backPressure: optional(
      quantity(differentialPressure, {
        symbol: 'p',
        label: 'Pressure',
        range: '-1 <= x <= 10 psi',
        example: '1 psi',
      }),
    ),
    fluidTemperature: optional(quantity(temperature, { symbol: 'T', label: 'Fluid', range: '0 <= x <= 100 °C', example: '20 °C' })),
  },
  intermediates: {
    power: quantityOutput(power, { symbol: 'P', label: 'Power', units: ['W'] }),
    perPascal: optional(quantityOutput(energy, { symbol: 'E_p', label: 'Something optional' })),
  },
  outputs: { energy: quantityOutput(energy, { symbol: 'E', label: 'Heat', digits: 5, units: ['kJ', 'J'] }) },
  constants: { base: constant(power, 0, { symbol: 'P_0', label: 'Base load', source: law }) },
  steps: [
    formula('power', 'voltage * current', law, 'Eq. 1'),
    formula('perPascal', 'backPressure', undefined, undefined, 'Only with a pressure: [[backPressure]].'),
    formula('energy', 'repeats * (power - losses) * sum(pulses.duration)'),
  ],
  assumptions: { steady: 'Steady voltage.' },
  cautions: { hot: 'Hot.' },
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
