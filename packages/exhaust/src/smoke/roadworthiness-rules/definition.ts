import * as wf from '@wallflow/calculation';
import { cautions } from '../../cautions.js';
import {
  californiaSmoke,
  directive2014,
  germanyParticleRule,
  netherlandsParticleRule,
  recommendation2023,
  switzerlandParticleRule,
  ukConstructionAndUse,
  ukTestLimits,
} from '../sources.js';
import { roadworthinessRules, rulePlaces } from './rules.js';

const subjects = {
  'filter-fitted': 'filter fitted',
  'visible-smoke': 'visible smoke',
  opacity: 'opacity',
  'particle-number': 'particle number',
  offence: 'offence',
} as const;

export const roadworthinessRulesCalculation = wf.defineCalculation({
  id: 'roadworthiness-rules',
  subject: 'smoke',
  title: 'Roadworthiness rules for filters and smoke',
  purpose: 'What does the periodic test ask for here, and how far was that checked?',
  keywords: 'roadworthiness, periodic test, filter, law, smoke meter, opacimeter',
  method: 'table of rules',
  inputs: { place: wf.choice({ label: 'Place', options: { all: 'all places listed here', ...rulePlaces }, example: 'uk' }) },
  outputs: {
    rules: wf.tableOutput({
      label: 'Rules',
      columns: {
        place: wf.choiceOutput({ label: 'Place', options: rulePlaces }),
        subject: wf.choiceOutput({ label: 'About', options: subjects }),
        rule: wf.textOutput({ label: 'Rule' }),
        basis: wf.textOutput({ label: 'Basis' }),
      },
    }),
    ruleCount: wf.countOutput({ symbol: 'n', label: 'Rules held' }),
  },
  answer: 'ruleCount',
  steps: [
    wf.statement('rules', 'Rows for the place chosen, each with its source and how far it was checked.'),
    wf.formula('ruleCount', 'count(rules.rule)'),
  ],
  assumptions: { not_legal_advice: 'The table helps to prepare a test. The text in force and the inspector decide.' },
  limits: { as_known: 'Rules change; the state of the text is the year of each source.' },
  cautions: [cautions.noDefeat],
  sources: [
    ukTestLimits,
    ukConstructionAndUse,
    directive2014,
    recommendation2023,
    netherlandsParticleRule,
    germanyParticleRule,
    switzerlandParticleRule,
    californiaSmoke,
  ],
  compute(input, { warn }) {
    const rows = roadworthinessRules.filter((row) => input.place === 'all' || row.place === input.place);
    if (rows.some((row) => row.source.mark === 'from memory'))
      warn('from_memory', 'At least one of these rules is from memory; its basis says so. Read the text in force first.');
    if (rows.some((row) => row.source.note !== undefined))
      warn('read_second_hand', 'Some of these rules were read in reports about them, not in the text itself; see their sources.');
    return {
      rules: rows.map((row) => ({ place: row.place, subject: row.subject, rule: row.rule, basis: wf.citation(row.source) })),
      ruleCount: rows.length,
    };
  },
  advise: () => [
    {
      tone: 'do-not',
      text: 'A filter or a catalyst is never taken out or emptied, and no signal is falsified. Repair it or fit an approved part.',
    },
  ],
});
