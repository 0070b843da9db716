import * as wf from '@wallflow/calculation';
import { coverageFactor, mean, standardDeviation } from '@wallflow/numerics';
import {
  differentialPressure,
  fraction,
  mass,
  massFlow,
  massFraction,
  ratio,
  temperature,
  time,
  volume,
  volumeFlow,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { ureaSolutionDensity, ureaSolutionDensityAt20 } from '../solution/density.js';
import { solutionDensity } from '../solution/working.js';
import { iso22241Part1 } from '../sources.js';
import { dosingQuantityVerdict, orificeLoss, scaleOrificeFlow } from './kernel.js';

const verdicts = {
  pass: 'passes: right quantity, no drip, even spray',
  'quantity-only': 'right quantity, but drip or spray was not watched: not yet a pass',
  low: 'too little',
  high: 'too much',
  'low-once': 'low on this run: repeat it twice',
  'high-once': 'high on this run: repeat it twice',
  drips: 'fails: it drips after closing',
  'uneven-spray': 'fails: the spray is uneven',
  undecided: 'not clear: the limit lies inside the uncertainty',
  'not-repeatable': 'not clear: the runs differ too much from each other',
  'too-few-runs': 'not clear: at least two runs must count',
} as const;

const bernoulli: wf.Source = {
  type: 'derivation',
  title: 'Orifice flow is proportional to area and to the square root of the pressure difference (Bernoulli)',
  mark: 'read',
};
const acceptance = wf.commonPractice('±10 % of the nominal quantity, no drop within a minute, even cone, two or three repeats');
const practice = 'common practice, no source';

const nominalText = "From the vehicle maker's test instruction. There is no universal value.";
const quantityOfMass = { range: '0 < m <= 5 kg', units: ['g', 'kg'] } as const;
const quantityOfVolume = { range: '0 < V <= 5 L', units: ['mL', 'L'] } as const;
const span = { range: '0 < t <= 3600 s', example: '60 s', units: ['s', 'min'] } as const;
const linePressure = (symbol: string, label: string, example: string) =>
  wf.quantity(differentialPressure, {
    symbol,
    label,
    range: '0 < p <= 30 bar',
    usual: ['3 bar', '12 bar', 'pump pressures of about 5 to 9 bar are usual, common practice'],
    example,
    units: ['bar', 'kPa', 'psi'],
  });
const duty = (symbol: string, label: string, description?: string) =>
  wf.quantity(fraction, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    range: '0 < d <= 100 %',
    units: ['%'],
    default: ['100 %', 'test and nominal quantity have the same opening time'],
  });
const flow = (symbol: string, label: string) => wf.quantityOutput(massFlow, { symbol, label, digits: 4, units: ['g/min', 'mg/s', 'kg/h'] });
const percent = (symbol: string, label: string, digits: number) => wf.quantityOutput(fraction, { symbol, label, digits, units: ['%'] });

