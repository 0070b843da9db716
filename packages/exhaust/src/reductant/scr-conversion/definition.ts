import * as wf from '@wallflow/calculation';
import { fraction, moleFraction, ratio, reactionRate, spaceVelocity, temperature } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { ammoniaPerNox, reactionShares } from '../reductant-demand/stoichiometry.js';
import { adsorptionConstants, equilibriumFormula, rateConstants } from '../scr-model/named-constants.js';
import { scrPlugFlow } from '../scr-model/plug-flow.js';
import { scrDynamics2000, teachingModelSource } from '../scr-model/sources.js';
import { ammoniaCoverage, arrhenius, noxRate, teachingScrModel } from '../scr-model/teaching-model.js';
import { scrReactions } from '../sources.js';

/** Temperatures of the curve, K. */
const curve = [150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 550].map((celsius) => celsius + 273.15);

const ppm = (symbol: string, label: string, digits = 3) => wf.quantityOutput(moleFraction, { symbol, label, digits, units: ['ppm'] });
const rate = (symbol: string, label: string) => wf.quantityOutput(reactionRate, { symbol, label, digits: 3, units: ['1/s'] });
const percent = (symbol: string, label: string, digits = 3) => wf.quantityOutput(fraction, { symbol, label, digits, units: ['%'] });
const warmed = (energy: string, reference: string) => `exp(-${energy} / gasConstant * (1 / catalystTemperature - 1 / ${reference}))`;
/** The ammonia that goes in is used up by NOx, burns, or comes out. */
const ammoniaBalance = 'ammoniaIn + ammoniaPerNox * noxAfter = ammoniaPerNox * noxBefore + burntAmmonia + ammoniaSlip';
const integrated = { within: 1e-6 };

