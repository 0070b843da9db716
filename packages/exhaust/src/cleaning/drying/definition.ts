import {
  constant,
  defineCalculation,
  inconsistentInputs,
  noSolution,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  absolutePressure,
  density,
  energy,
  fraction,
  mass,
  massFlow,
  molarHeatCapacity,
  molarMass,
  power,
  ratio,
  specificEnergy,
  specificHeatCapacity,
  temperature,
  time,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { molarMassOf } from '../../gas/species.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { dryingPractice, heatBalance, nistSteamTables, waterDensity20 } from '../sources.js';
import { boilingPoint, dryingPower, evaporationHeatAt, heatToDry, steamVolume } from './kernel.js';

/** Longest run that is still a plan, s: common practice, no source. */
const longestPlan = 7200;

const heatOutput = (symbol: string, label: string) => quantityOutput(energy, { symbol, label, digits: 3, units: ['kJ', 'MJ', 'kWh'] });
const timeOutput = (symbol: string, label: string) => quantityOutput(time, { symbol, label, digits: 2, units: ['min', 's', 'h'] });

export const dryingCalculation = defineCalculation({
  id: 'drying',
  version: '1.2.0',
  subject: 'cleaning',
  title: 'Drying the filter after a clean',
  purpose: 'How long must the engine run to evaporate the water that is still in the filter?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['dry', 'evaporate', 'steam', 'white smoke', 'water'],
  method: 'heat balance: gas cools to the boiling point at the pressure of the place, water warms and evaporates',
  inputs: z.strictObject({
    heldWater: quantity(volume, {
      symbol: 'V_h',
      label: 'Liquid that is still in the filter',
      description: 'What went in less what ran out; or the weight gained, one gram for one millilitre.',
      above: '0 mL',
      max: '100 L',
      example: '1 L',
      units: ['mL', 'L', 'floz_US'],
    }),
    exhaustMassFlow: quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust flow',
      above: '0 kg/h',
      max: '10000 kg/h',
      example: '172 kg/h',
      units: ['kg/h', 'g/s', 'lb/min'],
    }),
    gasTemperature: quantity(temperature, {
      symbol: 'T_g',
      label: 'Exhaust temperature before the filter',
      min: '20 °C',
      max: '700 °C',
      usual: ['105 °C', '400 °C'],
      usualReason: { below: 'gas below the boiling point dries a filter very slowly', above: 'hotter gas on a wet filter cracks it' },
      example: '220 °C',
    }),
    outletTemperature: quantity(temperature, {
      symbol: 'T_o',
      label: 'Temperature at which the gas leaves while the filter is wet',
      description:
        'Watch the sensor behind the filter: it stays near one value as long as there is water. Left out, the boiling point: the careful side.',
      min: '20 °C',
      max: '150 °C',
      usual: ['50 °C', '120 °C'],
      usualReason: 'between the wet-bulb temperature of the gas and the boiling point',
      example: '100 °C',
    }).optional(),
    startTemperature: quantityWithDefault(temperature, {
      symbol: 'T_s',
      label: 'Temperature of the wet filter at the start',
      min: '-10 °C',
      below: '120 °C',
      example: '20 °C',
      default: '20 °C',
      defaultReason: 'cold filter',
    }),
    filterMass: quantityWithDefault(mass, {
      symbol: 'm_f',
      label: 'Mass of the filter body that warms up with it',
      min: '0 kg',
      max: '60 kg',
      example: '0 kg',
      units: ['kg', 'g', 'lb'],
      default: '0 kg',
      defaultReason: 'not given: only the water counts; a body of 3 kg adds a tenth to a litre of water',
    }),
    gasHeatCapacity: quantityWithDefault(specificHeatCapacity, {
      symbol: 'c_p',
      label: 'Specific heat of the exhaust',
      min: '0.9 kJ/(kg.K)',
      max: '1.4 kJ/(kg.K)',
      example: '1.05 kJ/(kg.K)',
      units: ['kJ/(kg.K)', 'J/(kg.K)'],
      default: '1.05 kJ/(kg.K)',
      defaultReason: 'lean diesel exhaust near 200 °C',
    }),
    practiceFactor: quantityWithDefault(ratio, {
      symbol: 'f',
      label: 'Real time over ideal time',
      min: '1',
      max: '5',
      usual: ['1.5', '2'],
      usualReason: 'common practice, no source',
      example: '1.75',
      default: '1.75',
      defaultReason: 'common practice, no source: 1.5 to 2, because part of the gas passes dry channels',
    }),
    gasPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure in the filter',
      min: '60 kPa',
      max: '200 kPa',
      example: '101.325 kPa',
      units: ['kPa', 'mbar', 'bar', 'psi'],
      default: '101.325 kPa',
      defaultReason: 'sea level',
    }),
  }),
  intermediates: {
    boilingTemperature: quantityOutput(temperature, { symbol: 'T_b', label: 'Boiling point at that pressure', digits: 4 }),
    evaporationHeat: quantityOutput(specificEnergy, { symbol: 'r', label: 'Heat of evaporation there', digits: 4, units: ['kJ/kg'] }),
    leavingTemperature: quantityOutput(temperature, { symbol: 'T_o', label: 'Temperature at which the gas leaves', digits: 4 }),
    waterMass: quantityOutput(mass, { symbol: 'm_w', label: 'Water to evaporate', digits: 4, units: ['g', 'kg'] }),
    heatPerWater: quantityOutput(specificEnergy, { symbol: 'q', label: 'Heat per mass of water', digits: 4, units: ['kJ/kg'] }),
    bodyHeat: heatOutput('Q_f', 'Heat to warm the filter body'),
    evaporationRate: quantityOutput(massFlow, { symbol: '\\dot m_w', label: 'Steam while it dries', digits: 3, units: ['kg/h', 'g/s'] }),
  },
  outputs: {
    heat: heatOutput('Q', 'Heat needed'),
    dryingPower: quantityOutput(power, { symbol: 'P', label: 'Heat that the gas brings', digits: 3, units: ['kW', 'W'] }),
    idealTime: timeOutput('t_0', 'Time if all that heat goes into the water'),
    steamVolume: quantityOutput(volume, {
      symbol: 'V_s',
      label: 'Steam that leaves, as gas at its temperature',
      digits: 3,
      units: ['m3', 'L'],
    }),
    steamShare: quantityOutput(fraction, {
      symbol: 's',
      label: 'Extra volume flow through the filter while it steams',
      description: 'The drop reads high by this and by the water films in the pores; it says nothing about the clean.',
      digits: 2,
      units: ['%'],
    }),
    dryingTime: timeOutput('t', 'Time to plan for'),
  },
  constants: {
    waterDensity: constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: 'waterDensity20' }),
    tableTemperature: constant(temperature, 373.15, {
      symbol: 'T_1',
      label: 'Temperature for which a heat of evaporation is known',
      source: 'nistSteamTables',
    }),
    waterHeatCapacity: constant(specificHeatCapacity, 4190, { symbol: 'c_w', label: 'Specific heat of water', source: 'nistSteamTables' }),
    tableHeat: constant(specificEnergy, 2.257e6, {
      symbol: 'r_1',
      label: 'Heat of evaporation of water at 100 °C',
      source: 'nistSteamTables',
    }),
    heatFall: constant(specificHeatCapacity, 2663, {
      symbol: "r'",
      label: 'Fall of the heat of evaporation per kelvin, 86 to 120 °C',
      source: 'nistSteamTables',
    }),
    bodyHeatCapacity: constant(specificHeatCapacity, 900, {
      symbol: 'c_f',
      label: 'Specific heat of a ceramic body near 60 °C',
      source: 'dryingPractice',
    }),
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    waterMolarMass: constant(molarMass, molarMassOf.water, { symbol: 'M_w', label: 'Molar mass of water', source: 'cfr1065' }),
    gasMolarMass: constant(molarMass, molarMassOfDryAir, {
      symbol: 'M_g',
      label: 'Molar mass of the exhaust, taken as air',
      source: 'cfr1065',
    }),
  },
  steps: [
    {
      gives: 'boilingTemperature',
      text: 'Temperature at which the vapour pressure of water is [[gasPressure]]: [[boilingTemperature]].',
      source: 'cfr1065',
      locator: '1065.645 Eq. 1',
    },
    {
      gives: 'evaporationHeat',
      tex: '[[evaporationHeat]] = [[tableHeat]]-[[heatFall]]\\left([[boilingTemperature]]-[[tableTemperature]]\\right)',
      source: 'nistSteamTables',
    },
    { gives: 'leavingTemperature', text: 'As given, or the boiling point: [[leavingTemperature]].', source: 'heatBalance' },
    { gives: 'waterMass', tex: '[[waterMass]] = [[waterDensity]]\\,[[heldWater]]', source: 'waterDensity20' },
    {
      gives: 'heatPerWater',
      tex: '[[heatPerWater]] = [[waterHeatCapacity]]\\left([[boilingTemperature]]-[[startTemperature]]\\right)+[[evaporationHeat]]',
      source: 'heatBalance',
    },
    {
      gives: 'bodyHeat',
      tex: '[[bodyHeat]] = [[filterMass]]\\,[[bodyHeatCapacity]]\\left([[boilingTemperature]]-[[startTemperature]]\\right)',
      source: 'heatBalance',
    },
    { gives: 'heat', tex: '[[heat]] = [[waterMass]]\\,[[heatPerWater]]+[[bodyHeat]]', source: 'heatBalance' },
    {
      gives: 'dryingPower',
      tex: '[[dryingPower]] = [[exhaustMassFlow]]\\,[[gasHeatCapacity]]\\left([[gasTemperature]]-[[leavingTemperature]]\\right)',
      source: 'heatBalance',
    },
    { gives: 'idealTime', tex: '[[idealTime]] = \\frac{[[heat]]}{[[dryingPower]]}', source: 'heatBalance' },
    { gives: 'evaporationRate', tex: '[[evaporationRate]] = \\frac{[[dryingPower]]}{[[evaporationHeat]]}', source: 'heatBalance' },
    {
      gives: 'steamVolume',
      tex: '[[steamVolume]] = \\frac{[[waterMass]]\\,[[gasConstant]]\\,[[leavingTemperature]]}{[[waterMolarMass]]\\,[[gasPressure]]}',
      source: 'siBrochure',
    },
    {
      gives: 'steamShare',
      tex: '[[steamShare]] = \\frac{[[evaporationRate]]\\,[[gasMolarMass]]}{[[exhaustMassFlow]]\\,[[waterMolarMass]]}',
      source: 'heatBalance',
    },
    { gives: 'dryingTime', tex: '[[dryingTime]] = [[practiceFactor]]\\,[[idealTime]]', source: 'dryingPractice' },
  ],
  assumptions: [
    { code: 'drained', text: 'Everything that can run out has run out; only what is held evaporates.' },
    { code: 'no_losses', text: 'No heat goes into pipes, can and silencer; the factor for practice covers that.' },
    { code: 'water', text: 'The liquid is water; cleaner in it dries on unless it was rinsed out.' },
  ],
  limits: [
    { code: 'two_hours', text: 'More than two hours are no plan (common practice, no source); the result then says what to change.' },
    {
      code: 'wet_readings_prove_nothing',
      text: 'A drop read while the filter dries is no result: films close pores, steam adds flow, and the temperature is not steady.',
    },
  ],
  cautions: [cautions.pressureAndSteam, cautions.hotExhaust, cautions.fumes, cautions.makerFirst],
  sources: { heatBalance, nistSteamTables, waterDensity20, dryingPractice, siBrochure, cfr1065 },
  dimensional: 'the vapour pressure of water is an empirical formula in kelvin and pascal',
  compute(input, { constants, assume }) {
    const { gasTemperature, startTemperature, exhaustMassFlow, filterMass, gasPressure } = input;
    const boilingTemperature = boilingPoint(gasPressure);
    if (startTemperature >= boilingTemperature) {
      return inconsistentInputs(
        'water already boils at that start and pressure: a wet filter cannot be that hot',
        ['startTemperature'],
        ['gasPressure'],
      );
    }
    if (input.outletTemperature === undefined) {
      assume(
        'leaves_at_boiling_point',
        'The gas leaves at the boiling point: the careful side, gas that leaves cooler has given more heat.',
      );
    }
    const leavingTemperature = input.outletTemperature ?? boilingTemperature;
    if (gasTemperature <= leavingTemperature) {
      return noSolution('the gas is no hotter than the wet filter lets it leave: it dries only slowly; run hotter or faster', [
        'gasTemperature',
      ]);
    }
    const known = { temperature: constants.tableTemperature, heat: constants.tableHeat, fall: constants.heatFall };
    const evaporationHeat = evaporationHeatAt(boilingTemperature, known);
    const water = { liquidHeat: constants.waterHeatCapacity, evaporationHeat, boilingTemperature };
    const waterMass = constants.waterDensity * input.heldWater;
    const bodyHeat = filterMass * constants.bodyHeatCapacity * (boilingTemperature - startTemperature);
    const heat = heatToDry(waterMass, startTemperature, water) + bodyHeat;
    const available = dryingPower(exhaustMassFlow, input.gasHeatCapacity, gasTemperature, leavingTemperature);
    const evaporationRate = available / evaporationHeat;
    const dryingTime = input.practiceFactor * (heat / available);
    if (dryingTime > longestPlan) {
      return noSolution(
        'at this flow and temperature it would take more than two hours, which is no plan: run hotter or faster, drain more, or dry it off the vehicle in warm air',
        ['gasTemperature'],
      );
    }
    return {
      boilingTemperature,
      evaporationHeat,
      leavingTemperature,
      waterMass,
      heatPerWater: heatToDry(1, startTemperature, water),
      bodyHeat,
      heat,
      dryingPower: available,
      idealTime: heat / available,
      evaporationRate,
      steamVolume: steamVolume(waterMass, leavingTemperature, gasPressure, constants.gasConstant, constants.waterMolarMass),
      steamShare: (evaporationRate * constants.gasMolarMass) / (exhaustMassFlow * constants.waterMolarMass),
      dryingTime,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Drain first, then 2000 to 2500 rpm outdoors until the sensor behind the filter climbs well above 100 °C.' },
    { tone: 'do-not', text: 'Do not judge the clean by the drop while it steams, and do not start a regeneration on a wet filter.' },
  ],
});
