import { defineCalculation, inconsistentInputs, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absorptionCoefficient, fraction, length } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr86Smoke, unR24, unR49Smoke } from '../sources.js';
import { absorptionFromOpacity, opacityFromAbsorption } from './kernel.js';

export const opacityConversionCalculation = defineCalculation({
  id: 'opacity-conversion',
  version: '1.0.0',
  subject: 'smoke',
  title: 'Opacity and absorption coefficient',
  purpose: 'What is this smoke reading on the other scale, or through another width of smoke?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['opacity', 'smoke', 'absorption coefficient', 'k value', 'path length'],
  method: 'Beer–Lambert law',
  inputs: z.strictObject({
    opacity: quantity(fraction, {
      symbol: 'N',
      label: 'Opacity',
      description: 'Means nothing without the path of light it was read over.',
      min: '0 %',
      below: '100 %',
      usual: ['0 %', '99 %'],
      usualReason: 'next to full darkness the scale is too coarse to convert',
      example: '26 %',
      units: ['%'],
    }).optional(),
    absorptionCoefficient: quantity(absorptionCoefficient, {
      symbol: 'k',
      label: 'Absorption coefficient',
      min: '0 1/m',
      max: '50 1/m',
      usual: ['0 1/m', '10 1/m'],
      usualReason: 'most smoke meters end at 10 per metre',
      example: '0.7 1/m',
      units: ['1/m'],
    }).optional(),
    pathLength: quantityWithDefault(length, {
      symbol: 'L',
      label: 'Effective path of light through the smoke',
      min: '1 cm',
      max: '5 m',
      example: '430 mm',
      units: ['mm', 'm', 'in'],
      default: '430 mm',
      defaultReason: 'effective path of the usual opacity scale, UN R24 and UN R49',
    }),
    otherPathLength: quantity(length, {
      symbol: 'L_2',
      label: 'Another path of light',
      description: 'For example the width of a smoke stack, to get the opacity seen there.',
      min: '1 cm',
      max: '5 m',
      example: '127 mm',
      units: ['mm', 'm', 'in'],
    }).optional(),
  }),
  example: { opacity: '26 %' },
  intermediates: {},
  outputs: {
    opacityOut: quantityOutput(fraction, { symbol: 'N', label: 'Opacity over the path', digits: 5, units: ['%'] }),
    opacityOverOtherPath: optional(
      quantityOutput(fraction, { symbol: 'N_2', label: 'Opacity over the other path', digits: 5, units: ['%'] }),
    ),
    absorptionOut: quantityOutput(absorptionCoefficient, { symbol: 'k', label: 'Absorption coefficient', digits: 6, units: ['1/m'] }),
  },
  constants: {},
  steps: [
    { gives: 'opacityOut', tex: '[[opacityOut]] = 1 - e^{-[[absorptionOut]]\\,[[pathLength]]}', source: 'unR49Smoke' },
    {
      gives: 'opacityOverOtherPath',
      tex: '[[opacityOverOtherPath]] = 1 - \\left(1 - [[opacityOut]]\\right)^{[[otherPathLength]]/[[pathLength]]}',
      source: 'cfr86Smoke',
    },
    {
      gives: 'absorptionOut',
      tex: '[[absorptionOut]] = -\\frac{1}{[[pathLength]]}\\,\\ln\\left(1-[[opacityOut]]\\right)',
      source: 'unR49Smoke',
    },
  ],
  assumptions: [{ code: 'beer_lambert', text: 'The smoke is even along the path, and holds no droplets.' }],
  limits: [{ code: 'no_averaging', text: 'Opacities neither add nor average: convert to the absorption coefficient first.' }],
  cautions: [cautions.fumes],
  sources: { unR24, unR49Smoke, cfr86Smoke },
  compute(input) {
    if ((input.opacity === undefined) === (input.absorptionCoefficient === undefined)) {
      return inconsistentInputs('give either the opacity or the absorption coefficient', ['opacity'], ['absorptionCoefficient']);
    }
    const absorptionOut = input.absorptionCoefficient ?? absorptionFromOpacity(input.opacity ?? 0, input.pathLength);
    return {
      absorptionOut,
      opacityOut: opacityFromAbsorption(absorptionOut, input.pathLength),
      opacityOverOtherPath: input.otherPathLength === undefined ? undefined : opacityFromAbsorption(absorptionOut, input.otherPathLength),
    };
  },
});
