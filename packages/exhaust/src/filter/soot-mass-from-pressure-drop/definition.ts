import { choiceWithDefault, defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { fraction, length, mass, massConcentration, surfaceLoad } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { compressibleDrop, incompressibleDrop } from '../compressible-pressure-drop/kernel.js';
import { channelFriction, coveringThickness, filterConstants, slipReferencePressure } from '../constants.js';
import { deepBedMaterial, warnOfDeepBed } from '../deep-bed-pressure-drop/deep-bed-input.js';
import { deepBedDrop } from '../deep-bed-pressure-drop/kernel.js';
import { cakePermeabilityOutput, cakePermeabilityStep, densityStep, dropOutput, flowStateOutputs, viscosityStep } from '../drop-outputs.js';
import { filtrationArea } from '../filter-geometry/kernel.js';
import { resolveFlowState, warnOutsideClosedForm } from '../flow-state.js';
import {
  ashInputs,
  deepBedInputs,
  densityInputs,
  gasInputs,
  geometryInputs,
  pressureDropInput,
  sootMaterialInputs,
  wallInputs,
} from '../inputs.js';
import { deepBedRange, warnOfLoad } from '../load-warnings.js';
import { resolveSootPermeability } from '../resolve.js';
import {
  acicularCeramicStudy,
  bissett1984,
  cakeOnset,
  deepBedFit,
  konstandopoulosJohnson1989,
  unequalCells,
  wang2021,
  yao2023,
} from '../sources.js';
import { sootMassFromClosedForm, sootMassFromDeepBed, sootMassFromOneDimensional } from './kernel-models.js';

const methods = {
  'closed-form': 'closed form for even wall flow, solved for the soot mass',
  compressible: 'closed form with the expansion of the gas, solved for the soot mass',
  'one-dimensional': 'one-dimensional two-channel model, solved for the soot mass',
  'deep-bed': 'unit-collector wall under an even cake, solved for the soot mass',
};

const solvers = {
  'closed-form': sootMassFromClosedForm,
  compressible: sootMassFromClosedForm,
  'one-dimensional': sootMassFromOneDimensional,
  'deep-bed': sootMassFromDeepBed,
};

/** Load at which filters are usually regenerated, kg per m² of filtration area: Konstandopoulos 2008, p. 45, "of the order of 10 g/m²". */
const usualRegenerationLoad = 10e-3;

export const sootMassFromPressureDropCalculation = defineCalculation({
  id: 'soot-mass-from-pressure-drop',
  version: '1.0.0',
  subject: 'filter',
  title: 'Soot mass from a measured pressure drop',
  purpose: 'How much soot explains the drop that was measured, with the ash known?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['soot load', 'back pressure', 'inverse', 'how full'],
  method: 'pressure-drop model solved for the soot mass',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    ...geometryInputs,
    ...gasInputs,
    ...ashInputs,
    ...densityInputs,
    ...wallInputs,
    ...sootMaterialInputs,
    model: choiceWithDefault({
      label: 'Model',
      options: {
        'closed-form': 'closed form, all soot in an even cake',
        compressible: 'closed form with the expansion of the gas, all soot in an even cake',
        'one-dimensional': 'one-dimensional with inertia, all soot in an even cake',
        'deep-bed': 'soot in the wall and in a cake on it',
      },
      example: 'closed-form',
      default: 'closed-form',
      defaultReason: 'the published form; the deep-bed model is only fitted to two heavy-duty filters',
    }),
    ...deepBedInputs,
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    ...flowStateOutputs,
    cakePermeability: cakePermeabilityOutput,
    dropWithoutSoot: dropOutput('\\Delta p_0', 'Drop with the ash but without soot'),
    sootShare: quantityOutput(fraction, { symbol: 'x_s', label: 'Part of the drop that soot causes', digits: 3, units: ['%'] }),
    sootThickness: quantityOutput(length, { symbol: 'w', label: 'Thickness of the soot cake', units: ['um', 'mm', 'mil'] }),
    sootOnWall: quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
  },
  outputs: {
    sootLoad: quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', digits: 3, units: ['g/L', 'g/in3'] }),
    sootMass: quantityOutput(mass, { symbol: 'm_s', label: 'Soot mass', digits: 3, units: ['g', 'oz'] }),
  },
  constants: { ...filterConstants, slipReferencePressure, channelFriction, coveringThickness },
  steps: [
    viscosityStep,
    densityStep,
    cakePermeabilityStep,
    {
      gives: 'dropWithoutSoot',
      text: 'Model: [[model]]. With this ash and no soot it gives [[dropWithoutSoot]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'sootThickness',
      text: 'A cake of this thickness, with the soot in the wall if the model has any, makes it the measured drop: [[sootThickness]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs 1, A9 and A10',
    },
    { gives: 'sootShare', tex: '[[sootShare]] = 1-\\frac{[[dropWithoutSoot]]}{[[pressureDrop]]}' },
    { gives: 'sootLoad', text: 'Per volume of the filter: [[sootLoad]].' },
    {
      gives: 'sootMass',
      text: 'Cake thickness, packing density and channels give the mass: [[sootMass]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A9',
    },
  ],
  assumptions: [
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
    { code: 'even_cake', text: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
  ],
  limits: [
    {
      code: 'deep_bed',
      text: 'The first 0.5 to 2 g of soot per m² of wall goes into the wall and raises the drop much more than a cake: this method then reads too much soot.',
    },
    {
      code: 'history',
      text: 'The same load reads differently after a partial burn-off: drop can be near that of a clean filter with soot left.',
    },
    {
      code: 'soot_properties',
      text: 'Permeability and packing density of soot differ between engines; their product is known within a third, and so is the mass.',
    },
    { code: 'ash_unknown', text: 'Ash that is not given is read as soot.' },
  ],
  cautions: [cautions.sensorFirst, cautions.runaway, cautions.makerFirst],
  sources: {
    konstandopoulos2000,
    konstandopoulos2008,
    bissett1984,
    konstandopoulosJohnson1989,
    deepBedFit,
    cakeOnset,
    wang2021,
    yao2023,
    acicularCeramicStudy,
    unequalCells,
    cfr1065,
    siBrochure,
  },
  precision: 1e-6,
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const sootPermeability = resolveSootPermeability(input, state.flow.viscosity, context.constants);
    const material = { ...input, sootPermeability };
    const { channels, flow, wallVelocity, filterVolume } = state;
    const load = { ...input, sootMass: 0 };
    const { channelFriction: friction } = context.constants;
    const deep = deepBedMaterial(material, context.constants);
    const expanding = input.model === 'compressible';
    const target = expanding ? incompressibleDrop(input.pressureDrop, input.gasPressure) : input.pressureDrop;
    const found = solvers[input.model](target, channels, flow, deep, load, friction);
    context.method(methods[input.model]);
    if (found.status === 'below_clean') {
      const kilopascal = (
        (expanding ? compressibleDrop(found.dropWithoutSoot, input.gasPressure) : found.dropWithoutSoot) / 1000
      ).toPrecision(3);
      return noSolution(
        `Even without soot this filter would read ${kilopascal} kPa at this flow, more than was measured. Check flow, temperature, sensor zero and hoses, the wall permeability, or whether the filter is cracked.`,
        ['pressureDrop'],
      );
    }
    if (found.status === 'no_room') return noSolution('The ash alone fills the inlet channels.', ['ashMass']);
    if (found.status !== 'found') {
      return noSolution(
        'Even channels full of soot would not read as much at this flow. Check the unit of the drop, the flow and for a closed exhaust.',
        ['pressureDrop'],
      );
    }
    const { sootMass } = found;
    const dropWithoutSoot = expanding ? compressibleDrop(found.dropWithoutSoot, input.gasPressure) : found.dropWithoutSoot;
    const wallSoot =
      input.model === 'deep-bed' ? (deepBedDrop(channels, { ...load, sootMass }, flow, deep, friction)?.wallSootMass ?? 0) : 0;
    const loaded = loadChannels(channels, { ...load, sootMass: sootMass - wallSoot });
    if (loaded === undefined) return noSolution('The soot does not fit into the inlet channels.', ['pressureDrop']);
    const openWidth = loaded.widthInCake;
    const channelVelocity = flow.volumeFlow / (channels.inletCount * openWidth ** 2);
    const { pressureDrop } = input;
    warnOutsideClosedForm(
      { flow, channels, openWidth, channelVelocity, wallVelocity, outletPressure: expanding ? undefined : input.gasPressure, pressureDrop },
      context,
    );
    const sootOnWall = sootMass / filtrationArea(channels);
    if (input.model === 'deep-bed') warnOfDeepBed(input, context);
    else if (sootOnWall < deepBedRange) {
      context.warn(
        'deep_bed_range',
        'The result lies in the deep-bed range (below 2 g per m² of wall), where soot in the wall causes most of the drop: the true mass is smaller.',
      );
    } else {
      context.warn(
        'deep_bed_offset',
        'Soot inside the wall is read as cake: on a filter that was fully burnt off before, the true mass is smaller, on two published heavy-duty filters by a factor of 1.6 to 6.',
      );
    }
    warnOfLoad(loaded, 0, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
      cakePermeability: sootPermeability,
      channelVelocity,
      wallVelocity,
      dropWithoutSoot,
      sootShare: 1 - dropWithoutSoot / input.pressureDrop,
      sootThickness: loaded.sootThickness,
      sootOnWall,
      sootLoad: sootMass / filterVolume,
      sootMass,
    };
  },
  advise({ sootOnWall }) {
    const check = {
      tone: 'do' as const,
      text: 'Check sensor zero and hoses, and compare with a second method, before acting on this number.',
    };
    if (sootOnWall <= usualRegenerationLoad) return [check];
    return [
      check,
      {
        tone: 'do-not',
        text: 'More than 10 g per m² of wall is beyond the load at which filters are usually regenerated: do not start a regeneration on this number alone, it can run away. Follow the vehicle maker, or clean the filter off the vehicle.',
      },
    ];
  },
});
