import * as wf from '@wallflow/calculation';
import { massConcentration, massFlow, temperature, time } from '@wallflow/units';
import { kineticsInputs } from '../../soot/oxidation/inputs.js';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { honeycombIntermediates, honeycombSteps } from '../honeycomb.js';
import {
  channelConstants,
  channelInputs,
  dropInputs,
  filterInputs,
  gasHeatInput,
  gasTemperatureInput,
  massFlowInput,
  nitrogenDioxideInput,
  oxygenInput,
  rampDurationInput,
  simulationConstants,
  startTemperatureInput,
} from '../simulation/inputs.js';
import { adiabaticRise } from '../simulation/kernel-adiabatic.js';
import { channelIntermediates, channelSteps } from '../simulation/outputs.js';
import { channelsOf, prepareRun } from '../simulation/prepare.js';
import { simulationAssumptions, simulationCautions, simulationLimits } from '../simulation/texts.js';
import { heatOfCombustionOutput, heatOfCombustionStep } from '../soot-heat.js';
import { airTable, bissett1984, wrongWay2009 } from '../sources.js';
import { evenlySpacedValues, peakTemperatureMap } from './kernel.js';

/** Cells along the filter, s after the ramp or the drop, and relative tolerance of every run of the map. */
const mapCells = 12;
const timeAfter = 600;
const mapTolerance = 1e-5;
const gridSizes = { coarse: 4, usual: 7 } as const;

const { sootLoad: _, ...filter } = filterInputs;

const load = (symbol: string, label: string, example: string) =>
  wf.quantity(massConcentration, {
    symbol,
    label,
    range: '0.1 <= x <= 20 g/L',
    usual: ['0.5 g/L', '12 g/L', { below: 'this little soot heats no filter', above: 'nobody should heat a filter with this much soot' }],
    example,
    units: ['g/L', 'kg/m3'],
  });
const flow = (symbol: string, label: string, example: string) =>
  wf.quantity(massFlow, {
    symbol,
    label,
    range: '5 <= x <= 3000 kg/h',
    usual: ['10 kg/h', '800 kg/h', 'an idling car has about 30 kg/h, a truck in a stationary regeneration up to 800 kg/h'],
    example,
    units: ['kg/h', 'g/s'],
  });

