import * as wf from '@wallflow/calculation';
import { absolutePressure, density, differentialPressure, dynamicViscosity, fraction, temperature, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2008, siBrochure } from '../../sources.js';
import { filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { airDensity, airViscosity } from '../gas-steps.js';
import { pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { benchPractice, dropScaling } from '../sources.js';
import { benchDropAt, benchRatioUncertainty, benchVerdict } from './kernel.js';
import { opennessPractice } from './sources.js';

const share = (symbol: string, label: string, value: string, reason: string) =>
  wf.quantity(fraction, {
    symbol,
    label,
    range: '0 <= x <= 50 %',
    usual: ['0 %', '10 %', 'more makes the bench useless'],
    default: [value, reason],
  });
const airTemperature = (symbol: string, label: string, description?: string) => ({
  symbol,
  label,
  ...(description === undefined ? {} : { description }),
  range: '-20 <= T <= 80 degC',
  usual: ['0 °C', '50 °C', 'air of a workshop'] as const,
});
const airPressure = (symbol: string, label: string, description?: string) => ({
  symbol,
  label,
  ...(description === undefined ? {} : { description }),
  range: '50 <= p <= 120 kPa',
  usual: ['70 kPa', '106 kPa', 'ambient pressure between sea level and 3000 m; not a gauge reading'] as const,
  units: ['hPa', 'mbar', 'kPa'] as const,
});
const benchFlow = {
  range: '0 < Q <= 10000 m3/h',
  usual: ['20 m3/h', '1500 m3/h', 'flow benches for filters'],
  example: '300 m3/h',
} as const;
/** Viscosity and density of the air in one state. */
const airOf = (symbol: string, where: string) => ({
  viscosity: wf.quantityOutput(dynamicViscosity, { symbol: `\\mu_{${symbol}}`, label: `Viscosity of ${where}`, units: ['uPa.s'] }),
  density: wf.quantityOutput(density, { symbol: `\\rho_{${symbol}}`, label: `Density of ${where}`, units: ['kg/m3'] }),
});
const [benchAir, standardAir, newAir] = [
  airOf('b', 'the air on the bench'),
  airOf('s', 'standard air'),
  airOf('n', 'the air of the new value'),
];
/** The measured drop at another flow and air. */
const converted = (viscosity: string, density: string, flow: string) =>
  `pressureDrop * ((1 - inertialShare) * ${viscosity} * ${flow} / (benchViscosity * benchFlow) + inertialShare * ${density} * ${flow} ^ 2 / (benchDensity * benchFlow ^ 2))`;
/** Part of it that grows with density times flow squared. */
const inertialPart = (flow: string, drop: string) =>
  `inertialShare * pressureDrop * newDensity * ${flow} ^ 2 / (benchDensity * benchFlow ^ 2) / ${drop}`;
const combined = (share: string) => `sqrt(relativeDropUncertainty ^ 2 + (1 + ${share}) ^ 2 * flowUncertainty ^ 2 + newUncertainty ^ 2)`;
/** Where a ratio lies with twice its uncertainty: of the flow entered, or of both flows that it may have been. */
const bothWays = (condition: (ratio: string, uncertainty: string) => string) =>
  `(${condition('ratioToNew', 'ratioUncertainty')}) and (known(newFlow) or (${condition('otherRatio', 'otherUncertainty')}))`;

const percent = (symbol: string, label: string, digits = 2) => wf.quantityOutput(fraction, { symbol, label, digits, units: ['%'] });

export const flowBenchDropCalculation = wf.defineCalculation({
  id: 'flow-bench-drop',
  subject: 'filter',
  title: 'Flow-bench drop at standard air',
  purpose: 'What does the cleaned filter read at standard air, and is that good enough next to a new one?',
  keywords: 'flow bench, cleaned filter, per cent of new, acceptance',
  method: 'both drops brought to the flow and air of the new value, verdict with uncertainty',
  inputs: {
    pressureDrop: pressureDropInput,
    benchFlow: wf.quantity(volumeFlow, {
      symbol: 'Q',
      label: 'Air flow on the bench',
      description: 'Actual flow at the air temperature and pressure of the bench.',
      ...benchFlow,
    }),
    airTemperature: wf.quantity(temperature, { ...airTemperature('T', 'Air temperature'), example: '14 °C' }),
    ambientPressure: wf.quantity(absolutePressure, { ...airPressure('p', 'Ambient pressure'), example: '986 hPa' }),
    standardTemperature: wf.quantity(temperature, {
      ...airTemperature('T_s', 'Standard air temperature'),
      default: ['20 °C', 'benches use 20 to 25 °C; name the one that is used'],
    }),
    standardPressure: wf.quantity(absolutePressure, {
      ...airPressure('p_s', 'Standard air pressure'),
      default: ['1013.25 hPa', 'the usual standard pressure'],
    }),
    newDrop: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: '\\Delta p_n',
        label: 'Drop of a new filter, if known',
        description: 'Or the recorded drop of this filter when it was clean. Enter the flow and the air of that measurement too.',
        range: '0 < p <= 1000 mbar',
        usual: ['2 mbar', '200 mbar', 'clean filters on a bench'],
        example: '7.3 mbar',
      }),
    ),
    ...wf.whenGiven('newDrop', {
      newFlow: wf.optional(
        wf.quantity(volumeFlow, {
          symbol: 'Q_n',
          label: 'Air flow at which the new value was taken',
          description: 'Actual flow in the air of that day. For a value at a standard flow: that flow, with the standard air.',
          ...benchFlow,
        }),
      ),
      newTemperature: wf.optional(
        wf.quantity(temperature, {
          ...airTemperature('T_n', 'Air temperature at which the new value was taken', 'Leave blank for standard air.'),
          example: '20 °C',
        }),
      ),
      newPressure: wf.optional(
        wf.quantity(absolutePressure, {
          ...airPressure('p_n', 'Air pressure at which the new value was taken', 'Leave blank for standard air.'),
          example: '1013.25 hPa',
        }),
      ),
    }),
    allowedRatio: wf.quantity(fraction, {
      symbol: 'r_{max}',
      label: 'Accepted up to',
      description: 'Of the new value.',
      range: '100 <= x <= 300 %',
      usual: ['105 %', '130 %', 'common practice'],
      default: ['115 %', 'common practice, no source: 110 to 115 %'],
    }),
    lowestDropRatio: wf.quantity(fraction, {
      symbol: 'r_{min}',
      label: 'Not believed below',
      description: 'Of the new value. A filter does not become more open than new.',
      range: '0 <= x <= 100 %',
      usual: ['75 %', '95 %', 'own derivation: scatter between parts of one kind'],
      default: ['85 %', 'common practice, no source: the upper limit mirrored'],
    }),
    inertialShare: wf.quantity(fraction, {
      symbol: 'x_i',
      label: 'Inertial part of the drop',
      range: '0 <= x <= 100 %',
      default: ['20 %', 'a clean filter at bench flow; it hardly matters as long as the air is near standard'],
    }),
    relativeDropUncertainty: share('u_p', 'Standard uncertainty of the drop', '1 %', 'common practice, no source'),
    flowUncertainty: share('u_Q', 'Standard uncertainty of the flow', '2 %', 'common practice, no source'),
    newUncertainty: share('u_n', 'Standard uncertainty of the new value', '3 %', 'common practice, no source'),
  },
  example: { pressureDrop: '7.6 mbar', newDrop: '7.3 mbar', newFlow: '300 m3/h' },
  intermediates: {
    benchViscosity: benchAir.viscosity,
    benchDensity: benchAir.density,
    standardViscosity: standardAir.viscosity,
    standardDensity: standardAir.density,
    standardFlow: wf.quantityOutput(volumeFlow, { symbol: 'Q_s', label: 'The same mass flow at standard air', units: ['m3/h'] }),
    newViscosity: wf.optional(newAir.viscosity),
    newDensity: wf.optional(newAir.density),
    newStateFlow: wf.optional(wf.quantityOutput(volumeFlow, { symbol: 'Q_n', label: 'Flow at which both are compared', units: ['m3/h'] })),
    comparedDrop: wf.optional(dropOutput('\\Delta p_c', 'Cleaned filter at the flow and air of the new value')),
    comparedShare: wf.optional(percent('x_n', 'Inertial part of the drop there')),
    ratioUncertainty: wf.optional(percent('u_r', 'Relative standard uncertainty of the ratio')),
    cleanedAtSameFlow: wf.optional(dropOutput("\\Delta p_c'", 'Cleaned filter, if the new value was taken at the same actual flow')),
    otherRatio: wf.optional(percent("r'", 'Of the new value, in that case')),
    otherUncertainty: wf.optional(percent("u_r'", 'Relative standard uncertainty of the ratio, in that case')),
  },
  outputs: {
    standardDrop: dropOutput('\\Delta p_s', 'Drop at standard air'),
    ratioToNew: wf.optional(percent('r', 'Of the new value', 3)),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        pass: 'accepted',
        fail: 'not accepted',
        'too-open': 'not believed: more open than new; a leak past it, a crack, or another flow',
        'not-decided': 'not decided: a limit lies within the uncertainty, or the flow of the new value is not known',
        'no-baseline': 'no verdict: the new value is not known',
      },
    }),
  },
  constants: filterConstants,
  answer: 'verdict',
  steps: [
    airViscosity('benchViscosity', 'airTemperature'),
    airDensity('benchDensity', 'airTemperature', 'ambientPressure'),
    airViscosity('standardViscosity', 'standardTemperature'),
    airDensity('standardDensity', 'standardTemperature', 'standardPressure'),
    wf.formula('standardFlow', 'benchFlow * benchDensity / standardDensity', siBrochure),
    wf.formula('standardDrop', converted('standardViscosity', 'standardDensity', 'standardFlow'), dropScaling),
    wf.cases('newViscosity', {
      'known(newTemperature)': airViscosity('newViscosity', 'newTemperature'),
      otherwise: 'standardViscosity',
    }),
    wf.cases('newDensity', {
      'known(newTemperature) and known(newPressure)': airDensity('newDensity', 'newTemperature', 'newPressure'),
      'known(newTemperature)': airDensity('newDensity', 'newTemperature', 'standardPressure'),
      'known(newPressure)': airDensity('newDensity', 'standardTemperature', 'newPressure'),
      otherwise: 'standardDensity',
    }),
    wf.cases('newStateFlow', { 'known(newFlow)': 'newFlow', otherwise: 'benchFlow * benchDensity / newDensity' }, siBrochure),
    wf.formula('comparedDrop', converted('newViscosity', 'newDensity', 'newStateFlow'), dropScaling),
    wf.formula('comparedShare', inertialPart('newStateFlow', 'comparedDrop'), dropScaling),
    wf.formula('ratioToNew', 'comparedDrop / newDrop'),
    wf.formula('ratioUncertainty', combined('comparedShare')),
    wf.formula('cleanedAtSameFlow', converted('newViscosity', 'newDensity', 'benchFlow'), dropScaling),
    wf.formula('otherRatio', 'cleanedAtSameFlow / newDrop'),
    wf.formula('otherUncertainty', combined(inertialPart('benchFlow', 'cleanedAtSameFlow'))),
    wf.verdict(
      'verdict',
      {
        'no-baseline': 'not known(newDrop)',
        'too-open': bothWays((ratio, uncertainty) => `${ratio} * (1 + 2 * ${uncertainty}) < lowestDropRatio`),
        fail: bothWays((ratio, uncertainty) => `${ratio} * (1 - 2 * ${uncertainty}) > allowedRatio`),
        pass: bothWays((ratio, uncertainty) => `${ratio} >= lowestDropRatio and ${ratio} * (1 + 2 * ${uncertainty}) <= allowedRatio`),
        'not-decided': 'otherwise',
      },
      opennessPractice,
    ),
  ],
  assumptions: { dry_filter: 'The filter is dry and at air temperature.' },
  limits: {
    no_criterion: 'No published general limit was found; the limit is trade practice and can be changed.',
    same_adapter: 'The new value belongs to the same bench and adapters.',
  },
  cautions: [cautions.ashDust, cautions.makerFirst],
  sources: [benchPractice, konstandopoulos2008],
  compute(input, { constants, assume, warn }) {
    const { pressureDrop, inertialShare, newDrop } = input;
    const air = (gasTemperature: number, gasPressure: number) => ({
      viscosity: resolveViscosity({ gasTemperature }, constants),
      density: resolveDensity({ gasTemperature, gasPressure }, constants),
    });
    const bench = { ...air(input.airTemperature, input.ambientPressure), volumeFlow: input.benchFlow };
    const at = (state: { readonly viscosity: number; readonly density: number }, volumeFlow: number) =>
      benchDropAt(pressureDrop, bench, { ...state, volumeFlow }, inertialShare);
    const standard = air(input.standardTemperature, input.standardPressure);
    const standardFlow = (input.benchFlow * bench.density) / standard.density;
    const common = {
      benchViscosity: bench.viscosity,
      benchDensity: bench.density,
      standardViscosity: standard.viscosity,
      standardDensity: standard.density,
      standardFlow,
      standardDrop: at(standard, standardFlow).drop,
    };
    const unknown = {
      newViscosity: undefined,
      newDensity: undefined,
      newStateFlow: undefined,
      comparedDrop: undefined,
      comparedShare: undefined,
      ratioToNew: undefined,
      ratioUncertainty: undefined,
      cleanedAtSameFlow: undefined,
      otherRatio: undefined,
      otherUncertainty: undefined,
    };
    if (newDrop === undefined) return { ...common, ...unknown, verdict: 'no-baseline' as const };
    const ofNew = air(input.newTemperature ?? input.standardTemperature, input.newPressure ?? input.standardPressure);
    const newStateFlow = input.newFlow ?? (input.benchFlow * bench.density) / ofNew.density;
    const uncertainty = { drop: input.relativeDropUncertainty, flow: input.flowUncertainty, baseline: input.newUncertainty };
    const judged = (volumeFlow: number) => {
      const { drop, inertialShare: part } = at(ofNew, volumeFlow);
      const [ratio, spread] = [drop / newDrop, benchRatioUncertainty(uncertainty, part)];
      return {
        drop,
        part,
        ratio,
        spread,
        verdict: benchVerdict(ratio, spread, { lowest: input.lowestDropRatio, highest: input.allowedRatio }),
      };
    };
    const compared = judged(newStateFlow);
    // A bench set by its own meter runs the same actual flow instead: what differs between the two is not known.
    const other = input.newFlow === undefined ? judged(input.benchFlow) : undefined;
    if (other !== undefined)
      assume('same_standard_flow', 'The new value was taken at the same mass flow, because its flow was not entered.');
    const differs = other !== undefined && other.verdict !== compared.verdict;
    if (differs) {
      warn(
        'new_flow_unknown',
        'Not decided: the verdict depends on the flow of the new value, the same mass flow or the same actual flow. Enter it.',
        ['newFlow'],
      );
    }
    if (input.newTemperature === undefined || input.newPressure === undefined)
      assume('new_at_standard_air', 'The new value was taken in standard air, where its temperature or pressure was not entered.');
    return {
      ...common,
      newViscosity: ofNew.viscosity,
      newDensity: ofNew.density,
      newStateFlow,
      comparedDrop: compared.drop,
      comparedShare: compared.part,
      ratioToNew: compared.ratio,
      ratioUncertainty: compared.spread,
      cleanedAtSameFlow: other?.drop,
      otherRatio: other?.ratio,
      otherUncertainty: other?.spread,
      verdict: differs ? ('not-decided' as const) : compared.verdict,
    };
  },
  advise({ verdict }) {
    if (verdict === 'fail') return [{ tone: 'do', text: 'Clean again or replace: the filter is more restricted than the limit allows.' }];
    if (verdict === 'too-open')
      return [
        {
          tone: 'do',
          text: 'Check the seal to the bench, the flow and the zero; then look for cracks, broken plugs and light through channels.',
        },
        { tone: 'do-not', text: 'Do not refit it on this reading: a filter does not become more open than new.' },
      ];
    if (verdict === 'not-decided')
      return [
        {
          tone: 'do',
          text: 'Enter the flow and air of the new value, measure the flow better, or compare with a new part on the same bench.',
        },
      ];
    if (verdict === 'no-baseline') return [{ tone: 'do', text: 'Get the value of a new part; without it nothing is proven.' }];
    return [
      { tone: 'note', text: 'A low drop does not show that the filter is whole: look for soot on the outlet face and broken plugs.' },
    ];
  },
});
