import * as wf from '@wallflow/calculation';
import { massConcentration, surfaceLoad } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { dropModel, loadedConstants, loadedInputs, materialIn } from '../drop-model.js';
import { depositOutputs, dropOutput, flowResistanceOutput, flowStateOutputs, loadedPartOutputs } from '../drop-outputs.js';
import {
  ashSteps,
  bodyLoad,
  cakePermeabilityStep,
  cakeSteps,
  flowResistanceStep,
  layerSteps,
  loadedSum,
  machSteps,
  otherPartSteps,
  startSteps,
  velocitySteps,
  wallStep,
} from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { filtrationArea } from '../filter-geometry/kernel.js';
import { warnOfLoad } from '../load-warnings.js';
import { acicularCeramicStudy, unequalCells, yao2023 } from '../sources.js';
import { loadedDropParts } from './kernel.js';

export const loadedPressureDropCalculation = wf.defineCalculation({
  id: 'loaded-pressure-drop',
  subject: 'filter',
  title: 'Pressure drop of a filter with soot and ash',
  purpose: 'What does the filter read with this much soot and ash in it, and which part causes it?',
  keywords: 'back pressure, backpressure, soot, ash, DPF, Konstandopoulos, breakdown, delta p, restriction',
  method: 'closed form for even wall flow',
  inputs: loadedInputs,
  intermediates: {
    ...flowStateOutputs,
    ...depositOutputs,
    sootLoad: wf.quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', units: ['g/L'] }),
    sootOnWall: wf.quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
    ...loadedPartOutputs,
  },
  outputs: { pressureDrop: dropOutput('\\Delta p', 'Pressure drop'), flowResistance: flowResistanceOutput },
  answer: 'pressureDrop',
  constants: loadedConstants,
  steps: [
    ...startSteps,
    cakePermeabilityStep,
    ...ashSteps,
    ...cakeSteps('sootMass'),
    bodyLoad('sootLoad', 'sootMass'),
    wf.formula('sootOnWall', 'sootMass / filtrationArea'),
    ...velocitySteps(),
    ...machSteps,
    wallStep('Drop'),
    ...layerSteps('Drop'),
    ...otherPartSteps('Drop'),
    wf.formula('pressureDrop', loadedSum, konstandopoulos2000, 'Eq. 1'),
    flowResistanceStep,
  ],
  assumptions: { ...assumed.middle, ...assumed.evenFlow, ...assumed.evenCake, ...assumed.oneDensity },
  limits: {
    ...limit.mach,
    ...limit.unequalCells,
    ...limit.threeToOne,
    ...limit.deepBed,
    heavy_load: 'When soot fills a third of the channel width or more, this formula falls up to 15 % short of a measured curve.',
    ...limit.plugs,
    ...limit.laminar,
    soot_properties:
      'Permeability and packing density of soot differ between engines; what counts is mostly their product, which differs by a factor of two between published measurements.',
  },
  cautions: [cautions.makerFirst],
  sources: [yao2023, acicularCeramicStudy, unequalCells],
  compute: (input, context) =>
    dropModel(input, context, (state) => {
      const { loaded, flow, filterVolume, channels } = state;
      const material = materialIn(input, state, context.constants);
      const parts = loadedDropParts(loaded, flow, material, context.constants.channelFriction);
      warnOfLoad(loaded, input.sootMass, context);
      return {
        ...parts,
        cakePermeability: material.cakePermeability,
        sootLoad: input.sootMass / filterVolume,
        sootOnWall: input.sootMass / filtrationArea(channels),
        pressureDrop: totalDrop(parts),
      };
    }),
});
