import * as wf from '@wallflow/calculation';
import { fraction, mass, massConcentration, massFlow, molarMass, moleFraction, ratio, temperature, time, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { ammoniaMolarMass } from '../named-constants.js';
import { adsorptionConstants, equilibriumFormula } from '../scr-model/named-constants.js';
import { scrDynamics2000, teachingModelSource } from '../scr-model/sources.js';
import { ammoniaCoverage, arrhenius, teachingScrModel } from '../scr-model/teaching-model.js';
import { storedAmmonia } from './kernel.js';

const equilibrium = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 3 });
const coverage = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

export const ammoniaStorageCalculation = wf.defineCalculation({
  id: 'ammonia-storage',
  subject: 'reductant',
  title: 'Ammonia stored in the SCR catalyst (teaching model)',
  purpose: 'How much ammonia does the catalyst hold, how long does filling take, and what comes out when it gets hot?',
  keywords: 'ammonia storage, SCR, slip, coverage, teaching model',
  method: 'Langmuir isotherm of a teaching model, not a real catalyst',
  inputs: {
    catalystVolume: wf.quantity(volume, { symbol: 'V', label: 'Catalyst volume', range: '0.1 < x <= 100 L', example: '4 L', units: ['L'] }),
    storageCapacity: wf.quantity(massConcentration, {
      symbol: 'c',
      label: 'Ammonia on a full surface, per litre of catalyst',
      range: '0.1 <= x <= 10 g/L',
      units: ['g/L'],
      default: ['2 g/L', 'teaching value; belongs to no catalyst'],
    }),
    catalystTemperature: wf.quantity(temperature, {
      symbol: 'T_1',
      label: 'Catalyst temperature',
      range: '100 <= x <= 600 °C',
      example: '220 °C',
      units: ['degC'],
    }),
    hotTemperature: wf.quantity(temperature, {
      symbol: 'T_2',
      label: 'Catalyst temperature after warming up',
      range: '100 <= x <= 700 °C',
      example: '380 °C',
      units: ['degC'],
    }),
    ammoniaMoleFraction: wf.quantity(moleFraction, {
      symbol: 'x',
      label: 'Ammonia in the gas at the catalyst',
      range: '0.01 < x <= 5000 ppm',
      example: '520 ppm',
      units: ['ppm'],
    }),
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: 'q',
      label: 'Exhaust mass flow',
      range: '1 < x <= 5000 kg/h',
      example: '190 kg/h',
      units: ['kg/h'],
    }),
    warmUpTime: wf.quantity(time, {
      symbol: 't_w',
      label: 'Time that the warming takes',
      range: '1 s < x <= 1 h',
      example: '60 s',
      units: ['s', 'min'],
    }),
    exhaustMolarMass: wf.quantity(molarMass, {
      symbol: 'M_{exh}',
      label: 'Molar mass of the exhaust',
      range: '26 <= x <= 31 g/mol',
      default: ['28.994 g/mol', 'diesel exhaust at lambda 2'],
    }),
  },
  intermediates: {
    adsorptionConstant: equilibrium('K_1', 'Adsorption constant'),
    hotAdsorptionConstant: equilibrium('K_2', 'Adsorption constant when hot'),
    coverage: coverage('\\theta_1', 'Coverage now'),
    hotCoverage: coverage('\\theta_2', 'Coverage when hot'),
    ammoniaFeed: wf.quantityOutput(massFlow, { symbol: 'q_{NH_3}', label: 'Ammonia that arrives', digits: 3, units: ['mg/s', 'g/h'] }),
  },
  outputs: {
    fillTime: wf.quantityOutput(time, {
      symbol: 't_f',
      label: 'Time to fill at least',
      description: 'If all of the ammonia is stored and none reacts.',
      digits: 3,
      units: ['min', 's'],
    }),
    releasedAmmonia: wf.quantityOutput(mass, { symbol: 'm_r', label: 'Ammonia that leaves the surface', digits: 3, units: ['g'] }),
    meanSlip: wf.optional(
      wf.quantityOutput(moleFraction, { symbol: 'x_s', label: 'Mean slip while warming, if none of it reacts', digits: 3, units: ['ppm'] }),
    ),
    storedAmmonia: wf.quantityOutput(mass, { symbol: 'm_1', label: 'Ammonia stored now', digits: 4, units: ['g'] }),
  },
  constants: { ammoniaMolarMass, gasConstant, ...adsorptionConstants },
  answer: 'storedAmmonia',
  steps: [
    wf.formula('adsorptionConstant', equilibriumFormula('catalystTemperature'), teachingModelSource),
    wf.formula(
      'coverage',
      'adsorptionConstant * ammoniaMoleFraction / (1 + adsorptionConstant * ammoniaMoleFraction)',
      scrDynamics2000,
      undefined,
      'Langmuir isotherm.',
    ),
    wf.formula('storedAmmonia', 'catalystVolume * storageCapacity * coverage'),
    wf.formula('ammoniaFeed', 'exhaustMassFlow * ammoniaMoleFraction * ammoniaMolarMass / exhaustMolarMass', cfr1065),
    wf.formula('fillTime', 'storedAmmonia / ammoniaFeed'),
    wf.formula('hotAdsorptionConstant', equilibriumFormula('hotTemperature'), teachingModelSource),
    wf.formula('hotCoverage', 'hotAdsorptionConstant * ammoniaMoleFraction / (1 + hotAdsorptionConstant * ammoniaMoleFraction)'),
    wf.formula('releasedAmmonia', 'catalystVolume * storageCapacity * max(0, coverage - hotCoverage)'),
    wf.formula('meanSlip', 'releasedAmmonia / ammoniaMolarMass / (exhaustMassFlow * warmUpTime / exhaustMolarMass)'),
  ],
  assumptions: {
    teaching_model: 'Teaching model: the shape is right, the numbers belong to no real catalyst.',
    balance: 'The surface is in balance with the gas at both temperatures.',
  },
  limits: { no_verdict: 'Not for judging a vehicle.' },
  cautions: [cautions.noDefeat, cautions.fumes],
  dimensional: 'adsorption constant of a teaching model, held in K and J/mol',
  compute(input, { constants, warn }) {
    warn('teaching_model', 'Teaching model: these numbers belong to no real catalyst.');
    const { catalystTemperature, hotTemperature, ammoniaMoleFraction: ammonia } = input;
    const at = (temperature: number) =>
      storedAmmonia({ catalystVolume: input.catalystVolume, capacity: input.storageCapacity, temperature, ammonia });
    const stored = at(catalystTemperature);
    const released = Math.max(0, stored - at(hotTemperature));
    const ammoniaFeed = (input.exhaustMassFlow * ammonia * constants.ammoniaMolarMass) / input.exhaustMolarMass;
    const exhaustAmount = (input.exhaustMassFlow * input.warmUpTime) / input.exhaustMolarMass;
    const meanSlip = released / constants.ammoniaMolarMass / exhaustAmount;
    return {
      adsorptionConstant: arrhenius(teachingScrModel.adsorption, catalystTemperature),
      hotAdsorptionConstant: arrhenius(teachingScrModel.adsorption, hotTemperature),
      coverage: ammoniaCoverage(catalystTemperature, ammonia),
      hotCoverage: ammoniaCoverage(hotTemperature, ammonia),
      ammoniaFeed,
      storedAmmonia: stored,
      releasedAmmonia: released,
      fillTime: stored / ammoniaFeed,
      meanSlip: meanSlip < 0.1 ? meanSlip : undefined,
    };
  },
  advise: ({ releasedAmmonia }) =>
    releasedAmmonia > 0
      ? [
          {
            tone: 'note',
            text: 'A sharp rise in temperature drives ammonia out: the NOx sensor after the catalyst then reads too much for a while.',
          },
        ]
      : [],
});
