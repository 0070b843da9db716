import {
  choiceOutput,
  commonPractice,
  constant,
  defineCalculation,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  area,
  fraction,
  heatTransferCoefficient,
  length,
  massFlow,
  massFraction,
  power,
  ratio,
  specificEnergy,
  specificHeatCapacity,
  temperature,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { pipeReynoldsNumber } from '../../flow/pipe-flow/kernel.js';
import { sutherlandViscosity } from '../../gas/dynamic-viscosity/kernel.js';
import { airConductivityStandardAtmosphere } from '../../gas/thermal-conductivity/kernel.js';
import { cfr1065 } from '../../sources.js';
import { depositClassAt, depositClasses } from '../deposits/classes.js';
import { depositAnalysis2015, depositFormation2009, depositFormation2014, dosingRelease, tischer2019 } from '../deposits/sources.js';
import { thermalProperties } from '../solution/sources.js';
import { liquidHeatCapacity } from '../solution/thermal.js';
import { dittusBoelter, sprayHeat, wettedWallTemperature } from './kernel.js';

const classNames = Object.fromEntries(depositClasses.map(({ id, name }) => [id, name])) as Record<
  (typeof depositClasses)[number]['id'],
  string
>;

export const depositRiskCalculation = defineCalculation({
  id: 'deposit-risk',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Deposits where the spray hits the wall',
  purpose: 'How cold does the spray make the wall, and what settles there?',
  usedBy: ['technician', 'trainer'],
  keywords: ['deposit', 'crystals', 'urea', 'mixer', 'wall temperature', 'spray'],
  method: 'steady heat balance of the wetted wall',
  inputs: z.strictObject({
    gasTemperature: quantity(temperature, {
      symbol: 'T_g',
      label: 'Gas temperature at the injector',
      min: '0 °C',
      max: '700 °C',
      example: '260 °C',
      units: ['degC'],
    }),
    exhaustMassFlow: quantity(massFlow, {
      symbol: 'q',
      label: 'Exhaust mass flow',
      above: '1 kg/h',
      max: '5000 kg/h',
      example: '200 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    pipeDiameter: quantity(length, {
      symbol: 'D',
      label: 'Inside diameter of the pipe',
      min: '20 mm',
      max: '400 mm',
      example: '60 mm',
      units: ['mm', 'in'],
    }),
    reductantMassFlow: quantity(massFlow, {
      symbol: 'q_r',
      label: 'Reductant dosed',
      min: '0 mg/s',
      max: '5 g/s',
      example: '60 mg/s',
      units: ['mg/s', 'g/h'],
    }),
    wallShare: quantity(fraction, {
      symbol: 's',
      label: 'Share of the spray that hits the wall',
      description: 'Not measured in a workshop. 100 % is the worst case, a third is usual for a close injector, from memory.',
      min: '0 %',
      max: '100 %',
      example: '30 %',
      units: ['%'],
    }),
    wettedArea: quantity(area, {
      symbol: 'A',
      label: 'Wetted area of the wall',
      description: 'About the size of the crystals or the stain.',
      min: '1 cm2',
      max: '0.2 m2',
      example: '60 cm2',
      units: ['cm2'],
    }),
    ureaFraction: quantityWithDefault(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the reductant, by mass',
      min: '5 %',
      max: '50 %',
      example: '32.5 %',
      units: ['%'],
      default: '32.5 %',
      defaultReason: 'target of ISO 22241-1',
    }),
    sprayTemperature: quantityWithDefault(temperature, {
      symbol: 'T_s',
      label: 'Temperature of the spray',
      min: '0 °C',
      max: '100 °C',
      example: '50 °C',
      units: ['degC'],
      default: '50 °C',
      defaultReason: 'warmed in the injector; common practice, no source',
    }),
    releaseTemperature: quantityWithDefault(temperature, {
      symbol: 'T_r',
      label: 'Gas temperature from which dosing is released',
      min: '120 °C',
      max: '300 °C',
      example: '200 °C',
      units: ['degC'],
      default: '200 °C',
      defaultReason: 'about 180 °C to 200 °C is usual, from memory',
    }),
  }),
  intermediates: {
    reynolds: quantityOutput(ratio, { symbol: 'Re', label: 'Reynolds number', digits: 3 }),
    heatTransfer: quantityOutput(heatTransferCoefficient, {
      symbol: 'h',
      label: 'Heat transfer from gas to wall',
      digits: 3,
      units: ['W/(m2.K)'],
    }),
    sprayHeat: quantityOutput(specificEnergy, { symbol: 'c', label: 'Heat that the spray takes, per mass', digits: 3, units: ['MJ/kg'] }),
    heat: quantityOutput(power, { symbol: '\\dot Q', label: 'Heat that it takes from the wall', digits: 3, units: ['W'] }),
  },
  outputs: {
    wallTemperature: quantityOutput(temperature, {
      symbol: 'T_w',
      label: 'Wall temperature under the spray',
      description: 'Not below the boiling point: there the wall stays wet.',
      digits: 3,
      units: ['degC'],
    }),
    wet: choiceOutput({
      label: 'Wall',
      options: { dry: 'dries between the shots', wet: 'stays wet: more fluid arrives than the gas can evaporate' },
    }),
    release: choiceOutput({
      label: 'Gas temperature',
      options: { enough: 'warm enough to dose', 'too-cold': 'below the release temperature: nothing should be dosed here' },
    }),
    settles: choiceOutput({ label: 'What settles', options: classNames }),
    risk: choiceOutput({
      label: 'Risk of deposits',
      options: {
        none: 'nothing dosed, nothing settles',
        least: 'least',
        low: 'low',
        medium: 'medium',
        high: 'high',
        'very-high': 'very high',
      },
    }),
  },
  constants: {
    heatCapacity: constant(specificHeatCapacity, liquidHeatCapacity, {
      symbol: 'c_l',
      label: 'Heat capacity of the reductant',
      source: 'thermalProperties',
    }),
    boilingTemperature: constant(temperature, 373.15, { symbol: 'T_b', label: 'Boiling temperature of water', source: 'waterTable' }),
    evaporation: constant(specificEnergy, 2.2565e6, { symbol: 'L_v', label: 'Heat of evaporation of water', source: 'waterTable' }),
    thermolysis: constant(specificEnergy, 3.09e6, { symbol: 'L_u', label: 'Heat that splits urea, 185.5 kJ/mol', source: 'thermolysis' }),
  },
  steps: [
    {
      gives: 'reynolds',
      tex: '[[reynolds]] = \\frac{4\\,[[exhaustMassFlow]]}{\\pi\\,[[pipeDiameter]]\\,\\mu}',
      source: 'cfr1065',
      locator: '1065.640(d)(1)',
    },
    {
      gives: 'heatTransfer',
      tex: '[[heatTransfer]] = 0.023\\,[[reynolds]]^{0.8}\\,0.69^{0.3}\\,\\frac{\\lambda}{[[pipeDiameter]]}',
      source: 'dittusBoelter',
    },
    {
      gives: 'sprayHeat',
      tex: '[[sprayHeat]] = [[heatCapacity]]\\,([[boilingTemperature]]-[[sprayTemperature]]) + (1-[[ureaFraction]])\\,[[evaporation]] + [[ureaFraction]]\\,[[thermolysis]]',
      source: 'thermolysis',
    },
    { gives: 'heat', tex: '[[heat]] = [[wallShare]]\\,[[reductantMassFlow]]\\,[[sprayHeat]]' },
    {
      gives: 'wallTemperature',
      tex: '[[wallTemperature]] = [[gasTemperature]] - \\frac{[[heat]]}{[[heatTransfer]]\\,[[wettedArea]]}',
      source: 'balance',
    },
    { gives: 'wet', text: 'A wall that would be colder than boiling water stays wet.' },
    { gives: 'release', text: 'The gas temperature is compared with this one: [[releaseTemperature]].', source: 'dosingRelease' },
    { gives: 'settles', text: 'Class of the wall temperature.', source: 'depositAnalysis2015' },
    {
      gives: 'risk',
      text: 'Grade of that class; a wet wall is the worst. The temperatures are published, the grading is common practice.',
      source: 'depositFormation2009',
    },
  ],
  assumptions: [
    { code: 'steady', text: 'The wall is in balance: spray and gas have been steady for minutes. No heat comes along the metal.' },
    { code: 'clean_pipe', text: 'Turbulent gas in a smooth pipe. Mixers have more heat transfer, dead corners less.' },
  ],
  limits: [
    {
      code: 'estimate',
      text: 'The wetted area and the share on the wall are estimates: read the result as an order of risk, not as a temperature to the degree.',
    },
  ],
  cautions: [cautions.hotExhaust, cautions.makerFirst],
  sources: {
    tischer2019,
    depositAnalysis2015,
    depositFormation2014,
    depositFormation2009,
    dosingRelease,
    thermalProperties,
    cfr1065,
    ussa1976: {
      type: 'standard',
      by: 'NOAA, NASA, US Air Force',
      title: 'US Standard Atmosphere 1976, Eq. 53',
      year: 1976,
      mark: 'from memory',
    },
    waterTable: { type: 'book', title: 'Steam tables: water boils at 100 °C with 2256.5 kJ/kg', mark: 'from memory' },
    thermolysis: {
      type: 'book',
      title: 'Heat of thermolysis of urea, 185.5 kJ/mol, as quoted in the literature on SCR',
      mark: 'from memory',
    },
    dittusBoelter: {
      type: 'book',
      by: 'Dittus, Boelter',
      title: 'Heat transfer in turbulent pipe flow, Nu = 0.023 Re^0.8 Pr^n',
      year: 1930,
      mark: 'from memory',
    },
    balance: { type: 'derivation', title: 'Heat balance of a thin wall between gas and spray', mark: 'read' },
    practice: commonPractice('Deposits come from dosing too cold, a leaking tip, a bad spray, low pump pressure or the wrong fluid'),
  },
  compute(input, { constants, warn }) {
    const reynolds = pipeReynoldsNumber(input.exhaustMassFlow, input.pipeDiameter, sutherlandViscosity(input.gasTemperature));
    const heatTransfer = (dittusBoelter(reynolds, 0.69) * airConductivityStandardAtmosphere(input.gasTemperature)) / input.pipeDiameter;
    if (reynolds < 10_000)
      warn('not_turbulent', 'The flow is too slow for the heat-transfer formula; the wall is probably colder than shown.', [
        'exhaustMassFlow',
      ]);
    const perMass = sprayHeat(input, constants);
    const heat = input.wallShare * input.reductantMassFlow * perMass;
    const balance = wettedWallTemperature({ gasTemperature: input.gasTemperature, heat, heatTransfer, area: input.wettedArea });
    const floor = Math.min(constants.boilingTemperature, input.gasTemperature);
    const wet = heat > 0 && balance < constants.boilingTemperature;
    const wallTemperature = Math.max(balance, floor);
    const found = depositClassAt(wallTemperature);
    return {
      reynolds,
      heatTransfer,
      sprayHeat: perMass,
      heat,
      wallTemperature,
      wet: wet ? 'wet' : 'dry',
      release: input.gasTemperature >= input.releaseTemperature ? 'enough' : 'too-cold',
      settles: wet ? 'film' : found.id,
      risk: heat === 0 ? 'none' : wet ? 'very-high' : found.risk,
    };
  },
  dimensional: 'gas properties by correlations tied to their units',
  advise({ risk }) {
    if (risk === 'high' || risk === 'very-high') {
      return [
        { tone: 'do', text: 'Look into the pipe behind the injector before judging the catalyst; check tip, spray and pump pressure.' },
        { tone: 'do', text: 'Look for the reason of cold running: idling, short trips, an open thermostat, missing insulation.' },
      ];
    }
    return [];
  },
});
