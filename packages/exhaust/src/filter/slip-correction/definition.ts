import { defineCalculation, quantity, quantityOutput } from '@wallflow/calculation';
import { length, permeability, ratio, temperature } from '@wallflow/units';
import * as z from 'zod';
import { meanFreePath } from '../../gas/mean-free-path/kernel.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { filterConstants, slipReferencePressure } from '../constants.js';
import { densityInputs, gasInputs } from '../inputs.js';
import { resolveSootPermeability, resolveViscosity } from '../resolve.js';
import { knudsenNumber, slipFactor } from './kernel.js';

const { gasTemperature, gasViscosity } = gasInputs;
const { gasPressure } = densityInputs;

export const slipCorrectionCalculation = defineCalculation({
  id: 'slip-correction',
  version: '1.0.0',
  subject: 'filter',
  title: 'Gas slip in a fine layer',
  purpose: 'How much more permeable is a soot cake or a fine coating to hot gas than it was where its permeability was found?',
  usedBy: ['developer', 'trainer'],
  keywords: ['slip', 'Cunningham', 'Knudsen', 'mean free path', 'permeability'],
  method: 'Cunningham factor on the size of grains or pores',
  inputs: z.strictObject({
    gasTemperature,
    gasPressure,
    gasViscosity,
    grainDiameter: quantity(length, {
      symbol: 'd',
      label: 'Size of pores or grains',
      description: 'Of the pores or grains of a coating; of the primary particles of a soot cake.',
      min: '1 nm',
      max: '1 mm',
      usual: ['10 nm', '30 um'],
      usualReason: 'from primary soot particles to the pores of a bare wall',
      example: '25 nm',
      units: ['nm', 'um'],
    }),
    knownPermeability: quantity(permeability, {
      symbol: 'k_1',
      label: 'Permeability where it was found',
      min: '1e-17 m2',
      max: '1e-10 m2',
      usual: ['1e-16 m2', '1e-12 m2'],
      usualReason: 'from dense coatings to bare walls',
      example: '3.2e-14 m2',
    }),
    knownTemperature: quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature where it was found',
      min: '-40 °C',
      max: '1200 °C',
      usual: ['0 °C', '750 °C'],
      usualReason: {
        below: 'the gas of an engine that runs is warmer',
        above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
      },
      example: '280 °C',
    }),
  }),
  intermediates: {
    meanFreePath: quantityOutput(length, { symbol: '\\lambda', label: 'Mean free path of the gas', units: ['nm', 'um'] }),
    knudsenNumber: quantityOutput(ratio, { symbol: 'Kn', label: 'Knudsen number', digits: 3 }),
    slipFactor: quantityOutput(ratio, { symbol: 'SCF', label: 'Slip factor', digits: 4 }),
  },
  outputs: {
    permeability: quantityOutput(permeability, { symbol: 'k', label: 'Permeability to this gas', units: ['m2', 'um2'] }),
    dropRatio: quantityOutput(ratio, {
      symbol: '\\Delta p/\\Delta p_1',
      label: 'Drop over the drop where it was found, at the same mass flow',
      digits: 3,
    }),
  },
  constants: { ...filterConstants, slipReferencePressure },
  steps: [
    {
      gives: 'meanFreePath',
      tex: '[[meanFreePath]] = \\frac{\\mu}{[[gasPressure]]}\\sqrt{\\frac{\\pi\\,[[gasConstant]]\\,[[gasTemperature]]}{2\\,[[airMolarMass]]}}',
      source: 'konstandopoulos2000',
      locator: 'App. II, Eq. A17',
    },
    {
      gives: 'knudsenNumber',
      tex: '[[knudsenNumber]] = \\frac{2\\,[[meanFreePath]]}{[[grainDiameter]]}',
      source: 'konstandopoulos2000',
      locator: 'App. II, Eq. A18',
    },
    {
      gives: 'slipFactor',
      tex: '[[slipFactor]] = 1+[[knudsenNumber]]\\left(1.257+0.4\\,e^{-1.1/[[knudsenNumber]]}\\right)',
      source: 'konstandopoulos2000',
      locator: 'App. II, Eqs A19 and A20',
    },
    {
      gives: 'permeability',
      text: 'The known permeability grows as the slip factor does: [[permeability]].',
      source: 'konstandopoulos2008',
      locator: 'Eq. 13',
    },
    {
      gives: 'dropRatio',
      text: 'At the same mass flow the drop grows as viscosity times temperature over permeability and pressure: [[dropRatio]].',
    },
  ],
  assumptions: [{ code: 'known_at_sea_level', text: 'The known permeability was found at 101.325 kPa with a gas like air.' }],
  limits: [
    { code: 'bare_wall', text: 'In a bare wall with pores of 10 µm or more slip is negligible.' },
    { code: 'air', text: 'One mean free path for air; a fixed 65 nm, as is sometimes used, is right at room temperature only.' },
  ],
  cautions: [],
  sources: { konstandopoulos2000, konstandopoulos2008, cfr1065, siBrochure },
  compute(input, { constants }) {
    const viscosity = resolveViscosity(input, constants);
    const knownViscosity = resolveViscosity({ gasTemperature: input.knownTemperature }, constants);
    const state = { viscosity, pressure: input.gasPressure, temperature: input.gasTemperature };
    const path = meanFreePath(state, constants.airMolarMass, constants.gasConstant);
    const knudsen = knudsenNumber(path, input.grainDiameter);
    const corrected = resolveSootPermeability(
      {
        sootPermeability: input.knownPermeability,
        sootPrimaryDiameter: input.grainDiameter,
        sootPermeabilityTemperature: input.knownTemperature,
        gasTemperature: input.gasTemperature,
        gasPressure: input.gasPressure,
      },
      viscosity,
      constants,
    );
    const now = (viscosity * input.gasTemperature) / (corrected * input.gasPressure);
    const before = (knownViscosity * input.knownTemperature) / (input.knownPermeability * constants.slipReferencePressure);
    return {
      meanFreePath: path,
      knudsenNumber: knudsen,
      slipFactor: slipFactor(knudsen),
      permeability: corrected,
      dropRatio: now / before,
    };
  },
});
