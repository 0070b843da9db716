import { choiceOutput, defineCalculation, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, differentialPressure, fraction, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2008, siBrochure } from '../../sources.js';
import { filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { benchPractice, dropScaling } from '../sources.js';
import { benchDropAt, benchRatioUncertainty, benchVerdict } from './kernel.js';
import { opennessPractice } from './sources.js';

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
  version: '1.1.0',
  subject: 'filter',
  title: 'Flow-bench drop at standard air',
  purpose: 'What does the cleaned filter read at standard air, and is that good enough next to a new one?',
  usedBy: ['technician', 'trainer'],
  keywords: ['flow bench', 'cleaned filter', 'per cent of new', 'acceptance'],
  method: 'both drops brought to the flow and air of the new value, verdict with uncertainty',
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
      label: 'Drop of a new filter, if known',
      description: 'Or the recorded drop of this filter when it was clean. Give the flow and the air that it was taken at too.',
      above: '0 mbar',
      max: '1000 mbar',
      usual: ['2 mbar', '200 mbar'],
      usualReason: 'clean filters on a bench',
      example: '18 mbar',
    }).optional(),
    newFlow: quantity(volumeFlow, {
      symbol: 'Q_n',
      label: 'Air flow at which the new value was taken',
      description: 'Actual flow in the air of that day. A value stated at a standard flow: the standard flow, with the standard air.',
      above: '0 m3/h',
      max: '10000 m3/h',
      usual: ['20 m3/h', '1500 m3/h'],
      usualReason: 'flow benches for filters',
      example: '300 m3/h',
    }).optional(),
    newTemperature: quantity(temperature, {
      symbol: 'T_n',
      label: 'Air temperature at which the new value was taken',
      description: 'Left out, standard air.',
      ...airTemperature,
      example: '20 °C',
    }).optional(),
    newPressure: quantity(absolutePressure, {
      symbol: 'p_n',
      label: 'Air pressure at which the new value was taken',
      description: 'Left out, standard air.',
      ...airPressure,
      units: [...airPressure.units],
      usual: [...airPressure.usual],
      example: '1013.25 hPa',
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
    lowestRatio: quantityWithDefault(fraction, {
      symbol: 'r_{min}',
      label: 'Not believed below',
      description: 'Of the new value. A filter does not become more open than new.',
      min: '0 %',
      max: '100 %',
      usual: ['75 %', '95 %'],
      usualReason: 'own derivation: scatter between parts of one kind',
      example: '85 %',
      default: '85 %',
      defaultReason: 'common practice, no source: the upper limit mirrored',
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
  example: { pressureDrop: '20 mbar', newDrop: '20 mbar', newFlow: '300 m3/h' },
  intermediates: {
    standardFlow: quantityOutput(volumeFlow, { symbol: 'Q_s', label: 'The same mass flow at standard air', units: ['m3/h'] }),
    newStateFlow: optional(quantityOutput(volumeFlow, { symbol: 'Q_n', label: 'Flow at which both are compared', units: ['m3/h'] })),
    comparedDrop: optional(dropOutput('\\Delta p_c', 'Cleaned filter at the flow and air of the new value')),
    comparedShare: quantityOutput(fraction, { symbol: 'x_n', label: 'Inertial part of the drop there', digits: 2, units: ['%'] }),
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
        'too-open': 'not believed: more open than new; a leak past it, a crack, or another flow',
        'not-decided': 'not decided: a limit lies within the uncertainty, or the flow of the new value is not known',
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
    {
      gives: 'newStateFlow',
      text: 'Flow of the new value as given; left out, the same mass flow at its air: [[newStateFlow]].',
      source: 'siBrochure',
    },
    {
      gives: 'comparedDrop',
      text: 'The drop as measured, converted in the same way to that flow and air: [[comparedDrop]].',
      source: 'dropScaling',
    },
    { gives: 'comparedShare', text: 'Part of it that grows with density times flow squared: [[comparedShare]].', source: 'dropScaling' },
    { gives: 'ratioToNew', tex: '[[ratioToNew]] = \\frac{[[comparedDrop]]}{[[newDrop]]}' },
    {
      gives: 'ratioUncertainty',
      tex: '[[ratioUncertainty]] = \\sqrt{[[dropUncertainty]]^{2}+\\left(1+[[comparedShare]]\\right)^{2}[[flowUncertainty]]^{2}+[[newUncertainty]]^{2}}',
    },
    {
      gives: 'verdict',
      text: 'Accepted up to [[allowedRatio]] and believed from [[lowestRatio]], with twice the standard uncertainty: [[verdict]]. Without the flow of the new value only if the same mass flow and the same actual flow agree.',
      source: 'opennessPractice',
    },
  ],
  assumptions: [{ code: 'dry_filter', text: 'The filter is dry and at air temperature.' }],
  limits: [
    { code: 'no_criterion', text: 'No published general limit was found; the limit is trade practice and can be changed.' },
    { code: 'same_adapter', text: 'The new value belongs to the same bench and adapters.' },
  ],
  cautions: [cautions.ashDust, cautions.makerFirst],
  sources: { dropScaling, benchPractice, opennessPractice, konstandopoulos2008, cfr1065, siBrochure },
  compute(input, { constants, assume, warn }) {
    const { pressureDrop, inertialShare, newDrop } = input;
    const air = (gasTemperature: number, gasPressure: number) => ({
      viscosity: resolveViscosity({ gasTemperature }, constants),
      density: resolveDensity({ gasTemperature, gasPressure }, constants),
    });
    const bench = { ...air(input.airTemperature, input.airPressure), volumeFlow: input.benchFlow };
    const at = (state: { readonly viscosity: number; readonly density: number }, volumeFlow: number) =>
      benchDropAt(pressureDrop, bench, { ...state, volumeFlow }, inertialShare);
    const standard = air(input.standardTemperature, input.standardPressure);
    const standardFlow = (input.benchFlow * bench.density) / standard.density;
    const ofNew = air(input.newTemperature ?? input.standardTemperature, input.newPressure ?? input.standardPressure);
    const sameMassFlow = (input.benchFlow * bench.density) / ofNew.density;
    const newStateFlow = input.newFlow ?? sameMassFlow;
    const compared = at(ofNew, newStateFlow);
    const uncertainty = { drop: input.dropUncertainty, flow: input.flowUncertainty, baseline: input.newUncertainty };
    const judge = ({ drop, inertialShare: share }: { readonly drop: number; readonly inertialShare: number }) =>
      benchVerdict(newDrop === undefined ? undefined : drop / newDrop, benchRatioUncertainty(uncertainty, share), {
        lowest: input.lowestRatio,
        highest: input.allowedRatio,
      });
    let verdict = judge(compared);
    if (newDrop !== undefined && input.newFlow === undefined) {
      assume('same_standard_flow', 'The new value was taken at the same mass flow, as its flow is not given.');
      // A bench set by its own meter runs the same actual flow instead: what differs between the two is not known.
      if (judge(at(ofNew, input.benchFlow)) !== verdict) {
        verdict = 'not-decided';
        warn(
          'new_flow_unknown',
          'The verdict differs with what the flow of the new value was: the same mass flow, or the same actual flow. Give it.',
          ['newFlow'],
        );
      }
    }
    if (newDrop !== undefined && (input.newTemperature === undefined || input.newPressure === undefined)) {
      assume('new_at_standard_air', 'What is not given of the air of the new value is that of standard air.');
    }
    return {
      standardFlow,
      standardDrop: at(standard, standardFlow).drop,
      newStateFlow: newDrop === undefined ? undefined : newStateFlow,
      comparedDrop: newDrop === undefined ? undefined : compared.drop,
      comparedShare: compared.inertialShare,
      ratioToNew: newDrop === undefined ? undefined : compared.drop / newDrop,
      ratioUncertainty: benchRatioUncertainty(uncertainty, compared.inertialShare),
      verdict,
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
          text: 'Give the flow and air of the new value, measure the flow better, or compare on the same bench with a new part.',
        },
      ];
    if (verdict === 'no-baseline') return [{ tone: 'do', text: 'Get the value of a new part; without it nothing is proven.' }];
    return [
      { tone: 'note', text: 'A low drop does not show that the filter is whole: look for soot on the outlet face and broken plugs.' },
    ];
  },
});
