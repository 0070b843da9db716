import * as wf from '@wallflow/calculation';
import { fraction, mass, massFraction } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { californiaZinc, washWaterGuidance } from '../sources.js';
import { wasteRows } from './rows.js';

const practice = wf.commonPractice('Where no test exists, ash is handled as hazardous waste, closed, labelled and with papers');

export const ashWasteClassCalculation = wf.defineCalculation({
  id: 'ash-waste-class',
  subject: 'smoke',
  title: 'Ash and wash water as waste',
  purpose: 'Is this filter ash hazardous waste, and what must be done with ash and wash water?',
  keywords: 'ash, waste, zinc, wash water',
  method: 'published threshold where there is one here, otherwise taken as hazardous',
  inputs: {
    place: wf.choice({ label: 'Place', options: { california: 'California', elsewhere: 'elsewhere' }, example: 'california' }),
    ashZinc: wf.optional(
      wf.quantity(massFraction, {
        symbol: 'w_{Zn}',
        label: 'Total zinc in the ash, from a laboratory',
        range: '0 <= x <= 500000 mg/kg',
        example: '12000 mg/kg',
        units: ['mg/kg', '%'],
      }),
    ),
    wasteMass: wf.optional(
      wf.quantity(mass, { symbol: 'm', label: 'Mass of ash', range: '0 g <= x <= 1000 kg', example: '180 g', units: ['g', 'kg'] }),
    ),
  },
  example: { ashZinc: '12000 mg/kg' },
  outputs: {
    shareOfThreshold: wf.optional(wf.quantityOutput(fraction, { symbol: 'q', label: 'Share of the threshold', digits: 3, units: ['%'] })),
    zincMass: wf.optional(wf.quantityOutput(mass, { symbol: 'm_{Zn}', label: 'Zinc in this ash', digits: 3, units: ['g'] })),
    wasteRules: wf.tableOutput({
      label: 'Rules',
      columns: {
        waste: wf.textOutput({ label: 'Waste' }),
        rule: wf.textOutput({ label: 'Rule' }),
        basis: wf.textOutput({ label: 'Basis' }),
      },
    }),
    verdict: wf.choiceOutput({
      label: 'Treat it as',
      options: {
        hazardous: 'hazardous: zinc reaches the threshold',
        'below-threshold': 'below the zinc threshold; other limits of the place may still make it hazardous',
        'assume-hazardous': 'hazardous until a test or the authority says otherwise',
      },
    }),
  },
  constants: {
    zincThreshold: wf.constant(massFraction, '5000 mg/kg', {
      symbol: 'w_{max}',
      label: 'Threshold for total zinc in California',
      source: californiaZinc,
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('zincMass', 'ashZinc * wasteMass'),
    wf.formula('shareOfThreshold', 'ashZinc / zincThreshold', californiaZinc),
    wf.statement('wasteRules', 'Rules listed here with their sources.'),
    wf.verdict(
      'verdict',
      {
        'assume-hazardous': "place != 'california' or not known(ashZinc)",
        hazardous: 'ashZinc >= zincThreshold',
        'below-threshold': 'otherwise',
      },
      californiaZinc,
    ),
  ],
  assumptions: { representative: 'The sample stands for all of the ash.' },
  limits: { one_place: 'There is a threshold for California only. Unknown is never taken as harmless.' },
  cautions: [cautions.ashDust, cautions.waste],
  sources: [washWaterGuidance, practice],
  compute(input, { constants, warn }) {
    const judged = input.place === 'california' ? input.ashZinc : undefined;
    if (input.place === 'california')
      warn('read_second_hand', 'The threshold was read in a letter to an authority, not in the regulation.');
    return {
      shareOfThreshold: judged === undefined ? undefined : judged / constants.zincThreshold,
      zincMass: input.ashZinc === undefined || input.wasteMass === undefined ? undefined : input.ashZinc * input.wasteMass,
      wasteRules: wasteRows.map(({ waste, rule, source }) => ({ waste, rule, basis: wf.citation(source) })),
      verdict: judged === undefined ? 'assume-hazardous' : judged >= constants.zincThreshold ? 'hazardous' : 'below-threshold',
    };
  },
});
