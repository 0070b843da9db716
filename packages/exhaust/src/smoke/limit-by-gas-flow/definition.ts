import { choice, choiceOutput, defineCalculation, noSolution, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { absorptionCoefficient, rotationalSpeed, volume, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { unR24 } from '../sources.js';
import { limitByGasFlow, nominalGasFlow } from './kernel.js';

export const limitByGasFlowCalculation = defineCalculation({
  id: 'smoke-limit-by-gas-flow',
  version: '1.0.0',
  subject: 'smoke',
  title: 'Full-load smoke limit by gas flow',
  purpose: 'Which smoke limit did type approval set for an engine of this size and speed at full load?',
  usedBy: ['trainer', 'developer'],
  keywords: ['UN R24', 'full load', 'nominal gas flow', 'type approval'],
  method: 'table of UN Regulation No. 24 with straight lines between its rows',
  inputs: z.strictObject({
    displacement: quantity(volume, {
      symbol: 'V',
      label: 'Displacement',
      above: '0.1 L',
      max: '60 L',
      example: '2.0 L',
      units: ['L', 'mL'],
    }),
    engineSpeed: quantity(rotationalSpeed, {
      symbol: 'n',
      label: 'Engine speed',
      above: '300 rpm',
      max: '8000 rpm',
      example: '3600 rpm',
      units: ['rpm'],
    }),
    strokes: choice({ label: 'Cycle', options: { four: 'four-stroke', two: 'two-stroke' }, example: 'four' }),
    reading: quantity(absorptionCoefficient, {
      symbol: 'k',
      label: 'Smoke at steady full load',
      min: '0 1/m',
      max: '20 1/m',
      example: '1.1 1/m',
    }).optional(),
  }),
  intermediates: { gasFlow: quantityOutput(volumeFlow, { symbol: 'G', label: 'Nominal gas flow', digits: 4, units: ['L/s'] }) },
  outputs: {
    verdict: choiceOutput({
      label: 'Verdict',
      options: { meets: 'meets the limit', exceeds: 'exceeds the limit', 'no-reading': 'no reading given' },
    }),
    margin: optional(
      quantityOutput(absorptionCoefficient, {
        symbol: '\\Delta k',
        label: 'Room below the limit',
        description: 'Negative above it.',
        digits: 3,
      }),
    ),
    limit: quantityOutput(absorptionCoefficient, { symbol: 'k_{max}', label: 'Limit', digits: 4 }),
  },
  constants: {},
  steps: [
    {
      gives: 'gasFlow',
      tex: '[[gasFlow]] = [[displacement]]\\,[[engineSpeed]]\\,\\frac{2}{\\text{strokes}}',
      source: 'unR24',
      locator: 'Annex 4, 4.1',
    },
    { gives: 'margin', tex: '[[margin]] = k_{max}-[[reading]]' },
    { gives: 'verdict', text: 'Reading against the limit.' },
    { gives: 'limit', text: 'Straight line between the rows of the table.', source: 'unR24', locator: 'Annex 7' },
  ],
  assumptions: [{ code: 'steady', text: 'Steady full load, not a free acceleration.' }],
  limits: [{ code: 'type_approval', text: 'For type approval of engines without a filter. The periodic test has limits of its own.' }],
  cautions: [],
  sources: { unR24 },
  dimensional: 'limits of the regulation held as data in their own units',
  compute(input, { warn }) {
    const gasFlow = nominalGasFlow(input.displacement, input.engineSpeed, input.strokes === 'four' ? 4 : 2);
    const limit = limitByGasFlow(gasFlow);
    if (limit === undefined) return noSolution('the table is empty');
    warn(
      'from_memory',
      'The table is from memory of UN Regulation No. 24, Annex 7; the formula of the gas flow and the straight lines were read.',
    );
    const margin = input.reading === undefined ? undefined : limit - input.reading;
    return { gasFlow, limit, margin, verdict: margin === undefined ? 'no-reading' : margin >= 0 ? 'meets' : 'exceeds' };
  },
});
