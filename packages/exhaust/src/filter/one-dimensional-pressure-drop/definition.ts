import { defineCalculation, isRefusal, noSolution, quantityOutput, tableOutput } from '@wallflow/calculation';
import { fraction, length, ratio, velocity } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { soundOfIdealGas } from '../../flow/sources.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { channelFriction, dropConstants, slipReferencePressure } from '../constants.js';
import {
  cakePermeabilityOutput,
  cakePermeabilityStep,
  densityStep,
  dropOutput,
  flowStateOutputs,
  machStep,
  middleFlow,
  slowChannels,
  viscosityStep,
} from '../drop-outputs.js';
import { wallFlowArea } from '../filter-geometry/kernel.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import { ashInputs, densityInputs, gasInputs, geometryInputs, sootMassInput, sootMaterialInputs, wallInputs } from '../inputs.js';
import { warnOfLoad } from '../load-warnings.js';
import { loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { resolveSootPermeability } from '../resolve.js';
import { bissett1984, liu2021, unequalCells, wang2021 } from '../sources.js';
import { channelProfile } from './kernel.js';

const speed = (symbol: string, label: string) => quantityOutput(velocity, { symbol, label, units: ['m/s', 'mm/s'] });

export const oneDimensionalPressureDropCalculation = defineCalculation({
  id: 'one-dimensional-pressure-drop',
  version: '1.1.0',
  subject: 'filter',
  title: 'Pressure drop and flow along the channels',
  purpose: 'Where along the filter does the gas pass the wall, and what drop follows from it?',
  usedBy: ['developer', 'trainer'],
  keywords: ['two-channel model', 'Bissett', 'profile', 'wall velocity', 'back pressure'],
  method: 'one-dimensional two-channel model with inertia',
  inputs: z.strictObject({
    ...geometryInputs,
    ...gasInputs,
    sootMass: sootMassInput,
    ...ashInputs,
    ...densityInputs,
    ...wallInputs,
    ...sootMaterialInputs,
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    ...flowStateOutputs,
    cakePermeability: cakePermeabilityOutput,
    openWidth: quantityOutput(length, { symbol: '\\alpha_1', label: 'Width left open in the inlet channels', units: ['mm', 'um'] }),
    channelDrop: dropOutput('\\Delta p_{12}', 'From the entrance of the inlet channels to the end of the outlet channels'),
    contractionDrop: dropOutput('\\Delta p_{c}', 'Contraction at the entrance'),
    expansionDrop: dropOutput('\\Delta p_{e}', 'Expansion at the exit'),
    closedFormDrop: dropOutput('\\Delta p_0', 'Closed form with even wall flow, for comparison'),
    modelDifference: quantityOutput(fraction, { symbol: '\\delta', label: 'This model against the closed form', digits: 3, units: ['%'] }),
  },
  outputs: {
    profile: tableOutput({
      label: 'Along the channels',
      columns: {
        position: quantityOutput(length, { symbol: 'z', label: 'Distance from the inlet', units: ['mm', 'in'] }),
        wallVelocity: speed('u_w', 'Through the wall'),
        inletVelocity: speed('u_1', 'In the inlet channel'),
        outletVelocity: speed('u_2', 'In the outlet channel'),
        inletPressure: dropOutput('p_1', 'Inlet channel, above the outlet end'),
        outletPressure: dropOutput('p_2', 'Outlet channel, above the outlet end'),
      },
      plot: { x: 'position', y: ['inletPressure', 'outletPressure'] },
    }),
    wallFlowUnevenness: quantityOutput(ratio, {
      symbol: 'u_{max}/\\bar{u}',
      label: 'Largest wall flow over the mean',
      description: 'Soot settles unevenly in this measure.',
      digits: 3,
    }),
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
  },
  constants: { ...dropConstants, slipReferencePressure, channelFriction },
  steps: [
    viscosityStep,
    densityStep,
    cakePermeabilityStep,
    { gives: 'openWidth', text: 'Soot and ash leave this width open: [[openWidth]].', source: 'konstandopoulos2000', locator: 'Eq. A10' },
    { gives: 'wallVelocity', text: 'Mean velocity through the wall: [[wallVelocity]].', source: 'konstandopoulos2000', locator: 'Eq. A1' },
    machStep,
    {
      gives: 'profile',
      tex: '\\frac{d u_1}{dz} = -\\frac{4 \\alpha u_w}{\\alpha_1^{2}},\\quad \\frac{d}{dz}\\left(p_i+\\rho u_i^{2}\\right) = -\\frac{F \\mu u_i}{\\alpha_i^{2}},\\quad p_1-p_2 = \\mu R_w u_w + \\beta \\rho w_s u_w^{2}',
      source: 'liu2021',
      locator: 'Eqs 11 and 12, after Bissett 1984',
    },
    { gives: 'wallFlowUnevenness', text: 'The largest wall flow of the profile over the mean: [[wallFlowUnevenness]].' },
    { gives: 'channelDrop', text: 'Pressure at the entrance of the inlet channels above the end of the outlet channels: [[channelDrop]].' },
    {
      gives: 'contractionDrop',
      text: 'A third of the loss coefficient on the dynamic head in the empty inlet channels: [[contractionDrop]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. 7',
    },
    {
      gives: 'expansionDrop',
      text: 'Two thirds of it on the dynamic head in the outlet channels: [[expansionDrop]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. 7',
    },
    {
      gives: 'closedFormDrop',
      text: 'The closed form with even wall flow gives [[closedFormDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    { gives: 'modelDifference', tex: '[[modelDifference]] = \\frac{[[pressureDrop]]}{[[closedFormDrop]]}-1' },
    { gives: 'pressureDrop', tex: '[[pressureDrop]] = [[channelDrop]]+[[contractionDrop]]+[[expansionDrop]]' },
  ],
  assumptions: [
    middleFlow,
    { code: 'even_cake', text: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
    { code: 'one_density', text: 'One density, temperature and viscosity in the whole filter.' },
    {
      code: 'flat_velocity',
      text: 'The velocity is even over the channel for its momentum, and gas passing the wall carries none along the channel.',
    },
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
    { code: 'deep_bed', text: 'Soot in the wall, the first 0.5 to 2 g per m² of wall, is not described.' },
    { code: 'plugs', text: "Friction beside the filter's own plugs is left out, as in the sources: a few per cent of the channel parts." },
    { code: 'laminar', text: 'Laminar channels (Reynolds number up to about 2000) and a wall Reynolds number below 2.' },
    {
      code: 'later_work',
      text: 'Later work corrects the momentum that gas carries into and out of the wall; the effect is within a few per cent of the drop.',
    },
  ],
  cautions: [cautions.makerFirst],
  sources: { bissett1984, liu2021, konstandopoulos2000, konstandopoulos2008, wang2021, unequalCells, cfr1065, siBrochure, soundOfIdealGas },
  precision: 1e-6,
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const sootPermeability = resolveSootPermeability(input, state.flow.viscosity, context.constants);
    const material = { ...input, sootPermeability };
    const loaded = loadChannels(state.channels, input);
    if (loaded === undefined)
      return noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
    const { channels, flow } = state;
    const wallVelocity = flow.volumeFlow / wallFlowArea(loaded.channels);
    const { channelFriction: friction } = context.constants;
    const { status, points, channelDrop, contractionDrop, expansionDrop } = channelProfile(loaded, flow, material, 21, friction);
    if (status !== 'converged')
      return noSolution('The flow along such narrow channels cannot be resolved. Use the closed form.', ['sootMass']);
    const closedFormDrop = totalDrop(loadedDropParts(loaded, flow, material, friction));
    const pressureDrop = channelDrop + contractionDrop + expansionDrop;
    const openWidth = loaded.widthInCake;
    const channelVelocity = flow.volumeFlow / (channels.inletCount * openWidth ** 2);
    const largest = points.reduce((most, point) => Math.max(most, point.wallVelocity), 0);
    if (points.some((point) => point.wallVelocity < 0))
      context.warn('backward_flow', 'Somewhere the gas passes the wall backwards: inertia is stronger than the wall.');
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
    warnOfLoad(loaded, input.sootMass, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
      cakePermeability: sootPermeability,
      channelVelocity,
      ...speed,
      wallVelocity,
      openWidth,
      channelDrop,
      contractionDrop,
      expansionDrop,
      closedFormDrop,
      modelDifference: pressureDrop / closedFormDrop - 1,
      profile: points,
      wallFlowUnevenness: largest / wallVelocity,
      pressureDrop,
    };
  },
});
