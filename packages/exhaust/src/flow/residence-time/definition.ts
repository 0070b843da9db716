import * as wf from '@wallflow/calculation';
import { massFlow, time, volume, volumeFlow, volumeFraction } from '@wallflow/units';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { actualVolumeFlow } from '../exhaust-volume-flow/kernel.js';
import { gasTemperatureField } from '../fields.js';
import { massBalance } from '../sources.js';
import { residenceTime } from './kernel.js';

export const residenceTimeCalculation = wf.defineCalculation({
  id: 'residence-time',
  subject: 'flow',
  title: 'Residence time of the gas',
  purpose: 'How long does the gas stay in a pipe, a mixer or a catalyst?',
  keywords: 'residence time, mixing, catalyst',
  method: 'open volume over actual volume flow',
  inputs: {
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: '\\dot m_{exh}',
      label: 'Exhaust mass flow',
      range: '0.1 < x <= 30000 kg/h',
      usual: ['5 kg/h', '3000 kg/h', 'road and machine diesels give this much'],
      example: '305 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    gasTemperature: gasTemperatureField,
    gasPressure: gasPressureField,
    volume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Volume of the part',
      range: '0.1 cm3 < x <= 1000 L',
      usual: ['0.1 L', '100 L', 'parts of road and machine exhausts'],
      example: '4.0 L',
      units: ['L', 'cm3'],
    }),
    openVolumeShare: wf.quantity(volumeFraction, {
      symbol: '\\varepsilon',
      label: 'Open share of the volume',
      description: 'What the gas can fill: all of a pipe, about 70 % to 85 % of a catalyst.',
      range: '1 < x <= 100 %',
      usual: ['30 %', '100 %', 'from a filter half full of walls and plugs to an empty pipe'],
      example: '75 %',
      default: ['100 %', 'an empty pipe'],
      units: ['%'],
    }),
    molarMass: molarMassField,
  },
  intermediates: {
    exhaustVolumeFlow: wf.quantityOutput(volumeFlow, {
      symbol: '\\dot V',
      label: 'Exhaust volume flow',
      digits: 5,
      units: ['m3/h', 'L/s'],
    }),
  },
  example: { gasPressure: '1081 hPa' },
  outputs: { residenceTime: wf.quantityOutput(time, { symbol: 't', label: 'Residence time', digits: 4, units: ['ms', 's'] }) },
  constants: {
    gasConstant,
  },
  answer: 'residenceTime',
  steps: [
    wf.formula('exhaustVolumeFlow', 'exhaustMassFlow * gasConstant * gasTemperature / (gasPressure * molarMass)', siBrochure),
    wf.formula('residenceTime', 'volume * openVolumeShare / exhaustVolumeFlow', massBalance),
  ],
  assumptions: { plug_flow: 'A mean value: gas in the middle passes faster, gas in corners slower.' },
  limits: { uniform: 'One temperature and pressure for the whole part.' },
  compute(input, { constants }) {
    const gas = {
      pressure: input.gasPressure,
      temperature: input.gasTemperature,
      molarMass: input.molarMass,
      massFlow: input.exhaustMassFlow,
    };
    const flow = actualVolumeFlow(gas, constants.gasConstant);
    return { exhaustVolumeFlow: flow, residenceTime: residenceTime(input.volume, input.openVolumeShare, flow) };
  },
});
