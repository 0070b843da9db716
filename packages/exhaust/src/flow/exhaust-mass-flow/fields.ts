import { choice, count, quantity, quantityWithDefault } from '@wallflow/calculation';
import { mass, massFlow, massRatio, ratio } from '@wallflow/units';
import * as z from 'zod';
import { chargeFields, engineFields } from '../engine-fields.js';

const { displacement, engineSpeed, manifoldPressure, manifoldTemperature } = engineFields;

export const exhaustMassFlowInputs = z.strictObject({
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
  airMassFlow: quantity(massFlow, {
    symbol: '\\dot m_{air,s}',
    label: 'Air-mass signal',
    description: 'Live value of the air-mass sensor.',
    above: '0.01 kg/h',
    max: '30000 kg/h',
    usual: ['5 kg/h', '3000 kg/h'],
    usualReason: 'road and machine diesels draw this much',
    example: '176 kg/h',
    units: ['kg/h', 'g/s'],
  }).optional(),
  airMassPerStroke: quantity(mass, {
    symbol: 'm_{str}',
    label: 'Air mass per stroke',
    description: 'Air of one intake stroke of one cylinder, as some control units show it.',
    above: '1 mg',
    max: '20000 mg',
    usual: ['100 mg', '6000 mg'],
    usualReason: 'a cylinder of a road or machine diesel draws this much',
    example: '450 mg',
    units: ['mg', 'g'],
  }).optional(),
  cylinderCount: count({ symbol: 'z', label: 'Number of cylinders', min: 1, max: 24, example: 4 }).optional(),
  displacement: displacement.optional(),
  engineSpeed: engineSpeed.optional(),
  manifoldPressure: manifoldPressure.optional(),
  manifoldTemperature: manifoldTemperature.optional(),
  ...chargeFields,
  fuelMassFlow: quantity(massFlow, {
    symbol: '\\dot m_{fuel,g}',
    label: 'Fuel mass flow',
    min: '0 kg/h',
    max: '3000 kg/h',
    usual: ['0 kg/h', '200 kg/h'],
    usualReason: 'road and machine diesels burn this much',
    example: '4 kg/h',
    units: ['kg/h', 'g/s'],
  }).optional(),
  lambda: quantity(ratio, {
    symbol: '\\lambda',
    label: 'Lambda',
    description: 'From a wide-band oxygen sensor or a gas analysis before any dilution with air.',
    min: '0.4',
    max: '100',
    usual: ['1.05', '12'],
    usualReason: { below: 'a running diesel is lean; so rich a mixture is a purge or a fault', above: 'so lean a mixture is overrun' },
    example: '3',
  }).optional(),
  stoichiometricAirFuelRatio: quantityWithDefault(massRatio, {
    symbol: 'L_{st}',
    label: 'Stoichiometric air-fuel ratio',
    min: '5 kg/kg',
    max: '40 kg/kg',
    usual: ['12 kg/kg', '15 kg/kg'],
    usualReason: 'diesel and biodiesel lie in this range',
    example: '14.5 kg/kg',
    default: '14.5 kg/kg',
    defaultReason: 'diesel fuel, handbook value; CH1.80 to CH1.86 gives 14.5 to 14.6',
    units: ['1'],
  }),
});
