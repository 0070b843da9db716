import { choiceOutput, defineCalculation, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, differentialPressure, fraction, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2008, siBrochure } from '../../sources.js';
import { filterConstants } from '../constants.js';
import { dropAtState } from '../drop-at-reference-state/kernel.js';
import { dropOutput } from '../drop-outputs.js';
import { pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { benchPractice, dropScaling } from '../sources.js';
import { benchRatioUncertainty, benchVerdict } from './kernel.js';

const share = (symbol: string, label: string, value: string, reason: string) =>
  quantityWithDefault(fraction, {
    symbol,
    label,
    min: '0 %',
    max: '50 %',
    usual: ['0 %', '10 %'],
    usualReason: 'more makes the bench useless',
    example: value,
    default: value,
    defaultReason: reason,
  });
const airTemperature = { min: '-20 °C', max: '80 °C', usual: ['0 °C', '50 °C'] as const, usualReason: 'a workshop' };
const airPressure = {
  min: '50 kPa',
  max: '120 kPa',
  usual: ['70 kPa', '106 kPa'] as const,
  usualReason: 'air pressure between sea level and 3000 m; not a gauge reading',
  units: ['hPa', 'mbar', 'kPa'] as const,
};

export const flowBenchDropCalculation = defineCalculation({
  id: 'flow-bench-drop',
  version: '1.0.0',
  subject: 'filter',
  title: 'Flow-bench drop at standard air',
  purpose: 'What does the cleaned filter read at standard air, and is that good enough next to a new one?',
  usedBy: ['technician', 'trainer'],
  keywords: ['flow bench', 'cleaned filter', 'per cent of new', 'acceptance'],
  method: 'conversion at the same mass flow, verdict with uncertainty',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    benchFlow: quantity(volumeFlow, {
      symbol: 'Q',
      label: 'Air flow on the bench',
      description: 'Actual flow at the air temperature and pressure of the bench.',
      above: '0 m3/h',
      max: '10000 m3/h',
      usual: ['20 m3/h', '1500 m3/h'],
      usualReason: 'flow benches for filters',
      example: '300 m3/h',
    }),
    airTemperature: quantity(temperature, { symbol: 'T', label: 'Air temperature', ...airTemperature, example: '28 °C' }),
    airPressure: quantity(absolutePressure, {
      symbol: 'p',
      label: 'Air pressure',
      ...airPressure,
      units: [...airPressure.units],
      usual: [...airPressure.usual],
      example: '985 hPa',
    }),
    standardTemperature: quantityWithDefault(temperature, {
      symbol: 'T_s',
      label: 'Standard air temperature',
      ...airTemperature,
      example: '20 °C',
      default: '20 °C',
      defaultReason: 'benches use 20 to 25 °C; name the one that is used',
    }),
    standardPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_s',
      label: 'Standard air pressure',
      ...airPressure,
      units: [...airPressure.units],
      example: '1013.25 hPa',
      default: '1013.25 hPa',
      defaultReason: 'the usual standard pressure',
    }),
    newDrop: quantity(differentialPressure, {
      symbol: '\\Delta p_n',
      label: 'Drop of a new filter at standard air, if known',
      description: 'Or the recorded drop of this filter when it was clean, at the same mass flow.',
      above: '0 mbar',
      max: '1000 mbar',
      usual: ['2 mbar', '200 mbar'],
      usualReason: 'clean filters on a bench',
      example: '18 mbar',
    }).optional(),
    allowedRatio: quantityWithDefault(fraction, {
      symbol: 'r_{max}',
      label: 'Accepted up to',
      description: 'Of the new value.',
      min: '100 %',
      max: '300 %',
      usual: ['105 %', '130 %'],
      usualReason: 'common practice',
      example: '115 %',
      default: '115 %',
      defaultReason: 'common practice, no source: 110 to 115 %',
    }),
    inertialShare: quantityWithDefault(fraction, {
      symbol: 'x_i',
      label: 'Inertial part of the drop',
      min: '0 %',
      max: '100 %',
      example: '20 %',
      default: '20 %',
      defaultReason: 'a clean filter at bench flow; it hardly matters as long as the air is near standard',
    }),
    dropUncertainty: share('u_p', 'Standard uncertainty of the drop', '1 %', 'common practice, no source'),
    flowUncertainty: share('u_Q', 'Standard uncertainty of the flow', '2 %', 'common practice, no source'),
    newUncertainty: share('u_n', 'Standard uncertainty of the new value', '3 %', 'common practice, no source'),
  }),
  intermediates: {
    standardFlow: quantityOutput(volumeFlow, { symbol: 'Q_s', label: 'The same mass flow at standard air', units: ['m3/h'] }),
    ratioUncertainty: quantityOutput(fraction, {
      symbol: 'u_r',
      label: 'Relative standard uncertainty of the ratio',
      digits: 2,
      units: ['%'],
    }),
  },
  outputs: {
    standardDrop: dropOutput('\\Delta p_s', 'Drop at standard air'),
    ratioToNew: optional(quantityOutput(fraction, { symbol: 'r', label: 'Of the new value', digits: 3, units: ['%'] })),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        pass: 'accepted',
        fail: 'not accepted',
        'not-decided': 'not decided: the limit lies within the uncertainty',
        'no-baseline': 'no verdict: the new value is not known',
      },
    }),
  },
  constants: filterConstants,
  steps: [
    { gives: 'standardFlow', text: 'The same mass flow at standard air: [[standardFlow]].', source: 'siBrochure' },
    {
      gives: 'standardDrop',
      text: 'Viscous part with viscosity times flow, inertial part with density times flow squared: [[standardDrop]].',
      source: 'dropScaling',
    },
    { gives: 'ratioToNew', tex: '[[ratioToNew]] = \\frac{[[standardDrop]]}{[[newDrop]]}' },
    {
      gives: 'ratioUncertainty',
      tex: '[[ratioUncertainty]] = \\sqrt{[[dropUncertainty]]^{2}+\\left(1+[[inertialShare]]\\right)^{2}[[flowUncertainty]]^{2}+[[newUncertainty]]^{2}}',
    },
    {
      gives: 'verdict',
      text: 'Accepted up to [[allowedRatio]], with twice the standard uncertainty on either side: [[verdict]].',
      source: 'benchPractice',
    },
  ],
  assumptions: [{ code: 'dry_filter', text: 'The filter is dry and at air temperature.' }],
  limits: [
    { code: 'no_criterion', text: 'No published general limit was found; the limit is trade practice and can be changed.' },
    { code: 'same_adapter', text: 'The new value belongs to the same bench, adapters and flow.' },
  ],
  cautions: [cautions.ashDust, cautions.makerFirst],
  sources: { dropScaling, benchPractice, konstandopoulos2008, cfr1065, siBrochure },
  compute(input, { constants }) {
    const state = (gasTemperature: number, gasPressure: number) => ({
      viscosity: resolveViscosity({ gasTemperature }, constants),
      density: resolveDensity({ gasTemperature, gasPressure }, constants),
    });
    const bench = state(input.airTemperature, input.airPressure);
    const standard = state(input.standardTemperature, input.standardPressure);
    const standardFlow = (input.benchFlow * bench.density) / standard.density;
    const standardDrop = dropAtState(
      input.pressureDrop,
      { ...bench, volumeFlow: input.benchFlow },
      { ...standard, volumeFlow: standardFlow },
      input.inertialShare,
    );
    const uncertainty = { drop: input.dropUncertainty, flow: input.flowUncertainty, baseline: input.newUncertainty };
    const ratioUncertainty = benchRatioUncertainty(uncertainty, input.inertialShare);
    const ratioToNew = input.newDrop === undefined ? undefined : standardDrop / input.newDrop;
    return {
      standardFlow,
      standardDrop,
      ratioToNew,
      ratioUncertainty,
      verdict: benchVerdict(ratioToNew, ratioUncertainty, input.allowedRatio),
    };
  },
  advise({ verdict }) {
    if (verdict === 'fail') return [{ tone: 'do', text: 'Clean again or replace: the filter is more restricted than the limit allows.' }];
    if (verdict === 'not-decided')
      return [{ tone: 'do', text: 'Repeat with a better flow measurement or compare on the same bench with a new part.' }];
    if (verdict === 'no-baseline') return [{ tone: 'do', text: 'Get the value of a new part; without it nothing is proven.' }];
    return [
      { tone: 'note', text: 'A low drop does not show that the filter is whole: look for soot on the outlet face and broken plugs.' },
    ];
  },
});
