import { choice, choiceWithDefault, constant, list, quantity, quantityWithDefault } from '@wallflow/calculation';
import {
  cellDensity,
  fraction,
  length,
  massConcentration,
  massFlow,
  molarEnergy,
  molarMass,
  moleFraction,
  specificHeatCapacity,
  temperature,
  thermalConductivity,
  time,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { molarMassOfDryAir } from '../../gas/constants.js';
import { kineticsConstants, kineticsInputs } from '../../soot/oxidation/inputs.js';
import { molarMassOfCarbon } from '../../soot/oxidation/kernel.js';
import { honeycombConstants, honeycombInputs } from '../honeycomb.js';
import { heatOfCarbonToDioxide, heatOfCarbonToMonoxide } from './kernel-adiabatic.js';
import { cordieriteHoneycomb, siliconCarbideHoneycomb } from './kernel-substrate.js';

const flow = {
  min: '2 kg/h',
  max: '5000 kg/h',
  usual: ['10 kg/h', '1500 kg/h'],
  usualReason: 'an idling car has some 30 kg/h, a truck on the road up to 1500 kg/h',
  units: ['kg/h', 'g/s'],
} as const;
const gasTemperature = {
  min: '0 °C',
  max: '900 °C',
  usual: ['100 °C', '700 °C'],
  usualReason: { below: 'colder than the exhaust of an idling engine', above: 'a regeneration has already gone wrong' },
  units: ['degC', 'K', 'degF'],
} as const;
const oxygenRange = { min: '0 %', max: '21 %', units: ['%', '1'] } as const;
const noxRange = { min: '0 ppm', max: '2000 ppm', units: ['ppm'] } as const;

/** The filter and its soot, as simulations and estimates of heat need them. */
export const filterInputs = {
  ...honeycombInputs,
  sootLoad: quantity(massConcentration, {
    symbol: "m'_0",
    label: 'Soot load at the start',
    min: '0 g/L',
    max: '30 g/L',
    usual: ['0 g/L', '12 g/L'],
    usualReason: { above: 'nobody should heat a filter with so much soot' },
    example: '3.4 g/L',
    units: ['g/L', 'kg/m3'],
  }),
  carbonMonoxideShare: quantityWithDefault(fraction, {
    symbol: 'f_{CO}',
    label: 'Share of the carbon that leaves as carbon monoxide',
    description: 'An uncatalysed filter leaves up to some 70 % as carbon monoxide, with less heat; a coated one burns it in the wall.',
    min: '0 %',
    max: '100 %',
    example: '0 %',
    default: '0 %',
    defaultReason: 'all to carbon dioxide: the most heat, the safe side',
  }),
};

export const heatConstants = {
  heatToDioxide: constant(molarEnergy, heatOfCarbonToDioxide, {
    symbol: '\\Delta H_{CO_2}',
    label: 'Heat of carbon to carbon dioxide',
    source: 'carbonHeats',
  }),
  heatToMonoxide: constant(molarEnergy, heatOfCarbonToMonoxide, {
    symbol: '\\Delta H_{CO}',
    label: 'Heat of carbon to carbon monoxide',
    source: 'carbonHeats',
  }),
  carbonMolarMass: constant(molarMass, molarMassOfCarbon, { symbol: 'M_C', label: 'Molar mass of carbon', source: 'siBrochure' }),
};

const material = (label: string) => ({ label, source: 'honeycombData' });

const feedPoint = z.strictObject({
  time: quantity(time, {
    symbol: 't',
    label: 'Time',
    min: '0 s',
    max: '2 h',
    usual: ['0 min', '20 min'],
    usualReason: 'a regeneration seldom lasts longer',
    example: '0 s',
    units: ['s', 'min'],
  }),
  massFlow: quantity(massFlow, { symbol: '\\dot m', label: 'Exhaust mass flow', ...flow, example: '190 kg/h' }),
  temperature: quantity(temperature, {
    symbol: 'T_{in}',
    label: 'Gas temperature before the filter',
    ...gasTemperature,
    example: '300 °C',
  }),
  oxygen: quantity(moleFraction, { symbol: 'x_{O_2}', label: 'Oxygen', ...oxygenRange, example: '8 %' }),
});

/** Everything that a simulated regeneration takes. */
export const simulationInputs = z.strictObject({
  ...filterInputs,
  filterVolume: quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    min: '0.5 L',
    max: '100 L',
    usual: ['1 L', '40 L'],
    usualReason: 'a car filter has 2 to 5 L, a truck filter 10 to 30 L',
    example: '5.79 L',
    units: ['L', 'm3'],
  }),
  filterLength: quantity(length, {
    symbol: 'L',
    label: 'Filter length',
    min: '50 mm',
    max: '600 mm',
    usual: ['100 mm', '400 mm'],
    usualReason: 'common filters are 120 to 350 mm long',
    example: '203.2 mm',
    units: ['mm', 'in', 'm'],
  }),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    min: '80 cpsi',
    max: '400 cpsi',
    usual: ['100 cpsi', '350 cpsi'],
    usualReason: 'common wall-flow filters have 100 to 350 cells per square inch',
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    min: '0.1 mm',
    max: '0.6 mm',
    usual: ['0.15 mm', '0.45 mm'],
    usualReason: 'common wall-flow filters have walls of 0.15 to 0.45 mm',
    example: '0.305 mm',
    units: ['mm', 'mil'],
  }),
  axialConductivity: quantity(thermalConductivity, {
    symbol: '\\lambda_b',
    label: 'Axial conductivity of the honeycomb, over the whole cross-section',
    min: '0 W/(m.K)',
    max: '20 W/(m.K)',
    usual: ['0.2 W/(m.K)', '8 W/(m.K)'],
    usualReason: 'cordierite has some 0.4 W/(m.K), silicon carbide some 5 W/(m.K)',
    example: '0.4 W/(m.K)',
    units: ['W/(m.K)'],
  }).optional(),
  initialTemperature: quantity(temperature, {
    symbol: 'T_0',
    label: 'Filter temperature at the start',
    ...gasTemperature,
    example: '300 °C',
  }),
  scenario: choice({
    label: 'What happens',
    options: {
      steady: 'hot gas from the start',
      ramp: 'warming up from the filter temperature, then steady',
      'drop-to-idle': 'warming up, then a sudden drop to idle',
      own: 'my own course of flow, temperature and oxygen',
    },
    example: 'ramp',
  }),
  massFlow: quantity(massFlow, { symbol: '\\dot m', label: 'Exhaust mass flow', ...flow, example: '190 kg/h' }),
  inletTemperature: quantity(temperature, {
    symbol: 'T_{in}',
    label: 'Gas temperature before the filter',
    ...gasTemperature,
    example: '600 °C',
  }),
  oxygen: quantity(moleFraction, { symbol: 'x_{O_2}', label: 'Oxygen before the filter', ...oxygenRange, example: '8 %' }),
  nitrogenDioxide: quantityWithDefault(moleFraction, {
    symbol: 'x_{NO_2}',
    label: 'Nitrogen dioxide before the filter',
    ...noxRange,
    example: '0 ppm',
    default: '0 ppm',
    defaultReason: 'hot gas with injected fuel holds hardly any',
  }),
  rampDuration: quantityWithDefault(time, {
    symbol: 't_r',
    label: 'Warming-up time',
    min: '1 s',
    max: '30 min',
    usual: ['20 s', '10 min'],
    usualReason: { below: 'no catalyst lights off so fast', above: 'so slow a catalyst has not lit off at all' },
    example: '3 min',
    units: ['min', 's'],
    default: '3 min',
    defaultReason: 'the oxidation catalyst lights off in 2 to 5 min',
  }),
  dropTime: quantityWithDefault(time, {
    symbol: 't_d',
    label: 'Time of the drop to idle',
    min: '0 s',
    max: '2 h',
    usual: ['10 s', '20 min'],
    usualReason: { below: 'the gas is hardly hot by then', above: 'most of the soot has burnt by then' },
    example: '4 min',
    units: ['min', 's'],
    default: '4 min',
    defaultReason: 'shortly after the gas is hot, when most soot is still there',
  }),
  idleMassFlow: quantityWithDefault(massFlow, {
    symbol: '\\dot m_i',
    label: 'Exhaust mass flow at idle',
    ...flow,
    example: '82 kg/h',
    default: '40 kg/h',
    defaultReason: 'a 1.6 to 2.0 L engine at idle',
  }),
  idleTemperature: quantityWithDefault(temperature, {
    symbol: 'T_i',
    label: 'Gas temperature at idle',
    ...gasTemperature,
    example: '250 °C',
    default: '250 °C',
    defaultReason: 'the hot catalyst ahead still warms the gas',
  }),
  idleOxygen: quantityWithDefault(moleFraction, {
    symbol: 'x_{O_2,i}',
    label: 'Oxygen at idle',
    ...oxygenRange,
    example: '16 %',
    default: '16 %',
    defaultReason: 'an idling diesel runs very lean',
  }),
  course: list(feedPoint, {
    label: 'Own course',
    description: 'Points in order of time, straight lines between them; two points of one time make a jump. Only for the own course.',
    min: 1,
    max: 200,
    example: [
      { time: '0 s', massFlow: '190 kg/h', temperature: '300 °C', oxygen: '8 %' },
      { time: '180 s', massFlow: '190 kg/h', temperature: '600 °C', oxygen: '8 %' },
    ],
  }).optional(),
  duration: quantity(time, {
    symbol: 't',
    label: 'Duration',
    min: '10 s',
    max: '2 h',
    usual: ['1 min', '20 min'],
    usualReason: { below: 'hardly anything burns in so short a time', above: 'most of the soot has burnt by then, and the run takes long' },
    example: '20 min',
    units: ['min', 's'],
  }),
  targetShare: quantityWithDefault(fraction, {
    symbol: 'X',
    label: 'Share of the soot to burn',
    above: '0 %',
    below: '100 %',
    example: '90 %',
    default: '90 %',
    defaultReason: 'what is usually called a complete regeneration',
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
  gasConductivity: quantityWithDefault(thermalConductivity, {
    symbol: '\\lambda_g',
    label: 'Thermal conductivity of the gas',
    min: '0.02 W/(m.K)',
    max: '0.15 W/(m.K)',
    example: '0.0596 W/(m.K)',
    default: '0.0596 W/(m.K)',
    defaultReason: 'air at 850 K',
    units: ['W/(m.K)'],
  }),
  oxygenTransport: choiceWithDefault({
    label: 'How oxygen gets to the soot',
    options: {
      diffusion: 'carried by the gas and by diffusion out of the channel',
      'wall-flow': 'only carried by the gas through the wall',
    },
    example: 'diffusion',
    default: 'diffusion',
    defaultReason: 'at low flow diffusion brings more than the flow; most published simulations leave it out',
  }),
  cells: choiceWithDefault({
    label: 'Cells along the length',
    options: { coarse: '20', usual: '40', fine: '60' },
    example: 'usual',
    default: 'usual',
    defaultReason: 'twice as many change the peak by about 1 K to 2 K',
  }),
  ...kineticsInputs,
});

/** Number of cells of a choice. */
export const cellCounts = { coarse: 20, usual: 40, fine: 60 } as const;

export type SimulationInput = z.output<typeof simulationInputs>;

export const simulationConstants = {
  ...kineticsConstants,
  ...heatConstants,
  ...honeycombConstants,
  siliconCarbideConductivity: constant(thermalConductivity, siliconCarbideHoneycomb.axialConductivity, {
    symbol: '\\lambda_{SiC}',
    ...material('Silicon carbide: axial conductivity'),
  }),
  cordieriteConductivity: constant(thermalConductivity, cordieriteHoneycomb.axialConductivity, {
    symbol: '\\lambda_{Co}',
    ...material('Cordierite: axial conductivity'),
  }),
  gasMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M_g', label: 'Molar mass of the gas as air', source: 'siBrochure' }),
};
