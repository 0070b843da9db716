import * as wf from '@wallflow/calculation';
import {
  absolutePressure,
  density,
  energy,
  fraction,
  mass,
  massFlow,
  molarMass,
  power,
  ratio,
  specificEnergy,
  specificHeatCapacity,
  temperature,
  time,
  volume,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { molarMassOfDryAir } from '../../gas/constants.js';
import { vapourPressureGoff } from '../../gas/humidity/kernel.js';
import { molarMassOf } from '../../gas/species.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { dryingPractice, heatBalance, nistSteamTables, waterDensity20 } from '../sources.js';
import { boilingPoint, dryingPower, evaporationHeatAt, heatToDry, steamVolume } from './kernel.js';

/** Longest run that is still a plan, s: common practice, no source. */
const longestPlan = 7200;

const heatOutput = (symbol: string, label: string) => wf.quantityOutput(energy, { symbol, label, digits: 3, units: ['kJ', 'MJ', 'kWh'] });
const timeOutput = (symbol: string, label: string) => wf.quantityOutput(time, { symbol, label, digits: 2, units: ['min', 's', 'h'] });

export const dryingCalculation = wf.defineCalculation({
  id: 'drying',
  subject: 'cleaning',
  title: 'Drying the filter after a clean',
  purpose: 'How long must the engine run to evaporate the water still in the filter?',
  keywords: 'dry, evaporate, steam, white smoke, water, DPF',
  method: 'heat balance: the gas cools to the boiling point, the water warms and evaporates',
  inputs: {
    heldWater: wf.quantity(volume, {
      symbol: 'V_h',
      label: 'Liquid still in the filter',
      description: 'What went in minus what ran out; or the weight gained, one gram for one millilitre.',
      range: '0 mL < x <= 100 L',
      example: '1.1 L',
      units: ['mL', 'L', 'floz_US'],
    }),
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust mass flow',
      range: '0 < x <= 10000 kg/h',
      example: '290 kg/h',
      units: ['kg/h', 'g/s', 'lb/min'],
    }),
    gasTemperature: wf.quantity(temperature, {
      symbol: 'T_g',
      label: 'Gas temperature before the filter',
      range: '20 <= x <= 700 °C',
      usual: [
        '105 °C',
        '400 °C',
        { below: 'gas below the boiling point dries a filter very slowly', above: 'hotter gas on a wet filter cracks it' },
      ],
      example: '184 °C',
    }),
    outletTemperature: wf.optional(
      wf.quantity(temperature, {
        symbol: 'T_o',
        label: 'Gas temperature after the wet filter',
        description:
          'Watch the sensor after the filter: it stays near one value as long as there is water. Leave blank for the boiling point, which is the careful side.',
        range: '20 <= x <= 150 °C',
        usual: ['50 °C', '120 °C', 'between the wet-bulb temperature of the gas and the boiling point'],
        example: '100 °C',
      }),
    ),
    startTemperature: wf.quantity(temperature, {
      symbol: 'T_s',
      label: 'Filter temperature at the start',
      range: '-10 <= x < 120 °C',
      default: ['20 °C', 'cold filter'],
    }),
    filterMass: wf.quantity(mass, {
      symbol: 'm_f',
      label: 'Mass of the filter body that warms up with the water',
      range: '0 <= x <= 60 kg',
      units: ['kg', 'g', 'lb'],
      default: ['0 kg', 'not given: only the water counts; a body of 3 kg adds a tenth to a litre of water'],
    }),
    gasHeatCapacity: wf.quantity(specificHeatCapacity, {
      symbol: 'c_p',
      label: 'Specific heat of the exhaust',
      range: '0.9 <= x <= 1.4 kJ/(kg.K)',
      units: ['kJ/(kg.K)', 'J/(kg.K)'],
      default: ['1.05 kJ/(kg.K)', 'lean diesel exhaust near 200 °C'],
    }),
    practiceFactor: wf.quantity(ratio, {
      symbol: 'f',
      label: 'Real time over ideal time',
      range: '1 <= x <= 5',
      usual: ['1.5', '2', 'common practice, no source'],
      default: ['1.75', 'common practice, no source: 1.5 to 2, because part of the gas passes dry channels'],
    }),
    gasPressure: wf.quantity(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure in the filter',
      range: '60 <= x <= 200 kPa',
      units: ['kPa', 'hPa', 'mbar', 'bar', 'psi'],
      default: ['101.325 kPa', 'sea level'],
    }),
  },
  example: { startTemperature: '14 °C', filterMass: '2.6 kg', gasPressure: '986 hPa' },
  intermediates: {
    boilingTemperature: wf.quantityOutput(temperature, { symbol: 'T_b', label: 'Boiling temperature of water', digits: 4 }),
    vapourPressure: wf.quantityOutput(absolutePressure, {
      symbol: 'p_v',
      label: 'Vapour pressure',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    evaporationHeat: wf.quantityOutput(specificEnergy, {
      symbol: 'r',
      label: 'Heat of evaporation at the boiling point',
      digits: 4,
      units: ['kJ/kg'],
    }),
    leavingTemperature: wf.quantityOutput(temperature, { symbol: 'T_o', label: 'Gas temperature after the wet filter, used', digits: 4 }),
    waterMass: wf.quantityOutput(mass, { symbol: 'm_w', label: 'Water to evaporate', digits: 4, units: ['g', 'kg'] }),
    heatPerWater: wf.quantityOutput(specificEnergy, { symbol: 'q', label: 'Heat per mass of water', digits: 4, units: ['kJ/kg'] }),
    bodyHeat: heatOutput('Q_f', 'Heat to warm the filter body'),
    evaporationRate: wf.quantityOutput(massFlow, {
      symbol: '\\dot m_w',
      label: 'Steam flow while it dries',
      digits: 3,
      units: ['kg/h', 'g/s'],
    }),
  },
  outputs: {
    heatNeeded: heatOutput('Q', 'Heat needed'),
    dryingPower: wf.quantityOutput(power, { symbol: 'P', label: 'Heat flow from the gas', digits: 3, units: ['kW', 'W'] }),
    idealTime: timeOutput('t_0', 'Time if all that heat goes into the water'),
    steamVolume: wf.quantityOutput(volume, {
      symbol: 'V_s',
      label: 'Volume of the steam at its temperature',
      digits: 3,
      units: ['m3', 'L'],
    }),
    steamShare: wf.quantityOutput(fraction, {
      symbol: 's',
      label: 'Extra volume flow through the steaming filter',
      description: 'This, and the water films in the pores, make the pressure drop read high; it does not show how clean the filter is.',
      digits: 2,
      units: ['%'],
    }),
    dryingTime: timeOutput('t', 'Time to plan for'),
  },
  constants: {
    waterDensity: wf.constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: waterDensity20 }),
    triplePoint: wf.constant(temperature, 273.16, { symbol: 'T_3', label: 'Triple point of water', source: cfr1065 }),
    tableTemperature: wf.constant(temperature, 373.15, {
      symbol: 'T_1',
      label: 'Temperature for which a heat of evaporation is known',
      source: nistSteamTables,
    }),
    waterHeatCapacity: wf.constant(specificHeatCapacity, 4190, { symbol: 'c_w', label: 'Specific heat of water', source: nistSteamTables }),
    tableHeat: wf.constant(specificEnergy, 2.257e6, {
      symbol: 'r_1',
      label: 'Heat of evaporation of water at 100 °C',
      source: nistSteamTables,
    }),
    heatFall: wf.constant(specificHeatCapacity, 2663, {
      symbol: "r'",
      label: 'Fall of the heat of evaporation per kelvin, 86 to 120 °C',
      source: nistSteamTables,
    }),
    bodyHeatCapacity: wf.constant(specificHeatCapacity, 900, {
      symbol: 'c_f',
      label: 'Specific heat of a ceramic body near 60 °C',
      source: dryingPractice,
    }),
    gasConstant,
    waterMolarMass: wf.constant(molarMass, molarMassOf.water, { symbol: 'M_w', label: 'Molar mass of water', source: cfr1065 }),
    gasMolarMass: wf.constant(molarMass, molarMassOfDryAir, {
      symbol: 'M_g',
      label: 'Molar mass of the exhaust, taken as air',
      source: cfr1065,
    }),
  },
  answer: 'dryingTime',
  steps: [
    wf.solved('boilingTemperature', 'vapourPressure = gasPressure', {}, cfr1065, '1065.645'),
    wf.formula(
      'vapourPressure',
      "as(10 ^ (10.79574 * (1 - triplePoint / boilingTemperature) - 5.028 * log(boilingTemperature / triplePoint) + 0.000150475 * (1 - 10 ^ (-8.2969 * (boilingTemperature / triplePoint - 1))) + 0.00042873 * (10 ^ (4.76955 * (1 - triplePoint / boilingTemperature)) - 1) - 0.2138602), 'kPa')",
      cfr1065,
      '1065.645 Eq. 1',
    ),
    wf.formula('evaporationHeat', 'tableHeat - heatFall * (boilingTemperature - tableTemperature)', nistSteamTables),
    wf.cases('leavingTemperature', { 'known(outletTemperature)': 'outletTemperature', otherwise: 'boilingTemperature' }, heatBalance),
    wf.formula('waterMass', 'waterDensity * heldWater', waterDensity20),
    wf.formula('heatPerWater', 'waterHeatCapacity * (boilingTemperature - startTemperature) + evaporationHeat', heatBalance),
    wf.formula('bodyHeat', 'filterMass * bodyHeatCapacity * (boilingTemperature - startTemperature)', heatBalance),
    wf.formula('heatNeeded', 'waterMass * heatPerWater + bodyHeat', heatBalance),
    wf.formula('dryingPower', 'exhaustMassFlow * gasHeatCapacity * (gasTemperature - leavingTemperature)', heatBalance),
    wf.formula('idealTime', 'heatNeeded / dryingPower', heatBalance),
    wf.formula('evaporationRate', 'dryingPower / evaporationHeat', heatBalance),
    wf.formula('steamVolume', 'waterMass * gasConstant * leavingTemperature / (waterMolarMass * gasPressure)', siBrochure),
    wf.formula('steamShare', 'evaporationRate * gasMolarMass / (exhaustMassFlow * waterMolarMass)', heatBalance),
    wf.formula('dryingTime', 'practiceFactor * idealTime', dryingPractice),
  ],
  assumptions: {
    drained: 'Everything that can run out has run out; only what is held evaporates.',
    no_losses: 'No heat goes into pipes, housing and silencer; the factor from practice covers that.',
    water: 'The liquid is water; cleaner in it dries on in the filter unless it was rinsed out.',
  },
  limits: {
    two_hours: 'More than two hours is not a sensible plan (common practice, no source); the result then says what to change.',
    wet_readings_prove_nothing:
      'A pressure drop measured while the filter dries shows nothing: water films close pores, steam adds flow, and the temperature is not steady.',
  },
  cautions: [cautions.pressureAndSteam, cautions.hotExhaust, cautions.fumes, cautions.makerFirst],
  dimensional: 'the vapour pressure of water is an empirical formula in kelvin and pascal',
  compute(input, { constants, assume }) {
    const { gasTemperature, startTemperature, exhaustMassFlow, filterMass, gasPressure } = input;
    const boilingTemperature = boilingPoint(gasPressure);
    if (startTemperature >= boilingTemperature) {
      return wf.inconsistentInputs(
        'water already boils at that temperature and pressure: a wet filter cannot be that hot at the start',
        ['startTemperature'],
        ['gasPressure'],
      );
    }
    if (input.outletTemperature === undefined) {
      assume(
        'leaves_at_boiling_point',
        'The gas leaves at the boiling point. This is the careful side: gas that leaves cooler has given more heat.',
      );
    }
    const leavingTemperature = input.outletTemperature ?? boilingTemperature;
    if (gasTemperature <= leavingTemperature) {
      return wf.noSolution('the gas is no hotter than it is when it leaves the wet filter, so it dries only slowly: run hotter or faster', [
        'gasTemperature',
      ]);
    }
    const atBoiling = { temperature: constants.tableTemperature, heat: constants.tableHeat, fall: constants.heatFall };
    const evaporationHeat = evaporationHeatAt(boilingTemperature, atBoiling);
    const water = { liquidHeat: constants.waterHeatCapacity, evaporationHeat, boilingTemperature };
    const waterMass = constants.waterDensity * input.heldWater;
    const bodyHeat = filterMass * constants.bodyHeatCapacity * (boilingTemperature - startTemperature);
    const heat = heatToDry(waterMass, startTemperature, water) + bodyHeat;
    const available = dryingPower(exhaustMassFlow, input.gasHeatCapacity, gasTemperature, leavingTemperature);
    const evaporationRate = available / evaporationHeat;
    const dryingTime = input.practiceFactor * (heat / available);
    if (dryingTime > longestPlan) {
      return wf.noSolution(
        'at this flow and temperature it would take more than two hours: run hotter or faster, drain more, or dry the filter off the vehicle in warm air',
        ['gasTemperature'],
      );
    }
    return {
      boilingTemperature,
      vapourPressure: vapourPressureGoff(boilingTemperature),
      evaporationHeat,
      leavingTemperature,
      waterMass,
      heatPerWater: heatToDry(1, startTemperature, water),
      bodyHeat,
      heatNeeded: heat,
      dryingPower: available,
      idealTime: heat / available,
      evaporationRate,
      steamVolume: steamVolume(waterMass, leavingTemperature, gasPressure, constants.gasConstant, constants.waterMolarMass),
      steamShare: (evaporationRate * constants.gasMolarMass) / (exhaustMassFlow * constants.waterMolarMass),
      dryingTime,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Drain first, then 2000 to 2500 rpm outdoors until the sensor after the filter climbs well above 100 °C.' },
    {
      tone: 'do-not',
      text: 'Do not judge the clean by the pressure drop while the filter steams, and do not start a regeneration on a wet filter.',
    },
  ],
});
