import { defineCalculation, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { dynamicViscosity, flowResistance as flowResistanceKind, pressurePerVolumeFlow, ratio, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2000 } from '../../sources.js';
import { viscosityConstants } from '../constants.js';
import { gasInputs, pressureDropInput } from '../inputs.js';
import { resolveViscosity } from '../resolve.js';
import { restrictionPractice } from '../sources.js';
import { flowResistance } from './kernel.js';

export const flowResistanceCalculation = defineCalculation({
  id: 'flow-resistance',
  version: '1.0.0',
  subject: 'filter',
  title: 'Flow-normalised resistance of a filter',
  purpose: 'How restricted is the filter, whatever the flow and temperature were when it was measured?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['back pressure', 'restriction', 'compare before and after'],
  method: 'drop over viscosity times volume flow',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    ...gasInputs,
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume, if known',
      description: 'Lets filters of different size be compared.',
      min: '0.1 L',
      max: '200 L',
      example: '2.5 L',
      units: ['L', 'in3', 'cm3'],
    }).optional(),
  }),
  intermediates: {
    viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', units: ['uPa.s', 'Pa.s'] }),
    dropPerFlow: quantityOutput(pressurePerVolumeFlow, {
      symbol: '\\Delta p/Q',
      label: 'Drop per volume flow',
      description: 'Still depends on temperature; often quoted in the trade.',
      units: ['mbar/(m3/h)', 'Pa.s/m3'],
    }),
  },
  outputs: {
    flowResistance: quantityOutput(flowResistanceKind, {
      symbol: 'R',
      label: 'Flow resistance',
      description: 'Compare this number before and after.',
      units: ['1/mm3', '1/m3'],
    }),
    sizedResistance: optional(
      quantityOutput(ratio, {
        symbol: 'R V',
        label: 'Resistance times filter volume',
        description: 'A pure number that compares filters of different size.',
      }),
    ),
  },
  constants: viscosityConstants,
  steps: [
    {
      gives: 'viscosity',
      text: 'Viscosity as given, or that of air at [[gasTemperature]] by the formula of Sutherland: [[viscosity]].',
      source: 'cfr1065',
      locator: '1065.640(d)(1), Table 4',
    },
    { gives: 'dropPerFlow', tex: '[[dropPerFlow]] = \\frac{[[pressureDrop]]}{[[exhaustVolumeFlow]]}' },
    {
      gives: 'flowResistance',
      tex: '[[flowResistance]] = \\frac{[[pressureDrop]]}{[[viscosity]]\\,[[exhaustVolumeFlow]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1 divided by μ Q',
    },
    { gives: 'sizedResistance', tex: '[[sizedResistance]] = [[flowResistance]]\\,[[filterVolume]]' },
  ],
  assumptions: [
    {
      code: 'flow_in_the_middle',
      text: 'The volume flow belongs to the pressure in the middle of the filter. The volume flow calculation gives it from a mass flow, the back-pressure and the drop.',
    },
    { code: 'viscous', text: 'The drop grows with viscosity times flow. Losses that grow with the square of the flow are small.' },
  ],
  limits: [
    {
      code: 'inertia',
      text: 'A clean filter at high flow has losses with the square of the flow; compare at similar flow, or fit both parts.',
    },
    {
      code: 'slip',
      text: 'Gas slips in the fine soot cake, the more the hotter it is: a loaded filter measured hot looks a little better than it is.',
    },
    { code: 'low_flow', text: 'At idle the zero error of the sensor can be as large as the drop; judge at 2500 1/min or more.' },
  ],
  cautions: [cautions.sensorFirst, cautions.makerFirst],
  sources: { konstandopoulos2000, cfr1065, restrictionPractice },
  compute(input, { constants }) {
    const viscosity = resolveViscosity(input, constants);
    const resistance = flowResistance(input.pressureDrop, viscosity, input.exhaustVolumeFlow);
    return {
      viscosity,
      dropPerFlow: input.pressureDrop / input.exhaustVolumeFlow,
      sizedResistance: input.filterVolume === undefined ? undefined : resistance * input.filterVolume,
      flowResistance: resistance,
    };
  },
});
