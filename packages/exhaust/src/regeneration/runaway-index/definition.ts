import {
  choiceOutput,
  constant,
  defineCalculation,
  isRefusal,
  noSolution,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  massFlow,
  molarMass,
  moleFraction,
  ratio,
  specificHeatCapacity,
  temperature,
  temperatureDifference,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarMassOfDryAir } from '../../gas/constants.js';
import { chosenKinetics, kineticsConstants, kineticsInputs } from '../../soot/oxidation/inputs.js';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { honeycombConstants, honeycombOf } from '../honeycomb.js';
import { filterInputs, heatConstants } from '../simulation/inputs.js';
import { adiabaticRise, sootHeat } from '../simulation/kernel-adiabatic.js';
import { adiabaticBalance, airTable, carbonHeats, honeycombData, semenov1928 } from '../sources.js';
import { criticalRise, oxygenRise, runawayIndex } from './kernel.js';
import { hotStartPeak } from './kernel-hot-start.js';

const flow = {
  above: '0 kg/h',
  max: '5000 kg/h',
  usual: ['10 kg/h', '1500 kg/h'],
  usualReason: 'an idling car has some 30 kg/h, a truck on the road up to 1500 kg/h',
  units: ['kg/h', 'g/s'],
} as const;

interface Found {
  readonly index: number;
  readonly idleIndex: number;
  /** Mean temperatures in K that the filter reaches before its soot has run out. */
  readonly peak: number;
  readonly idlePeak: number;
}

function verdictOf({ index, idleIndex, peak, idlePeak }: Found, bearable: number) {
  if (Math.max(index, idleIndex) <= 1) return 'stable' as const;
  if (peak > bearable) return 'critical' as const;
  return idlePeak > bearable ? ('idle-critical' as const) : ('bounded' as const);
}

