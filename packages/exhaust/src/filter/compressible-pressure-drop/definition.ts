import { defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { fraction, volumeFlow } from '@wallflow/units';
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
  dropOutput,
  flowStateOutputs,
  machStep,
  slowChannels,
  viscosityStep,
} from '../drop-outputs.js';
import { wallFlowArea } from '../filter-geometry/kernel.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import {
  ashInputs,
  chosenVolumeFlow,
  densityInputs,
  flowPressureInput,
  gasInputs,
  geometryInputs,
  sootMassInput,
  sootMaterialInputs,
  wallInputs,
} from '../inputs.js';
import { warnOfLoad } from '../load-warnings.js';
import { loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { resolveSootPermeability } from '../resolve.js';
import { acicularCeramicStudy, flowConversion, unequalCells, wang2021, yao2023 } from '../sources.js';
import { compressibleDrop, compressibleDropParts, flowBehind } from './kernel.js';

export const compressiblePressureDropCalculation = defineCalculation({
  id: 'compressible-pressure-drop',
  version: '2.0.0',
  subject: 'filter',
  title: 'Pressure drop with the expansion of the gas',
  purpose: 'What does a heavily loaded filter read when the gas gets noticeably thinner on its way through?',
  usedBy: ['developer', 'trainer'],
  keywords: ['compressible', 'high back pressure', 'expansion'],
  method: 'closed form, integrated with the pressure from the outlet upwards',
  inputs: z.strictObject({
    ...geometryInputs,
    ...gasInputs,
    exhaustVolumeFlow: chosenVolumeFlow,
    flowPressure: flowPressureInput,
    sootMass: sootMassInput,
    ...ashInputs,
    ...densityInputs,
    ...wallInputs,
    ...sootMaterialInputs,
  }),
  example: { filterDiameter: '144 mm', sootMass: '45 g' },
  intermediates: {
    ...flowStateOutputs,
    cakePermeability: cakePermeabilityOutput,
    outletVolumeFlow: quantityOutput(volumeFlow, { symbol: 'Q_1', label: 'Volume flow behind the filter', units: ['m3/h', 'L/s'] }),
    incompressibleDrop: dropOutput('\\Delta p_0', 'Drop with the density at the outlet throughout'),
    ...cleanPartOutputs,
    sootDrop: dropOutput('\\Delta p_s', 'Soot cake'),
    ashDrop: dropOutput('\\Delta p_a', 'Ash layer'),
  },
  outputs: {
    overestimate: quantityOutput(fraction, { symbol: '\\delta', label: 'Incompressible form against this one', digits: 3, units: ['%'] }),
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
  },
  constants: { ...dropConstants, slipReferencePressure, channelFriction },
  steps: [
    viscosityStep,
    {
      gives: 'density',
      text: 'Density at the outlet, as given or that of air at [[gasTemperature]] and [[gasPressure]]: [[density]].',
      source: 'siBrochure',
    },
    cakePermeabilityStep,
    {
      gives: 'outletVolumeFlow',
      text: 'The volume flow given, [[exhaustVolumeFlow]], belongs to the pressure [[flowPressure]]. Behind the filter it is [[outletVolumeFlow]].',
      source: 'flowConversion',
    },
    machStep,
    {
      gives: 'incompressibleDrop',
      text: 'The sum of all parts with the density and flow at the outlet: [[incompressibleDrop]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'expansionDrop',
      text: 'From the outlet upwards, every part at the pressure that reigns there. Expansion: [[expansionDrop]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. A.3',
    },
    { gives: 'outletChannelDrop', text: 'Outlet channels: [[outletChannelDrop]].', source: 'konstandopoulos2008', locator: 'Eq. A.4' },
    { gives: 'wallDrop', text: 'Wall: [[wallDrop]].', source: 'konstandopoulos2008', locator: 'Eq. A.5' },
    { gives: 'ashDrop', text: 'Ash layer: [[ashDrop]].' },
    { gives: 'sootDrop', text: 'Soot cake: [[sootDrop]].', source: 'konstandopoulos2008', locator: 'Eq. A.6' },
    { gives: 'inletChannelDrop', text: 'Inlet channels: [[inletChannelDrop]].', source: 'konstandopoulos2008', locator: 'Eq. A.7' },
    { gives: 'contractionDrop', text: 'Contraction: [[contractionDrop]].', source: 'konstandopoulos2008', locator: 'Eq. A.8' },
    { gives: 'overestimate', tex: '[[overestimate]] = \\frac{[[incompressibleDrop]]}{[[pressureDrop]]}-1' },
    {
      gives: 'pressureDrop',
      tex: '[[pressureDrop]] = [[gasPressure]]\\left(\\sqrt{1+\\frac{2\\,[[incompressibleDrop]]}{[[gasPressure]]}}-1\\right)',
      source: 'konstandopoulos2008',
      locator: 'Eqs A.3 to A.9, summed',
    },
  ],
  assumptions: [
    {
      code: 'flow_pressure',
      text: 'The volume flow belongs to the pressure that was chosen; without a choice, to that in the middle of the filter. The volume flow calculation gives the flow before the filter, and with the drop also the other two.',
    },
    { code: 'even_temperature', text: 'The temperature is even.' },
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
    { code: 'even_cake', text: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
  ],
  limits: [
    slowChannels,
    { code: 'deep_bed', text: 'Soot in the wall, the first 0.5 to 2 g per m² of wall, is not described.' },
    {
      code: 'compaction',
      text: 'From 155 to 205 mbar on, the soot cake compacts, by 10 to 16 % at twice that drop; this is not described.',
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
    flowConversion,
    soundOfIdealGas,
  },
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const { channels, flow } = state;
    const loaded = loadChannels(channels, input);
    if (loaded === undefined)
      return noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
    const sootPermeability = resolveSootPermeability(input, flow.viscosity, context.constants);
    const material = { ...input, sootPermeability };
    const { channelFriction: friction } = context.constants;
    const given = loadedDropParts(loaded, flow, material, friction);
    const factor = flowBehind(given, input.gasPressure, input.flowPressure);
    if (factor === undefined)
      return noSolution('No pressure before the filter drives so large a volume of gas through it.', ['exhaustVolumeFlow']);
    const behind = { ...flow, volumeFlow: factor * flow.volumeFlow };
    const parts = loadedDropParts(loaded, behind, material, friction);
    const incompressibleDrop = totalDrop(parts);
    const pressureDrop = compressibleDrop(incompressibleDrop, input.gasPressure);
    const before = behind.volumeFlow / (1 + pressureDrop / input.gasPressure);
    const openWidth = loaded.widthInCake;
    const channelVelocity = before / (channels.inletCount * openWidth ** 2);
    const outletVelocity = behind.volumeFlow / (channels.outletCount * channels.outletWidth ** 2);
    const wallVelocity = behind.volumeFlow / wallFlowArea(loaded.channels);
    const speed = checkedMach(
      {
        flow: behind,
        gasTemperature: input.gasTemperature,
        channels,
        openWidth,
        channelVelocity,
        outletVelocity,
        wallVelocity,
        pressureDrop,
      },
      context,
    );
    if (isRefusal(speed)) return speed;
    warnOfLoad(loaded, input.sootMass, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
      channelVelocity,
      ...speed,
      wallVelocity,
      cakePermeability: sootPermeability,
      outletVolumeFlow: behind.volumeFlow,
      incompressibleDrop,
      ...compressibleDropParts(parts, input.gasPressure),
      overestimate: incompressibleDrop / pressureDrop - 1,
      pressureDrop,
    };
  },
});
