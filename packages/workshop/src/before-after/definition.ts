import * as wf from '@wallflow/calculation';
import { sutherlandViscosity } from '@wallflow/exhaust';
import { cautions, sharedSources, sutherlandFormula, viscosityConstants } from '@wallflow/exhaust/shared';
import { differentialPressure, dynamicViscosity, flowResistance, fraction, ratio, temperature, volumeFlow } from '@wallflow/units';
import { acceptance, equalConditions, readingBands } from '../sources.js';
import { type ChangeVerdict, type CleanReference, changeVerdict, resistanceOf } from './kernel.js';

const dropInput = (symbol: string, label: string, example: string) =>
  wf.quantity(differentialPressure, {
    symbol,
    label,
    description: 'Less the reading with the engine off.',
    range: '-1000 <= x <= 1500 mbar',
    example,
    units: ['mbar', 'kPa', 'hPa', 'psi'],
  });
const flowInput = (symbol: string, label: string, example: string) =>
  wf.quantity(volumeFlow, { symbol, label, range: '1 < x <= 10000 m3/h', example, units: ['m3/h', 'L/s', 'ft3/min'] });
const temperatureInput = (symbol: string, label: string, example: string) =>
  wf.quantity(temperature, { symbol, label, range: '-40 <= x <= 1200 °C', example });
const resistanceOutput = (symbol: string, label: string) =>
  wf.quantityOutput(flowResistance, { symbol, label, digits: 3, units: ['1/mm3', '1/m3'] });
const dropOutput = (symbol: string, label: string) =>
  wf.quantityOutput(differentialPressure, { symbol, label, digits: 3, units: ['mbar', 'kPa', 'hPa', 'psi'] });

const verdicts = {
  cleaned: 'cleaned: the resistance fell as far as a clean should make it',
  improved: 'improved, but not shown to be back in the range of the clean filter',
  'improved-unproven': 'improved; whether it is clean is not known: there is no drop of the clean filter to compare with',
  'before-too-low': 'not comparable: the reading before was lower than a clean filter can give. A hose leaked or was off then',
  'too-low': 'not proven: lower than a clean filter can be. Hose off, sensor fault, or a hole in the filter',
  'no-signal': 'not proven: no signal beyond its error. Hose off or swapped, dead sensor, or no filter in it',
  unchanged: 'no change beyond the uncertainty',
  worse: 'higher than before: worse, or a hose leaked before',
  'not-comparable': 'not comparable: the flows differ too much',
  unclear: 'not clear: the first reading is negative or as small as its error',
} as const satisfies Record<ChangeVerdict, string>;

/** Viscosity of air at this temperature. */
const viscosityAt = (temperatureKey: string) => sutherlandFormula.replaceAll('gasTemperature', temperatureKey);
const comparable = 'flowEffect * temperatureEffect <= widestFlowRatio and flowEffect * temperatureEffect >= 1 / widestFlowRatio';
/** A change below it is none: twice the uncertainty of both resistances. */
const spread = '2 * sqrt(resistanceBeforeUncertainty ^ 2 + resistanceAfterUncertainty ^ 2)';

