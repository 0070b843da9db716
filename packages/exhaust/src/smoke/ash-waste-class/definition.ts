import {
  choice,
  choiceOutput,
  commonPractice,
  constant,
  defineCalculation,
  optional,
  quantity,
  quantityOutput,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import { fraction, mass, massFraction } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { californiaZinc, washWaterGuidance } from '../sources.js';
import { wasteRows } from './rows.js';

/** Total zinc from which ash is hazardous waste in California. */
const zincThreshold = 5000e-6;

export const ashWasteClassCalculation = defineCalculation({
  id: 'ash-waste-class',
  version: '1.0.0',
  subject: 'smoke',
  title: 'Ash and wash water as waste',
  purpose: 'Is this filter ash hazardous waste, and what must be done with ash and wash water?',
  usedBy: ['technician'],
  keywords: ['ash', 'waste', 'zinc', 'wash water'],
  method: 'published threshold where one is held, otherwise taken as hazardous',
  inputs: z.strictObject({
    place: choice({ label: 'Place', options: { california: 'California', elsewhere: 'elsewhere' }, example: 'california' }),
    zinc: quantity(massFraction, {
      symbol: 'w_{Zn}',
      label: 'Total zinc in the ash, from a laboratory',
      min: '0 mg/kg',
      max: '500000 mg/kg',
      example: '12000 mg/kg',
      units: ['mg/kg', '%'],
    }).optional(),
    ashMass: quantity(mass, {
      symbol: 'm',
      label: 'Mass of ash',
      min: '0 g',
      max: '1000 kg',
      example: '180 g',
      units: ['g', 'kg'],
    }).optional(),
  }),
  example: { zinc: '12000 mg/kg' },
  intermediates: {},
  outputs: {
    shareOfThreshold: optional(quantityOutput(fraction, { symbol: 'q', label: 'Share of the threshold', digits: 3, units: ['%'] })),
    zincMass: optional(quantityOutput(mass, { symbol: 'm_{Zn}', label: 'Zinc in this ash', digits: 3, units: ['g'] })),
    rules: tableOutput({
      label: 'What is held here',
      columns: { waste: textOutput({ label: 'Waste' }), rule: textOutput({ label: 'Rule' }), basis: textOutput({ label: 'Basis' }) },
    }),
    verdict: choiceOutput({
      label: 'Treat it as',
      options: {
        hazardous: 'hazardous: zinc reaches the threshold',
        'below-threshold': 'below the zinc threshold; other limits of the place may still make it hazardous',
        'assume-hazardous': 'hazardous until a test or the authority says otherwise',
      },
    }),
  },
  constants: {
    threshold: constant(massFraction, zincThreshold, {
      symbol: 'w_{max}',
      label: 'Threshold for total zinc in California',
      source: 'californiaZinc',
    }),
  },
  steps: [
    { gives: 'zincMass', tex: '[[zincMass]] = [[zinc]]\\,[[ashMass]]' },
    { gives: 'shareOfThreshold', tex: '[[shareOfThreshold]] = \\frac{[[zinc]]}{[[threshold]]}', source: 'californiaZinc' },
    { gives: 'rules', text: 'Rules held here with their sources.' },
    { gives: 'verdict', text: 'Zinc against the threshold in California; elsewhere no threshold is held.', source: 'californiaZinc' },
  ],
  assumptions: [{ code: 'representative', text: 'The sample stands for all of the ash.' }],
  limits: [{ code: 'one_place', text: 'A threshold is held for California only. Unknown is never taken as harmless.' }],
  cautions: [cautions.ashDust, cautions.waste],
  sources: {
    californiaZinc,
    washWaterGuidance,
    practice: commonPractice('Where no test exists, ash is handled as hazardous waste, closed, labelled and with papers'),
  },
  compute(input, { constants, warn }) {
    const known = input.place === 'california' && input.zinc !== undefined;
    if (input.place === 'california')
      warn('read_second_hand', 'The threshold was read in a letter to an authority, not in the regulation.');
    return {
      shareOfThreshold: known && input.zinc !== undefined ? input.zinc / constants.threshold : undefined,
      zincMass: input.zinc === undefined || input.ashMass === undefined ? undefined : input.zinc * input.ashMass,
      rules: wasteRows,
      verdict:
        !known || input.zinc === undefined ? 'assume-hazardous' : input.zinc >= constants.threshold ? 'hazardous' : 'below-threshold',
    };
  },
});
