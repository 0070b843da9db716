import { type CheckedOf, choice, constant, list, optional, quantity, relevantWhen } from '@wallflow/calculation';
import {
  cellDensity,
  fraction,
  length,
  massConcentration,
  massFlow,
  moleFraction,
  ratio,
  specificHeatCapacity,
  temperature,
  thermalConductivity,
  time,
  volume,
} from '@wallflow/units';
import { kineticsConstants, kineticsInputs } from '../../soot/oxidation/inputs.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { honeycombConstants, honeycombInputs } from '../honeycomb.js';
import { heatConstants } from '../soot-heat.js';
import { honeycombData, squareDuctHeat } from '../sources.js';
import { cordieriteHoneycomb, siliconCarbideHoneycomb, squareDuctNusselt } from './kernel-substrate.js';

const flow = {
  range: '2 <= x <= 5000 kg/h',
  usual: ['10 kg/h', '1500 kg/h', 'an idling car has about 30 kg/h, a truck on the road up to 1500 kg/h'],
  units: ['kg/h', 'g/s'],
} as const;
const gas = {
  range: '0 <= T <= 900 °C',
  usual: ['100 °C', '700 °C', { below: 'colder than the exhaust of an idling engine', above: 'a regeneration has already gone wrong' }],
  units: ['degC', 'K', 'degF'],
} as const;
const oxygenRange = { range: '0 <= x <= 21 %', units: ['%', '1'] } as const;
const minutes = ['min', 's'] as const;

/** The filter and its soot, as simulations and estimates of heat need them. */
export const filterInputs = {
  ...honeycombInputs,
  filterVolume: quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    range: '0.5 <= x <= 100 L',
    usual: ['1 L', '40 L', 'a car filter has 2 to 5 L, a truck filter 10 to 30 L'],
    example: '5.79 L',
    units: ['L', 'm3'],
  }),
  sootLoad: quantity(massConcentration, {
    symbol: "m'_0",
    label: 'Soot load at the start',
    range: '0 <= x <= 30 g/L',
    usual: ['0 g/L', '12 g/L', { above: 'nobody should heat a filter with this much soot' }],
    example: '3.4 g/L',
    units: ['g/L', 'kg/m3'],
  }),
  carbonMonoxideShare: quantity(fraction, {
    symbol: 'f_{CO}',
    label: 'Share of the carbon that leaves as carbon monoxide',
    description: 'Up to about 70 % in an uncatalysed filter, with less heat; a coated one burns it in the wall.',
    range: '0 <= x <= 100 %',
    default: ['0 %', 'all of it to carbon dioxide: the most heat, the safe side'],
  }),
};

export const gasHeatInput = quantity(specificHeatCapacity, {
  symbol: 'c_g',
  label: 'Specific heat of the exhaust',
  range: '950 <= x <= 1300 J/(kg.K)',
  default: ['1110 J/(kg.K)', 'air at 850 K'],
});

export const massFlowInput = quantity(massFlow, { symbol: '\\dot m', label: 'Exhaust mass flow', ...flow, example: '190 kg/h' });

export const oxygenInput = quantity(moleFraction, {
  symbol: 'x_{O_2}',
  label: 'Oxygen before the filter',
  ...oxygenRange,
  example: '8 %',
});

/** The gas of an idling engine. */
export const idleMassFlowInput = quantity(massFlow, {
  symbol: '\\dot m_i',
  label: 'Exhaust mass flow at idle',
  description: 'About 20 kg/h per litre of engine size, less with exhaust gas recirculation.',
  ...flow,
  example: '82 kg/h',
});

export const idleOxygenInput = quantity(moleFraction, {
  symbol: 'x_{O_2,i}',
  label: 'Oxygen at idle',
  ...oxygenRange,
  default: ['16 %', 'an idling diesel runs very lean'],
});

/** What the axial model alone needs to know of the filter. */
export const channelInputs = {
  filterLength: quantity(length, {
    symbol: 'L',
    label: 'Filter length',
    range: '50 <= x <= 600 mm',
    usual: ['100 mm', '400 mm', 'common filters are 120 to 350 mm long'],
    example: '203.2 mm',
    units: ['mm', 'in', 'm'],
  }),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    range: '80 <= x <= 400 cpsi',
    usual: ['100 cpsi', '350 cpsi', 'common wall-flow filters have 100 to 350 cells per square inch'],
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    range: '0.1 <= x <= 0.6 mm',
    usual: ['0.15 mm', '0.45 mm', 'common wall-flow filters have walls of 0.15 to 0.45 mm'],
    example: '0.305 mm',
    units: ['mm', 'mil'],
  }),
  axialConductivity: optional(
    quantity(thermalConductivity, {
      symbol: '\\lambda_b',
      label: 'Conductivity of the honeycomb along its length, if known',
      description: 'Over the whole cross-section. Leave blank to use the usual value of the material.',
      range: '0 <= x <= 20 W/(m.K)',
      usual: ['0.2 W/(m.K)', '8 W/(m.K)', 'cordierite has about 0.4 W/(m.K), silicon carbide about 5 W/(m.K)'],
      example: '0.4 W/(m.K)',
      units: ['W/(m.K)'],
    }),
  ),
  gasConductivity: quantity(thermalConductivity, {
    symbol: '\\lambda_g',
    label: 'Thermal conductivity',
    range: '0.02 <= x <= 0.15 W/(m.K)',
    default: ['0.0596 W/(m.K)', 'air at 850 K'],
    units: ['W/(m.K)'],
  }),
  oxygenTransport: choice({
    label: 'How oxygen gets to the soot',
    options: {
      diffusion: 'carried by the gas, and by diffusion out of the channel',
      'wall-flow': 'only carried by the gas through the wall',
    },
    default: ['diffusion', 'at low flow diffusion brings more than the flow; most published simulations leave it out'],
  }),
};