export const runawayIndexCalculation = defineCalculation({
  id: 'runaway-index',
  version: '2.0.0',
  subject: 'regeneration',
  title: 'Runaway index: how near to burning out of control',
  purpose: 'Can the gas still carry away the heat of the burning soot, now and if the engine dropped to idle?',
  usedBy: ['trainer', 'developer', 'technician'],
  keywords: ['runaway', 'drop to idle', 'Semenov', 'thermal explosion', 'soot limit'],
  method: 'heat release against heat removal of a well mixed filter',
  inputs: z.strictObject({
    ...filterInputs,
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      min: '0.5 L',
      max: '100 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    temperature: quantity(temperature, {
      symbol: 'T',
      label: 'Temperature of gas and filter',
      min: '200 °C',
      max: '900 °C',
      usual: ['400 °C', '700 °C'],
      usualReason: { below: 'colder soot hardly burns with oxygen', above: 'so hot it has already run away' },
      example: '600 °C',
      units: ['degC', 'K', 'degF'],
    }),
    massFlow: quantity(massFlow, { symbol: '\\dot m', label: 'Exhaust mass flow', ...flow, example: '190 kg/h' }),
    oxygen: quantity(moleFraction, { symbol: 'x_{O_2}', label: 'Oxygen', min: '0 %', max: '21 %', example: '8 %', units: ['%', '1'] }),
    idleMassFlow: quantityWithDefault(massFlow, {
      symbol: '\\dot m_i',
      label: 'Exhaust mass flow at idle',
      ...flow,
      example: '82 kg/h',
      default: '40 kg/h',
      defaultReason: 'a 1.6 to 2.0 L engine at idle',
    }),
    idleOxygen: quantityWithDefault(moleFraction, {
      symbol: 'x_{O_2,i}',
      label: 'Oxygen at idle',
      min: '0 %',
      max: '21 %',
      example: '16 %',
      default: '16 %',
      defaultReason: 'an idling diesel runs very lean',
      units: ['%', '1'],
    }),
    gasSpecificHeat: quantityWithDefault(specificHeatCapacity, {
      symbol: 'c_g',
      label: 'Specific heat of the gas',
      min: '950 J/(kg.K)',
      max: '1300 J/(kg.K)',
      example: '1110 J/(kg.K)',
      default: '1110 J/(kg.K)',
      defaultReason: 'air at 850 K',
    }),
    ...kineticsInputs,
  }),
  intermediates: {
    criticalRise: quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_c',
      label: 'Rise that steady burning does not survive',
      digits: 3,
      units: ['K'],
    }),
    adiabaticRise: quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_{ad}',
      label: 'Rise if all soot burnt without cooling',
      digits: 4,
      units: ['K'],
    }),
    oxygenRise: quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_{O_2}',
      label: 'Rise of the gas at idle if all its oxygen burnt',
      digits: 4,
      units: ['K'],
    }),
  },
  outputs: {
    index: quantityOutput(ratio, {
      symbol: 'I',
      label: 'Runaway index now: above 1 it would speed up if the soot did not run out',
      digits: 3,
      units: ['1'],
    }),
    idleIndex: quantityOutput(ratio, { symbol: 'I_i', label: 'The same index after a drop to idle', digits: 3, units: ['1'] }),
    worstTemperature: quantityOutput(temperature, {
      symbol: 'T_w',
      label: 'Temperature plus the adiabatic rise',
      digits: 4,
      units: ['degC', 'K', 'degF'],
    }),
    peak: quantityOutput(temperature, {
      symbol: 'T_1',
      label: 'Highest mean temperature before the soot runs out, at this flow',
      digits: 3,
      units: ['degC', 'K', 'degF'],
    }),
    idlePeak: quantityOutput(temperature, {
      symbol: 'T_2',
      label: 'Highest mean temperature before the soot runs out, after a drop to idle',
      digits: 3,
      units: ['degC', 'K', 'degF'],
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        stable: 'the flow carries the heat away, also at idle',
        bounded: 'would speed up by itself if the soot did not run out; it runs out before the filter reaches 800 °C in the mean',
        'idle-critical': 'bears it at this flow; after a drop to idle it gets above 800 °C before the soot runs out',
        critical: 'gets above 800 °C even at this flow before the soot runs out',
      },
    }),
  },
  constants: {
    ...kineticsConstants,
    ...heatConstants,
    ...honeycombConstants,
    bearable: constant(temperature, 1073.15, {
      symbol: 'T_b',
      label: 'Temperature from which ash attacks a filter',
      source: 'ashReview2019',
    }),
    gasMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M_g', label: 'Molar mass of the gas as air', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'criticalRise',
      tex: '[[criticalRise]] = \\frac{E}{2\\,[[gasConstant]]}\\left(1-\\sqrt{1-\\frac{4\\,[[gasConstant]]\\,[[temperature]]}{E}}\\right)-[[temperature]]',
      source: 'semenov1928',
    },
    {
      gives: 'adiabaticRise',
      text: 'Soot load times heat of burning over heat capacity of the honeycomb per volume.',
      source: 'adiabaticBalance',
    },
    {
      gives: 'oxygenRise',
      text: 'Oxygen at idle times the heat that it gives with carbon, over the heat capacity of the gas.',
      source: 'carbonHeats',
    },
    { gives: 'worstTemperature', tex: '[[worstTemperature]] = [[temperature]]+[[adiabaticRise]]', source: 'adiabaticBalance' },
    {
      gives: 'idleIndex',
      tex: '[[idleIndex]] = \\frac{k(T_c)\\,[[sootLoad]]\\,[[filterVolume]]\\,\\Delta h}{[[idleMassFlow]]\\,[[gasSpecificHeat]]\\,[[criticalRise]]}',
      source: 'semenov1928',
    },
    {
      gives: 'index',
      tex: '[[index]] = \\frac{k(T_c)\\,[[sootLoad]]\\,[[filterVolume]]\\,\\Delta h}{[[massFlow]]\\,[[gasSpecificHeat]]\\,[[criticalRise]]}',
      source: 'semenov1928',
    },
    {
      gives: 'peak',
      text: 'Heat and soot balance of the filter as one piece, from all soot at the temperature of the gas until it has burnt: unlike the index it lets the soot and the oxygen run out.',
      source: 'adiabaticBalance',
    },
    { gives: 'idlePeak', text: 'The same with flow and oxygen of idle.', source: 'adiabaticBalance' },
    {
      gives: 'verdict',
      text: 'An index above 1 would speed up by itself if the soot did not run out; it matters where the filter gets above 800 °C before it does.',
      source: 'ashReview2019',
    },
  ],
  assumptions: [
    {
      code: 'well_mixed',
      text: 'The filter has one temperature, at the start that of the gas. For the index the soot is not used up and oxygen is enough; for the peaks both run out.',
    },
    { code: 'idle_still_hot', text: 'At the drop to idle the filter is still as hot as before.' },
  ],
  limits: [
    {
      code: 'index_not_damage',
      text: 'The index alone is no danger: every ordinary regeneration has one above 1, speeds up for a while, and ends because its soot runs out. How hot the filter gets show the peaks here, and the simulation along the filter, whose hottest place near the outlet is hotter than the mean.',
    },
    {
      code: 'kinetics_spread',
      text: 'Rates measured on coated and uncoated filters differ by a factor of five at 600 °C, and so does the index.',
    },
  ],
  cautions: [cautions.makerFirst, cautions.runaway, cautions.hotExhaust, cautions.neverUnattended],
  sources: {
    semenov1928,
    ashReview2019,
    adiabaticBalance,
    carbonHeats,
    honeycombData,
    airTable,
    bai2016,
    bissettShadman1985,
    uncoatedDisk2008,
    siBrochure,
  },
  precision: 1e-4,
  dimensional: 'time stepping with tolerances tied to the units',
  compute(input, { constants, assume }) {
    const kinetics = chosenKinetics(input, constants);
    if (isRefusal(kinetics)) return kinetics;
    const law = kinetics.oxygen;
    if (law === undefined || !(law.activationEnergy > 0))
      return noSolution('the index needs a rate law with oxygen and an activation energy above zero');
    const { temperature, sootLoad, carbonMonoxideShare, gasSpecificHeat } = input;
    const heatOfCombustion = sootHeat(constants.heatToDioxide, constants.heatToMonoxide, carbonMonoxideShare, constants.carbonMolarMass);
    const { honeycombDensity: bulkDensity, honeycombHeatCapacity: specificHeat } = honeycombOf(input, constants, assume);
    const common = { law, temperature, sootMass: sootLoad * input.filterVolume, gasSpecificHeat, heatOfCombustion };
    const now = { massFlow: input.massFlow, oxygen: input.oxygen };
    const idle = { massFlow: input.idleMassFlow, oxygen: input.idleOxygen };
    const critical = criticalRise(law, temperature, constants.gasConstant);
    const index = runawayIndex({ ...common, ...now }, constants.gasConstant);
    const idleIndex = runawayIndex({ ...common, ...idle }, constants.gasConstant);
    if (critical === undefined || index === undefined || idleIndex === undefined)
      return noSolution('with so low an activation energy the burning never speeds up by itself');
    const rise = adiabaticRise(sootLoad, heatOfCombustion, bulkDensity, specificHeat);
    const { gasMolarMass, gasConstant } = constants;
    const combustion = { kinetics: { oxygen: law }, heatOfCombustion, carbonMonoxideShare, gasSpecificHeat, gasMolarMass, gasConstant };
    const bed = { volume: input.filterVolume, bulkDensity, specificHeat, combustion, sootLoad, temperature };
    const peak = hotStartPeak({ ...bed, ...now });
    const idlePeak = hotStartPeak({ ...bed, ...idle });
    if (peak === undefined || idlePeak === undefined) return noSolution('the steps in time became too short');
    return {
      criticalRise: critical,
      adiabaticRise: rise,
      oxygenRise: oxygenRise({ ...common, ...idle }, carbonMonoxideShare, constants.gasMolarMass, constants.carbonMolarMass),
      index,
      idleIndex,
      peak,
      idlePeak,
      worstTemperature: temperature + rise,
      verdict: verdictOf({ index, idleIndex, peak, idlePeak }, constants.bearable),
    };
  },
  advise({ verdict }) {
    if (verdict === 'stable') return [];
    return [
      {
        tone: 'do-not',
        text: 'Never let the engine drop to idle or stop while this filter burns, unless there is fire: keep the flow up.',
      },
    ];
  },
});
