import * as wf from '@wallflow/calculation';
import { absorptionCoefficient, fraction } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { californiaSmoke, directive2014, ukTestLimits } from '../sources.js';
import { emissionClasses, monthIndex, smokeLimitFor } from './limits.js';

export const smokeLimitCalculation = wf.defineCalculation({
  id: 'smoke-limit',
  subject: 'smoke',
  title: 'Smoke limit by class and date',
  purpose: 'Which smoke limit holds for this vehicle, on what basis, and does a reading meet it?',
  keywords: 'smoke limit, roadworthiness, opacity, plate value, smoke meter, opacimeter',
  method: 'table of the law',
  inputs: {
    regime: wf.choice({
      label: 'Where it is tested',
      options: { eu: 'European Union', uk: 'United Kingdom', california: 'California' },
      example: 'eu',
    }),
    firstUseYear: wf.count({ symbol: 'y', label: 'Year of first use, or model year', min: 1950, max: 2100, example: 2016 }),
    firstUseMonth: wf.count({
      symbol: 'm',
      label: 'Month of first use',
      min: 1,
      max: 12,
      example: 3,
      default: [12, 'month not given; December gives the newer and lower limit'],
    }),
    ...wf.relevantWhen('regime', 'eu', {
      emissionClass: wf.choice({
        label: 'Emission class',
        description: 'From the registration papers.',
        options: emissionClasses,
        example: 'six',
        default: ['unknown', 'the lowest limit of the classes that were on sale at first use'],
      }),
    }),
    ...wf.relevantWhen('regime', ['eu', 'uk'], {
      engine: wf.choice({
        label: 'Engine',
        options: { turbocharged: 'turbocharged', aspirated: 'without turbocharger', unknown: 'not known' },
        example: 'turbocharged',
        default: ['unknown', 'the lower of the two limits is used'],
      }),
      plateValue: wf.optional(
        wf.quantity(absorptionCoefficient, {
          symbol: 'k_p',
          label: 'Value on the plate of the vehicle',
          description: 'It comes before the table where it is lower and the rule allows it.',
          range: '0 < x <= 5 1/m',
          example: '0.5 1/m',
        }),
      ),
      absorptionReading: wf.optional(
        wf.quantity(absorptionCoefficient, {
          symbol: 'k',
          label: 'Test result, absorption coefficient',
          range: '0 <= x <= 20 1/m',
          example: '0.6 1/m',
        }),
      ),
    }),
    ...wf.relevantWhen('regime', 'california', {
      levelThreeRetrofit: wf.optional(wf.flag({ label: 'Level 3 filter fitted later', example: false })),
      opacityReading: wf.optional(
        wf.quantity(fraction, {
          symbol: 'N',
          label: 'Test result, opacity at the stack',
          range: '0 <= x <= 100 %',
          example: '3 %',
          units: ['%'],
        }),
      ),
    }),
    filterFitted: wf.choice({
      label: 'Particulate filter as standard',
      options: { yes: 'yes', no: 'no', unknown: 'not known' },
      example: 'yes',
      default: ['unknown', 'not stated'],
    }),
    visibleSmoke: wf.choice({
      label: 'Visible smoke of any colour',
      options: { no: 'none', yes: 'visible', 'not-watched': 'not watched' },
      example: 'no',
      default: ['not-watched', 'not stated'],
    }),
  },
  example: { absorptionReading: '0.15 1/m' },
  intermediates: {
    ruleText: wf.textOutput({ label: 'Row of the table' }),
    tableLimit: wf.optional(
      wf.quantityOutput(absorptionCoefficient, { symbol: 'k_t', label: 'Limit of the table', digits: 3, units: ['1/m'] }),
    ),
  },
  outputs: {
    absorptionLimit: wf.optional(
      wf.quantityOutput(absorptionCoefficient, { symbol: 'k_{max}', label: 'Limit, absorption coefficient', digits: 3, units: ['1/m'] }),
    ),
    opacityLimit: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'N_{max}', label: 'Limit, opacity at the stack', digits: 3, units: ['%'] }),
    ),
    basis: wf.textOutput({ label: 'Basis' }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        meets: 'meets the limit',
        exceeds: 'exceeds the limit',
        'visible-smoke': 'fails: visible smoke from a vehicle with a filter',
        'filter-unknown': 'not passed: visible smoke fails where a filter is standard, and that is not known',
        'smoke-not-judged': 'reading within the limit; visible smoke not judged',
        'no-reading': 'no reading on the scale of this limit',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.fromTable('tableLimit', ['regime', 'firstUseYear', 'firstUseMonth', 'emissionClass', 'engine'], directive2014),
    wf.cases('absorptionLimit', { 'plateValue < tableLimit': 'plateValue', otherwise: 'tableLimit' }, directive2014),
    wf.fromTable('opacityLimit', ['firstUseYear', 'levelThreeRetrofit'], californiaSmoke),
    wf.verdict(
      'verdict',
      {
        'visible-smoke': "regime == 'uk' and filterFitted == 'yes' and visibleSmoke == 'yes'",
        'filter-unknown': "regime == 'uk' and filterFitted == 'unknown' and visibleSmoke == 'yes'",
        'no-reading': 'not known(absorptionReading) and not known(opacityReading)',
        exceeds: 'absorptionReading > absorptionLimit or opacityReading > opacityLimit',
        'smoke-not-judged': "regime == 'uk' and filterFitted != 'no' and visibleSmoke == 'not-watched'",
        meets: 'otherwise',
      },
      ukTestLimits,
    ),
  ],
  assumptions: {
    table_not_inspector: 'The table helps to prepare. The inspector and the text in force decide.',
    class_before_date:
      'In the EU the limits 1.5 and 0.7 per metre follow the emission class, and 1.5 also any first use from July 2008. Without the class, Euro 4 counts from January 2005 and Euro 6 from January 2013, when they were first on sale.',
  },
  limits: { no_other_countries: 'Countries may set lower limits of their own.' },
  cautions: [cautions.noDefeat, cautions.fumes],
  dimensional: 'limits of the law held as data in their own units',
  compute(input, { warn, method }) {
    const engine = input.engine ?? 'unknown';
    const turbocharged = engine === 'unknown' ? undefined : engine === 'turbocharged';
    const row = smokeLimitFor({
      regime: input.regime,
      month: monthIndex(input.firstUseYear, input.firstUseMonth),
      turbocharged,
      retrofit: input.levelThreeRetrofit ?? true,
      emissionClass: input.emissionClass ?? 'unknown',
    });
    if (row === undefined) return wf.noSolution('no limit for this vehicle is listed here', ['regime']);
    if (row.retrofit && input.levelThreeRetrofit === undefined)
      warn('retrofit_unknown', 'Whether a level 3 filter was fitted later is not known: the limit of one counts, which is the lowest.');
    if (row.classes?.length === 1 && input.emissionClass === 'unknown')
      warn('class_unknown', 'The emission class is not known: the limit may be higher. Look in the registration papers.', [
        'emissionClass',
      ]);
    const basis = wf.citation(row.source);
    method(wf.say`table: ${basis}`);
    if (row.source.mark !== 'read')
      warn('from_memory', wf.say`The limit is from memory: ${basis}. Read the text in force before telling a customer pass or fail.`);
    else if (row.source.note !== undefined) warn('read_second_hand', row.source.note);
    const plated = row.absorption !== undefined && input.plateValue !== undefined && input.plateValue < row.absorption;
    const absorptionLimit = plated ? input.plateValue : row.absorption;
    return {
      ruleText: plated ? wf.say`${row.text}; the value on the plate is lower and used` : row.text,
      tableLimit: row.absorption,
      absorptionLimit,
      opacityLimit: row.opacity,
      basis,
      verdict: limitVerdict(input, absorptionLimit, row.opacity),
    };
  },
  advise({ verdict }, { visibleSmoke, filterFitted }) {
    const advice: wf.Advice[] = [];
    if (verdict === 'smoke-not-judged')
      advice.push({ tone: 'do', text: 'Watch the tail pipe during the test: where a filter is standard, smoke of any colour fails.' });
    if (verdict === 'filter-unknown')
      advice.push({ tone: 'do', text: 'Find out from the papers whether a filter was fitted as standard.' });
    if (visibleSmoke === 'yes' && filterFitted !== 'no')
      advice.push({ tone: 'do', text: 'Look for a crack, a hole or a missing core: behind a sound filter no smoke can be seen.' });
    return advice;
  },
});

interface VerdictInput {
  readonly regime: string;
  readonly filterFitted: string;
  readonly visibleSmoke: string;
  readonly absorptionReading?: number | undefined;
  readonly opacityReading?: number | undefined;
}

function limitVerdict(input: VerdictInput, absorption: number | undefined, opacity: number | undefined) {
  const smokeDecides = input.regime === 'uk' && input.filterFitted !== 'no';
  if (smokeDecides && input.visibleSmoke === 'yes') return input.filterFitted === 'yes' ? 'visible-smoke' : 'filter-unknown';
  const [value, limit] = absorption === undefined ? [input.opacityReading, opacity] : [input.absorptionReading, absorption];
  if (value === undefined || limit === undefined) return 'no-reading';
  if (value > limit) return 'exceeds';
  return smokeDecides && input.visibleSmoke !== 'no' ? 'smoke-not-judged' : 'meets';
}