export const beforeAfterCalculation = wf.defineCalculation({
  id: 'before-after',
  subject: 'workshop',
  title: 'Before and after at comparable flow',
  purpose: 'Did the work lower the resistance of the filter, or is the lower reading only less flow or cooler gas?',
  keywords: 'proof, verification, cleaning result, comparison',
  method: 'flow resistance Δp/(μQ) before and after, and against the clean filter, with its uncertainty',
  inputs: {
    dropBefore: dropInput('\\Delta p_1', 'Pressure drop before', '94.4 mbar'),
    flowBefore: flowInput('Q_1', 'Exhaust volume flow before', '414 m3/h'),
    temperatureBefore: temperatureInput('T_1', 'Gas temperature before', '206 °C'),
    dropAfter: dropInput('\\Delta p_2', 'Pressure drop after', '13.4 mbar'),
    flowAfter: flowInput('Q_2', 'Exhaust volume flow after', '376 m3/h'),
    temperatureAfter: temperatureInput('T_2', 'Gas temperature after', '184 °C'),
    cleanDrop: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: '\\Delta p_c',
        label: 'Pressure drop of the clean filter at that flow',
        description:
          'At the flow and temperature after, from its record when new or calculated from its size. Without it nobody can say that the filter is clean.',
        range: '0 < x <= 1500 mbar',
        usual: ['1 mbar', '200 mbar', 'a clean filter has a few millibar to a few tens at raised engine speed'],
        example: '10 mbar',
        units: ['mbar', 'kPa', 'hPa', 'psi'],
      }),
    ),
    cleanFrom: wf.choice({
      label: 'Where the clean drop comes from',
      options: { measured: 'measured on this filter when it was new or clean', calculated: 'calculated, or of a filter of the same type' },
      default: ['calculated', 'the wider band: a calculated drop is uncertain by about half'],
    }),
    dropUncertainty: wf.quantity(differentialPressure, {
      symbol: 'u_p',
      label: 'Uncertainty of the pressure drop',
      range: '0 <= x <= 50 mbar',
      units: ['mbar', 'kPa', 'hPa'],
      default: ['2 mbar', 'sensor zero, common practice, no source'],
    }),
    flowUncertainty: wf.quantity(fraction, {
      symbol: 'u_Q',
      label: 'Uncertainty of the flow',
      range: '0 <= x <= 50 %',
      default: ['5 %', 'air-mass signal in good order'],
    }),
  },
  example: { cleanDrop: '10 mbar' },
  intermediates: {
    viscosityBefore: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu_1', label: 'Viscosity before', digits: 4, units: ['uPa.s'] }),
    viscosityAfter: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu_2', label: 'Viscosity after', digits: 4, units: ['uPa.s'] }),
    resistanceBefore: resistanceOutput('R_1', 'Flow resistance before'),
    resistanceAfter: resistanceOutput('R_2', 'Flow resistance after'),
    resistanceBeforeUncertainty: resistanceOutput('u(R_1)', 'Standard uncertainty of the flow resistance before'),
    resistanceAfterUncertainty: resistanceOutput('u(R_2)', 'Standard uncertainty of the flow resistance after'),
    rawReduction: wf.quantityOutput(fraction, { symbol: '\\delta_p', label: 'Fall of the raw reading', digits: 3, units: ['%'] }),
    flowEffect: wf.quantityOutput(ratio, { symbol: 'Q_2/Q_1', label: 'Effect of the flow on the reading', digits: 3 }),
    temperatureEffect: wf.quantityOutput(ratio, { symbol: '\\mu_2/\\mu_1', label: 'Effect of the temperature on the reading', digits: 3 }),
    unchangedDrop: dropOutput('\\Delta p_u', 'What the filter as it was would read at the later flow and temperature'),
    lowestMultiple: wf.quantityOutput(ratio, { symbol: 'r_{min}', label: 'Too low below this multiple of the clean drop', digits: 3 }),
    surelyMultiple: wf.quantityOutput(ratio, {
      symbol: 'r_{sure}',
      label: 'Clean for certain up to this multiple of the clean drop',
      digits: 3,
    }),
    upperDrop: dropOutput('\\Delta p_{2,max}', 'Drop after, with twice its uncertainty'),
  },
  outputs: {
    improvement: wf.optional(
      wf.quantityOutput(fraction, { symbol: '\\delta_R', label: 'Fall of the flow resistance', digits: 3, units: ['%'] }),
    ),
    improvementUncertainty: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'u(\\delta_R)', label: 'Standard uncertainty of that fall', digits: 2, units: ['%'] }),
    ),
    cleanMultiple: wf.optional(wf.quantityOutput(ratio, { symbol: 'r', label: 'Pressure drop after ÷ clean filter', digits: 3 })),
    cleanMultipleUncertainty: wf.optional(
      wf.quantityOutput(ratio, { symbol: 'u(r)', label: 'Standard uncertainty of that multiple', digits: 2 }),
    ),
    verdict: wf.choiceOutput({ label: 'Verdict', options: verdicts }),
  },
  constants: {
    ...viscosityConstants,
    widestFlowRatio: wf.constant(ratio, 1.5, { symbol: 'q', label: 'Widest ratio of flows that is compared', source: equalConditions }),
    measuredBand: wf.constant(ratio, 1.3, {
      symbol: 'r_m',
      label: 'Clean up to this multiple of a measured clean drop',
      source: acceptance,
    }),
    calculatedBand: wf.constant(ratio, 2.5, {
      symbol: 'r_c',
      label: 'Possibly clean up to this multiple of a calculated clean drop',
      source: readingBands,
    }),
    cleanShare: wf.constant(fraction, 0.4, {
      symbol: 's_c',
      label: 'Share of the resistance before at which a clean counts',
      source: acceptance,
    }),
    surelyClean: wf.constant(ratio, 0.676, {
      symbol: 'r_s',
      label: 'Clean for certain up to this multiple of a calculated clean drop: 1.3 of one that is too large by 2.5/1.3',
      source: acceptance,
    }),
    calculatedUncertainty: wf.constant(fraction, 0.33, {
      symbol: 'u_c',
      label: 'Standard uncertainty of a calculated clean drop: twice it, as a factor, leads from 1.3 to 2.5',
      source: readingBands,
    }),
    calculatedLow: wf.constant(ratio, 0.3, {
      symbol: 'r_0',
      label: 'Suspiciously low below this multiple of a calculated clean drop',
      source: readingBands,
    }),
  },
  answer: 'verdict',
  picture: wf.bars({
    unchangedDrop: 'Before, at the flow and temperature of the reading after',
    dropAfter: 'After',
    cleanDrop: 'Clean filter',
  }),
  steps: [
    wf.formula('viscosityBefore', viscosityAt('temperatureBefore'), sharedSources.cfr1065, '1065.640 Table 4'),
    wf.formula('viscosityAfter', viscosityAt('temperatureAfter'), sharedSources.cfr1065, '1065.640 Table 4'),
    wf.formula('resistanceBefore', 'dropBefore / (viscosityBefore * flowBefore)', sharedSources.konstandopoulos2000, 'Eq. 1'),
    wf.formula('resistanceAfter', 'dropAfter / (viscosityAfter * flowAfter)', sharedSources.konstandopoulos2000, 'Eq. 1'),
    wf.formula(
      'resistanceBeforeUncertainty',
      'sqrt((dropUncertainty / (viscosityBefore * flowBefore)) ^ 2 + (flowUncertainty * resistanceBefore) ^ 2)',
    ),
    wf.formula(
      'resistanceAfterUncertainty',
      'sqrt((dropUncertainty / (viscosityAfter * flowAfter)) ^ 2 + (flowUncertainty * resistanceAfter) ^ 2)',
    ),
    wf.formula('rawReduction', '1 - dropAfter / dropBefore'),
    wf.formula('flowEffect', 'flowAfter / flowBefore'),
    wf.formula('temperatureEffect', 'viscosityAfter / viscosityBefore'),
    wf.formula('unchangedDrop', 'dropBefore * flowEffect * temperatureEffect'),
    wf.formula('improvement', '1 - resistanceAfter / resistanceBefore', equalConditions),
    wf.formula(
      'improvementUncertainty',
      'sqrt(resistanceAfterUncertainty ^ 2 + (resistanceAfter / resistanceBefore * resistanceBeforeUncertainty) ^ 2) / abs(resistanceBefore)',
    ),
    wf.formula('cleanMultiple', 'dropAfter / cleanDrop', acceptance),
    wf.cases('cleanMultipleUncertainty', {
      "cleanFrom == 'measured'": 'sqrt(dropUncertainty ^ 2 + (flowUncertainty * dropAfter) ^ 2) / cleanDrop',
      otherwise:
        'sqrt((dropUncertainty ^ 2 + (flowUncertainty * dropAfter) ^ 2) / cleanDrop ^ 2 + (calculatedUncertainty * cleanMultiple) ^ 2)',
    }),
    wf.cases('lowestMultiple', { "cleanFrom == 'measured'": '1 / measuredBand', otherwise: 'calculatedLow' }, acceptance),
    wf.cases('surelyMultiple', { "cleanFrom == 'measured'": 'measuredBand', otherwise: 'surelyClean' }, acceptance),
    wf.formula('upperDrop', '(resistanceAfter + 2 * resistanceAfterUncertainty) * viscosityAfter * flowAfter'),
    wf.verdict(
      'verdict',
      {
        'no-signal': `dropAfter < -2 * dropUncertainty or dropAfter <= 2 * dropUncertainty and resistanceBefore > 2 * resistanceBeforeUncertainty and ${comparable}`,
        'not-comparable': `not (${comparable})`,
        unclear: 'resistanceBefore <= 2 * resistanceBeforeUncertainty',
        'before-too-low': 'known(cleanDrop) and dropBefore < lowestMultiple * cleanDrop / (flowEffect * temperatureEffect)',
        'too-low': 'known(cleanDrop) and dropAfter < lowestMultiple * cleanDrop',
        worse: `resistanceBefore - resistanceAfter < -${spread}`,
        unchanged: `resistanceBefore - resistanceAfter <= ${spread}`,
        'improved-unproven': 'not known(cleanDrop)',
        cleaned:
          "upperDrop <= surelyMultiple * cleanDrop or cleanFrom == 'calculated' and upperDrop <= calculatedBand * cleanDrop and 1 - improvement + 2 * improvementUncertainty <= cleanShare",
        improved: 'otherwise',
      },
      acceptance,
      undefined,
      'A drop and a change count beyond twice their uncertainty.',
    ),
  ],
  assumptions: {
    laminar: 'The drop of a filter rises in proportion to viscosity times flow; parts that rise with flow squared are small.',
    independent: 'The errors of the two measurements are independent.',
  },
  limits: {
    same_engine_state: 'Same engine speed, no load, EGR in the same state, warm engine, 60 s steady, three repeats.',
    reference: 'Only a drop of the clean filter at the same flow tells clean from improved; one of the same filter when new tells most.',
    dry: 'Not while the filter is still wet: steam and water films change the reading.',
  },
  cautions: [cautions.sensorFirst, cautions.hotExhaust, cautions.fumes],
  compute(input, { constants, warn }) {
    const viscosityBefore = sutherlandViscosity(input.temperatureBefore, constants);
    const viscosityAfter = sutherlandViscosity(input.temperatureAfter, constants);
    const shared = { dropUncertainty: input.dropUncertainty, flowUncertainty: input.flowUncertainty };
    const before = { ...shared, pressureDrop: input.dropBefore, viscousFlow: viscosityBefore * input.flowBefore };
    const after = { ...shared, pressureDrop: input.dropAfter, viscousFlow: viscosityAfter * input.flowAfter };
    if (input.dropBefore === 0) return wf.noSolution('there is no drop before to compare with', ['dropBefore']);
    const first = resistanceOf(before);
    const second = resistanceOf(after);
    const share = second.resistance / first.resistance;
    const flowEffect = input.flowAfter / input.flowBefore;
    const temperatureEffect = viscosityAfter / viscosityBefore;
    const unchangedDrop = input.dropBefore * flowEffect * temperatureEffect;
    if (Math.abs(flowEffect * temperatureEffect - 1) > 0.1) {
      warn(
        'conditions_differ',
        'Flow and temperature changed the reading by more than 10 %: the raw millibar before and after must not be compared.',
      );
    }
    const reference = referenceOf(input.cleanDrop, input.cleanFrom, constants);
    const verdict = changeVerdict(before, after, constants.widestFlowRatio, reference);
    const silent = verdict === 'no-signal';
    const cleanMultiple = input.cleanDrop === undefined ? undefined : input.dropAfter / input.cleanDrop;
    return {
      viscosityBefore,
      viscosityAfter,
      resistanceBefore: first.resistance,
      resistanceAfter: second.resistance,
      resistanceBeforeUncertainty: first.uncertainty,
      resistanceAfterUncertainty: second.uncertainty,
      rawReduction: 1 - input.dropAfter / input.dropBefore,
      flowEffect,
      temperatureEffect,
      unchangedDrop,
      // Without a signal there is no fall, only a reading that is missing.
      improvement: silent ? undefined : 1 - share,
      improvementUncertainty: silent ? undefined : Math.hypot(second.uncertainty, share * first.uncertainty) / Math.abs(first.resistance),
      cleanMultiple,
      lowestMultiple: input.cleanFrom === 'measured' ? 1 / constants.measuredBand : constants.calculatedLow,
      surelyMultiple: input.cleanFrom === 'measured' ? constants.measuredBand : constants.surelyClean,
      upperDrop: (second.resistance + 2 * second.uncertainty) * after.viscousFlow,
      cleanMultipleUncertainty: uncertaintyOfMultiple(cleanMultiple, second.uncertainty * after.viscousFlow, input, constants),
      verdict,
    };
  },
  advise({ verdict }) {
    const noReset = { tone: 'do-not' as const, text: 'Do not reset soot or ash counters on this result.' };
    switch (verdict) {
      case 'cleaned':
        return [{ tone: 'note', text: 'Show the customer the resistance, not the raw millibar, and note when to check again.' }];
      case 'improved-unproven':
        return [
          {
            tone: 'do',
            text: 'Get the drop of the clean filter at this flow: calculate it from the size of the filter, or take its record.',
          },
          noReset,
        ];
      case 'no-signal':
      case 'too-low':
        return [
          {
            tone: 'do',
            text: 'Check hoses, joints and the zero of the sensor with the engine off, then the outlet face and tail pipe for soot.',
          },
          { tone: 'do', text: 'Then read again at the same engine speed, 2500 rpm or more.' },
          noReset,
        ];
      case 'before-too-low':
        return [
          { tone: 'do', text: 'Judge the filter by the reading after alone: before, a hose leaked, or the sensor read too low.' },
          noReset,
        ];
      case 'worse':
        return [
          {
            tone: 'do',
            text: 'Find out whether hose or sensor was repaired in between: then the reading before was too low, and nothing got worse.',
          },
          { tone: 'do', text: 'Otherwise look for water left in the filter, a part that was fitted wrongly, or a restriction elsewhere.' },
          noReset,
        ];
      case 'not-comparable':
      case 'unclear':
        return [{ tone: 'do', text: 'Measure again at the same engine speed, 2500 rpm or more, with similar gas temperature.' }, noReset];
      default:
        return [
          {
            tone: 'do',
            text: 'If a complete regeneration was verified, soot cannot explain what is left: it is ash. Weigh the filter, or put a rod into its channels.',
          },
          { tone: 'do', text: 'Look for a blocked face or a restriction elsewhere before repeating the work.' },
          noReset,
        ];
    }
  },
});

