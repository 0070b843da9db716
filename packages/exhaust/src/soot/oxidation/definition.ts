import {
  defineCalculation,
  isRefusal,
  optional,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import { fraction, reactionRate, time } from '@wallflow/units';
import * as z from 'zod';
import { konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { bai2016, bissettShadman1985, uncoatedDisk2008 } from '../sources.js';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs } from './inputs.js';
import { sootOxidationRate } from './kernel.js';
import { publishedEnergies } from './published.js';

export const sootOxidationRateCalculation = defineCalculation({
  id: 'soot-oxidation-rate',
  version: '1.1.0',
  subject: 'soot',
  title: 'How fast soot burns at a temperature',
  purpose: 'How fast do oxygen and nitrogen dioxide burn soot in the filter at a steady temperature, and how long does a burn-off take?',
  usedBy: ['developer', 'trainer', 'technician'],
  keywords: ['kinetics', 'Arrhenius', 'passive', 'active', 'burn rate'],
  method: 'first-order rate laws of the whole filter',
  inputs: z.strictObject({
    ...gasInputs,
    targetShare: quantityWithDefault(fraction, {
      symbol: 'X',
      label: 'Share of the soot to burn',
      above: '0 %',
      below: '100 %',
      example: '90 %',
      default: '90 %',
      defaultReason: 'what is usually called a complete regeneration',
    }),
    ...kineticsInputs,
  }),
  intermediates: {
    oxygenRate: quantityOutput(reactionRate, { symbol: 'k_{O_2}', label: 'Rate with oxygen', digits: 4, units: ['1/s'] }),
    nitrogenDioxideRate: quantityOutput(reactionRate, {
      symbol: 'k_{NO_2}',
      label: 'Rate with nitrogen dioxide',
      digits: 4,
      units: ['1/s'],
    }),
  },
  outputs: {
    rate: quantityOutput(reactionRate, {
      symbol: 'k',
      label: 'Rate of burning, share per time',
      digits: 4,
      units: ['1/s', '1/min', '1/h'],
    }),
    passiveShare: quantityOutput(fraction, { symbol: 'f_{NO_2}', label: 'Share burnt by nitrogen dioxide', digits: 3, units: ['%'] }),
    burnTime: optional(
      quantityOutput(time, { symbol: 't_X', label: 'Time for the share at this temperature', digits: 3, units: ['min', 'h', 's'] }),
    ),
    published: tableOutput({
      label: 'Published activation energies, for comparison',
      description: 'Energies of laws with and without a temperature factor are not interchangeable; most lack a usable factor.',
      columns: {
        oxidant: textOutput({ label: 'Oxidant' }),
        energy: textOutput({ label: 'Activation energy' }),
        from: textOutput({ label: 'Source' }),
      },
    }),
  },
  constants: kineticsConstants,
  steps: [
    {
      gives: 'oxygenRate',
      tex: '[[oxygenRate]] = A_{O_2}\\,\\exp\\left(-\\frac{E_{O_2}}{[[gasConstant]]\\,[[temperature]]}\\right)\\frac{[[oxygen]]}{x_{ref}}',
      source: 'bai2016',
      locator: 'Table 6, corrected',
    },
    {
      gives: 'nitrogenDioxideRate',
      tex: '[[nitrogenDioxideRate]] = A_{NO_2}\\,\\exp\\left(-\\frac{E_{NO_2}}{[[gasConstant]]\\,[[temperature]]}\\right)[[nitrogenDioxide]]^{n}',
      source: 'bai2016',
      locator: 'Tables 4 and 5',
    },
    { gives: 'passiveShare', tex: '[[passiveShare]] = \\frac{[[nitrogenDioxideRate]]}{[[oxygenRate]]+[[nitrogenDioxideRate]]}' },
    { gives: 'burnTime', tex: '[[burnTime]] = \\frac{-\\ln\\left(1-[[targetShare]]\\right)}{[[rate]]}' },
    { gives: 'rate', tex: '[[rate]] = [[oxygenRate]]+[[nitrogenDioxideRate]]' },
  ],
  assumptions: [
    { code: 'first_order', text: 'The rate is proportional to the soot that is left, at one temperature over the whole filter.' },
    {
      code: 'oxygen_scaling',
      text: 'The law of Bai et al. has no oxygen term; it is taken as holding at 10 % and as proportional to oxygen.',
    },
  ],
  limits: [
    {
      code: 'fitted_range',
      text: 'Each law is fitted to one filter; filters of its kind burn from half as fast to twice as fast. Below 450 °C oxygen alone burns less than the law of the coated filter says.',
    },
    {
      code: 'surface_law_fast',
      text: 'The surface law of 1985 is some eight times faster at 600 °C than what was measured on filters: compare with it, decide nothing by it.',
    },
  ],
  cautions: [],
  sources: { bai2016, bissettShadman1985, uncoatedDisk2008, konstandopoulos2000, konstandopoulos2008, siBrochure },
  compute(input, { constants }) {
    const kinetics = chosenKinetics(input, constants);
    if (isRefusal(kinetics)) return kinetics;
    const { oxygen, nitrogenDioxide, total } = sootOxidationRate(kinetics, input, constants.gasConstant);
    const burnTime = total > 0 ? -Math.log1p(-input.targetShare) / total : undefined;
    return {
      oxygenRate: oxygen,
      nitrogenDioxideRate: nitrogenDioxide,
      rate: total,
      passiveShare: total > 0 ? nitrogenDioxide / total : 0,
      burnTime: burnTime !== undefined && Number.isFinite(burnTime) ? burnTime : undefined,
      published: publishedEnergies.map((row) => ({ ...row })),
    };
  },
});
