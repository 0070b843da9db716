import { defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { flowResistance as flowResistanceKind, fraction, mass, surfaceLoad } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { soundOfIdealGas } from '../../flow/sources.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { channelFriction, coveringThickness, dropConstants, slipReferencePressure } from '../constants.js';
import {
  cakePermeabilityOutput,
  cakePermeabilityStep,
  cleanPartOutputs,
  densityStep,
  dropOutput,
  flowStateOutputs,
  machStep,
  middleFlow,
  slowChannels,
  viscosityStep,
} from '../drop-outputs.js';
import { filtrationArea, wallFlowArea } from '../filter-geometry/kernel.js';
import { flowResistance } from '../flow-resistance/kernel.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import {
  ashInputs,
  deepBedInputs,
  densityInputs,
  gasInputs,
  geometryInputs,
  sootMassInput,
  sootMaterialInputs,
  wallInputs,
} from '../inputs.js';
import { loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { resolveSootPermeability } from '../resolve.js';
import { acicularCeramicStudy, cakeOnset, deepBedFit, konstandopoulosJohnson1989, unequalCells, wang2021, yao2023 } from '../sources.js';
import { deepBedMaterial, warnOfDeepBed } from './deep-bed-input.js';
import { deepBedDrop } from './kernel.js';

export const deepBedPressureDropCalculation = defineCalculation({
  id: 'deep-bed-pressure-drop',
  version: '1.1.0',
  subject: 'filter',
  title: 'Pressure drop with soot in the wall and on it',
  purpose: 'What does a filter read from its first grams of soot on, when soot still goes into the wall?',
  usedBy: ['developer', 'trainer'],
  keywords: ['deep bed', 'unit collector', 'two layers', 'first soot', 'hysteresis'],
  method: 'unit-collector wall under an even cake',
  inputs: z.strictObject({
    ...geometryInputs,
    ...gasInputs,
    sootMass: sootMassInput,
    ...ashInputs,
    ...densityInputs,
    ...wallInputs,
    ...sootMaterialInputs,
    ...deepBedInputs,
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    ...flowStateOutputs,
    cakePermeability: cakePermeabilityOutput,
    sootOnWall: quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
    permeabilityRatio: quantityOutput(fraction, { symbol: 'k/k_0', label: 'Wall permeability left', digits: 3, units: ['%', '1'] }),
    ...cleanPartOutputs,
    sootDrop: dropOutput('\\Delta p_s', 'Soot cake'),
    ashDrop: dropOutput('\\Delta p_a', 'Ash layer'),
    cakeOnlyDrop: dropOutput('\\Delta p_0', 'Closed form with all soot in the cake, for comparison'),
  },
  outputs: {
    wallSootMass: quantityOutput(mass, { symbol: 'm_w', label: 'Soot inside the wall', digits: 3, units: ['g'] }),
    cakeSootMass: quantityOutput(mass, { symbol: 'm_c', label: 'Soot in the cake', digits: 3, units: ['g'] }),
    flowResistance: quantityOutput(flowResistanceKind, { symbol: 'R', label: 'Flow resistance', units: ['1/mm3', '1/m3'] }),
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
  },
  constants: { ...dropConstants, slipReferencePressure, channelFriction, coveringThickness },
  steps: [
    viscosityStep,
    densityStep,
    cakePermeabilityStep,
    {
      gives: 'wallSootMass',
      tex: '\\frac{d [[wallSootMass]]}{d [[sootMass]]} = s\\left(1-\\frac{d_c^{2}-d_{c0}^{2}}{(\\psi b)^{2}-d_{c0}^{2}}\\right)',
      source: 'konstandopoulosJohnson1989',
      locator: 'unit collectors of diameter d_c in cells of diameter b; s is the part of the wall free of ash',
    },
    { gives: 'cakeSootMass', tex: '[[cakeSootMass]] = [[sootMass]]-[[wallSootMass]]' },
    {
      gives: 'permeabilityRatio',
      tex: '[[permeabilityRatio]] = \\left(\\frac{d_c}{d_{c0}}\\right)^{2}\\frac{f(\\varepsilon)}{f(\\varepsilon_0)}',
      source: 'konstandopoulos2008',
      locator: 'Eqs 11 to 14, Kuwabara factor f',
    },
    machStep,
    { gives: 'wallDrop', text: 'Wall with what permeability is left: [[wallDrop]].', source: 'konstandopoulos2000', locator: 'Eq. A1' },
    { gives: 'sootDrop', text: 'Soot cake: [[sootDrop]].', source: 'konstandopoulos2000', locator: 'Eqs 1 and A12' },
    { gives: 'ashDrop', text: 'Ash layer: [[ashDrop]].', source: 'wang2021', locator: 'Eqs 49 and 50' },
    {
      gives: 'inletChannelDrop',
      text: 'Friction in the inlet channels: [[inletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'outletChannelDrop',
      text: 'Friction in the outlet channels: [[outletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'cakeOnlyDrop',
      text: 'The closed form with all soot in the cake would give [[cakeOnlyDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    { gives: 'flowResistance', text: 'Without the effect of flow and temperature: [[flowResistance]].' },
    {
      gives: 'pressureDrop',
      tex: '[[pressureDrop]] = [[wallDrop]]+[[sootDrop]]+[[ashDrop]]+[[inletChannelDrop]]+[[outletChannelDrop]]+[[contractionDrop]]+[[expansionDrop]]+[[forchheimerDrop]]',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
  ],
  assumptions: [
    middleFlow,
    { code: 'even_wall', text: 'The wall fills evenly over its depth, as one layer; the cake lies on it as another.' },
    { code: 'from_clean', text: 'The filter was free of soot when loading began, and nothing has burnt off since.' },
    {
      code: 'ash_covers',
      text: 'An ash layer keeps soot out of the wall, wholly from a thickness of 15 µm on: then more ash can mean a lower drop.',
    },
  ],
  limits: [
    slowChannels,
    {
      code: 'fitted_range',
      text: 'Fitted to two bare cordierite filters of 17 L, 100 cpsi, up to 5 g/L: within 4 and 7 % of the measured drops from 5 g on. The first point of one curve is 15 % off.',
    },
    {
      code: 'history',
      text: 'After a partial burn-off the wall may be empty under a remaining cake; the drop is then much lower at the same mass.',
    },
    {
      code: 'other_walls',
      text: 'For other walls and for coated ones the percolation factor is unknown; the drop is sensitive to it, 0.01 changes it by 5 to 20 %.',
    },
  ],
  cautions: [cautions.makerFirst],
  sources: {
    konstandopoulosJohnson1989,
    konstandopoulos2000,
    konstandopoulos2008,
    deepBedFit,
    cakeOnset,
    wang2021,
    yao2023,
    acicularCeramicStudy,
    unequalCells,
    cfr1065,
    siBrochure,
    soundOfIdealGas,
  },
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const sootPermeability = resolveSootPermeability(input, state.flow.viscosity, context.constants);
    const material = { ...input, sootPermeability };
    const { channels, flow } = state;
    const { channelFriction: friction } = context.constants;
    const deep = deepBedMaterial(material, context.constants);
    const result = deepBedDrop(channels, input, flow, deep, friction);
    const cakeOnly = loadChannels(channels, input);
    if (result === undefined || cakeOnly === undefined) {
      return noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
    }
    const pressureDrop = totalDrop(result.parts);
    const openWidth = cakeOnly.widthInCake;
    const channelVelocity = flow.volumeFlow / (channels.inletCount * openWidth ** 2);
    const wallVelocity = flow.volumeFlow / wallFlowArea(cakeOnly.channels);
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
    warnOfDeepBed(input, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
      cakePermeability: sootPermeability,
      channelVelocity,
      ...speed,
      wallVelocity,
      sootOnWall: input.sootMass / filtrationArea(channels),
      permeabilityRatio: result.permeabilityRatio,
      ...result.parts,
      cakeOnlyDrop: totalDrop(loadedDropParts(cakeOnly, flow, material, friction)),
      wallSootMass: result.wallSootMass,
      cakeSootMass: result.cakeSootMass,
      flowResistance: flowResistance(pressureDrop, flow.viscosity, flow.volumeFlow),
      pressureDrop,
    };
  },
});
