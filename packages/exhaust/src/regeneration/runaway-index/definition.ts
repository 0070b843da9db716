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
import { ashReview2019, bai2016, bissettShadman1985 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { filterInputs, heatConstants, honeycombConstants } from '../simulation/inputs.js';
import { adiabaticRise, sootHeat } from '../simulation/kernel-adiabatic.js';
import { honeycombOf } from '../simulation/prepare.js';
import { adiabaticBalance, airTable, carbonHeats, honeycombData, semenov1928 } from '../sources.js';
import { criticalRise, oxygenRise, runawayIndex } from './kernel.js';

const flow = {
  above: '0 kg/h',
  max: '5000 kg/h',
  usual: ['10 kg/h', '1500 kg/h'],
  usualReason: 'from an idling car to a truck on the road',
  units: ['kg/h', 'g/s'],
} as const;

function verdictOf(index: number, idleIndex: number, canDamage: boolean) {
  if (Math.max(index, idleIndex) <= 1) return 'stable' as const;
  if (!canDamage) return 'bounded' as const;
  return index > 1 ? ('critical' as const) : ('idle-critical' as const);
}

export const runawayIndexCalculation = defineCalculation({
  id: 'runaway-index',
  version: '1.0.0',
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
      example: '3.0 L',
      units: ['L', 'm3'],
    }),
    temperature: quantity(temperature, {
      symbol: 'T',
      label: 'Temperature of gas and filter',
      min: '200 °C',
      max: '900 °C',
      usual: ['400 °C', '700 °C'],
      usualReason: 'below nothing runs away, above it already has',
      example: '600 °C',
      units: ['degC', 'K', 'degF'],
    }),
    massFlow: quantity(massFlow, { symbol: '\\dot m', label: 'Exhaust mass flow', ...flow, example: '140 kg/h' }),
    oxygen: quantity(moleFraction, { symbol: 'x_{O_2}', label: 'Oxygen', min: '0 %', max: '21 %', example: '8 %', units: ['%', '1'] }),
    idleMassFlow: quantityWithDefault(massFlow, {
      symbol: '\\dot m_i',
      label: 'Exhaust mass flow at idle',
      ...flow,
      example: '40 kg/h',
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
    index: quantityOutput(ratio, { symbol: 'I', label: 'Runaway index now (1 is critical)', digits: 3, units: ['1'] }),
    idleIndex: quantityOutput(ratio, { symbol: 'I_i', label: 'Runaway index after a drop to idle', digits: 3, units: ['1'] }),
    worstTemperature: quantityOutput(temperature, {
      symbol: 'T_w',
      label: 'Temperature plus the adiabatic rise',
      digits: 4,
      units: ['degC', 'K', 'degF'],
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        stable: 'the flow carries the heat away, also at idle',
        bounded: 'the burning speeds up by itself, but this soot cannot heat the filter above 800 °C in the mean',
        'idle-critical': 'carried away at this flow, not at idle: there it can exceed 800 °C',
        critical: 'not carried away even at this flow: only the end of the soot limits it, and it can exceed 800 °C',
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
    { gives: 'criticalRise', tex: '[[criticalRise]] = \\frac{[[gasConstant]]\\,[[temperature]]^2}{E}', source: 'semenov1928' },
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
      tex: '[[idleIndex]] = \\mathrm{e}\\,\\frac{k\\,[[sootLoad]]\\,[[filterVolume]]\\,\\Delta h}{[[idleMassFlow]]\\,[[gasSpecificHeat]]\\,[[criticalRise]]}',
      source: 'semenov1928',
    },
    {
      gives: 'index',
      tex: '[[index]] = \\mathrm{e}\\,\\frac{k\\,[[sootLoad]]\\,[[filterVolume]]\\,\\Delta h}{[[massFlow]]\\,[[gasSpecificHeat]]\\,[[criticalRise]]}',
      source: 'semenov1928',
    },
    {
      gives: 'verdict',
      text: 'An index above 1 speeds up by itself; it matters where temperature and adiabatic rise together exceed 800 °C.',
      source: 'ashReview2019',
    },
  ],
  assumptions: [
    {
      code: 'well_mixed',
      text: 'The filter has one temperature, that of the gas before it; the soot is not used up while it heats, and oxygen is enough.',
    },
    { code: 'idle_still_hot', text: 'At the drop to idle the filter is still as hot as before.' },
  ],
  limits: [
    {
      code: 'index_not_damage',
      text: 'The index leaves out that soot is used up: above 1 the burning speeds up by itself, yet a normal regeneration ends by its soot. How hot it gets shows the simulation.',
    },
    { code: 'kinetics_spread', text: 'Published rate laws differ by a factor of fifty at 600 °C, and so does the index.' },
  ],
  cautions: [cautions.makerFirst, cautions.runaway, cautions.hotExhaust, cautions.neverUnattended],
  sources: { semenov1928, ashReview2019, adiabaticBalance, carbonHeats, honeycombData, airTable, bai2016, bissettShadman1985, siBrochure },
  compute(input, { constants, assume }) {
    const kinetics = chosenKinetics(input, constants);
    if (isRefusal(kinetics)) return kinetics;
    const law = kinetics.oxygen;
    if (law === undefined || !(law.activationEnergy > 0))
      return noSolution('the index needs a rate law with oxygen and an activation energy above zero');
    const { temperature, sootLoad, carbonMonoxideShare, gasSpecificHeat } = input;
    const heatOfCombustion = sootHeat(constants.heatToDioxide, constants.heatToMonoxide, carbonMonoxideShare, constants.carbonMolarMass);
    const { bulkDensity, specificHeat } = honeycombOf(input, constants, assume);
    const common = { law, temperature, sootMass: sootLoad * input.filterVolume, gasSpecificHeat, heatOfCombustion };
    const index = runawayIndex({ ...common, massFlow: input.massFlow, oxygen: input.oxygen }, constants.gasConstant);
    const idle = { massFlow: input.idleMassFlow, oxygen: input.idleOxygen };
    const idleIndex = runawayIndex({ ...common, ...idle }, constants.gasConstant);
    const rise = adiabaticRise(sootLoad, heatOfCombustion, bulkDensity, specificHeat);
    return {
      criticalRise: criticalRise(law, temperature, constants.gasConstant),
      adiabaticRise: rise,
      oxygenRise: oxygenRise({ ...common, ...idle }, carbonMonoxideShare, constants.gasMolarMass, constants.carbonMolarMass),
      index,
      idleIndex,
      worstTemperature: temperature + rise,
      verdict: verdictOf(index, idleIndex, temperature + rise > constants.bearable),
    };
  },
  advise({ verdict }) {
    if (verdict === 'stable' || verdict === 'bounded') return [];
    return [
      {
        tone: 'do-not',
        text: 'Never let the engine drop to idle or stop while this filter burns, unless there is fire: keep the flow up.',
      },
    ];
  },
});
