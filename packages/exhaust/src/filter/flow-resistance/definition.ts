import * as wf from '@wallflow/calculation';
import { flowResistance as flowResistanceKind, pressurePerVolumeFlow, ratio, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { gasViscosity } from '../gas-steps.js';
import { gasInputs, pressureDropInput } from '../inputs.js';
import { resolveViscosity } from '../resolve.js';
import { restrictionPractice } from '../sources.js';
import { flowResistance } from './kernel.js';

export const flowResistanceCalculation = wf.defineCalculation({
  id: 'flow-resistance',
  subject: 'filter',
  title: 'Flow-normalised resistance of a filter',
  purpose: 'How restricted is the filter, whatever the flow and temperature were when it was measured?',
  keywords: 'back pressure, restriction, compare before and after, DPF, backpressure, delta p',
  method: 'drop over viscosity times volume flow',
  inputs: {
    pressureDrop: pressureDropInput,
    ...gasInputs,
    filterVolume: wf.optional(
      wf.quantity(volume, {
        symbol: 'V',
        label: 'Filter volume',
        description: 'Lets filters of different size be compared.',
        range: '0.1 <= x <= 200 L',
        example: '5.79 L',
        units: ['L', 'in3', 'cm3'],
      }),
    ),
  },
  intermediates: {
    ...gasViscosity.outputs,
    dropPerFlow: wf.quantityOutput(pressurePerVolumeFlow, {
      symbol: '\\Delta p/Q',
      label: 'Drop per volume flow',
      description: 'Still depends on temperature; often quoted in the trade.',
      units: ['mbar/(m3/h)', 'Pa.s/m3'],
    }),
  },
  outputs: {
    flowResistance: wf.quantityOutput(flowResistanceKind, {
      symbol: 'R',
      label: 'Flow resistance',
      description: 'Compare this number before and after.',
      units: ['1/mm3', '1/m3'],
    }),
    sizedResistance: wf.optional(
      wf.quantityOutput(ratio, {
        symbol: 'R V',
        label: 'Resistance times filter volume',
        description: 'A pure number that compares filters of different size.',
      }),
    ),
  },
  answer: 'flowResistance',
  constants: gasViscosity.constants,
  steps: [
    gasViscosity.step,
    wf.formula('dropPerFlow', 'pressureDrop / exhaustVolumeFlow'),
    wf.formula('flowResistance', 'pressureDrop / (viscosity * exhaustVolumeFlow)', konstandopoulos2000, 'Eq. 1 divided by μ Q'),
    wf.formula('sizedResistance', 'flowResistance * filterVolume'),
  ],
  assumptions: {
    flow_in_the_middle:
      'The volume flow belongs to the pressure in the middle of the filter. The volume flow calculation gives it from a mass flow, the back-pressure and the drop.',
    viscous: 'The drop grows with viscosity times flow. Losses that grow with the square of the flow are small.',
  },
  limits: {
    inertia: 'A clean filter at high flow has losses with the square of the flow; compare at similar flow, or fit both parts.',
    slip: 'Gas slips in the fine soot cake, the more the hotter it is: a loaded filter measured hot looks a little less restricted than it is.',
    low_flow: 'At idle the zero error of the sensor can be as large as the drop; judge at a steady raised speed.',
  },
  cautions: [cautions.sensorFirst, cautions.makerFirst],
  sources: [restrictionPractice],
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
