import * as wf from '@wallflow/calculation';
import { density, dynamicViscosity, length, ratio, velocity } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { sutherlandViscosity } from '../../gas/dynamic-viscosity/kernel.js';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { gasConstant, sutherlandConstants, sutherlandFormula } from '../../vocabulary/constants.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { massBalance, pipeRegimes, soundOfIdealGas } from '../sources.js';
import { pipeReynoldsNumber, pipeVelocity, soundSpeed } from './kernel.js';

export const pipeFlowCalculation = wf.defineCalculation({
  id: 'pipe-flow',
  subject: 'flow',
  title: 'Gas velocity in the exhaust pipe',
  purpose: 'How fast does the gas run in the pipe, is it turbulent, and is it near the speed of sound?',
  keywords: 'velocity, Reynolds number, Mach number, pipe',
  method: 'mean velocity of an ideal gas',
  inputs: {
    exhaustMassFlow: exhaustMassFlowField,
    gasTemperature: gasTemperatureField,
    gasPressure: gasPressureField,
    pipeDiameter: wf.quantity(length, {
      symbol: 'd',
      label: 'Inside diameter of the pipe',
      range: '2 mm <= x <= 2 m',
      usual: ['20 mm', '400 mm', 'exhaust pipes of road and machine diesels'],
      example: '60 mm',
      units: ['mm', 'in'],
    }),
    molarMass: molarMassField,
    gasViscosity: wf.optional(
      wf.quantity(dynamicViscosity, {
        symbol: '\\mu_g',
        label: 'Viscosity of the gas, if known',
        description: "Leave blank to use that of air by Sutherland's formula.",
        range: '1 < x <= 200 uPa.s',
        usual: ['15 uPa.s', '60 uPa.s', 'air and exhaust from −40 °C to 1500 °C'],
        example: '26.0 uPa.s',
        units: ['uPa.s', 'Pa.s'],
      }),
    ),
    heatCapacityRatio: wf.quantity(ratio, {
      symbol: '\\gamma',
      label: 'Ratio of specific heats',
      range: '1 < x <= 1.67',
      usual: ['1.28', '1.41', 'air and exhaust from cold to 1000 °C'],
      example: '1.36',
      default: ['1.385', 'raw exhaust by 40 CFR 1065.640(c)(5)(ii); at 600 °C it is about 1.32, which makes sound 2 % slower'],
    }),
  },
  intermediates: {
    density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', digits: 5, units: ['kg/m3'] }),
    viscosity: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', digits: 5, units: ['uPa.s', 'Pa.s'] }),
    soundSpeed: wf.quantityOutput(velocity, { symbol: 'c', label: 'Speed of sound', digits: 5, units: ['m/s'] }),
  },
  outputs: {
    velocity: wf.quantityOutput(velocity, { symbol: 'u', label: 'Mean gas velocity', digits: 4, units: ['m/s', 'km/h'] }),
    reynoldsNumber: wf.quantityOutput(ratio, { symbol: 'Re', label: 'Reynolds number', digits: 4 }),
    machNumber: wf.quantityOutput(ratio, { symbol: 'Ma', label: 'Mach number', digits: 4 }),
    flowRegime: wf.choiceOutput({
      label: 'Kind of flow',
      options: { laminar: 'laminar', transition: 'between laminar and turbulent', turbulent: 'turbulent' },
    }),
  },
  constants: {
    gasConstant,
    ...sutherlandConstants,
  },
  answer: 'machNumber',
  steps: [
    wf.formula('density', 'gasPressure * molarMass / (gasConstant * gasTemperature)', siBrochure),
    wf.formula('velocity', '4 * exhaustMassFlow / (pi * pipeDiameter ^ 2 * density)', massBalance),
    wf.cases('viscosity', {
      'known(gasViscosity)': 'gasViscosity',
      otherwise: wf.formula('viscosity', sutherlandFormula, cfr1065, '1065.640 Table 4'),
    }),
    wf.formula('reynoldsNumber', '4 * exhaustMassFlow / (pi * pipeDiameter * viscosity)', cfr1065, '1065.640(d)(1)'),
    wf.verdict(
      'flowRegime',
      { laminar: 'reynoldsNumber < 2300', turbulent: 'reynoldsNumber > 4000', transition: 'otherwise' },
      pipeRegimes,
    ),
    wf.formula('soundSpeed', 'sqrt(heatCapacityRatio * gasConstant * gasTemperature / molarMass)', soundOfIdealGas),
    wf.formula('machNumber', 'velocity / soundSpeed'),
  ],
  assumptions: { full_pipe: 'A round pipe that the gas fills evenly; right after a bend or a turbine it does not.' },
  limits: { pulses: 'Mean values: close to the engine the flow pulses and its peaks are much higher.' },
  cautions: [cautions.hotExhaust],
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
      flowRegime: reynoldsNumber < 2300 ? 'laminar' : reynoldsNumber > 4000 ? 'turbulent' : 'transition',
    };
  },
});
