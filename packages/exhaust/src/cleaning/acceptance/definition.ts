import {
  choice,
  choiceOutput,
  count,
  countOutput,
  defineCalculation,
  flag,
  inconsistentInputs,
  listOrNone,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
} from '@wallflow/calculation';
import { differentialPressure, fraction, length, velocity } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { opennessPractice } from '../../filter/flow-bench-drop/sources.js';
import { acceptancePractice, sampleStandardDeviation } from '../sources.js';
import { acceptanceVerdict, coefficientOfVariation, type TestResult, testAgainst, testOfPlaces } from './kernel.js';

const drop = (symbol: string, label: string, description: string, example: string) =>
  quantity(differentialPressure, {
    symbol,
    label,
    description,
    above: '0 mbar',
    max: '1000 mbar',
    example,
    units: ['mbar', 'kPa', 'hPa', 'Pa', 'psi'],
  });
const limit = (symbol: string, label: string, value: string, min: string, max: string, why: string) =>
  quantityWithDefault(fraction, {
    symbol,
    label,
    min,
    max,
    example: value,
    default: value,
    defaultReason: `common practice, no source: ${why}`,
  });
const asked = (label: string) => flag({ label, example: true, default: true, defaultReason: 'not said otherwise: the test is asked for' });
const share = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

