import { defineCalculation, isRefusal, noSolution, quantityOutput } from '@wallflow/calculation';
import { fraction, length, mass, massConcentration, surfaceLoad } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { channelFriction, filterConstants } from '../constants.js';
import { dropOutput, flowStateOutputs } from '../drop-outputs.js';
import { filtrationArea } from '../filter-geometry/kernel.js';
import { resolveFlowState, warnOutsideClosedForm } from '../flow-state.js';
import { ashInputs, densityInputs, gasInputs, geometryInputs, pressureDropInput, sootMaterialInputs, wallInputs } from '../inputs.js';
import { deepBedRange, warnOfLoad } from '../load-warnings.js';
import { loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { acicularCeramicStudy, unequalCells, wang2021, yao2023 } from '../sources.js';
import { sootMassFromClosedForm } from './kernel.js';

export const sootMassFromPressureDropCalculation = defineCalculation({
  id: 'soot-mass-from-pressure-drop',
  version: '1.0.0',
  subject: 'filter',
  title: 'Soot mass from a measured pressure drop',
  purpose: 'How much soot explains the drop that was measured, with the ash known?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['soot load', 'back pressure', 'inverse', 'how full'],
  method: 'closed form for even wall flow, solved for the soot mass',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    ...geometryInputs,
    ...gasInputs,
    ...ashInputs,
    ...densityInputs,
    ...wallInputs,
    ...sootMaterialInputs,
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    ...flowStateOutputs,
    dropWithoutSoot: dropOutput('\\Delta p_0', 'Drop with the ash but without soot'),
    sootShare: quantityOutput(fraction, { symbol: 'x_s', label: 'Part of the drop that soot causes', digits: 3, units: ['%'] }),
    sootThickness: quantityOutput(length, { symbol: 'w', label: 'Thickness of the soot cake', units: ['um', 'mm', 'mil'] }),
    sootOnWall: quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
  },
  outputs: {
    sootLoad: quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', digits: 3, units: ['g/L', 'g/in3'] }),
    sootMass: quantityOutput(mass, { symbol: 'm_s', label: 'Soot mass', digits: 3, units: ['g', 'oz'] }),
  },
  constants: { ...filterConstants, channelFriction },
  steps: [
    {
      gives: 'viscosity',
      text: 'Viscosity as given, or that of air at [[gasTemperature]]: [[viscosity]].',
      source: 'cfr1065',
      locator: '1065.640 Table 4',
    },
    {
      gives: 'density',
      text: 'Density as given, or that of air at [[gasTemperature]] and [[gasPressure]]: [[density]].',
      source: 'siBrochure',
    },
    {
      gives: 'dropWithoutSoot',
      text: 'The formula for a loaded filter with this ash and no soot gives [[dropWithoutSoot]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'sootThickness',
      text: 'A cake of this thickness makes it the measured drop: [[sootThickness]].',
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
  sources: { konstandopoulos2000, konstandopoulos2008, wang2021, yao2023, acicularCeramicStudy, unequalCells, cfr1065, siBrochure },
  compute(input, context) {
    const state = resolveFlowState(input, context.constants);
    if (isRefusal(state)) return state;
    const { channels, flow, wallVelocity, filterVolume } = state;
    const load = { ...input, sootMass: 0 };
    const found = sootMassFromClosedForm(input.pressureDrop, channels, flow, input, load, context.constants.channelFriction);
    if (found.status === 'below_clean') {
      const kilopascal = (found.dropWithoutSoot / 1000).toPrecision(3);
      return noSolution(
        `Even without soot this filter would read ${kilopascal} kPa at this flow, more than was measured. Check flow, temperature, sensor zero and hoses, the wall permeability, or whether the filter is cracked.`,
        ['pressureDrop'],
      );
    }
    if (found.status === 'no_room') return noSolution('The ash alone fills the inlet channels.', ['ashMass']);
    const loaded = found.status === 'found' ? loadChannels(channels, { ...load, sootMass: found.sootMass }) : undefined;
    if (found.status !== 'found' || loaded === undefined) {
      return noSolution(
        'Even channels full of soot would not read as much at this flow. Check the unit of the drop, the flow and for a closed exhaust.',
        ['pressureDrop'],
      );
    }
    const { sootMass, dropWithoutSoot } = found;
    const openWidth = loaded.widthInCake;
    const channelVelocity = flow.volumeFlow / (channels.inletCount * openWidth ** 2);
    const pressureDrop = totalDrop(loadedDropParts(loaded, flow, input, context.constants.channelFriction));
    warnOutsideClosedForm(
      { flow, channels, openWidth, channelVelocity, wallVelocity, outletPressure: input.gasPressure, pressureDrop },
      context,
    );
    const sootOnWall = sootMass / filtrationArea(channels);
    if (sootOnWall < deepBedRange) {
      context.warn(
        'deep_bed_range',
        'The result lies in the deep-bed range (below 2 g per m² of wall), where soot in the wall causes most of the drop: the true mass is smaller.',
      );
    } else {
      context.warn(
        'deep_bed_offset',
        'Soot inside the wall is read as cake: on a filter that was fully burnt off before, the true mass is smaller.',
      );
    }
    warnOfLoad(loaded, 0, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
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
});
