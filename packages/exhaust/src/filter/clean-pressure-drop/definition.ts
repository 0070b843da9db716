import * as wf from '@wallflow/calculation';
import { cautions } from '../../cautions.js';
import { konstandopoulos2008 } from '../../sources.js';
import { cleanConstants, dropModel } from '../drop-model.js';
import { cleanPartOutputs, dropOutput, flowStateOutputs } from '../drop-outputs.js';
import { cleanSum, machSteps, otherPartSteps, startSteps, velocitySteps, wallStep } from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { densityInputs, gasInputs, geometryInputs, wallInputs } from '../inputs.js';
import { acicularCeramicStudy, unequalCells } from '../sources.js';
import { cleanDropParts, totalDrop } from './kernel.js';

const clean = { width: 'inletWidth', area: 'filtrationArea', length: 'openLength', plug: '' };

export const cleanPressureDropCalculation = wf.defineCalculation({
  id: 'clean-pressure-drop',
  subject: 'filter',
  title: 'Pressure drop of a clean filter',
  purpose: 'What would this filter read at this flow if it were clean?',
  keywords: 'back pressure, backpressure, new filter, baseline, DPF, Konstandopoulos, delta p, restriction',
  method: 'closed form for even wall flow',
  inputs: { ...geometryInputs, ...gasInputs, ...densityInputs, ...wallInputs },
  intermediates: { ...flowStateOutputs, ...cleanPartOutputs },
  outputs: { pressureDrop: dropOutput('\\Delta p', 'Pressure drop of the clean filter') },
  constants: cleanConstants,
  steps: [
    ...startSteps,
    ...velocitySteps(clean),
    ...machSteps,
    wallStep('Drop'),
    ...otherPartSteps('Drop', clean),
    wf.formula('pressureDrop', cleanSum, konstandopoulos2008, 'Eq. 8'),
  ],
  assumptions: { ...assumed.middle, ...assumed.evenFlow, ...assumed.oneDensity },
  limits: {
    ...limit.mach,
    ...limit.unequalCells,
    ...limit.threeToOne,
    ...limit.laminar,
    permeability: 'The result is no better than the wall permeability. A washcoat lowers it; measure a clean filter if you can.',
  },
  cautions: [cautions.makerFirst],
  sources: [acicularCeramicStudy, unequalCells],
  compute: (input, context) =>
    dropModel(input, context, ({ channels, flow }) => {
      const parts = cleanDropParts(channels, flow, input, channels.inletWidth, context.constants.channelFriction);
      return { ...parts, pressureDrop: totalDrop(parts) };
    }),
});
