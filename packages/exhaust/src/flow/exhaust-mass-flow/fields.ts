import { type CheckedOf, choice, count, optional, quantity, relevantWhen } from '@wallflow/calculation';
import { mass, massFlow, massRatio, ratio } from '@wallflow/units';
import { chargeFields, engineFields } from '../engine-fields.js';

const { engineSpeed, ...cylinderFields } = engineFields;
const { strokes, ...fillingFields } = chargeFields;

export const exhaustMassFlowInputs = {
  airFrom: choice({
    label: 'Air mass flow from',
    options: {
      'air-mass-signal': 'air-mass signal',
      'air-mass-per-stroke': 'air mass per stroke',
      'speed-density': 'engine speed and manifold density',
      'fuel-and-lambda': 'fuel flow and lambda',
    },
    example: 'speed-density',
  }),
  ...relevantWhen('airFrom', 'air-mass-signal', {
    airMassFlow: quantity(massFlow, {
      symbol: '\\dot m_{air,s}',
      label: 'Air-mass signal',
      description: 'Live value of the air-mass sensor. If it is shown in mg per stroke, choose air mass per stroke above.',
      range: '0.01 < x <= 30000 kg/h',
      usual: ['5 kg/h', '3000 kg/h', 'road and machine diesels draw this much'],
      example: '301 kg/h',
      units: ['kg/h', 'g/s'],
    }),
  }),
  ...relevantWhen('airFrom', 'air-mass-per-stroke', {
    airMassPerStroke: quantity(mass, {
      symbol: 'm_{str}',
      label: 'Air mass per stroke',
      description: 'Air of one intake stroke of one cylinder, as some control units show it.',
      range: '1 < x <= 20000 mg',
      usual: ['100 mg', '6000 mg', 'a cylinder of a road or machine diesel draws this much'],
      example: '1140 mg',
      units: ['mg', 'g'],
    }),
    cylinderCount: count({ symbol: 'z', label: 'Number of cylinders', min: 1, max: 24, example: 4 }),
  }),
  ...relevantWhen('airFrom', 'speed-density', { ...cylinderFields, ...fillingFields }),
  ...relevantWhen('airFrom', ['air-mass-per-stroke', 'speed-density'], { engineSpeed, strokes }),
  fuelMassFlow: optional(
    quantity(massFlow, {
      symbol: '\\dot m_{fuel,g}',
      label: 'Fuel mass flow',
      range: '0 <= x <= 3000 kg/h',
      usual: ['0 kg/h', '200 kg/h', 'road and machine diesels burn this much'],
      example: '4 kg/h',
      units: ['kg/h', 'g/s'],
    }),
  ),
  lambda: optional(
    quantity(ratio, {
      symbol: '\\lambda',
      label: 'Lambda',
      description: 'From a wide-band oxygen sensor or a gas analysis before any dilution with air.',
      range: '0.4 <= x <= 100',
      usual: [
        '1.05',
        '12',
        { below: 'a running diesel is lean; so rich a mixture is a purge or a fault', above: 'so lean a mixture is overrun' },
      ],
      example: '5',
    }),
  ),
  stoichiometricAirFuelRatio: quantity(massRatio, {
    symbol: 'L_{st}',
    label: 'Stoichiometric air-fuel ratio',
    range: '5 <= x <= 40 kg/kg',
    usual: ['12 kg/kg', '15 kg/kg', 'diesel and biodiesel lie in this range'],
    default: ['14.5 kg/kg', 'diesel fuel, handbook value; CH1.80 to CH1.86 gives 14.5 to 14.6'],
    units: ['1'],
  }),
};

export type ExhaustMassFlowInput = CheckedOf<typeof exhaustMassFlowInputs>;