export const dosingTestCalculation = wf.defineCalculation({
  id: 'dosing-test',
  subject: 'reductant',
  title: 'Dosing test into a measuring cup',
  purpose: 'Does the injector give the quantity it should, every time, and without dripping?',
  keywords: 'dosing, injector, quantity test, reductant, repeatability, DEF, AUS 32, SCR',
  method: 'mean of repeated runs against the nominal quantity, with a 95 % interval',
  inputs: {
    runs: wf.list(
      {
        ...wf.oneOf(
          {
            collectedMass: wf.quantity(mass, {
              symbol: 'm_i',
              label: 'Collected mass',
              range: '0 <= m <= 5 kg',
              example: '47 g',
              units: ['g', 'kg'],
            }),
            collectedVolume: wf.quantity(volume, {
              symbol: 'V_i',
              label: 'Collected volume',
              range: '0 <= V <= 5 L',
              example: '43 mL',
              units: ['mL', 'L'],
            }),
          },
          { both: 'allowed' },
        ),
        duration: wf.quantity(time, { symbol: 't_i', label: 'Time of the run', ...span }),
      },
      {
        label: 'Runs',
        description: 'Each with a mass, a volume or both. Weighing is better than reading a cup; both together show the density.',
        min: 1,
        max: 20,
        example: [
          { collectedVolume: '38 mL', duration: '60 s' },
          { collectedVolume: '43 mL', duration: '60 s' },
          { collectedVolume: '43.5 mL', duration: '60 s' },
          { collectedVolume: '42.5 mL', duration: '60 s' },
        ],
      },
    ),
    discardFirst: wf.flag({
      label: 'Leave the first run out',
      description: 'Air in the line makes the first run low.',
      default: [true, `air in the line makes the first run low; ${practice}`],
    }),
    ...wf.oneOf(
      {
        nominalVolume: wf.quantity(volume, {
          symbol: 'V_0',
          label: 'Nominal volume',
          description: nominalText,
          ...quantityOfVolume,
          example: '50 mL',
        }),
        nominalMass: wf.quantity(mass, {
          symbol: 'm_0',
          label: 'Nominal mass',
          description: nominalText,
          ...quantityOfMass,
          example: '54 g',
        }),
      },
      { prefer: 'nominalMass' },
    ),
    nominalDuration: wf.quantity(time, { symbol: 't_0', label: 'Time for the nominal quantity', ...span }),
    ...wf.together(
      {
        nominalPressure: linePressure('\\Delta p_0', 'Line pressure for the nominal quantity', '9 bar'),
        testPressure: linePressure('\\Delta p', 'Line pressure during the test', '9 bar'),
      },
      {
        otherwise: {
          code: 'pressure_not_scaled',
          text: 'Only one of the two pressures was given: the flow was not scaled to the pressure.',
        },
      },
    ),
    nominalDuty: duty('d_0', 'Duty for the nominal quantity'),
    testDuty: duty('d', 'Duty during the test', 'Share of the time that the valve is open.'),
    fluidTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Fluid temperature',
      range: '-10 <= T <= 60 degC',
      usual: ['5 °C', '40 °C', 'the density line holds near room temperature'],
      units: ['degC', 'degF'],
      default: ['20 °C', 'room temperature; 10 K change the density by 0.4 %'],
    }),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      range: '0 <= w <= 50 %',
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1; enter 0 % for a test with water'],
    }),
    tolerance: wf.quantity(fraction, {
      symbol: 't',
      label: 'Tolerance (±)',
      range: '0 < t <= 50 %',
      units: ['%'],
      default: ['10 %', `${practice}; the vehicle maker's figure comes first`],
    }),
    measuringUncertainty: wf.quantity(fraction, {
      symbol: 'u_m',
      label: 'Uncertainty of one reading (±)',
      range: '0 <= u <= 20 %',
      units: ['%'],
      default: ['2 %', `usual for a measuring cup read at eye level; ${practice}`],
    }),
    greatestSpread: wf.quantity(fraction, {
      symbol: 's_{max}',
      label: 'Greatest spread of the runs',
      range: '0 < s <= 50 %',
      units: ['%'],
      default: ['5 %', `half of the usual tolerance; ${practice}`],
    }),
    drip: wf.choice({
      label: 'After closing, for a minute',
      options: { none: 'no drop', drips: 'it drips', 'not-watched': 'not watched' },
      example: 'none',
      default: ['not-watched', 'not stated'],
    }),
    spray: wf.choice({
      label: 'Spray',
      options: { even: 'even cone', uneven: 'uneven, streaks or a jet', 'not-watched': 'not watched' },
      example: 'even',
      default: ['not-watched', 'not stated'],
    }),
  },
  example: { ureaFraction: '30.1 %' },
  intermediates: {
    ...solutionDensity.intermediates,
    runFlows: wf.tableOutput({
      label: 'Flow of each run',
      columns: { flow: flow('q_i', 'Flow'), counted: wf.optional(flow('q_i', 'Flow that counts')) },
    }),
    runsCounted: wf.countOutput({ symbol: 'n', label: 'Runs that count' }),
    nominalFlow: flow('q_n', 'Nominal flow'),
    expectedMassFlow: flow('q_0', 'Expected flow at the test pressure and duty'),
    runSpread: percent('s', 'Spread of the runs (standard deviation over mean)', 3),
    studentFactor: wf.quantityOutput(ratio, { symbol: 't_{95}', label: "Student's t for 95 %", digits: 4, leastDigits: 4 }),
    meanUncertainty: percent('U', 'Uncertainty of the mean against the expected flow (95 %)', 2),
  },
  outputs: {
    massFlow: flow('q', 'Mean flow by mass'),
    volumeFlow: wf.quantityOutput(volumeFlow, { symbol: '\\dot V', label: 'Mean flow by volume', digits: 4, units: ['mL/min', 'L/h'] }),
    flowDeviation: percent('\\delta', 'Deviation from the expected flow', 3),
    missingArea: wf.optional(percent('\\delta_A', 'Blocked share of the nozzle, if the pressure is right', 2)),
    missingPressure: wf.optional(percent('\\delta_p', 'Missing pressure, if the nozzle is right', 2)),
    verdict: wf.choiceOutput({ label: 'Verdict', options: verdicts }),
  },
  answer: 'verdict',
  picture: wf.gauge(
    'flowDeviation',
    [
      ['bad', 'too little', '-tolerance'],
      ['good', 'within the tolerance', 'tolerance'],
      ['bad', 'too much'],
    ],
    'meanUncertainty',
  ),
  constants: solutionDensity.constants,
  steps: [
    ...solutionDensity.steps,
    wf.rows(
      'runFlows',
      {
        flow: {
          'known(runs.collectedMass)': 'runs.collectedMass / runs.duration',
          otherwise: 'runs.collectedVolume * fluidDensity / runs.duration',
        },
        counted: { 'row > 1 or not discardFirst or count(runs) == 1': 'flow' },
      },
      cfr1065,
      '1065.247, weighing over an interval',
    ),
    wf.formula('runsCounted', 'count(runFlows.counted)'),
    wf.cases('nominalFlow', {
      'known(nominalMass)': 'nominalMass / nominalDuration',
      otherwise: 'nominalVolume * fluidDensity / nominalDuration',
    }),
    wf.cases(
      'expectedMassFlow',
      {
        'known(testPressure)': 'nominalFlow * testDuty / nominalDuty * sqrt(testPressure / nominalPressure)',
        otherwise: 'nominalFlow * testDuty / nominalDuty',
      },
      bernoulli,
    ),
    wf.formula('massFlow', 'mean(runFlows.counted)', cfr1065, '1065.602(b), mean'),
    wf.formula('volumeFlow', 'massFlow / fluidDensity'),
    wf.cases(
      'runSpread',
      { 'runsCounted < 2 or massFlow == 0': '0', otherwise: 'deviation(runFlows.counted) / massFlow' },
      cfr1065,
      '1065.602(c), standard deviation',
    ),
    wf.cases('studentFactor', {
      'runsCounted < 2': '0',
      otherwise: wf.fromTable('studentFactor', ['runsCounted - 1'], cfr1065, '1065.602(g), Student t'),
    }),
    wf.formula(
      'meanUncertainty',
      'massFlow / expectedMassFlow * sqrt((studentFactor * runSpread) ^ 2 / runsCounted + measuringUncertainty ^ 2)',
      cfr1065,
      '1065.602(g), Student t',
    ),
    wf.formula('flowDeviation', 'massFlow / expectedMassFlow - 1'),
    wf.formula('missingArea', '1 - massFlow / expectedMassFlow', bernoulli),
    wf.formula('missingPressure', '1 - (massFlow / expectedMassFlow) ^ 2', bernoulli),
    wf.verdict(
      'verdict',
      {
        drips: "drip == 'drips'",
        'low-once': 'runsCounted < 2 and abs(flowDeviation) - meanUncertainty - greatestSpread > tolerance and flowDeviation < 0',
        'high-once': 'runsCounted < 2 and abs(flowDeviation) - meanUncertainty - greatestSpread > tolerance',
        'too-few-runs': 'runsCounted < 2',
        'not-repeatable': 'runSpread > greatestSpread',
        low: 'flowDeviation + meanUncertainty < -tolerance',
        high: 'flowDeviation - meanUncertainty > tolerance',
        undecided: 'abs(flowDeviation) + meanUncertainty > tolerance',
        'uneven-spray': "spray == 'uneven'",
        pass: "drip == 'none' and spray == 'even'",
        'quantity-only': 'otherwise',
      },
      acceptance,
    ),
  ],
  assumptions: {
    square_root: 'The flow rises with the square root of the pressure, as through any sharp hole.',
    proportional_duty: 'The flow is proportional to the duty; the opening delay of the valve is left out, which counts at low duty.',
  },
  limits: { nominal_needed: "Without the vehicle maker's nominal quantity there is no verdict." },
  cautions: [cautions.makerFirst, cautions.hotExhaust],
  sources: [iso22241Part1],
  dimensional: 'the density of the fluid is an empirical line in kg/m³ per kelvin',
  compute(input, context) {
    const densityAt20 = ureaSolutionDensityAt20(input.ureaFraction);
    const fluidDensity = ureaSolutionDensity(input.ureaFraction, input.fluidTemperature);
    const leftOut = input.discardFirst && input.runs.length > 1 ? 1 : 0;
    const runFlows = input.runs.map(({ collectedMass, collectedVolume, duration }, index) => {
      if (collectedMass !== undefined && collectedVolume !== undefined && !sameFluid(collectedMass, collectedVolume, fluidDensity)) {
        const text = 'Mass and volume of this run do not match the fluid entered: foam, a misreading, or diluted fluid. The mass was used.';
        context.warn('density_differs', text, ['runs', index]);
      }
      const flow = (collectedMass ?? wf.known(collectedVolume) * fluidDensity) / duration;
      return { flow, counted: index < leftOut ? undefined : flow };
    });
    const flows = runFlows.flatMap(({ counted }) => (counted === undefined ? [] : [counted]));
    const nominalFlow = (input.nominalMass ?? wf.known(input.nominalVolume) * fluidDensity) / input.nominalDuration;
    const { nominalPressure, testPressure } = input;
    const atPressure =
      nominalPressure === undefined || testPressure === undefined
        ? nominalFlow
        : scaleOrificeFlow(nominalFlow, nominalPressure, testPressure);
    const expectedMassFlow = (atPressure * input.testDuty) / input.nominalDuty;
    const average = mean(flows) ?? 0;
    const runSpread = average === 0 ? 0 : (standardDeviation(flows) ?? 0) / average;
    const studentFactor = coverageFactor(0.95, flows.length - 1) ?? 0;
    const meanUncertainty =
      (average / expectedMassFlow) * Math.hypot((studentFactor * runSpread) / Math.sqrt(flows.length), input.measuringUncertainty);
    const flowDeviation = average / expectedMassFlow - 1;
    const quantityVerdict = dosingQuantityVerdict({
      count: flows.length,
      deviation: flowDeviation,
      uncertainty: meanUncertainty,
      tolerance: input.tolerance,
      spread: runSpread,
      greatestSpread: input.greatestSpread,
    });
    context.warn('tolerance_by_practice', 'Tolerance, spread and drip criteria are common practice, not a published limit.');
    const low = flowDeviation + meanUncertainty < 0 ? orificeLoss(1 + flowDeviation) : undefined;
    return {
      densityAt20,
      fluidDensity,
      runFlows,
      runsCounted: flows.length,
      nominalFlow,
      expectedMassFlow,
      runSpread,
      studentFactor,
      meanUncertainty,
      massFlow: average,
      volumeFlow: average / fluidDensity,
      flowDeviation,
      missingArea: low?.area,
      missingPressure: low?.pressure,
      verdict: wholeVerdict(quantityVerdict, input.drip, input.spray),
    };
  },
  advise({ verdict }) {
    if (verdict === 'low-once')
      return [{ tone: 'do', text: 'Fill the line, empty the cup, and run the test twice more: air in the line makes the first run low.' }];
    if (verdict === 'high-once' || verdict === 'too-few-runs') return [{ tone: 'do', text: 'Empty the cup and run the test twice more.' }];
    if (verdict === 'low')
      return [
        {
          tone: 'do',
          text: 'The nozzle is partly clogged or the pressure is low: read the line pressure during the test, then look at filters, line and tip for crystals.',
        },
        {
          tone: 'do',
          text: 'Measure the urea content too: weak fluid and a low quantity multiply. 30.1 % of urea and 43 mL of 50 mL make 20 % less ammonia.',
        },
      ];
    if (verdict === 'high')
      return [
        { tone: 'do', text: 'Read the line pressure, and see that the valve closes: a worn tip or one that sticks open gives too much.' },
      ];
    return [];
  },
});

/** Mass and volume within 3 % of each other, about what a cup can tell. */
function sameFluid(collectedMass: number, collectedVolume: number, fluidDensity: number): boolean {
  return Math.abs(collectedMass - collectedVolume * fluidDensity) <= 0.03 * collectedMass;
}

function wholeVerdict(
  quantityVerdict: ReturnType<typeof dosingQuantityVerdict>,
  drip: 'none' | 'drips' | 'not-watched',
  spray: 'even' | 'uneven' | 'not-watched',
): keyof typeof verdicts {
  if (drip === 'drips') return 'drips';
  if (quantityVerdict !== 'pass') return quantityVerdict;
  if (spray === 'uneven') return 'uneven-spray';
  return drip === 'none' && spray === 'even' ? 'pass' : 'quantity-only';
}
