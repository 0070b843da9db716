import * as wf from '@wallflow/calculation';
import { dynamicViscosity, fraction, ratio, temperature } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { sutherlandConstants, sutherlandFormula } from '../../vocabulary/constants.js';
import { lemmonJacobsen2004 } from '../sources.js';
import { collisionIntegral, diluteAir, diluteAirViscosity, sutherlandViscosity } from './kernel.js';

const viscosityOutput = (symbol: string, label: string) =>
  wf.quantityOutput(dynamicViscosity, { symbol, label, digits: 5, units: ['uPa.s', 'Pa.s'] });

export const dynamicViscosityCalculation = wf.defineCalculation({
  id: 'dynamic-viscosity',
  subject: 'gas',
  title: 'Viscosity of exhaust gas as air',
  purpose: 'How viscous is the gas at its temperature, and how far do the two usual models differ there?',
  keywords: 'viscosity, Sutherland',
  method: "Sutherland's formula",
  inputs: {
    gasTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature',
      range: '170 <= x <= 1900 K',
      usual: ['170 K', '1000 K', "above 1000 K Sutherland's formula is more than 3.9 % below the dilute-gas correlation"],
      example: '206 °C',
    }),
    model: wf.choice({
      label: 'Model',
      options: { sutherland: 'Sutherland, 40 CFR 1065', 'dilute-gas': 'Dilute gas, Lemmon and Jacobsen 2004' },
      default: ['sutherland', 'the model of the test regulation, and the one published filter data were reduced with'],
    }),
  },
  intermediates: {
    sutherland: viscosityOutput('\\mu_S', 'Viscosity by Sutherland'),
    collisionIntegral: wf.quantityOutput(ratio, { symbol: '\\Omega', label: 'Collision integral', digits: 5 }),
    diluteGas: viscosityOutput('\\mu_0', 'Viscosity of the dilute gas'),
    modelDifference: wf.quantityOutput(fraction, { symbol: '\\delta', label: 'Sutherland against dilute gas', digits: 2, units: ['%'] }),
  },
  outputs: { viscosity: viscosityOutput('\\mu', 'Dynamic viscosity') },
  constants: {
    ...sutherlandConstants,
    moleculeEnergy: wf.constant(temperature, diluteAir.energy, {
      symbol: '\\varepsilon/k',
      label: 'Energy of the molecules of air, as a temperature',
      source: lemmonJacobsen2004,
    }),
  },
  steps: [
    wf.formula('sutherland', sutherlandFormula, cfr1065, '1065.640 Table 4'),
    wf.formula(
      'collisionIntegral',
      'exp(0.431 - 0.4623 * ln(gasTemperature / moleculeEnergy) + 0.08406 * ln(gasTemperature / moleculeEnergy) ^ 2 + 0.005341 * ln(gasTemperature / moleculeEnergy) ^ 3 - 0.00331 * ln(gasTemperature / moleculeEnergy) ^ 4)',
      lemmonJacobsen2004,
      'Eq. 3',
    ),
    wf.formula(
      'diluteGas',
      "as(0.0266958 * sqrt(28.9586 * gasTemperature) / (0.36 ^ 2 * collisionIntegral), 'uPa.s')",
      lemmonJacobsen2004,
      'Eq. 2, with the molar mass in g/mol and the size of the molecules in nm',
    ),
    wf.formula('modelDifference', 'sutherland / diluteGas - 1'),
    wf.cases('viscosity', { "model == 'sutherland'": 'sutherland', otherwise: 'diluteGas' }),
  ],
  assumptions: { as_air: 'The gas is taken as air; lean exhaust of the same temperature is a few per cent less viscous.' },
  limits: {
    dilute: 'Not for pressures above about 1.8 MPa.',
    model_difference: 'The default, Sutherland, is below the dilute-gas correlation by 0.3 % at 300 K, 1.8 % at 600 K and 3.9 % at 1000 K.',
  },
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const sutherland = sutherlandViscosity(input.gasTemperature, context.constants);
    const diluteGas = diluteAirViscosity(input.gasTemperature);
    context.method(input.model === 'sutherland' ? "Sutherland's formula" : 'dilute-gas correlation');
    const viscosity = input.model === 'sutherland' ? sutherland : diluteGas;
    return {
      sutherland,
      collisionIntegral: collisionIntegral(input.gasTemperature),
      diluteGas,
      modelDifference: sutherland / diluteGas - 1,
      viscosity,
    };
  },
});
