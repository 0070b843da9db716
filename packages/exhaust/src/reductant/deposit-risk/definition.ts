import * as wf from '@wallflow/calculation';
import {
  area,
  dynamicViscosity,
  fraction,
  heatTransferCoefficient,
  length,
  massFlow,
  massFraction,
  power,
  ratio,
  specificEnergy,
  temperature,
  temperatureDifference,
  thermalConductivity,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { pipeReynoldsNumber } from '../../flow/pipe-flow/kernel.js';
import { dynamicViscosityCalculation } from '../../gas/dynamic-viscosity/definition.js';
import { sutherlandViscosity } from '../../gas/dynamic-viscosity/kernel.js';
import { thermalConductivityCalculation } from '../../gas/thermal-conductivity/definition.js';
import { airConductivityStandardAtmosphere } from '../../gas/thermal-conductivity/kernel.js';
import { cfr1065 } from '../../sources.js';
import { type DepositClassId, depositClassAt, depositClasses } from '../deposits/classes.js';
import { depositAnalysis2015, depositFormation2009, depositFormation2014, dosingRelease, tischer2019 } from '../deposits/sources.js';
import { liquidHeatCapacity } from '../solution/named-constants.js';
import { dittusBoelter, sprayHeat, wettedWallTemperature } from './kernel.js';

const classNames = Object.fromEntries(depositClasses.map(({ id, name }) => [id, name])) as Record<DepositClassId, string>;
const classFrom = (id: DepositClassId, symbol: string, source: wf.Source) =>
  wf.constant(temperature, depositClasses.find((row) => row.id === id)?.from ?? Number.NaN, {
    symbol,
    label: `Wall from which there is: ${classNames[id]}`,
    source,
  });

const waterTable: wf.Source = { type: 'book', title: 'Steam tables: water boils at 100 °C with 2256.5 kJ/kg', mark: 'from memory' };
const thermolysis: wf.Source = {
  type: 'book',
  title: 'Heat of thermolysis of urea, 185.5 kJ/mol, as quoted in the literature on SCR',
  mark: 'from memory',
};
const turbulentPipe: wf.Source = {
  type: 'book',
  by: 'Dittus, Boelter',
  title: 'Heat transfer in turbulent pipe flow, Nu = 0.023 Re^0.8 Pr^n',
  year: 1930,
  mark: 'from memory',
};
const balance: wf.Source = { type: 'derivation', title: 'Heat balance of a thin wall between gas and spray', mark: 'read' };
const practice = wf.commonPractice('Deposits come from dosing too cold, a leaking tip, a bad spray, low pump pressure or the wrong fluid');

export const depositRiskCalculation = wf.defineCalculation({
  id: 'deposit-risk',
  subject: 'reductant',
  title: 'Deposits where the spray hits the wall',
  purpose: 'How cold does the spray make the wall, and what settles there?',
  keywords: 'deposit, crystals, urea, mixer, wall temperature, spray, DEF, AUS 32, SCR',
  method: 'steady heat balance of the wetted wall',
  inputs: {
    gasTemperature: wf.quantity(temperature, {
      symbol: 'T_g',
      label: 'Gas temperature at the injector',
      range: '0 <= x <= 700 °C',
      example: '206 °C',
      units: ['degC'],
    }),
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: 'q',
      label: 'Exhaust mass flow',
      range: '1 < x <= 5000 kg/h',
      example: '305 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    pipeDiameter: wf.quantity(length, {
      symbol: 'D',
      label: 'Inside diameter of the pipe',
      range: '20 <= x <= 400 mm',
      example: '60 mm',
      units: ['mm', 'in'],
    }),
    reductantMassFlow: wf.quantity(massFlow, {
      symbol: 'q_r',
      label: 'Reductant dosed',
      range: '0 mg/s <= x <= 5 g/s',
      example: '60 mg/s',
      units: ['mg/s', 'g/h'],
    }),
    wallShare: wf.quantity(fraction, {
      symbol: 's',
      label: 'Share of the spray that hits the wall',
      description: 'Not measured in a workshop. 100 % is the worst case, a third is usual for a close injector, from memory.',
      range: '0 <= x <= 100 %',
      example: '30 %',
      units: ['%'],
    }),
    wettedArea: wf.quantity(area, {
      symbol: 'A',
      label: 'Wetted area of the wall',
      description: 'About the size of the crystals or the stain.',
      range: '1 cm2 <= x <= 0.2 m2',
      example: '60 cm2',
      units: ['cm2'],
    }),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      range: '5 <= x <= 50 %',
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1'],
    }),
    sprayTemperature: wf.quantity(temperature, {
      symbol: 'T_s',
      label: 'Temperature of the spray',
      range: '0 <= x <= 100 °C',
      units: ['degC'],
      default: ['50 °C', 'warmed in the injector; common practice, no source'],
    }),
    releaseTemperature: wf.quantity(temperature, {
      symbol: 'T_r',
      label: 'Gas temperature from which dosing is released',
      range: '120 <= x <= 300 °C',
      units: ['degC'],
      default: ['200 °C', 'about 180 °C to 200 °C is usual, from memory'],
    }),
  },
  intermediates: {
    viscosity: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', digits: 4, units: ['uPa.s'] }),
    conductivity: wf.quantityOutput(thermalConductivity, {
      symbol: '\\lambda',
      label: 'Thermal conductivity',
      digits: 4,
      units: ['mW/(m.K)'],
    }),
    reynoldsNumber: wf.quantityOutput(ratio, { symbol: 'Re', label: 'Reynolds number', digits: 3 }),
    heatTransfer: wf.quantityOutput(heatTransferCoefficient, {
      symbol: 'h',
      label: 'Heat transfer from gas to wall',
      digits: 3,
      units: ['W/(m2.K)'],
    }),
    sprayHeat: wf.quantityOutput(specificEnergy, {
      symbol: 'c',
      label: 'Heat that the spray takes, per mass',
      digits: 3,
      units: ['MJ/kg'],
    }),
    wallHeat: wf.quantityOutput(power, { symbol: '\\dot Q', label: 'Heat that the spray takes from the wall', digits: 3, units: ['W'] }),
    wallCooling: wf.quantityOutput(temperatureDifference, {
      symbol: '\\Delta T',
      label: 'How much colder than the gas that would make the wall',
      digits: 3,
      units: ['K'],
    }),
  },
  outputs: {
    wallTemperature: wf.quantityOutput(temperature, {
      symbol: 'T_w',
      label: 'Wall temperature under the spray',
      description: 'Not below the boiling point: there the wall stays wet.',
      digits: 3,
      units: ['degC'],
    }),
    wet: wf.choiceOutput({
      label: 'Wall',
      options: { dry: 'dries between the shots', wet: 'stays wet: more fluid arrives than the gas can evaporate' },
    }),
    release: wf.choiceOutput({
      label: 'Gas temperature',
      options: { enough: 'warm enough to dose', 'too-cold': 'below the release temperature: nothing should be dosed here' },
    }),
    settles: wf.choiceOutput({ label: 'What settles', options: classNames }),
    risk: wf.choiceOutput({
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
    liquidHeatCapacity,
    boilingTemperature: wf.constant(temperature, 373.15, { symbol: 'T_b', label: 'Boiling temperature of water', source: waterTable }),
    evaporation: wf.constant(specificEnergy, 2.2565e6, { symbol: 'L_v', label: 'Heat of evaporation of water', source: waterTable }),
    thermolysis: wf.constant(specificEnergy, 3.09e6, { symbol: 'L_u', label: 'Heat that splits urea, 185.5 kJ/mol', source: thermolysis }),
    ureaFrom: classFrom('urea', 'T_{1}', tischer2019),
    biuretFrom: classFrom('biuret', 'T_{2}', tischer2019),
    cyanuricFrom: classFrom('cyanuric-acid', 'T_{3}', depositAnalysis2015),
    fusedFrom: classFrom('fused', 'T_{4}', depositAnalysis2015),
    clearFrom: classFrom('clear', 'T_{5}', depositFormation2014),
  },
  answer: 'risk',
  steps: [
    wf.nested('viscosity', dynamicViscosityCalculation, { gasTemperature: 'gasTemperature', model: { is: 'sutherland' } }),
    wf.nested('conductivity', thermalConductivityCalculation, { gasTemperature: 'gasTemperature', model: { is: 'standard-atmosphere' } }),
    wf.formula('reynoldsNumber', '4 * exhaustMassFlow / (pi * pipeDiameter * viscosity)', cfr1065, '1065.640(d)(1)'),
    wf.formula('heatTransfer', '0.023 * reynoldsNumber ^ 0.8 * 0.69 ^ 0.3 * conductivity / pipeDiameter', turbulentPipe),
    wf.formula(
      'sprayHeat',
      'liquidHeatCapacity * max(0, boilingTemperature - sprayTemperature) + (1 - ureaFraction) * evaporation + ureaFraction * thermolysis',
      thermolysis,
    ),
    wf.formula('wallHeat', 'wallShare * reductantMassFlow * sprayHeat'),
    wf.formula('wallCooling', 'wallHeat / (heatTransfer * wettedArea)', balance),
    wf.formula('wallTemperature', 'max(gasTemperature - wallCooling, min(boilingTemperature, gasTemperature))', balance),
    wf.verdict('wet', { wet: 'wallHeat > 0 and gasTemperature - wallCooling < boilingTemperature', dry: 'otherwise' }, balance),
    wf.verdict('release', { enough: 'gasTemperature >= releaseTemperature', 'too-cold': 'otherwise' }, dosingRelease),
    wf.verdict(
      'settles',
      {
        film: "wet == 'wet' or wallTemperature < ureaFrom",
        urea: 'wallTemperature < biuretFrom',
        biuret: 'wallTemperature < cyanuricFrom',
        'cyanuric-acid': 'wallTemperature < fusedFrom',
        fused: 'wallTemperature < clearFrom',
        clear: 'otherwise',
      },
      depositAnalysis2015,
    ),
    wf.verdict(
      'risk',
      {
        none: 'wallHeat == 0',
        'very-high': "settles == 'film' or settles == 'urea'",
        high: "settles == 'biuret'",
        medium: "settles == 'cyanuric-acid'",
        low: "settles == 'fused'",
        least: 'otherwise',
      },
      depositFormation2009,
      undefined,
      'The temperatures are published, the grading is common practice.',
    ),
  ],
  assumptions: {
    steady: 'The wall is in balance: spray and gas have been steady for minutes. No heat comes along the metal.',
    clean_pipe: 'Turbulent gas in a smooth pipe. Mixers have more heat transfer, dead corners less.',
  },
  limits: {
    estimate:
      'The wetted area and the share on the wall are estimates: read the result as an order of risk, not as a temperature to the degree.',
  },
  cautions: [cautions.hotExhaust, cautions.makerFirst],
  sources: [practice],
  compute(input, { constants, warn }) {
    const viscosity = sutherlandViscosity(input.gasTemperature);
    const conductivity = airConductivityStandardAtmosphere(input.gasTemperature);
    const reynoldsNumber = pipeReynoldsNumber(input.exhaustMassFlow, input.pipeDiameter, viscosity);
    const heatTransfer = (dittusBoelter(reynoldsNumber, 0.69) * conductivity) / input.pipeDiameter;
    if (reynoldsNumber < 10_000)
      warn('not_turbulent', 'The flow is too slow for the heat-transfer formula; the wall is probably colder than shown.', [
        'exhaustMassFlow',
      ]);
    const perMass = sprayHeat(input, { ...constants, heatCapacity: constants.liquidHeatCapacity });
    const heat = input.wallShare * input.reductantMassFlow * perMass;
    const balance = wettedWallTemperature({ gasTemperature: input.gasTemperature, heat, heatTransfer, area: input.wettedArea });
    const floor = Math.min(constants.boilingTemperature, input.gasTemperature);
    const wet = heat > 0 && balance < constants.boilingTemperature;
    const wallTemperature = Math.max(balance, floor);
    const found = depositClassAt(wallTemperature);
    return {
      viscosity,
      conductivity,
      reynoldsNumber,
      heatTransfer,
      sprayHeat: perMass,
      wallHeat: heat,
      wallCooling: heat / (heatTransfer * input.wettedArea),
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
        { tone: 'do', text: 'Look into the pipe after the injector before you judge the catalyst; check tip, spray and pump pressure.' },
        { tone: 'do', text: 'Look for the cause of cold running: idling, short trips, an open thermostat, missing insulation.' },
      ];
    }
    return [];
  },
});
