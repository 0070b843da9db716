import * as wf from '@wallflow/calculation';
import { massFraction } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { iso22241Part1 } from '../sources.js';
import { labFinding, labVerdict } from './kernel.js';
import { type LabLimit, type LabProperty, labLimits, labProperties } from './limits.js';

const findings = { within: 'within', exceeds: 'too much', below: 'too little', 'not-measured': 'not measured' } as const;

function share(property: LabProperty, max: string, example: string) {
  const name = labLimits[property].name;
  const unit = max.endsWith('%') ? (['%'] as const) : (['mg/kg'] as const);
  return wf.quantity(massFraction, {
    symbol: `w_{\\text{${name}}}`,
    label: name.charAt(0).toUpperCase() + name.slice(1),
    range: `0 mg/kg <= w <= ${max}`,
    example,
    units: [...unit],
  });
}
const inFluid = (symbol: string, label: string) => wf.quantityOutput(massFraction, { symbol, label, digits: 3, units: ['mg/kg'] });

const metals: wf.Source = { ...iso22241Part1, locator: 'insolubles, phosphate and metals', mark: 'from memory' };

export const labReportCalculation = wf.defineCalculation({
  id: 'reductant-lab-report',
  subject: 'reductant',
  title: 'Laboratory report on reductant',
  purpose: 'Does the fluid meet every limit of the standard, and what was not measured?',
  keywords: 'ISO 22241, laboratory, metals, biuret, purity, DEF, AUS 32, SCR',
  method: 'limits of ISO 22241-1, from a table',
  inputs: {
    ...wf.oneOf(
      {
        ureaFraction: share('ureaFraction', '60 %', '30.1 %'),
        biuret: share('biuret', '10 %', '0.2 %'),
        ammoniaAlkalinity: share('ammoniaAlkalinity', '10 %', '0.02 %'),
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
      },
      { both: 'allowed' },
    ),
  },
  example: { ureaFraction: '30.1 %', biuret: '0.25 %', calcium: '1.4 mg/kg', sodium: '0.4 mg/kg' },
  intermediates: {
    outsideCount: wf.countOutput({ symbol: 'n_x', label: 'Values outside their limits' }),
    missingCount: wf.countOutput({ symbol: 'n_0', label: 'Properties not measured' }),
  },
  outputs: {
    findings: wf.tableOutput({
      label: 'Findings',
      columns: {
        property: wf.textOutput({ label: 'Property' }),
        share: wf.optional(inFluid('w', 'Found')),
        least: wf.optional(inFluid('w_{min}', 'Least allowed')),
        most: inFluid('w_{max}', 'Most allowed'),
        beyond: wf.optional(inFluid('w_x', 'Outside by')),
        finding: wf.choiceOutput({ label: 'Finding', options: findings }),
        limitMark: wf.textOutput({ label: 'Limit is' }),
      },
    }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        meets: 'meets every limit',
        fails: 'fails',
        incomplete: 'nothing wrong found, but not everything was measured: not a pass',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.rows(
      'findings',
      {
        beyond: { 'known(share) and share > most': 'share - most', 'known(share) and known(least) and share < least': 'least - share' },
        finding: {
          'not known(share)': "'not-measured'",
          'share > most': "'exceeds'",
          'known(least) and share < least': "'below'",
          otherwise: "'within'",
        },
      },
      iso22241Part1,
      'Table 1',
    ),
    wf.formula('outsideCount', 'count(findings.beyond)'),
    wf.formula('missingCount', 'count(findings.most) - count(findings.share)'),
    wf.verdict('verdict', { fails: 'outsideCount > 0', incomplete: 'missingCount > 0', meets: 'otherwise' }, iso22241Part1, 'Table 1'),
  ],
  assumptions: { representative: 'The sample was taken clean and is like the rest of the fluid.' },
  limits: { laboratory: 'A refractometer shows the urea content alone; everything else takes a laboratory.' },
  cautions: [cautions.waste],
  sources: [metals],
  compute(input, { warn }) {
    if (labProperties.some((property) => input[property] !== undefined && labLimits[property].mark === 'from memory')) {
      warn('from_memory', 'The limits of insolubles, phosphate and metals are from memory of ISO 22241-1; compare them with the standard.');
    }
    const rows = labProperties.map((property) => {
      const { name, max: most, mark: limitMark, min: least }: LabLimit = labLimits[property];
      const share = input[property];
      const finding = labFinding(share, labLimits[property]);
      const beyond = { exceeds: (share ?? 0) - most, below: (least ?? 0) - (share ?? 0), within: undefined, 'not-measured': undefined };
      return {
        property: name,
        share,
        least,
        most,
        beyond: beyond[finding],
        finding,
        limitMark: limitMark === 'read' ? wf.say`read` : wf.say`from memory`,
      };
    });
    return {
      findings: rows,
      outsideCount: rows.filter(({ beyond }) => beyond !== undefined).length,
      missingCount: rows.filter(({ share }) => share === undefined).length,
      verdict: labVerdict(input),
    };
  },
  advise: ({ verdict }) =>
    verdict === 'fails'
      ? [
          {
            tone: 'do',
            text: 'Drain the fluid, find out where it came from, and check the filter in the line. Metals and phosphate stay on the catalyst.',
          },
          { tone: 'do-not', text: 'Do not blend it with good fluid.' },
        ]
      : [],
});