export const scrConversionCalculation = wf.defineCalculation({
  id: 'scr-conversion',
  subject: 'reductant',
  title: 'SCR catalyst: conversion and slip (teaching model)',
  purpose: 'How do temperature, space velocity and ammonia ratio decide what an SCR catalyst converts and lets slip?',
  keywords: 'SCR, conversion, ammonia slip, space velocity, teaching model',
  method: 'plug flow with a teaching model of the reaction, not a real catalyst',
  inputs: {
    catalystTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Catalyst temperature',
      range: '100 <= x <= 600 °C',
      usual: ['150 °C', '550 °C', 'the teaching model was shaped for this range'],
      example: '220 °C',
      units: ['degC'],
    }),
    spaceVelocity: wf.quantity(spaceVelocity, {
      symbol: 'SV',
      label: 'Space velocity at 0 °C and 101.325 kPa',
      range: '1000 <= x <= 300000 1/h',
      usual: ['10000 1/h', '100000 1/h', 'usual for SCR catalysts, from memory'],
      example: '40000 1/h',
      units: ['1/h'],
    }),
    noxBefore: wf.quantity(moleFraction, {
      symbol: 'x_1',
      label: 'NOx before the catalyst',
      range: '1 < x <= 5000 ppm',
      example: '520 ppm',
      units: ['ppm'],
    }),
    dosedRatio: wf.quantity(ratio, {
      symbol: '\\alpha',
      label: 'Ammonia-to-NOx ratio that is dosed',
      range: '0 <= x <= 3',
      example: '0.9',
    }),
    nitrogenDioxideShare: wf.quantity(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      range: '0 <= x <= 100 %',
      units: ['%'],
      default: ['40 %', 'after a warm oxidation catalyst; common practice, no source'],
    }),
    crossSensitivity: wf.quantity(ratio, {
      symbol: 'K',
      label: 'Cross-sensitivity of the NOx sensor to ammonia',
      range: '0 <= x <= 1.5',
      default: ['0.8', 'between 0.5 and 1.0, from memory'],
    }),
  },
  intermediates: {
    ammoniaIn: ppm('x_{NH_3}', 'Ammonia before the catalyst', 4),
    ammoniaPerNox: wf.quantityOutput(ratio, { symbol: 's', label: 'Ammonia per converted NOx, by moles', digits: 4 }),
    adsorptionConstant: wf.quantityOutput(ratio, { symbol: 'K_a', label: 'Adsorption constant', digits: 3 }),
    inletCoverage: percent('\\theta_1', 'Coverage with ammonia at the inlet'),
    slowRate: rate('k_s', 'Rate of NO alone on a full surface'),
    fastRate: rate('k_f', 'Rate that the fast reaction adds'),
    inletRate: rate('k_1', 'Rate at the inlet'),
    ammoniaBurnRate: rate('k_b', 'Burning of ammonia'),
    burntAmmonia: ppm('x_b', 'Ammonia that burns'),
    noxAfter: ppm('x_2', 'NOx after the catalyst'),
    profile: wf.tableOutput({
      label: 'Along the catalyst',
      columns: {
        lengthShare: percent('z', 'Share of the length'),
        nox: ppm('x_{NOx}', 'NOx', 4),
        ammonia: ppm('x_{NH_3}', 'Ammonia', 4),
      },
      plot: { x: 'lengthShare', y: ['nox', 'ammonia'] },
    }),
  },
  outputs: {
    ammoniaSlip: ppm('x_s', 'Ammonia slip'),
    sensorReading: ppm('x_r', 'What a NOx sensor after the catalyst would read'),
    byTemperature: wf.tableOutput({
      label: 'Over temperature',
      columns: {
        catalystTemperature: wf.quantityOutput(temperature, { symbol: 'T', label: 'Catalyst temperature', digits: 3, units: ['degC'] }),
        conversion: percent('\\eta', 'Conversion'),
        slipShare: percent('s', 'Slip over NOx before the catalyst'),
      },
      plot: { x: 'catalystTemperature', y: ['conversion', 'slipShare'] },
    }),
    conversion: percent('\\eta', 'Conversion', 4),
  },
  constants: { gasConstant, ...adsorptionConstants, ...rateConstants },
  answer: 'conversion',
  steps: [
    wf.formula('ammoniaIn', 'dosedRatio * noxBefore'),
    wf.formula('ammoniaPerNox', 'max(1, (2 + 2 * nitrogenDioxideShare) / 3)', scrReactions),
    wf.formula('adsorptionConstant', equilibriumFormula('catalystTemperature'), teachingModelSource),
    wf.formula('inletCoverage', 'adsorptionConstant * ammoniaIn / (1 + adsorptionConstant * ammoniaIn)', scrDynamics2000),
    wf.formula(
      'slowRate',
      `slowRateAtReference * ${warmed('slowEnergy', 'referenceTemperature')} * (1 - nitrogenDioxideLoss * max(0, 2 * nitrogenDioxideShare - 1))`,
      teachingModelSource,
    ),
    wf.formula(
      'fastRate',
      `fastRateAtReference * ${warmed('fastEnergy', 'referenceTemperature')} * 2 * min(nitrogenDioxideShare, 1 - nitrogenDioxideShare)`,
      teachingModelSource,
    ),
    wf.formula(
      'inletRate',
      '(slowRate + fastRate) * inletCoverage * transportRate / ((slowRate + fastRate) * inletCoverage + transportRate)',
      teachingModelSource,
      undefined,
      'Reaction and transport to the wall in series.',
    ),
    wf.formula('ammoniaBurnRate', `burnRateAtReference * ${warmed('burnEnergy', 'burnReferenceTemperature')}`, teachingModelSource),
    wf.solved(
      'noxAfter',
      ammoniaBalance,
      integrated,
      scrDynamics2000,
      undefined,
      'Followed along the catalyst in small steps: NOx falls by its rate there over the space velocity. The balance of ammonia checks it.',
    ),
    wf.solved(
      'burntAmmonia',
      ammoniaBalance,
      integrated,
      teachingModelSource,
      undefined,
      'From the same steps: ammonia times its rate of burning over the space velocity.',
    ),
    wf.solved(
      'ammoniaSlip',
      ammoniaBalance,
      integrated,
      teachingModelSource,
      undefined,
      'From the same steps: what neither reacts nor burns.',
    ),
    wf.statement('profile', 'From the same steps, at each tenth of the length.'),
    wf.formula('sensorReading', 'noxAfter + crossSensitivity * ammoniaSlip'),
    wf.formula('conversion', '1 - noxAfter / noxBefore', scrReactions),
    wf.statement('byTemperature', 'The same at other temperatures.'),
  ],
  assumptions: {
    teaching_model: 'Teaching model: the shape is right, the numbers belong to no real catalyst.',
    steady_plug_flow: 'Steady, evenly warm, no back-mixing; the ammonia is evenly mixed and its store is full.',
  },
  limits: { no_verdict: 'Not for judging a vehicle. It shows why a cold, starved or over-dosed catalyst behaves as it does.' },
  cautions: [cautions.noDefeat],
  precision: 1e-6,
  dimensional: 'integrated with a step-size tolerance; rate constants held in 1/s and K',
  compute(input, { warn }) {
    warn('teaching_model', 'Teaching model: these numbers belong to no real catalyst.');
    const { catalystTemperature, noxBefore, nitrogenDioxideShare } = input;
    const plugFlow = { ...input, temperature: catalystTemperature, noxMoleFraction: noxBefore };
    const found = scrPlugFlow(plugFlow);
    const rows = curve.map((at) => ({ at, result: scrPlugFlow({ ...plugFlow, temperature: at }, 2) }));
    if (found === undefined) return wf.noSolution('the integration along the catalyst failed');
    const ammoniaIn = input.dosedRatio * noxBefore;
    const shares = reactionShares(nitrogenDioxideShare);
    const model = teachingScrModel;
    const inletCoverage = ammoniaCoverage(catalystTemperature, ammoniaIn);
    return {
      ammoniaIn,
      ammoniaPerNox: ammoniaPerNox(nitrogenDioxideShare),
      adsorptionConstant: arrhenius(model.adsorption, catalystTemperature),
      inletCoverage,
      slowRate: arrhenius(model.reaction, catalystTemperature) * (1 - model.nitrogenDioxideLoss * shares.nitrogenDioxide),
      fastRate: arrhenius(model.fastReaction, catalystTemperature) * shares.fast,
      inletRate: noxRate(catalystTemperature, inletCoverage, shares),
      ammoniaBurnRate: arrhenius(model.oxidation, catalystTemperature),
      noxAfter: found.nox,
      burntAmmonia: found.burnt,
      ammoniaSlip: found.ammonia,
      sensorReading: found.nox + input.crossSensitivity * found.ammonia,
      profile: found.profile.map(({ position, nox, ammonia }) => ({ lengthShare: position, nox, ammonia })),
      byTemperature: rows.flatMap(({ at, result }) =>
        result === undefined
          ? []
          : [{ catalystTemperature: at, conversion: 1 - result.nox / noxBefore, slipShare: result.ammonia / noxBefore }],
      ),
      conversion: 1 - found.nox / noxBefore,
    };
  },
});
