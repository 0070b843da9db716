import * as wf from '@wallflow/calculation';
import {
  absolutePressure,
  area,
  density,
  differentialPressure,
  fraction,
  length,
  particleNumberConcentration,
  ratio,
  temperature,
  volumeFlow,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { siBrochure } from '../../sources.js';
import { airMolarMass, gasConstant } from '../../vocabulary/constants.js';
import { leakArea, leakShare } from './kernel.js';

/** Share of by-passed gas below which the uncertainty of a sound filter's efficiency hides a leak. */
const smallestLeak = 0.001;

const balance: wf.Source = { type: 'derivation', title: 'Particle balance over a filter with a by-pass', mark: 'read' };
const orifice: wf.Source = {
  type: 'book',
  title: 'Orifice flow, Q = C A √(2Δp/ρ), C = 0.61 for a sharp edge (fluid mechanics textbooks)',
  mark: 'from memory',
};
const practice = wf.commonPractice('Soot in the tail pipe and black channels on the outlet face point to a crack');

export const filterLeakAreaCalculation = wf.defineCalculation({
  id: 'filter-leak-area',
  subject: 'smoke',
  title: 'Size of a leak in the filter',
  purpose: 'How large is the hole or crack that would explain the particle count after the filter?',
  keywords: 'crack, leak, by-pass, DPF, PN, particle number, filtration efficiency',
  method: 'particle balance for the by-pass share, orifice flow for the area',
  inputs: {
    particlesBefore: wf.quantity(particleNumberConcentration, {
      symbol: 'N_1',
      label: 'Particle number before the filter',
      description: 'A warm diesel at idle gives about ten million per cubic centimetre, from memory; measure it if you can.',
      range: '1000 < x <= 1000000000 1/cm3',
      usual: ['1000000 1/cm3', '100000000 1/cm3', 'usual raw diesel exhaust, from memory'],
      example: '10000000 1/cm3',
      units: ['1/cm3'],
    }),
    particlesAfter: wf.quantity(particleNumberConcentration, {
      symbol: 'N_2',
      label: 'Particle number after the filter',
      range: '0 <= x <= 1000000000 1/cm3',
      example: '600000 1/cm3',
      units: ['1/cm3'],
    }),
    soundEfficiency: wf.quantity(fraction, {
      symbol: 'E',
      label: 'Efficiency of the filter where it is sound',
      range: '50 <= x <= 99.9999 %',
      units: ['%'],
      default: ['99.9 %', 'wall-flow filter with a soot cake, from memory; less when freshly cleaned'],
    }),
    exhaustVolumeFlow: wf.quantity(volumeFlow, {
      symbol: '\\dot V',
      label: 'Exhaust volume flow',
      description: 'At the temperature and pressure in the filter.',
      range: '0 < x <= 10000 m3/h',
      example: '60 m3/h',
      units: ['m3/h'],
    }),
    pressureDrop: wf.quantity(differentialPressure, {
      symbol: '\\Delta p',
      label: 'Pressure drop',
      range: '0.1 < x <= 1000 mbar',
      example: '6 mbar',
      units: ['mbar', 'kPa'],
    }),
    gasTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature',
      range: '-20 <= x <= 900 °C',
      example: '130 °C',
      units: ['degC'],
    }),
    gasPressure: wf.quantity(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure of the gas',
      range: '50 <= x <= 400 kPa',
      example: '101.3 kPa',
      units: ['kPa', 'mbar'],
      default: ['101.325 kPa', 'sea level; 1000 m of altitude change the area by 6 %'],
    }),
    dischargeCoefficient: wf.quantity(ratio, {
      symbol: 'C',
      label: 'Discharge coefficient',
      range: '0.3 <= x <= 1',
      units: ['1'],
      default: ['0.61', 'sharp-edged hole, textbook value'],
    }),
  },
  intermediates: {
    penetration: wf.quantityOutput(fraction, { symbol: 'P', label: 'Share of the particles that gets through', digits: 3, units: ['%'] }),
    leakShare: wf.quantityOutput(fraction, {
      symbol: '\\varphi',
      label: 'Share of the gas that by-passes the filter',
      digits: 3,
      units: ['%'],
    }),
    density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', digits: 4, units: ['kg/m3'] }),
  },
  outputs: {
    equivalentDiameter: wf.quantityOutput(length, {
      symbol: 'd',
      label: 'Diameter of a round hole of that area',
      digits: 2,
      units: ['mm'],
    }),
    verdict: wf.choiceOutput({
      label: 'Reading',
      options: {
        tight: 'as tight as a sound filter',
        leak: 'gas by-passes the filter',
        'nothing-counted': 'not proven: nothing at all was counted after the filter',
      },
    }),
    leakArea: wf.quantityOutput(area, { symbol: 'A', label: 'Area of the leak', digits: 2, units: ['mm2'] }),
  },
  constants: { gasConstant, airMolarMass },
  answer: 'leakArea',
  steps: [
    wf.formula('penetration', 'particlesAfter / particlesBefore'),
    wf.formula('leakShare', 'max(0, (penetration - (1 - soundEfficiency)) / soundEfficiency)', balance),
    wf.formula('density', 'gasPressure * airMolarMass / (gasConstant * gasTemperature)', siBrochure),
    wf.formula('leakArea', 'leakShare * exhaustVolumeFlow / (dischargeCoefficient * sqrt(2 * pressureDrop / density))', orifice),
    wf.formula('equivalentDiameter', '2 * sqrt(leakArea / pi)'),
    wf.verdict(
      'verdict',
      { 'nothing-counted': 'particlesAfter == 0', leak: 'leakShare > 0.001', tight: 'otherwise' },
      undefined,
      undefined,
      'Smaller leaks are hidden by the uncertainty of an intact filter.',
    ),
  ],
  assumptions: {
    same_state: 'Both counts are for the same state and dilution.',
    no_filtering_in_leak: 'Nothing is filtered in the leak, and it lies between the two faces of the filter.',
  },
  limits: { order_of_magnitude: 'The raw particle number varies tenfold between engines: read the area as an order of magnitude.' },
  cautions: [cautions.fumes, cautions.sensorFirst],
  sources: [practice],
  compute(input, { constants, warn }) {
    const penetration = input.particlesAfter / input.particlesBefore;
    if (penetration > 1)
      return wf.inconsistentInputs('more particles after the filter than before it', ['particlesAfter'], ['particlesBefore']);
    const share = Math.max(0, leakShare({ penetration, soundEfficiency: input.soundEfficiency }));
    const rho = gasDensity(
      { pressure: input.gasPressure, temperature: input.gasTemperature, molarMass: constants.airMolarMass },
      constants.gasConstant,
    );
    const hole = leakArea({
      leakFlow: share * input.exhaustVolumeFlow,
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
      density: rho,
      leakArea: hole,
      equivalentDiameter: 2 * Math.sqrt(hole / Math.PI),
      verdict: input.particlesAfter === 0 ? 'nothing-counted' : share > smallestLeak ? 'leak' : 'tight',
    };
  },
});
