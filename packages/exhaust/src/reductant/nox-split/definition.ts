import * as wf from '@wallflow/calculation';
import { absolutePressure, fraction, massConcentration, moleFraction, ratio, temperature } from '@wallflow/units';
import { cfr1065, siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { nitricOxideMolarMass, nitrogenDioxideMolarMass } from '../named-constants.js';
import { ammoniaPerNox, reactionShares } from '../reductant-demand/stoichiometry.js';
import { scrReactions } from '../sources.js';
import { massConcentrationOf, trueMassShare } from './kernel.js';

const percent = (symbol: string, label: string, digits = 3) => wf.quantityOutput(fraction, { symbol, label, digits, units: ['%'] });
const ppm = (symbol: string, label: string) => wf.quantityOutput(moleFraction, { symbol, label, digits: 4, units: ['ppm'] });
const byMass = (symbol: string, label: string) => wf.quantityOutput(massConcentration, { symbol, label, digits: 5, units: ['mg/m3'] });

export const noxSplitCalculation = wf.defineCalculation({
  id: 'nox-split',
  subject: 'reductant',
  title: 'NO and NO2 in the NOx',
  purpose: 'How much of the NOx is NO and NO2, which SCR reactions does that allow, and what is it in mg per cubic metre?',
  keywords: 'NO, NO2, NOx, fast SCR, mg/m3, SCR',
  method: 'shares by moles',
  inputs: {
    noxMoleFraction: wf.quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx reading',
      range: '0 <= x <= 10000 ppm',
      example: '520 ppm',
      units: ['ppm'],
    }),
    nitrogenDioxideShare: wf.quantity(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      description: 'A raw engine gives 5 % to 15 %; after an oxidation catalyst it depends on temperature.',
      range: '0 <= x <= 100 %',
      units: ['%'],
      default: ['25 %', '40 CFR 1065.655 takes 75 % NO and 25 % NO2 where nothing was measured'],
    }),
    referencePressure: wf.quantity(absolutePressure, {
      symbol: 'p_0',
      label: 'Pressure for mg/m³',
      range: '50 <= x <= 200 kPa',
      units: ['kPa', 'mbar'],
      default: ['101.325 kPa', 'standard atmosphere'],
    }),
    referenceTemperature: wf.quantity(temperature, {
      symbol: 'T_0',
      label: 'Temperature for mg/m³',
      description: 'Workplace tables use 20 °C or 25 °C, emission rules 0 °C.',
      range: '-40 <= x <= 600 °C',
      units: ['degC', 'K'],
      default: ['20 °C', 'the state of 40 CFR 1065 and of European workplace tables'],
    }),
  },
  intermediates: {
    standardShare: percent('s_s', 'Share left to the standard reaction (NO alone)'),
    fastShare: percent('s_f', 'Share of the fast reaction (NO with NO2)'),
    nitrogenDioxideReactionShare: percent('s_2', 'Share left to the NO2 reaction'),
    trueMassShare: percent('m', 'True mass over mass counted as NO2', 4),
  },
  outputs: {
    nitricOxide: ppm('x_{NO}', 'NO'),
    nitrogenDioxide: ppm('x_{NO_2}', 'NO2'),
    ammoniaPerNox: wf.quantityOutput(ratio, { symbol: 's', label: 'Ammonia per converted NOx, by moles', digits: 4 }),
    nitricOxideMass: byMass('c_{NO}', 'NO by mass'),
    nitrogenDioxideMass: byMass('c_{NO_2}', 'NO2 by mass'),
  },
  constants: { nitricOxideMolarMass, nitrogenDioxideMolarMass, gasConstant },
  answer: 'nitrogenDioxide',
  steps: [
    wf.formula('fastShare', '2 * min(nitrogenDioxideShare, 1 - nitrogenDioxideShare)', scrReactions),
    wf.formula('standardShare', 'max(0, 1 - 2 * nitrogenDioxideShare)', scrReactions),
    wf.formula('nitrogenDioxideReactionShare', 'max(0, 2 * nitrogenDioxideShare - 1)', scrReactions),
    wf.formula('ammoniaPerNox', 'max(1, (2 + 2 * nitrogenDioxideShare) / 3)', scrReactions),
    wf.formula('trueMassShare', '(1 - nitrogenDioxideShare) * nitricOxideMolarMass / nitrogenDioxideMolarMass + nitrogenDioxideShare'),
    wf.formula('nitricOxide', '(1 - nitrogenDioxideShare) * noxMoleFraction', cfr1065, '1065.655, default split'),
    wf.formula('nitrogenDioxide', 'nitrogenDioxideShare * noxMoleFraction'),
    wf.formula(
      'nitricOxideMass',
      'nitricOxide * nitricOxideMolarMass * referencePressure / (gasConstant * referenceTemperature)',
      siBrochure,
    ),
    wf.formula(
      'nitrogenDioxideMass',
      'nitrogenDioxide * nitrogenDioxideMolarMass * referencePressure / (gasConstant * referenceTemperature)',
      siBrochure,
    ),
  ],
  assumptions: { ideal_gas: 'The gas is ideal, which is exact enough here.' },
  limits: { sensor_blind: 'A NOx sensor in the pipe cannot tell NO from NO2.' },
  compute({ noxMoleFraction, nitrogenDioxideShare, referencePressure: pressure, referenceTemperature: temperature }, { constants, warn }) {
    const shares = reactionShares(nitrogenDioxideShare);
    const nitricOxide = (1 - nitrogenDioxideShare) * noxMoleFraction;
    const nitrogenDioxide = nitrogenDioxideShare * noxMoleFraction;
    const molarMasses = { nitricOxide: constants.nitricOxideMolarMass, nitrogenDioxide: constants.nitrogenDioxideMolarMass };
    const mass = (of: number, molarMass: number) =>
      massConcentrationOf({ moleFraction: of, molarMass, pressure, temperature }, constants.gasConstant);
    if (nitrogenDioxideShare > 0.5)
      warn('more_no2_than_no', 'Above half of the NOx, NO2 slows the catalyst and takes a third more ammonia.', ['nitrogenDioxideShare']);
    return {
      nitricOxide,
      nitrogenDioxide,
      standardShare: shares.standard,
      fastShare: shares.fast,
      nitrogenDioxideReactionShare: shares.nitrogenDioxide,
      ammoniaPerNox: ammoniaPerNox(nitrogenDioxideShare),
      trueMassShare: trueMassShare(nitrogenDioxideShare, molarMasses),
      nitricOxideMass: mass(nitricOxide, molarMasses.nitricOxide),
      nitrogenDioxideMass: mass(nitrogenDioxide, molarMasses.nitrogenDioxide),
    };
  },
});
