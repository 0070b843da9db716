import { defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { permeability } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { soundOfIdealGas } from '../../flow/sources.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { channelFriction, dropConstants } from '../constants.js';
import { densityStep, dropOutput, flowStateOutputs, machStep, middleFlow, slowChannels, viscosityStep } from '../drop-outputs.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import { densityInputs, gasInputs, geometryInputs, pressureDropInput, wallInputs } from '../inputs.js';
import { acicularCeramicStudy, unequalCells, wang2021 } from '../sources.js';
import { wallPermeabilityFromDrop } from './kernel.js';

const { forchheimerCoefficient, entranceExitCoefficient } = wallInputs;

export const wallPermeabilityCalculation = defineCalculation({
  id: 'wall-permeability-from-clean-drop',
  version: '1.1.0',
  subject: 'filter',
  title: 'Wall permeability from a clean measurement',
  purpose: 'Which wall permeability does a new or surely clean filter show, so that later readings can be compared with it?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['permeability', 'baseline', 'new filter', 'inverse'],
  method: 'closed form for even wall flow, solved for the permeability',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    ...geometryInputs,
    ...gasInputs,
    ...densityInputs,
    forchheimerCoefficient,
    entranceExitCoefficient,
  }),
  example: { pressureDrop: '12 mbar', filterDiameter: '144 mm' },
  intermediates: {
    ...flowStateOutputs,
    otherDrop: dropOutput('\\Delta p_0', 'Channels, entrance, exit and inertia'),
  },
  outputs: {
    wallPermeability: quantityOutput(permeability, {
      symbol: 'k_0',
      label: 'Permeability of the wall',
      digits: 3,
      units: ['m2', 'um2', 'mD'],
    }),
  },
  constants: { ...dropConstants, channelFriction },
  steps: [
    viscosityStep,
    densityStep,
    {
      gives: 'wallVelocity',
      text: 'Volume flow over the filtration area: [[wallVelocity]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A1',
    },
    machStep,
    { gives: 'otherDrop', text: 'Everything but the wall makes [[otherDrop]].', source: 'konstandopoulos2008', locator: 'Eq. 8' },
    {
      gives: 'wallPermeability',
      tex: '[[wallPermeability]] = \\frac{[[viscosity]]\\,[[wallVelocity]]\\,[[wallThickness]]}{[[pressureDrop]]-[[otherDrop]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. A1',
    },
  ],
  assumptions: [
    middleFlow,
    { code: 'clean', text: 'The filter is clean: new, or weighed and burnt out. Soot or ash in it is read as a less permeable wall.' },
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
  ],
  limits: [
    slowChannels,
    {
      code: 'small_difference',
      text: 'When the wall makes less than half of the drop, the permeability is uncertain: measure at a lower flow.',
    },
    { code: 'laminar', text: 'Laminar channels (Reynolds number up to about 2000) and a wall Reynolds number below 2.' },
  ],
  cautions: [cautions.sensorFirst],
  sources: { konstandopoulos2000, konstandopoulos2008, wang2021, acicularCeramicStudy, unequalCells, cfr1065, siBrochure, soundOfIdealGas },
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const { channels, flow, channelVelocity, wallVelocity } = state;
    const { pressureDrop } = input;
    const { wallPermeability, otherDrop } = wallPermeabilityFromDrop(
      pressureDrop,
      channels,
      flow,
      input,
      context.constants.channelFriction,
    );
    if (wallPermeability === undefined) {
      return noSolution(
        'Channels, entrance and exit alone make more than the measured drop at this flow. Check flow, temperature and sensor zero.',
        ['pressureDrop'],
      );
    }
    const openWidth = channels.inletWidth;
    const speed = checkedMach(
      {
        flow,
        gasTemperature: input.gasTemperature,
        channels,
        openWidth,
        channelVelocity,
        wallVelocity,
        outletPressure: input.gasPressure,
        pressureDrop,
      },
      context,
    );
    if (isRefusal(speed)) return speed;
    if (otherDrop > pressureDrop / 2)
      context.warn('small_difference', 'The wall makes less than half of this drop: the permeability is uncertain.');
    return { viscosity: flow.viscosity, density: flow.density, channelVelocity, ...speed, wallVelocity, otherDrop, wallPermeability };
  },
});