export const startTemperatureInput = quantity(temperature, {
  symbol: 'T_0',
  label: 'Filter temperature at the start',
  ...gas,
  example: '300 °C',
});

export const gasTemperatureInput = quantity(temperature, {
  symbol: 'T_{in}',
  label: 'Gas temperature before the filter',
  ...gas,
  example: '600 °C',
});

export const nitrogenDioxideInput = quantity(moleFraction, {
  symbol: 'x_{NO_2}',
  label: 'Nitrogen dioxide before the filter',
  range: '0 <= x <= 2000 ppm',
  units: ['ppm'],
  default: ['0 ppm', 'hot gas with injected fuel holds hardly any'],
});

export const rampDurationInput = quantity(time, {
  symbol: 't_r',
  label: 'Warming-up time',
  range: '1 s <= x <= 30 min',
  usual: ['20 s', '10 min', { below: 'no catalyst lights off this fast', above: 'a catalyst this slow has not lit off at all' }],
  units: minutes,
  default: ['3 min', 'the oxidation catalyst lights off in 2 to 5 min'],
});

/** What a drop to idle takes. */
export const dropInputs = {
  dropTime: quantity(time, {
    symbol: 't_d',
    label: 'Time of the drop to idle',
    range: '0 s <= x <= 2 h',
    usual: ['10 s', '20 min', { below: 'the gas is hardly hot by then', above: 'most of the soot has burnt by then' }],
    units: minutes,
    default: ['4 min', 'shortly after the gas is hot, when most of the soot is still there'],
  }),
  idleTemperature: quantity(temperature, {
    symbol: 'T_i',
    label: 'Gas temperature at idle',
    ...gas,
    default: ['250 °C', 'the hot catalyst before the filter still warms the gas'],
  }),
  idleOxygen: idleOxygenInput,
};

/** The course of the gas before the filter. */
export const scenarioInputs = {
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
  ...relevantWhen('scenario', ['steady', 'ramp', 'drop-to-idle'], {
    exhaustMassFlow: massFlowInput,
    gasTemperature: gasTemperatureInput,
    oxygen: oxygenInput,
  }),
  ...relevantWhen('scenario', ['ramp', 'drop-to-idle'], { rampDuration: rampDurationInput }),
  ...relevantWhen('scenario', 'drop-to-idle', { ...dropInputs, idleMassFlow: idleMassFlowInput }),
  ...relevantWhen('scenario', 'own', {
    course: list(
      {
        time: quantity(time, {
          symbol: 't',
          label: 'Time',
          range: '0 s <= x <= 2 h',
          usual: ['0 min', '20 min', { above: 'most of the soot has burnt by then' }],
          example: '0 s',
          units: ['s', 'min'],
        }),
        exhaustMassFlow: massFlowInput,
        gasTemperature: gasTemperatureInput,
        oxygen: oxygenInput,
      },
      {
        label: 'Own course',
        description: 'Points in order of time, straight lines between them; two points at one time make a jump.',
        min: 1,
        max: 200,
        example: [
          { time: '0 s', exhaustMassFlow: '190 kg/h', gasTemperature: '300 °C', oxygen: '8 %' },
          { time: '180 s', exhaustMassFlow: '190 kg/h', gasTemperature: '600 °C', oxygen: '8 %' },
        ],
      },
    ),
  }),
  nitrogenDioxide: nitrogenDioxideInput,
  startTemperature: startTemperatureInput,
  duration: quantity(time, {
    symbol: 't_e',
    label: 'Duration',
    range: '10 s <= x <= 2 h',
    usual: [
      '1 min',
      '20 min',
      { below: 'hardly anything burns in so short a time', above: 'most of the soot has burnt by then, and the run takes long' },
    ],
    example: '20 min',
    units: minutes,
  }),
  targetShare: quantity(fraction, {
    symbol: 'X_t',
    label: 'Share of the soot to burn',
    range: '0 < x < 100 %',
    default: ['90 %', 'what is usually called a complete regeneration'],
  }),
  gasHeatCapacity: gasHeatInput,
  ...kineticsInputs,
};

const simulationInputs = { ...filterInputs, ...channelInputs, ...scenarioInputs };

export type SimulationInput = CheckedOf<typeof simulationInputs>;

export const simulationConstants = { ...kineticsConstants, ...heatConstants, ...honeycombConstants, airMolarMass };

/** Of the axial model only. */
export const channelConstants = {
  siliconCarbideConductivity: constant(thermalConductivity, siliconCarbideHoneycomb.axialConductivity, {
    symbol: '\\lambda_{SiC}',
    label: 'Silicon carbide: conductivity along the length',
    source: honeycombData,
  }),
  cordieriteConductivity: constant(thermalConductivity, cordieriteHoneycomb.axialConductivity, {
    symbol: '\\lambda_{Co}',
    label: 'Cordierite: conductivity along the length',
    source: honeycombData,
  }),
  squareDuctNusselt: constant(ratio, squareDuctNusselt, {
    symbol: 'Nu',
    label: 'Nusselt number of a square channel, laminar flow',
    source: squareDuctHeat,
  }),
};
