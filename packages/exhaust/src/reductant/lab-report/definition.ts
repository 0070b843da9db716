import {
  choiceOutput,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import { massFraction } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { iso22241Part1 } from '../sources.js';
import { labFinding, labVerdict } from './kernel.js';
import { type LabProperty, labLimits, labProperties } from './limits.js';

const findings = { within: 'within', exceeds: 'too much', below: 'too little', 'not-measured': 'not measured' } as const;

function share(property: LabProperty, max: string, example: string) {
  const name = labLimits[property].name;
  const unit = max.endsWith('%') ? (['%'] as const) : (['mg/kg'] as const);
  return quantity(massFraction, {
    symbol: `w_{\\text{${name}}}`,
    label: name.charAt(0).toUpperCase() + name.slice(1),
    min: '0 mg/kg',
    max,
    example,
    units: [...unit],
  }).optional();
}

export const labReportCalculation = defineCalculation({
  id: 'reductant-lab-report',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Laboratory report on reductant',
  purpose: 'Does the fluid meet every limit of the standard, and what was not measured?',
  usedBy: ['technician', 'trainer'],
  keywords: ['ISO 22241', 'laboratory', 'metals', 'biuret', 'purity'],
  method: 'limits of ISO 22241-1, held as data',
  inputs: z.strictObject({
    urea: share('urea', '60 %', '32.5 %'),
    biuret: share('biuret', '10 %', '0.2 %'),
    alkalinity: share('alkalinity', '10 %', '0.02 %'),
    aldehydes: share('aldehydes', '1000 mg/kg', '1 mg/kg'),
    insolubles: share('insolubles', '10000 mg/kg', '5 mg/kg'),
    phosphate: share('phosphate', '1000 mg/kg', '0.1 mg/kg'),
    calcium: share('calcium', '1000 mg/kg', '0.2 mg/kg'),
    iron: share('iron', '1000 mg/kg', '0.1 mg/kg'),
    aluminium: share('aluminium', '1000 mg/kg', '0.1 mg/kg'),
    magnesium: share('magnesium', '1000 mg/kg', '0.1 mg/kg'),
    sodium: share('sodium', '1000 mg/kg', '0.3 mg/kg'),
    potassium: share('potassium', '1000 mg/kg', '0.2 mg/kg'),
    copper: share('copper', '1000 mg/kg', '0.05 mg/kg'),
    zinc: share('zinc', '1000 mg/kg', '0.05 mg/kg'),
    chromium: share('chromium', '1000 mg/kg', '0.05 mg/kg'),
    nickel: share('nickel', '1000 mg/kg', '0.05 mg/kg'),
  }),
  example: { urea: '32.4 %', biuret: '0.25 %', calcium: '1.4 mg/kg', sodium: '0.4 mg/kg' },
  intermediates: {},
  outputs: {
    findings: tableOutput({
      label: 'Findings',
      columns: {
        property: textOutput({ label: 'Property' }),
        value: optional(quantityOutput(massFraction, { symbol: 'w', label: 'Found', digits: 3, units: ['mg/kg'] })),
        limit: quantityOutput(massFraction, { symbol: 'w_{max}', label: 'Highest', digits: 3, units: ['mg/kg'] }),
        finding: choiceOutput({ label: 'Finding', options: findings }),
        mark: textOutput({ label: 'Limit' }),
      },
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        meets: 'meets every limit',
        fails: 'fails',
        incomplete: 'nothing wrong found, but not everything was measured: not a pass',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'findings', text: 'Each value against its limit.', source: 'iso22241Part1', locator: 'Table 1' },
    {
      gives: 'verdict',
      text: 'One finding outside fails the fluid; a pass needs every property.',
      source: 'iso22241Part1',
      locator: 'Table 1',
    },
  ],
  assumptions: [{ code: 'representative', text: 'The sample was taken clean and stands for the whole fluid.' }],
  limits: [{ code: 'laboratory', text: 'None of these but the urea content can be found with a refractometer.' }],
  cautions: [cautions.waste],
  sources: { iso22241Part1, metals: { ...iso22241Part1, locator: 'insolubles, phosphate and metals', mark: 'from memory' } },
  compute(input, { warn }) {
    if (labProperties.every((property) => input[property] === undefined))
      return inconsistentInputs('give at least one value of the report', ['urea'], ['biuret']);
    if (labProperties.some((property) => input[property] !== undefined && labLimits[property].mark === 'from memory')) {
      warn('from_memory', 'The limits of insolubles, phosphate and metals are from memory of ISO 22241-1; compare them with the standard.');
    }
    return {
      findings: labProperties.map((property) => {
        const { name, max, mark } = labLimits[property];
        return { property: name, value: input[property], limit: max, finding: labFinding(input[property], labLimits[property]), mark };
      }),
      verdict: labVerdict(input),
    };
  },
  advise: ({ verdict }) =>
    verdict === 'fails'
      ? [
          {
            tone: 'do',
            text: 'Drain the fluid, find where it came from, and have the filter in the line checked. Metals and phosphate stay on the catalyst.',
          },
          { tone: 'do-not', text: 'Do not blend it with good fluid.' },
        ]
      : [],
});
