import { choiceOutput, constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { sutherlandViscosity } from '@wallflow/exhaust';
import { cautions, sharedSources, viscosityConstants } from '@wallflow/exhaust/calculations';
import { differentialPressure, dynamicViscosity, flowResistance, fraction, ratio, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { acceptance, equalConditions } from '../sources.js';
import { changeVerdict, resistanceOf } from './kernel.js';

const dropInput = (symbol: string, label: string, example: string) =>
  quantity(differentialPressure, {
    symbol,
    label,
    description: 'Less the reading with the engine off.',
    min: '-100 mbar',
    max: '1500 mbar',
    example,
    units: ['mbar', 'kPa', 'hPa', 'psi'],
  });
const flowInput = (symbol: string, label: string, example: string) =>
  quantity(volumeFlow, { symbol, label, above: '1 m3/h', max: '10000 m3/h', example, units: ['m3/h', 'L/s', 'ft3/min'] });
const temperatureInput = (symbol: string, label: string, example: string) =>
  quantity(temperature, { symbol, label, min: '-40 °C', max: '1200 °C', example });
const resistanceOutput = (symbol: string, label: string) =>
  quantityOutput(flowResistance, { symbol, label, digits: 3, units: ['1/mm3', '1/m3'] });
const dropOutput = (symbol: string, label: string) =>
  quantityOutput(differentialPressure, { symbol, label, digits: 3, units: ['mbar', 'kPa', 'hPa', 'psi'] });

export const beforeAfterCalculation = defineCalculation({
  id: 'before-after',
  version: '1.0.0',
  subject: 'workshop',
  title: 'Before and after at comparable flow',
  purpose: 'Did the work lower the resistance of the filter, or is the lower reading only less flow or cooler gas?',
  usedBy: ['technician', 'trainer'],
  keywords: ['proof', 'verification', 'cleaning result', 'comparison'],
  method: 'flow resistance Δp/(μQ) before and after, with its uncertainty',
  inputs: z.strictObject({
    dropBefore: dropInput('\\Delta p_1', 'Pressure drop before', '360 mbar'),
    flowBefore: flowInput('Q_1', 'Exhaust volume flow before', '290 m3/h'),
    temperatureBefore: temperatureInput('T_1', 'Gas temperature before', '220 °C'),
    dropAfter: dropInput('\\Delta p_2', 'Pressure drop after', '24 mbar'),
    flowAfter: flowInput('Q_2', 'Exhaust volume flow after', '275 m3/h'),
    temperatureAfter: temperatureInput('T_2', 'Gas temperature after', '205 °C'),
    dropUncertainty: quantityWithDefault(differentialPressure, {
      symbol: 'u_p',
      label: 'Uncertainty of each drop',
      min: '0 mbar',
      max: '50 mbar',
      example: '2 mbar',
      units: ['mbar', 'kPa', 'hPa'],
      default: '2 mbar',
      defaultReason: 'sensor zero, common practice, no source',
    }),
    flowUncertainty: quantityWithDefault(fraction, {
      symbol: 'u_Q',
      label: 'Uncertainty of each flow',
      min: '0 %',
      max: '50 %',
      example: '5 %',
      default: '5 %',
      defaultReason: 'air-mass signal in good order',
    }),
    acceptedShare: quantityWithDefault(fraction, {
      symbol: 'a',
      label: 'Counts as cleaned up to this share of the old resistance',
      min: '1 %',
      max: '100 %',
      example: '40 %',
      default: '40 %',
      defaultReason: 'common practice, no source',
    }),
  }),
  intermediates: {
    viscosityBefore: quantityOutput(dynamicViscosity, { symbol: '\\mu_1', label: 'Viscosity before', digits: 4, units: ['uPa.s'] }),
    viscosityAfter: quantityOutput(dynamicViscosity, { symbol: '\\mu_2', label: 'Viscosity after', digits: 4, units: ['uPa.s'] }),
    resistanceBefore: resistanceOutput('R_1', 'Flow resistance before'),
    resistanceAfter: resistanceOutput('R_2', 'Flow resistance after'),
    rawReduction: quantityOutput(fraction, { symbol: '\\delta_p', label: 'Fall of the raw reading', digits: 3, units: ['%'] }),
    flowEffect: quantityOutput(ratio, { symbol: 'Q_2/Q_1', label: 'Effect of the flow on the reading', digits: 3 }),
    temperatureEffect: quantityOutput(ratio, { symbol: '\\mu_2/\\mu_1', label: 'Effect of the temperature on the reading', digits: 3 }),
    unchangedDrop: dropOutput('\\Delta p_u', 'What the filter as it was would read at the later flow and temperature'),
  },
  outputs: {
    improvement: quantityOutput(fraction, { symbol: '\\delta_R', label: 'Fall of the flow resistance', digits: 3, units: ['%'] }),
    improvementUncertainty: quantityOutput(fraction, {
      symbol: 'u(\\delta_R)',
      label: 'Standard uncertainty of that fall',
      digits: 2,
      units: ['%'],
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        cleaned: 'cleaned: the resistance fell as far as a clean should make it',
        improved: 'improved, but not as far as a clean should make it',
        unchanged: 'no change beyond the uncertainty',
        worse: 'worse than before',
        'not-comparable': 'not comparable: the flows differ too much',
        unclear: 'cannot be told: the first reading is as small as its error',
      },
    }),
  },
  constants: {
    ...viscosityConstants,
    widestFlowRatio: constant(ratio, 1.5, { symbol: 'q', label: 'Widest ratio of flows that is compared', source: 'equalConditions' }),
  },
  steps: [
    {
      gives: 'viscosityBefore',
      text: 'Air at [[temperatureBefore]]: [[viscosityBefore]].',
      source: 'cfr1065',
      locator: '1065.640 Table 4',
    },
    { gives: 'viscosityAfter', text: 'Air at [[temperatureAfter]]: [[viscosityAfter]].', source: 'cfr1065', locator: '1065.640 Table 4' },
    {
      gives: 'resistanceBefore',
      tex: '[[resistanceBefore]] = \\frac{[[dropBefore]]}{[[viscosityBefore]]\\,[[flowBefore]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'resistanceAfter',
      tex: '[[resistanceAfter]] = \\frac{[[dropAfter]]}{[[viscosityAfter]]\\,[[flowAfter]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    { gives: 'rawReduction', tex: '[[rawReduction]] = 1-\\frac{[[dropAfter]]}{[[dropBefore]]}' },
    { gives: 'flowEffect', tex: '[[flowEffect]] = \\frac{[[flowAfter]]}{[[flowBefore]]}' },
    { gives: 'temperatureEffect', tex: '[[temperatureEffect]] = \\frac{[[viscosityAfter]]}{[[viscosityBefore]]}' },
    { gives: 'unchangedDrop', tex: '[[unchangedDrop]] = [[dropBefore]]\\cdot[[flowEffect]]\\cdot[[temperatureEffect]]' },
    { gives: 'improvement', tex: '[[improvement]] = 1-\\frac{[[resistanceAfter]]}{[[resistanceBefore]]}', source: 'equalConditions' },
    {
      gives: 'verdict',
      text: 'A change counts beyond twice its uncertainty; a clean is accepted up to [[acceptedShare]].',
      source: 'acceptance',
    },
  ],
  assumptions: [
    { code: 'laminar', text: 'The drop of a filter goes with viscosity times flow; parts that go with flow squared are small.' },
    { code: 'independent', text: 'The errors of the two measurements are independent.' },
  ],
  limits: [
    { code: 'same_engine_state', text: 'Same engine speed, no load, EGR in the same state, warm engine, 60 s steady, three repeats.' },
    { code: 'dry', text: 'Not while the filter is still wet: steam and water films change the reading.' },
  ],
  cautions: [cautions.sensorFirst, cautions.hotExhaust, cautions.fumes],
  sources: {
    konstandopoulos2000: sharedSources.konstandopoulos2000,
    cfr1065: sharedSources.cfr1065,
    equalConditions,
    acceptance,
  },
  compute(input, { constants, warn }) {
    const viscosityBefore = sutherlandViscosity(input.temperatureBefore, constants);
    const viscosityAfter = sutherlandViscosity(input.temperatureAfter, constants);
    const shared = { dropUncertainty: input.dropUncertainty, flowUncertainty: input.flowUncertainty };
    const before = { ...shared, pressureDrop: input.dropBefore, viscousFlow: viscosityBefore * input.flowBefore };
    const after = { ...shared, pressureDrop: input.dropAfter, viscousFlow: viscosityAfter * input.flowAfter };
    if (input.dropBefore === 0)
      return { refused: [{ code: 'no_solution', path: ['dropBefore'], reason: 'there is no drop before to compare with' }] };
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
    return {
      viscosityBefore,
      viscosityAfter,
      resistanceBefore: first.resistance,
      resistanceAfter: second.resistance,
      rawReduction: 1 - input.dropAfter / input.dropBefore,
      flowEffect,
      temperatureEffect,
      unchangedDrop,
      improvement: 1 - share,
      improvementUncertainty: Math.hypot(second.uncertainty, share * first.uncertainty) / Math.abs(first.resistance),
      verdict: changeVerdict(before, after, input.acceptedShare, constants.widestFlowRatio),
    };
  },
  advise({ verdict }) {
    if (verdict === 'cleaned')
      return [{ tone: 'note', text: 'Show the customer the resistance, not the raw millibar, and note when to check again.' }];
    if (verdict === 'not-comparable' || verdict === 'unclear') {
      return [{ tone: 'do', text: 'Measure again at the same engine speed, 2500 rpm or more, with similar gas temperature.' }];
    }
    return [
      { tone: 'do', text: 'Look for ash, a closed-up face or a restriction elsewhere before repeating the work.' },
      { tone: 'do-not', text: 'Do not reset soot or ash counters on this result.' },
    ];
  },
});
