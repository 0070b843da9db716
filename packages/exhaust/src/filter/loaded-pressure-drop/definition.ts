import { defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { flowResistance as flowResistanceKind, length, massConcentration, surfaceLoad } from '@wallflow/units';
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
import { ashInputs, densityInputs, gasInputs, geometryInputs, sootMassInput, sootMaterialInputs, wallInputs } from '../inputs.js';
import { warnOfLoad } from '../load-warnings.js';
import { resolveSootPermeability } from '../resolve.js';
import { acicularCeramicStudy, unequalCells, wang2021, yao2023 } from '../sources.js';
import { loadedDropParts } from './kernel.js';

const thickness = (symbol: string, label: string) => quantityOutput(length, { symbol, label, units: ['um', 'mm', 'mil'] });

export const loadedPressureDropCalculation = defineCalculation({
  id: 'loaded-pressure-drop',
  version: '1.1.0',
  subject: 'filter',
  title: 'Pressure drop of a filter with soot and ash',
  purpose: 'What does the filter read with this much soot and ash in it, and which part causes it?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['back pressure', 'soot', 'ash', 'Konstandopoulos', 'breakdown'],
  method: 'closed form for even wall flow',
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
    sootLoad: quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', units: ['g/L'] }),
    sootOnWall: quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
    ashThickness: thickness('w_a', 'Thickness of the ash layer'),
    sootThickness: thickness('w', 'Thickness of the soot cake'),
    ashPlugLength: quantityOutput(length, { symbol: 'L_a', label: 'Length of the ash plug', units: ['mm', 'in'] }),
    openWidth: quantityOutput(length, { symbol: '\\alpha_1', label: 'Width left open in the inlet channels', units: ['mm', 'um'] }),
    ...cleanPartOutputs,
    sootDrop: dropOutput('\\Delta p_s', 'Soot cake'),
    ashDrop: dropOutput('\\Delta p_a', 'Ash layer'),
  },
  outputs: {
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
    flowResistance: quantityOutput(flowResistanceKind, { symbol: 'R', label: 'Flow resistance', units: ['1/mm3', '1/m3'] }),
  },
  constants: { ...dropConstants, slipReferencePressure, channelFriction },
  steps: [
    viscosityStep,
    densityStep,
    cakePermeabilityStep,
    { gives: 'ashPlugLength', text: 'The part of the ash in plugs fills the inlet channels from the end: [[ashPlugLength]].' },
    {
      gives: 'ashThickness',
      text: 'The rest of the ash lies evenly on the wall: [[ashThickness]].',
      source: 'wang2021',
      locator: 'Eqs 9 and 10',
    },
    {
      gives: 'sootThickness',
      text: 'The soot lies evenly on top of it: [[sootThickness]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs A9 and A10',
    },
    {
      gives: 'openWidth',
      text: 'Width left open in the inlet channels: [[openWidth]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A10',
    },
    {
      gives: 'channelVelocity',
      text: 'Volume flow over that open area: [[channelVelocity]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A2',
    },
    {
      gives: 'wallVelocity',
      text: 'Volume flow over the wall area that is left: [[wallVelocity]].',
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
      gives: 'sootDrop',
      text: 'Soot cake, with the logarithm of the narrowing channel: [[sootDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs 1 and A12',
    },
    { gives: 'ashDrop', text: 'Ash layer, in the same way: [[ashDrop]].', source: 'wang2021', locator: 'Eqs 49 and 50' },
    {
      gives: 'inletChannelDrop',
      text: 'Friction in the narrowed inlet channels: [[inletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs 1 and A15',
    },
    {
      gives: 'outletChannelDrop',
      text: 'Friction in the outlet channels, and of the whole flow beside an ash plug: [[outletChannelDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs 1 and A5',
    },
    {
      gives: 'contractionDrop',
      text: 'A third of the loss coefficient on the dynamic head in the empty inlet channels: [[contractionDrop]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. 7 and App. A.9',
    },
    {
      gives: 'expansionDrop',
      text: 'Two thirds of it on the dynamic head in the outlet channels: [[expansionDrop]].',
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
      gives: 'flowResistance',
      text: 'The same drop without the effect of flow and temperature: [[flowResistance]].',
    },
    {
      gives: 'pressureDrop',
      tex: '[[pressureDrop]] = [[wallDrop]]+[[sootDrop]]+[[ashDrop]]+[[inletChannelDrop]]+[[outletChannelDrop]]+[[contractionDrop]]+[[expansionDrop]]+[[forchheimerDrop]]',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
  ],
  assumptions: [
    middleFlow,
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
    { code: 'even_cake', text: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
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
    {
      code: 'deep_bed',
      text: 'The first 0.5 to 2 g of soot per m² of wall goes into the wall and raises the drop much more than this formula says.',
    },
    {
      code: 'heavy_load',
      text: 'When soot fills a third of the channel width or more, this formula falls up to 15 % short of a measured curve.',
    },
    { code: 'plugs', text: "Friction beside the filter's own plugs is left out, as in the sources: a few per cent of the channel parts." },
    { code: 'laminar', text: 'Laminar channels (Reynolds number up to about 2000) and a wall Reynolds number below 2.' },
    {
      code: 'soot_properties',
      text: 'Permeability and packing density of soot differ between engines; what counts is mostly their product, which differs by a factor of two between published measurements.',
    },
  ],
  cautions: [cautions.makerFirst],
  sources: {
    konstandopoulos2000,
    konstandopoulos2008,
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
    const loaded = loadChannels(state.channels, input);
    if (loaded === undefined)
      return noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
    const { channels, flow, filterVolume } = state;
    const openWidth = loaded.widthInCake;
    const channelVelocity = flow.volumeFlow / (channels.inletCount * openWidth ** 2);
    const parts = loadedDropParts(loaded, flow, material, context.constants.channelFriction);
    const pressureDrop = totalDrop(parts);
    const wallVelocity = flow.volumeFlow / wallFlowArea(loaded.channels);
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
      sootLoad: input.sootMass / filterVolume,
      sootOnWall: input.sootMass / filtrationArea(channels),
      ashThickness: loaded.ashThickness,
      sootThickness: loaded.sootThickness,
      ashPlugLength: loaded.ashPlugLength,
      openWidth,
      ...parts,
      pressureDrop,
      flowResistance: flowResistance(pressureDrop, flow.viscosity, flow.volumeFlow),
    };
  },
});
