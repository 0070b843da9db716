import * as wf from '@wallflow/calculation';
import { permeability } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000, konstandopoulos2008 } from '../../sources.js';
import { cleanConstants, dropModel } from '../drop-model.js';
import { cleanPartOutputs, dropOutput, flowStateOutputs } from '../drop-outputs.js';
import { machSteps, otherPartSteps, startSteps, velocitySteps } from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { densityInputs, gasInputs, geometryInputs, pressureDropInput, wallInputs } from '../inputs.js';
import { acicularCeramicStudy, unequalCells } from '../sources.js';
import { wallPermeabilityFromDrop } from './kernel.js';

const { forchheimerCoefficient, entranceExitCoefficient } = wallInputs;
const { wallDrop: _, ...otherParts } = cleanPartOutputs;
const clean = { width: 'inletWidth', area: 'filtrationArea', length: 'openLength', plug: '' };

export const wallPermeabilityCalculation = wf.defineCalculation({
  id: 'wall-permeability-from-clean-drop',
  subject: 'filter',
  title: 'Wall permeability from a clean measurement',
  purpose: 'Which wall permeability does a new or surely clean filter show, so that later readings can be compared with it?',
  keywords: 'permeability, baseline, new filter, inverse',
  method: 'closed form for even wall flow, solved for the permeability',
  inputs: {
    pressureDrop: pressureDropInput,
    ...geometryInputs,
    ...gasInputs,
    ...densityInputs,
    forchheimerCoefficient,
    entranceExitCoefficient,
  },
  example: { pressureDrop: '11.2 mbar' },
  intermediates: {
    ...flowStateOutputs,
    ...otherParts,
    otherDrop: dropOutput('\\Delta p_0', 'Channels, entrance, exit and inertia'),
  },
  outputs: {
    wallPermeability: wf.quantityOutput(permeability, {
      symbol: 'k_0',
      label: 'Permeability of the clean wall',
      digits: 3,
      units: ['m2', 'um2', 'mD'],
    }),
  },
  constants: cleanConstants,
  steps: [
    ...startSteps,
    ...velocitySteps(clean),
    ...machSteps,
    ...otherPartSteps('Drop', clean),
    wf.formula(
      'otherDrop',
      'inletChannelDrop + outletChannelDrop + contractionDrop + expansionDrop + forchheimerDrop',
      konstandopoulos2008,
      'Eq. 8',
    ),
    wf.formula('wallPermeability', 'viscosity * wallVelocity * wallThickness / (pressureDrop - otherDrop)', konstandopoulos2000, 'Eq. A1'),
  ],
  assumptions: {
    ...assumed.middle,
    clean: 'The filter is clean: new, or weighed and burnt out. Soot or ash in it is read as a less permeable wall.',
    ...assumed.evenFlow,
  },
  limits: {
    ...limit.mach,
    small_difference: 'When the wall makes less than half of the drop, the permeability is uncertain: measure at a lower flow.',
    ...limit.laminar,
  },
  cautions: [cautions.sensorFirst],
  sources: [acicularCeramicStudy, unequalCells],
  compute: (input, context) =>
    dropModel(input, context, ({ channels, flow }) => {
      const { pressureDrop } = input;
      const result = wallPermeabilityFromDrop(pressureDrop, channels, flow, input, context.constants.channelFriction);
      const { wallPermeability, otherDrop } = result;
      if (wallPermeability === undefined) {
        return wf.noSolution(
          'Channels, entrance and exit alone make more than the measured drop at this flow. Check flow, temperature and sensor zero.',
          ['pressureDrop'],
        );
      }
      if (otherDrop > pressureDrop / 2)
        context.warn('small_difference', 'The wall makes less than half of this drop: the permeability is uncertain.');
      return { ...result.otherParts, pressureDrop, otherDrop, wallPermeability };
    }),
});
