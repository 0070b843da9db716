import { choiceOutput, constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { density, dynamicViscosity, length, molarHeatCapacity, ratio, temperature, velocity } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant } from '../../gas/constants.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { sutherlandAir, sutherlandViscosity } from '../../gas/dynamic-viscosity/kernel.js';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { massBalance, pipeRegimes, soundOfIdealGas } from '../sources.js';
import { pipeReynoldsNumber, pipeVelocity, soundSpeed } from './kernel.js';

const sutherland = (label: string, symbol: string) => ({ label, symbol, source: 'cfr1065' });

export const pipeFlowCalculation = defineCalculation({
  id: 'pipe-flow',
  version: '1.0.0',
  subject: 'flow',
  title: 'Gas velocity in the exhaust pipe',
  purpose: 'How fast does the gas run in the pipe, is it turbulent, and is it near the speed of sound?',
  usedBy: ['developer', 'trainer'],
  keywords: ['velocity', 'Reynolds number', 'Mach number', 'pipe'],
  method: 'mean velocity of an ideal gas',
  inputs: z.strictObject({
    exhaustMassFlow: exhaustMassFlowField,
    gasTemperature: gasTemperatureField,
    gasPressure: gasPressureField,
    pipeDiameter: quantity(length, {
      symbol: 'd',
      label: 'Inside diameter of the pipe',
      min: '2 mm',
      max: '2 m',
      usual: ['20 mm', '400 mm'],
      usualReason: 'exhaust pipes of road and machine diesels',
      example: '60 mm',
      units: ['mm', 'in'],
    }),
    molarMass: molarMassField,
    gasViscosity: quantity(dynamicViscosity, {
      symbol: '\\mu_g',
      label: 'Dynamic viscosity of the gas, if known',
      description: "Left out, that of air by Sutherland's formula.",
      above: '1 uPa.s',
      max: '200 uPa.s',
      usual: ['15 uPa.s', '60 uPa.s'],
      usualReason: 'air and exhaust from −40 °C to 1500 °C',
      example: '26.3 uPa.s',
      units: ['uPa.s', 'Pa.s'],
    }).optional(),
    heatCapacityRatio: quantityWithDefault(ratio, {
      symbol: '\\gamma',
      label: 'Ratio of specific heats',
      above: '1',
      max: '1.67',
      usual: ['1.28', '1.41'],
      usualReason: 'air and exhaust from cold to 1000 °C',
      example: '1.36',
      default: '1.385',
      defaultReason: 'raw exhaust by 40 CFR 1065.640(c)(5)(ii); at 600 °C it is about 1.32, which makes sound 2 % slower',
    }),
  }),
  intermediates: {
    density: quantityOutput(density, { symbol: '\\rho', label: 'Density', digits: 5, units: ['kg/m3'] }),
    viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Dynamic viscosity', digits: 5, units: ['uPa.s', 'Pa.s'] }),
    soundSpeed: quantityOutput(velocity, { symbol: 'c', label: 'Speed of sound', digits: 5, units: ['m/s'] }),
  },
  outputs: {
    velocity: quantityOutput(velocity, { symbol: 'u', label: 'Mean gas velocity', digits: 4, units: ['m/s', 'km/h'] }),
    reynoldsNumber: quantityOutput(ratio, { symbol: 'Re', label: 'Reynolds number', digits: 4 }),
    machNumber: quantityOutput(ratio, { symbol: 'Ma', label: 'Mach number', digits: 4 }),
    regime: choiceOutput({
      label: 'Kind of flow',
      options: { laminar: 'laminar', transition: 'between laminar and turbulent', turbulent: 'turbulent' },
    }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    referenceViscosity: constant(dynamicViscosity, sutherlandAir.referenceViscosity, sutherland('Viscosity of air at 273 K', '\\mu_{ref}')),
    referenceTemperature: constant(temperature, sutherlandAir.referenceTemperature, sutherland('Reference temperature', 'T_{ref}')),
    sutherlandTemperature: constant(temperature, sutherlandAir.sutherlandTemperature, sutherland('Sutherland temperature of air', 'S')),
  },
  steps: [
    {
      gives: 'density',
      tex: '[[density]] = \\frac{[[gasPressure]]\\,[[molarMass]]}{[[gasConstant]]\\,[[gasTemperature]]}',
      source: 'siBrochure',
    },
    {
      gives: 'velocity',
      tex: '[[velocity]] = \\frac{4\\,[[exhaustMassFlow]]}{\\pi\\,[[pipeDiameter]]^2\\,[[density]]}',
      source: 'massBalance',
    },
    { gives: 'viscosity', text: "As given, else air by Sutherland's formula.", source: 'cfr1065', locator: '1065.640 Table 4' },
    {
      gives: 'reynoldsNumber',
      tex: '[[reynoldsNumber]] = \\frac{4\\,[[exhaustMassFlow]]}{\\pi\\,[[pipeDiameter]]\\,[[viscosity]]}',
      source: 'cfr1065',
      locator: '1065.640(d)(1)',
    },
    { gives: 'regime', text: 'Laminar below a Reynolds number of 2300, turbulent above 4000.', source: 'pipeRegimes' },
    {
      gives: 'soundSpeed',
      tex: '[[soundSpeed]] = \\sqrt{\\frac{[[heatCapacityRatio]]\\,[[gasConstant]]\\,[[gasTemperature]]}{[[molarMass]]}}',
      source: 'soundOfIdealGas',
    },
    { gives: 'machNumber', tex: '[[machNumber]] = \\frac{[[velocity]]}{[[soundSpeed]]}' },
  ],
  assumptions: [{ code: 'full_pipe', text: 'A round pipe that the gas fills evenly; right after a bend or a turbine it does not.' }],
  limits: [{ code: 'pulses', text: 'Mean values: close to the engine the flow pulses and its peaks are much higher.' }],
  cautions: [cautions.hotExhaust],
  sources: { cfr1065, massBalance, siBrochure, pipeRegimes, soundOfIdealGas },
  compute(input, { constants, warn }) {
    const { exhaustMassFlow, gasTemperature, gasPressure, pipeDiameter, molarMass } = input;
    const rho = gasDensity({ pressure: gasPressure, temperature: gasTemperature, molarMass }, constants.gasConstant);
    const viscosity = input.gasViscosity ?? sutherlandViscosity(gasTemperature, constants);
    const reynoldsNumber = pipeReynoldsNumber(exhaustMassFlow, pipeDiameter, viscosity);
    const speed = pipeVelocity({ massFlow: exhaustMassFlow, density: rho, diameter: pipeDiameter });
    const sound = soundSpeed(gasTemperature, input.heatCapacityRatio, molarMass, constants.gasConstant);
    if (speed >= sound) {
      warn('choked', 'Faster than sound: not possible in a plain pipe. Check the flow, the diameter and the pressure.', ['pipeDiameter']);
    } else if (speed > 0.3 * sound) {
      warn('compressible', 'Above Mach 0.3 density changes along the pipe; formulas for constant density are then off by more than 5 %.');
    }
    return {
      density: rho,
      viscosity,
      soundSpeed: sound,
      velocity: speed,
      reynoldsNumber,
      machNumber: speed / sound,
      regime: reynoldsNumber < 2300 ? 'laminar' : reynoldsNumber > 4000 ? 'turbulent' : 'transition',
    };
  },
});