/** The band of a measured reference is as wide downwards as upwards, as a factor. */
function referenceOf(
  cleanDrop: number | undefined,
  from: 'measured' | 'calculated',
  bands: Readonly<Record<'measuredBand' | 'calculatedBand' | 'calculatedLow' | 'surelyClean' | 'cleanShare', number>>,
): CleanReference | undefined {
  if (cleanDrop === undefined) return undefined;
  return from === 'measured'
    ? { cleanDrop, lowest: 1 / bands.measuredBand, highest: bands.measuredBand, surelyClean: bands.measuredBand }
    : {
        cleanDrop,
        lowest: bands.calculatedLow,
        highest: bands.calculatedBand,
        surelyClean: bands.surelyClean,
        cleanShare: bands.cleanShare,
      };
}

/** Of the multiple of the clean drop: that of the later drop, and that of a clean drop which is only calculated. */
function uncertaintyOfMultiple(
  multiple: number | undefined,
  dropUncertainty: number,
  { cleanDrop, cleanFrom }: { readonly cleanDrop?: number | undefined; readonly cleanFrom: 'measured' | 'calculated' },
  { calculatedUncertainty }: { readonly calculatedUncertainty: number },
): number | undefined {
  if (multiple === undefined || cleanDrop === undefined) return undefined;
  return Math.hypot(dropUncertainty / cleanDrop, cleanFrom === 'calculated' ? calculatedUncertainty * multiple : 0);
}
