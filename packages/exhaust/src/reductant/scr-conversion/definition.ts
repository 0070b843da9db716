import { defineCalculation, noSolution, quantity, quantityOutput, quantityWithDefault, tableOutput } from '@wallflow/calculation';
import { fraction, moleFraction, ratio, spaceVelocity, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { scrPlugFlow } from '../scr-model/plug-flow.js';
import { scrDynamics2000, teachingModelSource } from '../scr-model/sources.js';
import { scrReactions } from '../sources.js';

/** Temperatures of the curve, K. */
const curve = [150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 550].map((celsius) => celsius + 273.15);

export const scrConversionCalculation = defineCalculation({
  id: 'scr-conversion',
  version: '1.0.0',
  subject: 'reductant',
  title: 'SCR catalyst: conversion and slip (teaching model)',
  purpose: 'How do temperature, space velocity and ammonia ratio decide what an SCR catalyst converts and lets slip?',
  usedBy: ['trainer', 'developer'],
  keywords: ['SCR', 'conversion', 'ammonia slip', 'space velocity', 'teaching model'],
  method: 'plug flow with a teaching model of the reaction, not a real catalyst',
  inputs: z.strictObject({
    temperature: quantity(temperature, {
      symbol: 'T',
      label: 'Catalyst temperature',
      min: '100 °C',
      max: '600 °C',
      usual: ['150 °C', '550 °C'],
      usualReason: 'the teaching model was shaped for this range',
      example: '220 °C',
      units: ['degC'],
    }),
    spaceVelocity: quantity(spaceVelocity, {
      symbol: 'SV',
      label: 'Space velocity at 0 °C and 101.325 kPa',
      min: '1000 1/h',
      max: '300000 1/h',
      usual: ['10000 1/h', '100000 1/h'],
      usualReason: 'usual for SCR catalysts, from memory',
      example: '40000 1/h',
      units: ['1/h'],
    }),
    noxMoleFraction: quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx before the catalyst',
      above: '1 ppm',
      max: '5000 ppm',
      example: '400 ppm',
      units: ['ppm'],
    }),
    dosedRatio: quantity(ratio, { symbol: '\\alpha', label: 'Ammonia-to-NOx ratio', min: '0', max: '3', example: '1' }),
    nitrogenDioxideShare: quantityWithDefault(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      min: '0 %',
      max: '100 %',
      example: '40 %',
      units: ['%'],
      default: '40 %',
      defaultReason: 'behind a warm oxidation catalyst; common practice, no source',
    }),
    crossSensitivity: quantityWithDefault(ratio, {
      symbol: 'K',
      label: 'Cross-sensitivity of the NOx sensor to ammonia',
      min: '0',
      max: '1.5',
      example: '0.8',
      default: '0.8',
      defaultReason: 'between 0.5 and 1.0, from memory',
    }),
  }),
  intermediates: {
    ammoniaIn: quantityOutput(moleFraction, { symbol: 'x_{NH_3}', label: 'Ammonia before the catalyst', digits: 4, units: ['ppm'] }),
    burnt: quantityOutput(moleFraction, { symbol: 'x_b', label: 'Ammonia that burns', digits: 3, units: ['ppm'] }),
    noxOut: quantityOutput(moleFraction, { symbol: 'x_2', label: 'NOx behind the catalyst', digits: 3, units: ['ppm'] }),
    profile: tableOutput({
      label: 'Along the catalyst',
      columns: {
        position: quantityOutput(fraction, { symbol: 'z', label: 'Position', digits: 3, units: ['%'] }),
        nox: quantityOutput(moleFraction, { symbol: 'x_{NOx}', label: 'NOx', digits: 4, units: ['ppm'] }),
        ammonia: quantityOutput(moleFraction, { symbol: 'x_{NH_3}', label: 'Ammonia', digits: 4, units: ['ppm'] }),
      },
      plot: { x: 'position', y: ['nox', 'ammonia'] },
    }),
  },
  outputs: {
    ammoniaSlip: quantityOutput(moleFraction, { symbol: 'x_s', label: 'Ammonia slip', digits: 3, units: ['ppm'] }),
    sensorReading: quantityOutput(moleFraction, { symbol: 'x_r', label: 'What a NOx sensor behind would read', digits: 3, units: ['ppm'] }),
    byTemperature: tableOutput({
      label: 'Over temperature',
      columns: {
        temperature: quantityOutput(temperature, { symbol: 'T', label: 'Temperature', digits: 3, units: ['degC'] }),
        conversion: quantityOutput(fraction, { symbol: '\\eta', label: 'Conversion', digits: 3, units: ['%'] }),
        slipShare: quantityOutput(fraction, { symbol: 's', label: 'Slip over NOx before the catalyst', digits: 3, units: ['%'] }),
      },
      plot: { x: 'temperature', y: ['conversion', 'slipShare'] },
    }),
    conversion: quantityOutput(fraction, { symbol: '\\eta', label: 'Conversion', digits: 4, units: ['%'] }),
  },
  constants: {},
  steps: [
    { gives: 'ammoniaIn', tex: '[[ammoniaIn]] = [[dosedRatio]]\\,[[noxMoleFraction]]' },
    {
      gives: 'noxOut',
      tex: '\\frac{dx_{NOx}}{dz} = -\\frac{k(T,\\theta)\\,x_{NOx}}{SV},\\qquad \\theta = \\frac{K_a\\,x_{NH_3}}{1+K_a\\,x_{NH_3}}',
      source: 'scrDynamics2000',
    },
    {
      gives: 'ammoniaSlip',
      tex: '\\frac{dx_{NH_3}}{dz} = -\\frac{s\\,k(T,\\theta)\\,x_{NOx}+k_{ox}\\,x_{NH_3}}{SV}',
      source: 'teachingModelSource',
    },
    { gives: 'burnt', text: 'Ammonia that is neither used by NOx nor left at the end.' },
    { gives: 'sensorReading', tex: '[[sensorReading]] = [[noxOut]]+[[crossSensitivity]]\\,[[ammoniaSlip]]' },
    { gives: 'byTemperature', text: 'The same with other temperatures.' },
    { gives: 'conversion', tex: '[[conversion]] = 1-\\frac{[[noxOut]]}{[[noxMoleFraction]]}', source: 'scrReactions' },
  ],
  assumptions: [
    { code: 'teaching_model', text: 'Teaching model: the shape is right, the numbers belong to no real catalyst.' },
    { code: 'steady_plug_flow', text: 'Steady, evenly warm, no back-mixing; the ammonia is evenly mixed and its store is full.' },
  ],
  limits: [
    { code: 'no_verdict', text: 'Not for judging a vehicle. It shows why a cold, starved or over-dosed catalyst behaves as it does.' },
  ],
  cautions: [cautions.noDefeat],
  sources: { scrDynamics2000, teachingModelSource, scrReactions },
  precision: 1e-6,
  dimensional: 'integrated with a step-size tolerance; rate constants held in 1/s and K',
  compute(input, { warn }) {
    warn('teaching_model', 'Teaching model: these numbers belong to no real catalyst.');
    const found = scrPlugFlow(input);
    const rows = curve.map((at) => ({ at, result: scrPlugFlow({ ...input, temperature: at }, 2) }));
    if (found === undefined) return noSolution('the integration along the catalyst failed');
    return {
      ammoniaIn: input.dosedRatio * input.noxMoleFraction,
      noxOut: found.nox,
      burnt: found.burnt,
      ammoniaSlip: found.ammonia,
      sensorReading: found.nox + input.crossSensitivity * found.ammonia,
      profile: found.profile.map(({ position, nox, ammonia }) => ({ position, nox, ammonia })),
      byTemperature: rows.flatMap(({ at, result }) =>
        result === undefined
          ? []
          : [{ temperature: at, conversion: 1 - result.nox / input.noxMoleFraction, slipShare: result.ammonia / input.noxMoleFraction }],
      ),
      conversion: 1 - found.nox / input.noxMoleFraction,
    };
  },
});
