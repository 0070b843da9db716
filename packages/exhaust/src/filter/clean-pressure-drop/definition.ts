import { defineCalculation, isRefusal } from '@wallflow/calculation';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { soundOfIdealGas } from '../../flow/sources.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { channelFriction, dropConstants } from '../constants.js';
import {
  cleanPartOutputs,
  densityStep,
  dropOutput,
  flowStateOutputs,
  machStep,
  middleFlow,
  slowChannels,
  viscosityStep,
} from '../drop-outputs.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import { densityInputs, gasInputs, geometryInputs, wallInputs } from '../inputs.js';
import { acicularCeramicStudy, unequalCells, wang2021 } from '../sources.js';
import { cleanDropParts, totalDrop } from './kernel.js';

export const cleanPressureDropCalculation = defineCalculation({
  id: 'clean-pressure-drop',
  version: '1.1.0',
  subject: 'filter',
  title: 'Pressure drop of a clean filter',
  purpose: 'What would this filter read at this flow if it were clean?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['back pressure', 'new filter', 'baseline', 'Konstandopoulos'],
  method: 'closed form for even wall flow',
  inputs: z.strictObject({ ...geometryInputs, ...gasInputs, ...densityInputs, ...wallInputs }),
  example: { filterDiameter: '144 mm' },
  intermediates: { ...flowStateOutputs, ...cleanPartOutputs },
  outputs: { pressureDrop: dropOutput('\\Delta p', 'Pressure drop of the clean filter') },
  constants: { ...dropConstants, channelFriction },
  steps: [
    viscosityStep,
    densityStep,
    {
      gives: 'channelVelocity',
      text: 'Volume flow over the open area of the inlet channels: [[channelVelocity]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A2',
    },
    {
      gives: 'wallVelocity',
      text: 'Volume flow over the wall area it passes: [[wallVelocity]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A1',
    },
    machStep,
    {
      gives: 'wallDrop',
      tex: '[[wallDrop]] = \\frac{[[viscosity]]\\,[[wallVelocity]]\\,[[wallThickness]]}{[[wallPermeability]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. A1',
    },
    {
      gives: 'inletChannelDrop',
      text: 'A third of the friction that the full flow would have along the inlet channels: [[inletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A4',
    },
    {
      gives: 'outletChannelDrop',
      text: 'The same for the outlet channels: [[outletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A4',
    },
    {
      gives: 'contractionDrop',
      tex: '[[contractionDrop]] = \\frac{[[entranceExitCoefficient]]}{3}\\cdot\\frac{[[density]]\\,[[channelVelocity]]^{2}}{2}',
      source: 'konstandopoulos2008',
      locator: 'Eq. 7 and App. A.9',
    },
    {
      gives: 'expansionDrop',
      text: 'Two thirds of the loss coefficient on the dynamic head in the outlet channels: [[expansionDrop]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. 7 and App. A.3',
    },
    {
      gives: 'forchheimerDrop',
      tex: '[[forchheimerDrop]] = [[forchheimerCoefficient]]\\,[[density]]\\,[[wallVelocity]]^{2}\\,[[wallThickness]]',
      source: 'konstandopoulos2008',
      locator: 'Eq. 8',
    },
    {
      gives: 'pressureDrop',
      tex: '[[pressureDrop]] = [[wallDrop]]+[[inletChannelDrop]]+[[outletChannelDrop]]+[[contractionDrop]]+[[expansionDrop]]+[[forchheimerDrop]]',
      source: 'konstandopoulos2008',
      locator: 'Eq. 8',
    },
  ],
  assumptions: [
    middleFlow,
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
    { code: 'one_density', text: 'One density, temperature and viscosity in the whole filter.' },
  ],
  limits: [
    slowChannels,
    {
      code: 'unequal_cells',
      text: 'With unequal cells the wall counts as wide as the narrower channel; a two-dimensional solution passes 3 to 6 % more than that, relative to equal cells.',
    },
    {
      code: 'three_to_one',
      text: 'With three inlet cells per outlet cell the inlet cells share the flow evenly and only walls next to an outlet cell filter. By a two-dimensional solution the corner cells take only 3 to 4 % of the gas while clean: friction in the other inlet cells is then up to half as much again.',
    },
    { code: 'laminar', text: 'Laminar channels (Reynolds number up to about 2000) and a wall Reynolds number below 2.' },
    {
      code: 'permeability',
      text: 'The result is no better than the wall permeability. A washcoat lowers it; measure a clean filter if you can.',
    },
  ],
  cautions: [cautions.makerFirst],
  sources: { konstandopoulos2000, konstandopoulos2008, wang2021, acicularCeramicStudy, unequalCells, cfr1065, siBrochure, soundOfIdealGas },
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const { channels, flow, channelVelocity, wallVelocity } = state;
    const parts = cleanDropParts(channels, flow, input, channels.inletWidth, context.constants.channelFriction);
    const pressureDrop = totalDrop(parts);
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
    return { viscosity: flow.viscosity, density: flow.density, channelVelocity, ...speed, wallVelocity, ...parts, pressureDrop };
  },
});