export const peakTemperatureMapCalculation = wf.defineCalculation({
  id: 'peak-temperature-map',
  subject: 'regeneration',
  title: 'Map of the peak temperature over soot load and flow',
  purpose: 'How much soot can the filter take at which flow, burning on steadily or after a drop to idle?',
  keywords: 'map, soot limit, drop to idle, peak temperature, DPF, regen',
  method: 'simulation along the filter for every pair of load and flow',
  inputs: {
    ...filter,
    ...channelInputs,
    drop: wf.choice({
      label: 'Flow that is varied',
      options: { 'regeneration-flow': 'flow of the regeneration, burning on steadily', 'idle-flow': 'flow after a drop to idle' },
      default: ['idle-flow', 'the dangerous case'],
    }),
    ...wf.relevantWhen('drop', 'idle-flow', { exhaustMassFlow: massFlowInput, ...dropInputs }),
    startTemperature: startTemperatureInput,
    gasTemperature: gasTemperatureInput,
    oxygen: oxygenInput,
    nitrogenDioxide: nitrogenDioxideInput,
    rampDuration: rampDurationInput,
    gasHeatCapacity: gasHeatInput,
    ...kineticsInputs,
    leastLoad: load("m'_1", 'Lowest soot load', '1 g/L'),
    mostLoad: load("m'_2", 'Highest soot load', '7 g/L'),
    leastFlow: flow('\\dot m_1', 'Lowest flow', '60 kg/h'),
    mostFlow: flow('\\dot m_2', 'Highest flow', '300 kg/h'),
    grid: wf.choice({
      label: 'Size of the map',
      options: { coarse: '4 by 4 points', usual: '7 by 7 points' },
      default: ['usual', 'fine enough to draw'],
    }),
  },
  intermediates: {
    ...honeycombIntermediates,
    ...channelIntermediates,
    heatOfCombustion: heatOfCombustionOutput,
    hottestFeed: wf.quantityOutput(temperature, {
      symbol: 'T_h',
      label: 'Highest temperature of gas or start',
      digits: 4,
      units: ['degC'],
    }),
    gridPoints: wf.countOutput({ symbol: 'n', label: 'Points each way' }),
    damageTemperature: wf.quantityOutput(temperature, {
      symbol: 'T_d',
      label: 'Temperature that damages the filter',
      digits: 4,
      units: ['degC'],
    }),
  },
  outputs: {
    hottest: wf.quantityOutput(temperature, {
      symbol: 'T_{max}',
      label: 'Hottest point of the map',
      digits: 4,
      units: ['degC', 'K', 'degF'],
    }),
    map: wf.tableOutput({
      label: 'Peak temperature',
      columns: {
        load: wf.quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
        flow: wf.quantityOutput(massFlow, { symbol: '\\dot m', label: 'Flow', digits: 4, units: ['kg/h'] }),
        peak: wf.quantityOutput(temperature, { symbol: 'T_{max}', label: 'Peak temperature', digits: 4, units: ['degC'] }),
        adiabatic: wf.quantityOutput(temperature, { symbol: 'T_{ad}', label: 'Adiabatic estimate', digits: 4, units: ['degC'] }),
        judgement: wf.choiceOutput({
          label: 'What the material does',
          options: { borne: 'withstood', ash: 'ash attacks from 800 °C', damage: 'damaged' },
        }),
      },
    }),
  },
  constants: {
    ...simulationConstants,
    ...channelConstants,
    siliconCarbideDamage: wf.constant(temperature, '1100 °C', {
      symbol: 'T_{SiC}',
      label: 'Silicon carbide: damaged from',
      source: ashReview2019,
    }),
    cordieriteDamage: wf.constant(temperature, '900 °C', { symbol: 'T_{Co}', label: 'Cordierite: damaged from', source: ashReview2019 }),
  },
  answer: 'hottest',
  steps: [
    ...honeycombSteps,
    ...channelSteps,
    heatOfCombustionStep,
    wf.cases('hottestFeed', {
      "drop == 'idle-flow'":
        'max(startTemperature, startTemperature + (gasTemperature - startTemperature) * min(1, dropTime / rampDuration), idleTemperature)',
      otherwise: 'max(startTemperature, gasTemperature)',
    }),
    wf.cases('gridPoints', { "grid == 'coarse'": '4', otherwise: '7' }),
    wf.cases('damageTemperature', { "substrate == 'silicon-carbide'": 'siliconCarbideDamage', otherwise: 'cordieriteDamage' }),
    wf.rows(
      'map',
      {
        load: 'min(leastLoad, mostLoad) + abs(mostLoad - leastLoad) * floor((row - 1) / gridPoints) / (gridPoints - 1)',
        flow: 'min(leastFlow, mostFlow) + abs(mostFlow - leastFlow) * (row - 1 - gridPoints * floor((row - 1) / gridPoints)) / (gridPoints - 1)',
        adiabatic: 'hottestFeed + load * heatOfCombustion / (honeycombDensity * honeycombHeatCapacity)',
      },
      bissett1984,
      undefined,
      'The peak of every pair is simulated along the filter in 12 cells, until 10 min after the ramp or the drop. With a drop, the flow falls when the gas has just become hot.',
    ),
    wf.formula(
      'hottest',
      'max(map.peak)',
      undefined,
      undefined,
      'A peak above its adiabatic estimate has heat in it that the gas carried there from upstream.',
    ),
  ],
  assumptions: simulationAssumptions,
  limits: [
    {
      code: 'coarse_cells',
      text: 'Twelve cells give peaks about 5 K to 15 K below those of a fine grid: for those, simulate single points along the filter.',
    },
    {
      code: 'damage_limits',
      text: 'Damage is counted from 1100 °C for silicon carbide and 900 °C for cordierite; ash with water attacks from 800 °C.',
    },
    ...simulationLimits,
  ],
  cautions: simulationCautions,
  precision: 1e-5,
  mostEvaluations: 4,
  dimensional: 'time stepping with tolerances tied to the units',
  sources: [konstandopoulos2000, bai2016, bissettShadman1985, uncoatedDisk2008, airTable, wrongWay2009, siBrochure],
  compute(input, context) {
    const loads = evenlySpacedValues(
      Math.min(input.leastLoad, input.mostLoad),
      Math.max(input.leastLoad, input.mostLoad),
      gridSizes[input.grid],
    );
    const flows = evenlySpacedValues(
      Math.min(input.leastFlow, input.mostFlow),
      Math.max(input.leastFlow, input.mostFlow),
      gridSizes[input.grid],
    );
    const dropping = input.drop === 'idle-flow';
    const duration = timeAfter + (dropping ? wf.known(input.dropTime) : input.rampDuration);
    const channels = channelsOf(input, context.constants);
    if (wf.isRefusal(channels)) return channels;
    const run = {
      ...input,
      duration: time.si(duration),
      sootLoad: input.leastLoad,
      scenario: dropping ? ('drop-to-idle' as const) : ('ramp' as const),
      exhaustMassFlow: input.exhaustMassFlow ?? input.leastFlow,
      idleMassFlow: input.leastFlow,
    };
    const prepared = prepareRun(run, channels.channels, mapCells, context);
    if (wf.isRefusal(prepared)) return prepared;
    const points = peakTemperatureMap(loads, flows, (atLoad, atFlow) => ({
      ...prepared,
      soot: new Float64Array(mapCells).fill(atLoad),
      feed: prepared.feed.map((point, index) => ({
        ...point,
        massFlow: dropping && index < prepared.feed.length - 1 ? point.massFlow : atFlow,
      })),
      duration,
      relativeTolerance: mapTolerance,
    }));
    const { bed, combustion } = prepared;
    const hottestFeed = Math.max(input.startTemperature, ...prepared.feed.map((point) => point.temperature));
    const { siliconCarbideDamage, cordieriteDamage } = context.constants;
    const limit = input.substrate === 'silicon-carbide' ? siliconCarbideDamage : cordieriteDamage;
    const map = points.flatMap(({ load: atLoad, flow: atFlow, peak }) =>
      peak === undefined
        ? []
        : [
            {
              load: atLoad,
              flow: atFlow,
              peak,
              adiabatic: hottestFeed + adiabaticRise(atLoad, combustion.heatOfCombustion, bed.bulkDensity, bed.specificHeat),
              judgement: peak >= limit ? ('damage' as const) : peak >= 1073.15 ? ('ash' as const) : ('borne' as const),
            },
          ],
    );
    if (map.length < points.length) return wf.noSolution('a run of the map took too many steps; take a lower conductivity');
    return {
      ...channels.shown,
      honeycombDensity: bed.bulkDensity,
      honeycombHeatCapacity: bed.specificHeat,
      heatOfCombustion: combustion.heatOfCombustion,
      hottestFeed,
      gridPoints: gridSizes[input.grid],
      damageTemperature: limit,
      hottest: Math.max(...map.map((row) => row.peak)),
      map,
    };
  },
});
