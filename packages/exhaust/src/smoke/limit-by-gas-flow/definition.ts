import * as wf from '@wallflow/calculation';
import { absorptionCoefficient, rotationalSpeed, volume, volumeFlow } from '@wallflow/units';
import { unR24 } from '../sources.js';
import { limitByGasFlow, nominalGasFlow } from './kernel.js';

export const limitByGasFlowCalculation = wf.defineCalculation({
  id: 'smoke-limit-by-gas-flow',
  subject: 'smoke',
  title: 'Full-load smoke limit by gas flow',
  purpose: 'Which smoke limit did type approval set for an engine of this size and speed at full load?',
  keywords: 'UN R24, full load, nominal gas flow, type approval, smoke meter, opacimeter',
  method: 'table of UN Regulation No. 24 with straight lines between its rows',
  inputs: {
    displacement: wf.quantity(volume, {
      symbol: 'V',
      label: 'Engine displacement',
      range: '0.1 < x <= 60 L',
      example: '2.0 L',
      units: ['L', 'mL'],
    }),
    engineSpeed: wf.quantity(rotationalSpeed, {
      symbol: 'n',
      label: 'Engine speed',
      range: '300 < x <= 8000 rpm',
      example: '3600 rpm',
      units: ['rpm'],
    }),
    strokes: wf.choice({ label: 'Working cycle', options: { four: 'four-stroke', two: 'two-stroke' }, example: 'four' }),
    absorptionReading: wf.optional(
      wf.quantity(absorptionCoefficient, {
        symbol: 'k',
        label: 'Test result, absorption coefficient',
        description: 'Read at steady full load.',
        range: '0 <= x <= 20 1/m',
        example: '1.1 1/m',
      }),
    ),
  },
  intermediates: { gasFlow: wf.quantityOutput(volumeFlow, { symbol: 'G', label: 'Nominal gas flow', digits: 4, units: ['L/s'] }) },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: { meets: 'meets the limit', exceeds: 'exceeds the limit', 'no-reading': 'no reading given' },
    }),
    absorptionMargin: wf.optional(
      wf.quantityOutput(absorptionCoefficient, {
        symbol: '\\Delta k',
        label: 'Room below the limit',
        description: 'Negative above it.',
        digits: 3,
      }),
    ),
    absorptionLimit: wf.quantityOutput(absorptionCoefficient, { symbol: 'k_{max}', label: 'Limit, absorption coefficient', digits: 4 }),
  },
  answer: 'absorptionLimit',
  steps: [
    wf.cases(
      'gasFlow',
      { "strokes == 'four'": 'displacement * engineSpeed / 2', otherwise: 'displacement * engineSpeed' },
      unR24,
      'Annex 4, 4.1',
    ),
    wf.fromTable('absorptionLimit', ['gasFlow'], unR24, 'Annex 7', 'Straight line between the rows of the table.'),
    wf.formula('absorptionMargin', 'absorptionLimit - absorptionReading'),
    wf.verdict('verdict', { 'no-reading': 'not known(absorptionReading)', meets: 'absorptionMargin >= 0', exceeds: 'otherwise' }),
  ],
  assumptions: { steady: 'Steady full load, not a free acceleration.' },
  limits: { type_approval: 'For type approval of engines without a filter. The periodic test has limits of its own.' },
  dimensional: 'limits of the regulation held as data in their own units',
  compute(input, { warn }) {
    const gasFlow = nominalGasFlow(input.displacement, input.engineSpeed, input.strokes === 'four' ? 4 : 2);
    const limit = limitByGasFlow(gasFlow);
    if (limit === undefined) return wf.noSolution('the table is empty');
    warn(
      'from_memory',
      'The table is from memory of UN Regulation No. 24, Annex 7; the formula of the gas flow and the straight lines were read.',
    );
    const margin = input.absorptionReading === undefined ? undefined : limit - input.absorptionReading;
    return {
      gasFlow,
      absorptionLimit: limit,
      absorptionMargin: margin,
      verdict: margin === undefined ? 'no-reading' : margin >= 0 ? 'meets' : 'exceeds',
    };
  },
});
