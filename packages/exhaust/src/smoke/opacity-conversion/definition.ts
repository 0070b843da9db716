import * as wf from '@wallflow/calculation';
import { absorptionCoefficient, fraction, length } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr86Smoke, unR24, unR49Smoke } from '../sources.js';
import { absorptionFromOpacity, opacityFromAbsorption } from './kernel.js';

/** Opacity over a path; of thin smoke by the first two terms of the series, as the exponential leaves few digits. */
const opacityOver = (path: string) => ({
  [`absorptionOut * ${path} < 1e-5`]: `absorptionOut * ${path} * (1 - absorptionOut * ${path} / 2)`,
  otherwise: `1 - exp(-absorptionOut * ${path})`,
});

export const opacityConversionCalculation = wf.defineCalculation({
  id: 'opacity-conversion',
  subject: 'smoke',
  title: 'Opacity and absorption coefficient',
  purpose: 'What is this smoke reading on the other scale, or through another width of smoke?',
  keywords: 'opacity, smoke, absorption coefficient, k value, path length, smoke meter, opacimeter',
  method: 'Beer–Lambert law',
  inputs: {
    ...wf.oneOf({
      opacity: wf.quantity(fraction, {
        symbol: 'N',
        label: 'Opacity',
        description: 'Means nothing without the path of light it was read over.',
        range: '0 <= x < 100 %',
        usual: ['0 %', '99 %', 'next to full darkness the scale is too coarse to convert'],
        example: '26 %',
        units: ['%'],
      }),
      absorptionCoefficient: wf.quantity(absorptionCoefficient, {
        symbol: 'k',
        label: 'Absorption coefficient',
        range: '0 <= x <= 50 1/m',
        usual: ['0 1/m', '10 1/m', 'most smoke meters end at 10 per metre'],
        example: '0.7 1/m',
        units: ['1/m'],
      }),
    }),
    pathLength: wf.quantity(length, {
      symbol: 'L',
      label: 'Effective path of light through the smoke',
      range: '1 cm <= x <= 5 m',
      units: ['mm', 'm', 'in'],
      default: ['430 mm', 'effective path of the usual opacity scale, UN R24 and UN R49'],
    }),
    otherPathLength: wf.optional(
      wf.quantity(length, {
        symbol: 'L_2',
        label: 'Another path of light',
        description: 'For example the width of a smoke stack, to get the opacity seen there.',
        range: '1 cm <= x <= 5 m',
        example: '127 mm',
        units: ['mm', 'm', 'in'],
      }),
    ),
  },
  example: { opacity: '26 %' },
  outputs: {
    opacityOut: wf.quantityOutput(fraction, { symbol: 'N', label: 'Opacity over the path', digits: 5, units: ['%'] }),
    opacityOverOtherPath: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'N_2', label: 'Opacity over the other path', digits: 5, units: ['%'] }),
    ),
    absorptionOut: wf.quantityOutput(absorptionCoefficient, { symbol: 'k', label: 'Absorption coefficient', digits: 6, units: ['1/m'] }),
  },
  answer: 'absorptionOut',
  steps: [
    wf.cases(
      'absorptionOut',
      {
        'known(absorptionCoefficient)': 'absorptionCoefficient',
        // Next to nothing, a logarithm of nearly one has few digits left.
        'opacity < 1e-5': 'opacity * (1 + opacity / 2) / pathLength',
        otherwise: '-ln(1 - opacity) / pathLength',
      },
      unR49Smoke,
    ),
    wf.cases('opacityOut', opacityOver('pathLength'), unR49Smoke),
    wf.cases('opacityOverOtherPath', opacityOver('otherPathLength'), cfr86Smoke),
  ],
  assumptions: { beer_lambert: 'The smoke is even along the path, and holds no droplets.' },
  limits: { no_averaging: 'Opacities neither add nor average: convert to the absorption coefficient first.' },
  cautions: [cautions.fumes],
  sources: [unR24],
  compute(input) {
    const absorptionOut = input.absorptionCoefficient ?? absorptionFromOpacity(input.opacity ?? 0, input.pathLength);
    return {
      absorptionOut,
      opacityOut: opacityFromAbsorption(absorptionOut, input.pathLength),
      opacityOverOtherPath: input.otherPathLength === undefined ? undefined : opacityFromAbsorption(absorptionOut, input.otherPathLength),
    };
  },
});
