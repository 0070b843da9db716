import * as wf from '@wallflow/calculation';
import { dynamicViscosity, length, permeability, ratio, temperature } from '@wallflow/units';
import { meanFreePath } from '../../gas/mean-free-path/kernel.js';
import { konstandopoulos2000, konstandopoulos2008 } from '../../sources.js';
import { filterConstants, slipReferencePressure } from '../constants.js';
import { airViscosity, gasViscosity as gas } from '../gas-steps.js';
import { densityInputs, gasInputs } from '../inputs.js';
import { resolveViscosity } from '../resolve.js';
import { knudsenNumber, slipCorrectedPermeability, slipFactor } from './kernel.js';

const { gasTemperature, gasViscosity } = gasInputs;
const { gasPressure } = densityInputs;

const path = (symbol: string, label: string) => wf.quantityOutput(length, { symbol, label, units: ['nm', 'um'] });
const freePath = (viscosity: string, pressure: string, temperature: string) =>
  `${viscosity} / ${pressure} * sqrt(pi * gasConstant * ${temperature} / (2 * airMolarMass))`;
const slip = (knudsen: string) => `1 + ${knudsen} * (1.257 + 0.4 * exp(-1.1 / ${knudsen}))`;

export const slipCorrectionCalculation = wf.defineCalculation({
  id: 'slip-correction',
  subject: 'filter',
  title: 'Gas slip in a fine layer',
  purpose: 'How much more permeable is a soot cake or a fine coating to hot gas than it was where its permeability was found?',
  keywords: 'slip, Cunningham, Knudsen, mean free path, permeability',
  method: 'Cunningham factor on the size of grains or pores',
  inputs: {
    gasTemperature,
    gasPressure,
    gasViscosity,
    grainDiameter: wf.quantity(length, {
      symbol: 'd',
      label: 'Size of pores or grains',
      description: 'Of the pores or grains of a coating; of the primary particles of a soot cake.',
      range: '1 nm <= x <= 1 mm',
      usual: ['10 nm', '30 um', 'from primary soot particles to the pores of a bare wall'],
      example: '25 nm',
      units: ['nm', 'um'],
    }),
    knownPermeability: wf.quantity(permeability, {
      symbol: 'k_1',
      label: 'Permeability where it was found',
      range: '1e-17 <= x <= 1e-10 m2',
      usual: ['1e-16 m2', '1e-12 m2', 'from dense coatings to bare walls'],
      example: '3.2e-14 m2',
    }),
    knownTemperature: wf.quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature where it was found',
      range: '-40 <= x <= 1200 °C',
      usual: [
        '0 °C',
        '750 °C',
        {
          below: 'the gas of an engine that runs is warmer',
          above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
        },
      ],
      example: '280 °C',
    }),
  },
  intermediates: {
    ...gas.outputs,
    knownViscosity: wf.quantityOutput(dynamicViscosity, {
      symbol: '\\mu_1',
      label: 'Viscosity where it was found',
      units: ['uPa.s', 'Pa.s'],
    }),
    meanFreePath: path('\\lambda', 'Mean free path'),
    knownFreePath: path('\\lambda_1', 'Mean free path where it was found'),
    knudsenNumber: wf.quantityOutput(ratio, { symbol: 'Kn', label: 'Knudsen number', digits: 3 }),
    knownKnudsenNumber: wf.quantityOutput(ratio, { symbol: 'Kn_1', label: 'Knudsen number where it was found', digits: 3 }),
    slipFactor: wf.quantityOutput(ratio, { symbol: 'SCF', label: 'Slip factor', digits: 4 }),
    knownSlipFactor: wf.quantityOutput(ratio, { symbol: 'SCF_1', label: 'Slip factor where it was found', digits: 4 }),
  },
  outputs: {
    permeability: wf.quantityOutput(permeability, { symbol: 'k', label: 'Permeability to this gas', units: ['m2', 'um2'] }),
    dropRatio: wf.quantityOutput(ratio, {
      symbol: '\\Delta p/\\Delta p_1',
      label: 'Pressure drop ÷ pressure drop where it was found, at the same mass flow',
      digits: 3,
    }),
  },
  constants: { ...filterConstants, slipReferencePressure },
  answer: 'dropRatio',
  steps: [
    gas.step,
    airViscosity('knownViscosity', 'knownTemperature'),
    wf.formula('meanFreePath', freePath('viscosity', 'gasPressure', 'gasTemperature'), konstandopoulos2000, 'App. II, Eq. A17'),
    wf.formula(
      'knownFreePath',
      freePath('knownViscosity', 'slipReferencePressure', 'knownTemperature'),
      konstandopoulos2000,
      'App. II, Eq. A17',
    ),
    wf.formula('knudsenNumber', '2 * meanFreePath / grainDiameter', konstandopoulos2000, 'App. II, Eq. A18'),
    wf.formula('knownKnudsenNumber', '2 * knownFreePath / grainDiameter', konstandopoulos2000, 'App. II, Eq. A18'),
    wf.formula('slipFactor', slip('knudsenNumber'), konstandopoulos2000, 'App. II, Eqs A19 and A20'),
    wf.formula('knownSlipFactor', slip('knownKnudsenNumber'), konstandopoulos2000, 'App. II, Eqs A19 and A20'),
    wf.formula('permeability', 'knownPermeability * slipFactor / knownSlipFactor', konstandopoulos2008, 'Eq. 13'),
    wf.formula(
      'dropRatio',
      'viscosity * gasTemperature / (permeability * gasPressure) / (knownViscosity * knownTemperature / (knownPermeability * slipReferencePressure))',
      undefined,
      undefined,
      'At the same mass flow the drop grows with viscosity and temperature, and falls with permeability and pressure.',
    ),
  ],
  assumptions: { known_at_sea_level: 'The known permeability was found at 101.325 kPa with a gas like air.' },
  limits: {
    bare_wall: 'In a bare wall with pores of 10 µm or more slip is negligible.',
    air: 'One mean free path for air; the fixed 65 nm that is sometimes used is right at room temperature only.',
  },
  compute(input, { constants }) {
    const viscosity = resolveViscosity(input, constants);
    const knownViscosity = resolveViscosity({ gasTemperature: input.knownTemperature }, constants);
    const pathOf = (state: Parameters<typeof meanFreePath>[0]) => meanFreePath(state, constants.airMolarMass, constants.gasConstant);
    const path = pathOf({ viscosity, pressure: input.gasPressure, temperature: input.gasTemperature });
    const knownFreePath = pathOf({
      viscosity: knownViscosity,
      pressure: constants.slipReferencePressure,
      temperature: input.knownTemperature,
    });
    const [now, before] = [path, knownFreePath].map((one) => knudsenNumber(one, input.grainDiameter)) as [number, number];
    const corrected = slipCorrectedPermeability(input.knownPermeability, input.grainDiameter, knownFreePath, path);
    const resistance = (viscosity * input.gasTemperature) / (corrected * input.gasPressure);
    const knownResistance = (knownViscosity * input.knownTemperature) / (input.knownPermeability * constants.slipReferencePressure);
    return {
      viscosity,
      knownViscosity,
      meanFreePath: path,
      knownFreePath,
      knudsenNumber: now,
      knownKnudsenNumber: before,
      slipFactor: slipFactor(now),
      knownSlipFactor: slipFactor(before),
      permeability: corrected,
      dropRatio: resistance / knownResistance,
    };
  },
});
