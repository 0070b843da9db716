import {
  choiceOutput,
  choiceWithDefault,
  defineCalculation,
  isRefusal,
  noSolution,
  quantity,
  quantityOutput,
  tableOutput,
} from '@wallflow/calculation';
import { fraction, massConcentration, massFlow, temperature, time } from '@wallflow/units';
import * as z from 'zod';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { simulationConstants, simulationInputs } from '../simulation/inputs.js';
import { adiabaticRise } from '../simulation/kernel-adiabatic.js';
import { prepareRun } from '../simulation/prepare.js';
import { simulationAssumptions, simulationCautions, simulationLimits } from '../simulation/texts.js';
import { adiabaticBalance, airTable, bissett1984, carbonHeats, honeycombData, squareDuctHeat, wrongWay2009 } from '../sources.js';
import { peakTemperatureMap, spaced } from './kernel.js';

/** Cells along the filter, s after the ramp or the drop, and relative tolerance of every run of the map. */
const mapCells = 12;
const timeAfter = 600;
const mapTolerance = 1e-5;
const gridSizes = { coarse: 4, usual: 7 } as const;

const shared = simulationInputs.omit({
  cells: true,
  duration: true,
  targetShare: true,
  course: true,
  sootLoad: true,
  massFlow: true,
  scenario: true,
}).shape;

const load = (symbol: string, label: string, example: string) =>
  quantity(massConcentration, {
    symbol,
    label,
    min: '0.1 g/L',
    max: '20 g/L',
    usual: ['0.5 g/L', '12 g/L'],
    usualReason: { below: 'so little soot heats no filter', above: 'nobody should heat a filter with so much soot' },
    example,
    units: ['g/L', 'kg/m3'],
  });
const flow = (symbol: string, label: string, example: string) =>
  quantity(massFlow, {
    symbol,
    label,
    min: '5 kg/h',
    max: '3000 kg/h',
    usual: ['10 kg/h', '800 kg/h'],
    usualReason: 'an idling car has some 30 kg/h, a truck in a standing regeneration up to 800 kg/h',
    example,
    units: ['kg/h', 'g/s'],
  });

export const peakTemperatureMapCalculation = defineCalculation({
  id: 'peak-temperature-map',
  version: '1.1.0',
  subject: 'regeneration',
  title: 'Map of the peak temperature over soot load and flow',
  purpose: 'Which soot loads does the filter bear at which flow, going on steadily or after a drop to idle?',
  usedBy: ['trainer', 'technician', 'developer'],
  keywords: ['map', 'soot limit', 'drop to idle', 'peak temperature'],
  method: 'simulation along the filter for every pair of load and flow',
  inputs: z.strictObject({
    ...shared,
    drop: choiceWithDefault({
      label: 'Flow that is varied',
      options: { 'regeneration-flow': 'flow of the regeneration, going on steadily', 'idle-flow': 'flow after a drop to idle' },
      example: 'idle-flow',
      default: 'idle-flow',
      defaultReason: 'the dangerous case',
    }),
    massFlow: simulationInputs.shape.massFlow,
    leastLoad: load("m'_1", 'Least soot load', '1 g/L'),
    mostLoad: load("m'_2", 'Highest soot load', '7 g/L'),
    leastFlow: flow('\\dot m_1', 'Least flow', '60 kg/h'),
    mostFlow: flow('\\dot m_2', 'Highest flow', '300 kg/h'),
    grid: choiceWithDefault({
      label: 'Points each way',
      options: { coarse: '4', usual: '7' },
      example: 'usual',
      default: 'usual',
      defaultReason: 'fine enough to draw',
    }),
  }),
  intermediates: {},
  outputs: {
    hottest: quantityOutput(temperature, { symbol: 'T_{max}', label: 'Hottest point of the map', digits: 4, units: ['degC', 'K', 'degF'] }),
    map: tableOutput({
      label: 'Peak temperature',
      columns: {
        load: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
        flow: quantityOutput(massFlow, { symbol: '\\dot m', label: 'Flow', digits: 4, units: ['kg/h'] }),
        peak: quantityOutput(temperature, { symbol: 'T_{max}', label: 'Peak temperature', digits: 4, units: ['degC'] }),
        adiabatic: quantityOutput(temperature, { symbol: 'T_{ad}', label: 'Adiabatic estimate', digits: 4, units: ['degC'] }),
        judgement: choiceOutput({
          label: 'For the material',
          options: { borne: 'borne', ash: 'ash attacks from 800 °C', damage: 'damage' },
        }),
      },
    }),
  },
  constants: simulationConstants,
  steps: [
    {
      gives: 'map',
      text: 'Simulated peak for every pair; 12 cells, until 10 min after the ramp or the drop. With a drop, the flow falls when the gas has just become hot.',
      source: 'bissett1984',
    },
    {
      gives: 'hottest',
      text: 'Highest value of the map. A peak above its adiabatic estimate has heat in it that the gas carried there from upstream.',
    },
  ],
  assumptions: simulationAssumptions,
  limits: [
    {
      code: 'coarse_cells',
      text: 'Twelve cells give peaks some 5 K to 15 K below those of a fine grid: simulate single points along the filter for that.',
    },
    {
      code: 'damage_limits',
      text: 'Damage is counted from 1100 °C for silicon carbide and 900 °C for cordierite; ash with water attacks from 800 °C.',
    },
    ...simulationLimits,
  ],
  cautions: simulationCautions,
  sources: {
    bissett1984,
    konstandopoulos2000,
    bai2016,
    bissettShadman1985,
    uncoatedDisk2008,
    adiabaticBalance,
    carbonHeats,
    squareDuctHeat,
    airTable,
    honeycombData,
    ashReview2019,
    wrongWay2009,
    siBrochure,
  },
  precision: 1e-5,
  mostEvaluations: 4,
  dimensional: 'time stepping with tolerances tied to the units',
  compute(input, context) {
    const loads = spaced(Math.min(input.leastLoad, input.mostLoad), Math.max(input.leastLoad, input.mostLoad), gridSizes[input.grid]);
    const flows = spaced(Math.min(input.leastFlow, input.mostFlow), Math.max(input.leastFlow, input.mostFlow), gridSizes[input.grid]);
    const dropping = input.drop === 'idle-flow';
    const duration = timeAfter + (dropping ? input.dropTime : input.rampDuration);
    const unused = { targetShare: fraction.si(0.9), duration: time.si(duration), cells: 'coarse' as const };
    const scenario = dropping ? ('drop-to-idle' as const) : ('ramp' as const);
    const prepared = prepareRun({ ...input, ...unused, sootLoad: input.leastLoad, scenario }, mapCells, context);
    if (isRefusal(prepared)) return prepared;
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
    const hottestFeed = Math.max(input.initialTemperature, ...prepared.feed.map((point) => point.temperature));
    const limit = (input.substrate === 'silicon-carbide' ? 1100 : 900) + 273.15;
    const rows = points.flatMap(({ load: atLoad, flow: atFlow, peak }) =>
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
    if (rows.length < points.length) return noSolution('a run of the map took too many steps; take a lower axial conductivity');
    return { hottest: Math.max(...rows.map((row) => row.peak)), map: rows };
  },
});
