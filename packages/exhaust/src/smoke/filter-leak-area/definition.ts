import {
  choiceOutput,
  commonPractice,
  constant,
  defineCalculation,
  inconsistentInputs,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  absolutePressure,
  area,
  density,
  differentialPressure,
  fraction,
  length,
  molarHeatCapacity,
  molarMass,
  particleNumberConcentration,
  temperature,
  volumeFlow,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { leakArea, leakShare } from './kernel.js';

/** Share of by-passed gas below which the doubt about the efficiency of the sound filter hides a leak. */
const smallestLeak = 0.001;

export const filterLeakAreaCalculation = defineCalculation({
  id: 'filter-leak-area',
  version: '1.1.0',
  subject: 'smoke',
  title: 'Size of a leak in the filter',
  purpose: 'How large is the hole or crack that would explain the particle count behind the filter?',
  usedBy: ['technician', 'trainer'],
  keywords: ['crack', 'leak', 'by-pass', 'particle number', 'filtration efficiency'],
  method: 'particle balance for the by-pass share, orifice flow for the area',
  inputs: z.strictObject({
    particlesBefore: quantity(particleNumberConcentration, {
      symbol: 'N_1',
      label: 'Particle number before the filter',
      description: 'A warm diesel at idle gives about ten million per cubic centimetre, from memory; measure it if you can.',
      above: '1000 1/cm3',
      max: '1000000000 1/cm3',
      usual: ['1000000 1/cm3', '100000000 1/cm3'],
      usualReason: 'usual raw diesel exhaust, from memory',
      example: '10000000 1/cm3',
      units: ['1/cm3'],
    }),
    particlesBehind: quantity(particleNumberConcentration, {
      symbol: 'N_2',
      label: 'Particle number behind the filter',
      min: '0 1/cm3',
      max: '1000000000 1/cm3',
      example: '600000 1/cm3',
      units: ['1/cm3'],
    }),
    soundEfficiency: quantityWithDefault(fraction, {
      symbol: 'E',
      label: 'Efficiency of the filter where it is sound',
      min: '50 %',
      max: '99.9999 %',
      example: '99.9 %',
      units: ['%'],
      default: '99.9 %',
      defaultReason: 'wall-flow filter with a soot cake, from memory; less when freshly cleaned',
    }),
    volumeFlow: quantity(volumeFlow, {
      symbol: '\\dot V',
      label: 'Exhaust volume flow in the filter',
      description: 'At the temperature and pressure there.',
      above: '0 m3/h',
      max: '10000 m3/h',
      example: '60 m3/h',
      units: ['m3/h'],
    }),
    pressureDrop: quantity(differentialPressure, {
      symbol: '\\Delta p',
      label: 'Pressure drop across the filter',
      above: '0.1 mbar',
      max: '1000 mbar',
      example: '6 mbar',
      units: ['mbar', 'kPa'],
    }),
    gasTemperature: quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature',
      min: '-20 °C',
      max: '900 °C',
      example: '130 °C',
      units: ['degC'],
    }),
    gasPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure',
      min: '50 kPa',
      max: '400 kPa',
      example: '101.3 kPa',
      units: ['kPa', 'mbar'],
      default: '101.325 kPa',
      defaultReason: 'sea level; 1000 m of altitude change the area by 6 %',
    }),
    dischargeCoefficient: quantityWithDefault(fraction, {
      symbol: 'C',
      label: 'Discharge coefficient',
      min: '0.3',
      max: '1',
      example: '0.61',
      units: ['1'],
      default: '0.61',
      defaultReason: 'sharp-edged hole, textbook value',
    }),
  }),
  intermediates: {
    penetration: quantityOutput(fraction, { symbol: 'P', label: 'Share of the particles that gets through', digits: 3, units: ['%'] }),
    leakShare: quantityOutput(fraction, {
      symbol: '\\varphi',
      label: 'Share of the gas that by-passes the filter',
      digits: 3,
      units: ['%'],
    }),
    gasDensity: quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', digits: 4, units: ['kg/m3'] }),
  },
  outputs: {
    equivalentDiameter: quantityOutput(length, { symbol: 'd', label: 'Diameter of a round hole of that area', digits: 2, units: ['mm'] }),
    verdict: choiceOutput({
      label: 'Reading',
      options: {
        tight: 'as tight as a sound filter',
        leak: 'gas by-passes the filter',
        'nothing-counted': 'not proven: nothing was counted behind the filter at all',
      },
    }),
    leakArea: quantityOutput(area, { symbol: 'A', label: 'Area of the leak', digits: 2, units: ['mm2'] }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    airMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M', label: 'Molar mass of dry air', source: 'cfr1065' }),
  },
  steps: [
    { gives: 'penetration', tex: '[[penetration]] = \\frac{[[particlesBehind]]}{[[particlesBefore]]}' },
    {
      gives: 'leakShare',
      tex: '[[leakShare]] = \\max\\left(0,\\ \\frac{[[penetration]]-(1-[[soundEfficiency]])}{[[soundEfficiency]]}\\right)',
      source: 'balance',
    },
    {
      gives: 'gasDensity',
      tex: '[[gasDensity]] = \\frac{[[gasPressure]]\\,[[airMolarMass]]}{[[gasConstant]]\\,[[gasTemperature]]}',
      source: 'siBrochure',
    },
    { gives: 'verdict', text: 'A share above 0.1 % means a leak; less cannot be told from the doubt about the sound filter.' },
    { gives: 'equivalentDiameter', tex: '[[equivalentDiameter]] = 2\\sqrt{A/\\pi}' },
    {
      gives: 'leakArea',
      tex: '[[leakArea]] = \\frac{[[leakShare]]\\,[[volumeFlow]]}{[[dischargeCoefficient]]\\sqrt{2\\,[[pressureDrop]]/[[gasDensity]]}}',
      source: 'orifice',
    },
  ],
  assumptions: [
    { code: 'same_state', text: 'Both counts are for the same state and dilution.' },
    { code: 'no_filtering_in_leak', text: 'Nothing is filtered in the leak, and it lies between the two faces of the filter.' },
  ],
  limits: [
    { code: 'order_of_magnitude', text: 'The raw particle number varies tenfold between engines: read the area as an order of magnitude.' },
  ],
  cautions: [cautions.fumes, cautions.sensorFirst],
  sources: {
    balance: { type: 'derivation', title: 'Particle balance over a filter with a by-pass', mark: 'read' },
    orifice: {
      type: 'book',
      title: 'Orifice flow, Q = C A √(2Δp/ρ), C = 0.61 for a sharp edge (fluid mechanics textbooks)',
      mark: 'from memory',
    },
    siBrochure,
    cfr1065,
    practice: commonPractice('Soot in the tail pipe and black channels on the outlet face point to a crack'),
  },
  compute(input, { constants, warn }) {
    const penetration = input.particlesBehind / input.particlesBefore;
    if (penetration > 1)
      return inconsistentInputs('more particles behind the filter than before it', ['particlesBehind'], ['particlesBefore']);
    const share = Math.max(0, leakShare({ penetration, soundEfficiency: input.soundEfficiency }));
    const rho = gasDensity(
      { pressure: input.gasPressure, temperature: input.gasTemperature, molarMass: constants.airMolarMass },
      constants.gasConstant,
    );
    const hole = leakArea({
      leakFlow: share * input.volumeFlow,
      pressureDrop: input.pressureDrop,
      density: rho,
      dischargeCoefficient: input.dischargeCoefficient,
    });
    warn(
      'order_of_magnitude',
      'Raw particle number and efficiency of the sound filter are usually not measured: the area is an order of magnitude.',
    );
    return {
      penetration,
      leakShare: share,
      gasDensity: rho,
      leakArea: hole,
      equivalentDiameter: 2 * Math.sqrt(hole / Math.PI),
      verdict: input.particlesBehind === 0 ? 'nothing-counted' : share > smallestLeak ? 'leak' : 'tight',
    };
  },
});