export const cleanedFilterAcceptanceCalculation = defineCalculation({
  id: 'cleaned-filter-acceptance',
  version: '1.1.0',
  subject: 'cleaning',
  title: 'May the cleaned filter go back on?',
  purpose: 'Do flow bench, weight, rod depth, light, uniformity and the outlet face together accept this cleaned filter?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['acceptance', 'flow bench', 'rod', 'light', 'uniformity', 'recovery'],
  method: 'every test that is asked for must be done and pass; one failure rejects, a figure that cannot be is not believed',
  inputs: z.strictObject({
    benchDrop: drop(
      '\\Delta p',
      'Flow bench: drop of the cleaned filter',
      'At the flow of the reference, brought to the same air.',
      '11.2 mbar',
    ).optional(),
    benchReference: drop(
      '\\Delta p_0',
      'Flow bench: drop when new, or recorded baseline',
      'Of the same part at the same flow.',
      '10 mbar',
    ).optional(),
    recovery: quantity(fraction, {
      symbol: 'r',
      label: 'Recovery by weight',
      description: 'From the weighing before and after, hot.',
      min: '-100 %',
      max: '200 %',
      example: '95 %',
    }).optional(),
    depths: listOrNone(
      z.strictObject({
        depth: quantity(length, {
          symbol: 'h',
          label: 'Depth the rod reaches',
          min: '0 mm',
          max: '2 m',
          example: '150 mm',
          units: ['mm', 'in', 'cm'],
        }),
      }),
      {
        label: 'Rod depths in inlet channels',
        description: 'Five to nine places over the face; left out if it was not done.',
        max: 50,
        example: [{ depth: '150 mm' }, { depth: '151 mm' }, { depth: '149 mm' }, { depth: '150 mm' }, { depth: '151 mm' }],
      },
    ),
    openDepth: quantity(length, {
      symbol: 'h_0',
      label: 'Depth of an empty channel',
      description: 'Length of the body less one plug.',
      above: '0 mm',
      max: '2 m',
      example: '152 mm',
      units: ['mm', 'in', 'cm'],
    }).optional(),
    lightShare: quantity(fraction, {
      symbol: 'l',
      label: 'Sampled channels that let light through',
      description: 'Looked at from the open side against a lamp at the wall, as the bench allows.',
      min: '0 %',
      max: '100 %',
      example: '100 %',
    }).optional(),
    velocities: listOrNone(
      z.strictObject({
        velocity: quantity(velocity, {
          symbol: 'v',
          label: 'Air speed behind the face',
          min: '0 m/s',
          max: '100 m/s',
          example: '1.2 m/s',
          units: ['m/s', 'ft/min'],
        }),
      }),
      {
        label: 'Air speeds over the outlet face',
        description: 'Five or more places at one flow; left out if it was not done.',
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
    outletFace: choice({
      label: 'Outlet face',
      options: { clean: 'clean', sooty: 'black with soot', unknown: 'not looked at' },
      example: 'clean',
    }),
    benchLimit: limit('b', 'Bench drop over reference, at most', '115 %', '100 %', '300 %', '110 to 115 %'),
    benchFloor: limit('b_0', 'Bench drop over reference, not believed below', '85 %', '0 %', '100 %', 'the limit above mirrored'),
    recoveryLimit: limit('r_0', 'Recovery, at least', '90 %', '1 %', '100 %', '90 to 95 %'),
    recoveryCeiling: limit(
      'r_1',
      'Recovery, not believed above',
      '105 %',
      '100 %',
      '200 %',
      'more cannot come out than was in it; the rest is for the scale',
    ),
    depthLimit: limit('h_l', 'Least rod depth over open depth', '95 %', '1 %', '100 %', '95 %'),
    lightLimit: limit('l_0', 'Channels with light, at least', '100 %', '1 %', '100 %', 'all of the sample'),
    uniformityLimit: limit('c_0', 'Spread of the air speeds, at most', '20 %', '1 %', '100 %', '15 to 20 %'),
    leastPlaces: count({
      symbol: 'N_0',
      label: 'Places over the face, at least',
      description: 'For the rod and for the air speeds.',
      min: 1,
      max: 50,
      example: 5,
      default: 5,
      defaultReason: 'common practice, no source: 5 to 9',
    }),
    askBench: asked('Flow bench is asked for'),
    askRecovery: asked('Weight is asked for'),
    askDepth: asked('Rod depth is asked for'),
    askLight: asked('Light is asked for'),
    askUniformity: asked('Uniformity is asked for'),
  }),
  example: {
    benchDrop: '11.2 mbar',
    benchReference: '10 mbar',
    recovery: '95 %',
    openDepth: '152 mm',
    lightShare: '100 %',
  },
  intermediates: {
    benchRatio: optional(share('\\Delta p/\\Delta p_0', 'Bench drop over reference')),
    depthRatio: optional(share('h/h_0', 'Least rod depth over open depth')),
    uniformity: optional(share('c_v', 'Spread of the air speeds (standard deviation over mean)')),
  },
  outputs: {
    tests: tableOutput({
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
        found: optional(share('x', 'Found')),
        limit: optional(share('x_0', 'Limit')),
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
    missing: countOutput({ symbol: 'N_m', label: 'Tests that are asked for and not done, or at too few places' }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        accepted: 'accepted: every test that is asked for passed',
        rejected: 'rejected: a test failed',
        implausible: 'not decided: a figure is better than a new filter can have; check that measurement',
        incomplete: 'not decided: tests that are asked for are missing, or were done at too few places',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'benchRatio', tex: '[[benchRatio]] = \\frac{[[benchDrop]]}{[[benchReference]]}', source: 'acceptancePractice' },
    { gives: 'depthRatio', text: 'Shortest of the rod depths over [[openDepth]]: [[depthRatio]].', source: 'acceptancePractice' },
    {
      gives: 'uniformity',
      text: 'Sample standard deviation of the air speeds over their mean: [[uniformity]].',
      source: 'sampleStandardDeviation',
    },
    {
      gives: 'tests',
      text: 'Each figure against its limits; one that is missing or from fewer places than [[leastPlaces]] is not done, never passed; one beyond [[benchFloor]] or [[recoveryCeiling]] is not believed.',
      source: 'opennessPractice',
    },
    { gives: 'missing', text: 'Tests that are asked for without a figure: [[missing]].' },
    {
      gives: 'verdict',
      text: 'One failure rejects; a figure that cannot be stops it; all that are asked for must pass.',
      source: 'acceptancePractice',
    },
  ],
  assumptions: [
    {
      code: 'limits_are_habit',
      text: 'No general published criterion for a clean filter was found: the limits are habit, and yours to change.',
    },
  ],
  limits: [
    { code: 'not_a_crack_test', text: 'None of these finds every crack: smoke or particle number after fitting decides about leaks.' },
    { code: 'maker_table', text: "Where the filter's maker publishes a table for the flow bench, that table counts." },
  ],
  cautions: [cautions.ashDust, cautions.waste, cautions.makerFirst],
  sources: { acceptancePractice, opennessPractice, sampleStandardDeviation },
  compute(input) {
    const { benchDrop, benchReference, depths, openDepth, velocities, outletFace } = input;
    if (benchDrop !== undefined && benchReference === undefined) return missingInputs('benchReference');
    if (depths.length > 0 && openDepth === undefined) return missingInputs('openDepth');
    const shortest = depths.length === 0 ? undefined : Math.min(...depths.map(({ depth }) => depth));
    if (shortest !== undefined && openDepth !== undefined && Math.max(...depths.map(({ depth }) => depth)) > openDepth * 1.05) {
      return inconsistentInputs(
        'the rod goes deeper than an empty channel: it went through the plug, or the depth is wrong',
        ['depths'],
        ['openDepth'],
      );
    }
    if (velocities.length > 0 && velocities.every(({ velocity: speed }) => speed === 0)) {
      return inconsistentInputs('all air speeds are zero: there was no flow to judge', ['velocities']);
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
        found: benchRatio,
        limit: benchLimit,
        result: testAgainst(benchRatio, { worst: benchLimit, best: input.benchFloor }, 'at-most'),
        asked: input.askBench,
      },
      {
        test: 'weight',
        found: input.recovery,
        limit: recoveryLimit,
        result: testAgainst(input.recovery, { worst: recoveryLimit, best: input.recoveryCeiling }, 'at-least'),
        asked: input.askRecovery,
      },
      {
        test: 'depth',
        found: depthRatio,
        limit: depthLimit,
        result: testOfPlaces(testAgainst(depthRatio, { worst: depthLimit }, 'at-least'), depths.length, input.leastPlaces),
        asked: input.askDepth,
      },
      {
        test: 'light',
        found: input.lightShare,
        limit: lightLimit,
        result: testAgainst(input.lightShare, { worst: lightLimit }, 'at-least'),
        asked: input.askLight,
      },
      {
        test: 'uniformity',
        found: uniformity,
        limit: uniformityLimit,
        result: testAgainst(uniformity, { worst: uniformityLimit }, 'at-most'),
        asked: input.askUniformity,
      },
      // Looking at the outlet face costs nothing and is always asked for.
      { test: 'face', found: undefined, limit: undefined, result: face, asked: true },
    ] as const;
    return {
      benchRatio,
      depthRatio,
      uniformity,
      tests: tests.map((row) => ({ ...row, asked: row.asked ? ('yes' as const) : ('no' as const) })),
      missing: tests.filter(({ result, asked: wanted }) => wanted && result === 'unknown').length,
      verdict: acceptanceVerdict(tests),
    };
  },
  advise({ verdict, tests }) {
    const failed = tests.filter(({ result }) => result === 'fail').map(({ test }) => test);
    if (verdict === 'accepted') return [{ tone: 'do', text: 'Keep these figures with the part: they are the baseline of its next clean.' }];
    if (failed.includes('face'))
      return [{ tone: 'do-not', text: 'Do not refit it: soot behind the filter means it leaks; replace it with an approved part.' }];
    if (verdict === 'rejected')
      return [{ tone: 'do', text: 'Clean it again by another method, or replace it with an approved part; do not reset the ash value.' }];
    if (verdict === 'implausible')
      return [
        {
          tone: 'do',
          text: 'Measure what is not believed again: seal, flow and zero of the bench; scale, parts weighed and weight when new.',
        },
        { tone: 'do-not', text: 'Do not refit it on these figures: a crack or lost ceramic looks like a very clean filter.' },
      ];
    return [{ tone: 'do', text: 'Do the tests that are missing before it goes back on.' }];
  },
});
