import * as wf from '@wallflow/calculation';
import { differentialPressure, fraction, length, velocity } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { opennessPractice } from '../../filter/flow-bench-drop/sources.js';
import { acceptancePractice, sampleStandardDeviation } from '../sources.js';
import { acceptanceVerdict, coefficientOfVariation, figureAgainstLimits, type TestResult, testOfPlaces } from './kernel.js';

const drop = (symbol: string, label: string, description: string, example: string) =>
  wf.quantity(differentialPressure, {
    symbol,
    label,
    description,
    range: '0 < x <= 1000 mbar',
    example,
    units: ['mbar', 'kPa', 'hPa', 'Pa', 'psi'],
  });
const limit = (symbol: string, label: string, value: string, min: string, max: string, why: string) =>
  wf.quantity(fraction, { symbol, label, range: `${min} <= x <= ${max}`, default: [value, `common practice, no source: ${why}`] });
const asked = (label: string) => wf.flag({ label, default: [true, 'assumed: the test is asked for'] });
const share = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

export const cleanedFilterAcceptanceCalculation = wf.defineCalculation({
  id: 'cleaned-filter-acceptance',
  subject: 'cleaning',
  title: 'Can the cleaned filter go back on?',
  purpose: 'Do flow bench, weight, rod depth, light, uniformity and the outlet face together accept this cleaned filter?',
  keywords: 'acceptance, flow bench, rod, light, uniformity, recovery, DPF',
  method: 'every test that is asked for must be done and passed; one failure rejects, and an impossible figure is not believed',
  inputs: {
    benchDrop: wf.optional(
      drop(
        '\\Delta p',
        'Flow bench: pressure drop of the cleaned filter',
        'At the flow of the reference, corrected to the same air.',
        '12.0 mbar',
      ),
    ),
    ...wf.whenGiven('benchDrop', {
      benchReference: drop(
        '\\Delta p_0',
        'Flow bench: pressure drop when new, or recorded baseline',
        'Of the same part at the same flow.',
        '11.2 mbar',
      ),
    }),
    recovery: wf.optional(
      wf.quantity(fraction, {
        symbol: 'r',
        label: 'Recovery by weight',
        description: 'From the weighing before and after, hot.',
        range: '-100 <= x <= 200 %',
        example: '94.7 %',
      }),
    ),
    depths: wf.listOrNone(
      {
        depth: wf.quantity(length, {
          symbol: 'h',
          label: 'Depth the rod reaches',
          range: '0 mm <= x <= 2 m',
          example: '198 mm',
          units: ['mm', 'in', 'cm'],
        }),
      },
      {
        label: 'Rod depths from the inlet face',
        description: 'Five to nine places over the face. Leave empty if it was not done.',
        max: 50,
        example: [{ depth: '198 mm' }, { depth: '199 mm' }, { depth: '196 mm' }, { depth: '198 mm' }, { depth: '199 mm' }],
      },
    ),
    openDepth: wf.optional(
      wf.quantity(length, {
        symbol: 'h_0',
        label: 'Depth of an empty channel',
        description: 'Length of the body minus one plug.',
        range: '0 mm < x <= 2 m',
        example: '199.2 mm',
        units: ['mm', 'in', 'cm'],
      }),
    ),
    lightShare: wf.optional(
      wf.quantity(fraction, {
        symbol: 'l',
        label: 'Sampled channels that let light through',
        description: 'Seen from the open side against a lamp, as the bench allows.',
        range: '0 <= x <= 100 %',
        example: '100 %',
      }),
    ),
    velocities: wf.listOrNone(
      {
        velocity: wf.quantity(velocity, {
          symbol: 'v',
          label: 'Air speed after the outlet face',
          range: '0 <= x <= 100 m/s',
          example: '1.2 m/s',
          units: ['m/s', 'ft/min'],
        }),
      },
      {
        label: 'Air speeds over the outlet face',
        description: 'Five or more places at one flow. Leave empty if it was not done.',
        max: 100,
        example: [
          { velocity: '1.20 m/s' },
          { velocity: '1.10 m/s' },
          { velocity: '1.25 m/s' },
          { velocity: '1.15 m/s' },
          { velocity: '1.30 m/s' },
        ],
      },
    ),
    outletFace: wf.choice({
      label: 'Outlet face',
      options: { clean: 'clean', sooty: 'black with soot', unknown: 'not looked at' },
      example: 'clean',
    }),
    benchLimit: limit('b', 'Maximum bench drop over reference', '115 %', '100 %', '300 %', '110 to 115 %'),
    benchFloor: limit('b_0', 'Bench drop over reference, not believed below', '85 %', '0 %', '100 %', 'the limit above mirrored'),
    recoveryLimit: limit('r_0', 'Minimum recovery', '90 %', '1 %', '100 %', '90 to 95 %'),
    recoveryCeiling: limit(
      'r_1',
      'Recovery, not believed above',
      '105 %',
      '100 %',
      '200 %',
      'more cannot come out than was inside; the rest allows for the scale',
    ),
    depthLimit: limit('h_l', 'Minimum rod depth over open depth', '95 %', '1 %', '100 %', '95 %'),
    lightLimit: limit('l_0', 'Minimum share of channels with light', '100 %', '1 %', '100 %', 'all of the sample'),
    uniformityLimit: limit('c_0', 'Maximum spread of the air speeds', '20 %', '1 %', '100 %', '15 to 20 %'),
    leastPlaces: wf.count({
      symbol: 'N_0',
      label: 'Minimum number of places over the face',
      description: 'For the rod and for the air speeds.',
      min: 1,
      max: 50,
      default: [5, 'common practice, no source: 5 to 9'],
    }),
    askBench: asked('Flow bench is asked for'),
    askRecovery: asked('Weight is asked for'),
    askDepth: asked('Rod depth is asked for'),
    askLight: asked('Light is asked for'),
    askUniformity: asked('Uniformity is asked for'),
  },
  example: {
    benchDrop: '12.0 mbar',
    benchReference: '11.2 mbar',
    recovery: '94.7 %',
    openDepth: '199.2 mm',
    lightShare: '100 %',
  },
  intermediates: {
    benchRatio: wf.optional(share('\\Delta p/\\Delta p_0', 'Bench drop over reference')),
    depthRatio: wf.optional(share('h/h_0', 'Shortest rod depth over open depth')),
    uniformity: wf.optional(share('c_v', 'Spread of the air speeds (standard deviation over mean)')),
  },
  outputs: {
    tests: wf.tableOutput({
      label: 'Tests',
      columns: {
        test: {
          type: 'choice',
          label: 'Test',
          options: {
            bench: 'flow bench',
            weight: 'weight',
            depth: 'rod depth',
            light: 'light',
            uniformity: 'uniformity',
            face: 'outlet face',
          },
          optional: false,
        },
        figure: wf.optional(share('x', 'Figure')),
        figureLimit: wf.optional(share('x_0', 'Limit')),
        result: {
          type: 'choice',
          label: 'Result',
          options: {
            pass: 'passed',
            fail: 'failed',
            implausible: 'not believed: better than a new filter can be',
            unknown: 'not done, or at too few places',
          },
          optional: false,
        },
        asked: { type: 'choice', label: 'Asked for', options: { yes: 'yes', no: 'no' }, optional: false },
      },
    }),
    failedTests: wf.countOutput({ symbol: 'N_f', label: 'Tests failed' }),
    implausibleTests: wf.countOutput({ symbol: 'N_i', label: 'Tests with a figure that is not believed' }),
    missingTests: wf.countOutput({ symbol: 'N_m', label: 'Tests asked for and not done, or at too few places' }),
    verdict: wf.choiceOutput({
      label: 'Can it go back on?',
      options: {
        accepted: 'yes: it passed every test that is asked for',
        rejected: 'no: it failed a test',
        implausible: 'not decided: a figure is better than a new filter can have. Check that measurement',
        incomplete: 'not decided: tests are missing, or were done at too few places',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('benchRatio', 'benchDrop / benchReference', acceptancePractice),
    wf.formula('depthRatio', 'min(depths.depth) / openDepth', acceptancePractice),
    wf.cases(
      'uniformity',
      { 'count(velocities) >= max(2, leastPlaces)': 'deviation(velocities.velocity) / mean(velocities.velocity)' },
      sampleStandardDeviation,
    ),
    wf.rows(
      'tests',
      {
        figure: {
          "test == 'bench'": 'benchRatio',
          "test == 'weight'": 'recovery',
          "test == 'depth'": 'depthRatio',
          "test == 'light'": 'lightShare',
          "test == 'uniformity'": 'uniformity',
        },
        figureLimit: {
          "test == 'bench'": 'benchLimit',
          "test == 'weight'": 'recoveryLimit',
          "test == 'depth'": 'depthLimit',
          "test == 'light'": 'lightLimit',
          "test == 'uniformity'": 'uniformityLimit',
        },
      },
      opennessPractice,
      undefined,
      'A figure within its limit passes, unless it is better than a new filter can have. A missing one, or one from too few places, never passes.',
    ),
    wf.formula('failedTests', "count(where(tests.test, tests.result == 'fail'))"),
    wf.formula('implausibleTests', "count(where(tests.test, tests.result == 'implausible'))"),
    wf.formula('missingTests', "count(where(where(tests.test, tests.asked == 'yes'), tests.result == 'unknown'))"),
    wf.verdict(
      'verdict',
      { rejected: 'failedTests > 0', implausible: 'implausibleTests > 0', accepted: 'missingTests == 0', incomplete: 'otherwise' },
      acceptancePractice,
    ),
  ],
  assumptions: {
    limits_are_habit: 'No general published criterion for a clean filter was found: the limits are common practice, and yours to change.',
  },
  limits: {
    not_a_crack_test: 'None of these tests finds every crack: smoke or particle number after fitting decides about leaks.',
    maker_table: "Where the filter's maker publishes a table for the flow bench, that table counts.",
  },
  cautions: [cautions.ashDust, cautions.waste, cautions.makerFirst],
  compute(input) {
    const { benchDrop, benchReference, depths, openDepth, velocities, outletFace } = input;
    if (depths.length > 0 && openDepth === undefined) return wf.missingInputs('openDepth');
    const shortest = depths.length === 0 ? undefined : Math.min(...depths.map(({ depth }) => depth));
    if (shortest !== undefined && openDepth !== undefined && Math.max(...depths.map(({ depth }) => depth)) > openDepth * 1.05) {
      return wf.inconsistentInputs(
        'the rod goes deeper than an empty channel: it went through the plug, or the depth of an empty channel is wrong',
        ['depths'],
        ['openDepth'],
      );
    }
    if (velocities.length > 0 && velocities.every(({ velocity: speed }) => speed === 0)) {
      return wf.inconsistentInputs('all air speeds are zero: there was no flow to judge', ['velocities']);
    }
    const benchRatio = benchDrop === undefined || benchReference === undefined ? undefined : benchDrop / benchReference;
    const depthRatio = shortest === undefined || openDepth === undefined ? undefined : shortest / openDepth;
    // The spread of fewer places is chance, however large or small.
    const uniformity =
      velocities.length < Math.max(2, input.leastPlaces)
        ? undefined
        : coefficientOfVariation(velocities.map(({ velocity: speed }) => speed));
    const face: TestResult = outletFace === 'unknown' ? 'unknown' : outletFace === 'clean' ? 'pass' : 'fail';
    const { benchLimit, recoveryLimit, depthLimit, lightLimit, uniformityLimit } = input;
    const tests = [
      {
        test: 'bench',
        figure: benchRatio,
        figureLimit: benchLimit,
        result: figureAgainstLimits(benchRatio, { worst: benchLimit, best: input.benchFloor }, 'at-most'),
        asked: input.askBench,
      },
      {
        test: 'weight',
        figure: input.recovery,
        figureLimit: recoveryLimit,
        result: figureAgainstLimits(input.recovery, { worst: recoveryLimit, best: input.recoveryCeiling }, 'at-least'),
        asked: input.askRecovery,
      },
      {
        test: 'depth',
        figure: depthRatio,
        figureLimit: depthLimit,
        result: testOfPlaces(figureAgainstLimits(depthRatio, { worst: depthLimit }, 'at-least'), depths.length, input.leastPlaces),
        asked: input.askDepth,
      },
      {
        test: 'light',
        figure: input.lightShare,
        figureLimit: lightLimit,
        result: figureAgainstLimits(input.lightShare, { worst: lightLimit }, 'at-least'),
        asked: input.askLight,
      },
      {
        test: 'uniformity',
        figure: uniformity,
        figureLimit: uniformityLimit,
        result: figureAgainstLimits(uniformity, { worst: uniformityLimit }, 'at-most'),
        asked: input.askUniformity,
      },
      // Looking at the outlet face costs nothing and is always asked for.
      { test: 'face', figure: undefined, figureLimit: undefined, result: face, asked: true },
    ] as const;
    return {
      benchRatio,
      depthRatio,
      uniformity,
      tests: tests.map((row) => ({ ...row, asked: row.asked ? ('yes' as const) : ('no' as const) })),
      failedTests: tests.filter(({ result }) => result === 'fail').length,
      implausibleTests: tests.filter(({ result }) => result === 'implausible').length,
      missingTests: tests.filter(({ result, asked: wanted }) => wanted && result === 'unknown').length,
      verdict: acceptanceVerdict(tests),
    };
  },
  advise({ verdict: decision, tests }) {
    const failed = tests.filter(({ result }) => result === 'fail').map(({ test }) => test);
    if (decision === 'accepted')
      return [{ tone: 'do', text: 'Keep these figures with the part: they are the baseline of its next clean.' }];
    if (failed.includes('face'))
      return [{ tone: 'do-not', text: 'Do not refit it: soot after the filter means that it leaks. Replace it with an approved part.' }];
    if (decision === 'rejected')
      return [{ tone: 'do', text: 'Clean it again by another method, or replace it with an approved part; do not reset the ash value.' }];
    if (decision === 'implausible')
      return [
        {
          tone: 'do',
          text: 'Measure again what is not believed: check seal, flow and zero of the bench; scale, parts weighed and weight when new.',
        },
        { tone: 'do-not', text: 'Do not refit it on these figures: a crack or lost ceramic looks like a very clean filter.' },
      ];
    return [{ tone: 'do', text: 'Do the missing tests before it goes back on.' }];
  },
});
