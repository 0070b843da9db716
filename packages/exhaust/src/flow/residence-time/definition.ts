import { constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { massFlow, molarHeatCapacity, time, volume, volumeFlow, volumeFraction } from '@wallflow/units';
import * as z from 'zod';
import { molarGasConstant } from '../../gas/constants.js';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { actualVolumeFlow } from '../exhaust-volume-flow/kernel.js';
import { gasTemperatureField } from '../fields.js';
import { massBalance } from '../sources.js';
import { residenceTime } from './kernel.js';

export const residenceTimeCalculation = defineCalculation({
  id: 'residence-time',
  version: '1.0.0',
  subject: 'flow',
  title: 'Residence time of the gas',
  purpose: 'How long does the gas stay in a pipe, a mixer or a catalyst?',
  usedBy: ['developer', 'trainer'],
  keywords: ['residence time', 'mixing', 'catalyst'],
  method: 'open volume over actual volume flow',
  inputs: z.strictObject({
    exhaustMassFlow: quantity(massFlow, {
      symbol: '\\dot m_{exh}',
      label: 'Exhaust mass flow',
      above: '0.1 kg/h',
      max: '30000 kg/h',
      usual: ['5 kg/h', '3000 kg/h'],
      usualReason: 'road and machine diesels give this much',
      example: '179 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    gasTemperature: gasTemperatureField,
    gasPressure: gasPressureField,
    volume: quantity(volume, {
      symbol: 'V',
      label: 'Volume of the part',
      above: '0.1 cm3',
      max: '1000 L',
      usual: ['0.1 L', '100 L'],
      usualReason: 'parts of road and machine exhausts',
      example: '4.0 L',
      units: ['L', 'cm3'],
    }),
    openShare: quantityWithDefault(volumeFraction, {
      symbol: '\\varepsilon',
      label: 'Open share of the volume',
      description: 'What the gas can fill: all of a pipe, about 70 % to 85 % of a catalyst.',
      above: '1 %',
      max: '100 %',
      usual: ['30 %', '100 %'],
      usualReason: 'from a filter half full of walls and plugs to an empty pipe',
      example: '75 %',
      default: '100 %',
      defaultReason: 'an empty pipe',
      units: ['%'],
    }),
    molarMass: molarMassField,
  }),
  intermediates: {
    actualVolumeFlow: quantityOutput(volumeFlow, { symbol: '\\dot V', label: 'Actual volume flow', digits: 5, units: ['m3/h', 'L/s'] }),
  },
  outputs: { residenceTime: quantityOutput(time, { symbol: 't', label: 'Residence time', digits: 4, units: ['ms', 's'] }) },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'actualVolumeFlow',
      tex: '[[actualVolumeFlow]] = \\frac{[[exhaustMassFlow]]\\,[[gasConstant]]\\,[[gasTemperature]]}{[[gasPressure]]\\,[[molarMass]]}',
      source: 'siBrochure',
    },
    { gives: 'residenceTime', tex: '[[residenceTime]] = \\frac{[[volume]]\\,[[openShare]]}{[[actualVolumeFlow]]}', source: 'massBalance' },
  ],
  assumptions: [{ code: 'plug_flow', text: 'A mean value: gas in the middle passes faster, gas in corners slower.' }],
  limits: [{ code: 'uniform', text: 'One temperature and pressure for the whole part.' }],
  cautions: [],
  sources: { massBalance, siBrochure },
  compute(input, { constants }) {
    const gas = {
      pressure: input.gasPressure,
      temperature: input.gasTemperature,
      molarMass: input.molarMass,
      massFlow: input.exhaustMassFlow,
    };
    const flow = actualVolumeFlow(gas, constants.gasConstant);
    return { actualVolumeFlow: flow, residenceTime: residenceTime(input.volume, input.openShare, flow) };
  },
});
