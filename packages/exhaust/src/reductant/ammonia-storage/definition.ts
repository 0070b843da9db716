import { constant, defineCalculation, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { fraction, mass, massConcentration, massFlow, molarMass, moleFraction, temperature, time, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { molarMassOfAmmonia } from '../constants.js';
import { scrDynamics2000, teachingModelSource } from '../scr-model/sources.js';
import { ammoniaCoverage } from '../scr-model/teaching-model.js';
import { storedAmmonia } from './kernel.js';

export const ammoniaStorageCalculation = defineCalculation({
  id: 'ammonia-storage',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Ammonia stored in the SCR catalyst (teaching model)',
  purpose: 'How much ammonia does the catalyst hold, how long does filling take, and what comes out when it gets hot?',
  usedBy: ['trainer', 'developer'],
  keywords: ['ammonia storage', 'SCR', 'slip', 'coverage', 'teaching model'],
  method: 'Langmuir isotherm of a teaching model, not a real catalyst',
  inputs: z.strictObject({
    catalystVolume: quantity(volume, { symbol: 'V', label: 'Catalyst volume', above: '0.1 L', max: '100 L', example: '4 L', units: ['L'] }),
    capacity: quantityWithDefault(massConcentration, {
      symbol: 'c',
      label: 'Ammonia on a full surface, per litre of catalyst',
      min: '0.1 g/L',
      max: '10 g/L',
      example: '2 g/L',
      units: ['g/L'],
      default: '2 g/L',
      defaultReason: 'teaching value; belongs to no catalyst',
    }),
    temperature: quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature now',
      min: '100 °C',
      max: '600 °C',
      example: '220 °C',
      units: ['degC'],
    }),
    hotTemperature: quantity(temperature, {
      symbol: 'T_2',
      label: 'Temperature after warming up',
      min: '100 °C',
      max: '700 °C',
      example: '380 °C',
      units: ['degC'],
    }),
    ammonia: quantity(moleFraction, {
      symbol: 'x',
      label: 'Ammonia in the gas at the catalyst',
      above: '0.01 ppm',
      max: '5000 ppm',
      example: '400 ppm',
      units: ['ppm'],
    }),
    exhaustMassFlow: quantity(massFlow, {
      symbol: 'q',
      label: 'Exhaust mass flow',
      above: '1 kg/h',
      max: '5000 kg/h',
      example: '200 kg/h',
      units: ['kg/h'],
    }),
    warmUpTime: quantity(time, {
      symbol: 't_w',
      label: 'Time that the warming takes',
      above: '1 s',
      max: '1 h',
      example: '60 s',
      units: ['s', 'min'],
    }),
    exhaustMolarMass: quantityWithDefault(molarMass, {
      symbol: 'M_{exh}',
      label: 'Molar mass of the exhaust',
      min: '26 g/mol',
      max: '31 g/mol',
      example: '28.994 g/mol',
      default: '28.994 g/mol',
      defaultReason: 'diesel exhaust at lambda 2',
    }),
  }),
  intermediates: {
    coverage: quantityOutput(fraction, { symbol: '\\theta_1', label: 'Coverage now', digits: 3, units: ['%'] }),
    hotCoverage: quantityOutput(fraction, { symbol: '\\theta_2', label: 'Coverage when hot', digits: 3, units: ['%'] }),
    feed: quantityOutput(massFlow, { symbol: 'q_{NH_3}', label: 'Ammonia that arrives', digits: 3, units: ['mg/s', 'g/h'] }),
  },
  outputs: {
    fillTime: quantityOutput(time, {
      symbol: 't_f',
      label: 'Time to fill at least',
      description: 'If all of the ammonia is stored and none reacts.',
      digits: 3,
      units: ['min', 's'],
    }),
    released: quantityOutput(mass, { symbol: 'm_r', label: 'Ammonia that leaves the surface', digits: 3, units: ['g'] }),
    meanSlip: optional(
      quantityOutput(moleFraction, { symbol: 'x_s', label: 'Mean slip while warming, if none of it reacts', digits: 3, units: ['ppm'] }),
    ),
    stored: quantityOutput(mass, { symbol: 'm_1', label: 'Ammonia stored now', digits: 4, units: ['g'] }),
  },
  constants: {
    ammoniaMolarMass: constant(molarMass, molarMassOfAmmonia, { symbol: 'M_{NH_3}', label: 'Molar mass of ammonia', source: 'cfr1065' }),
  },
  steps: [
    { gives: 'coverage', tex: '[[coverage]] = \\frac{K_a(T_1)\\,[[ammonia]]}{1+K_a(T_1)\\,[[ammonia]]}', source: 'teachingModelSource' },
    {
      gives: 'hotCoverage',
      tex: '[[hotCoverage]] = \\frac{K_a(T_2)\\,[[ammonia]]}{1+K_a(T_2)\\,[[ammonia]]}',
      source: 'teachingModelSource',
    },
    {
      gives: 'feed',
      tex: '[[feed]] = [[exhaustMassFlow]]\\,[[ammonia]]\\,\\frac{[[ammoniaMolarMass]]}{[[exhaustMolarMass]]}',
      source: 'cfr1065',
    },
    { gives: 'fillTime', tex: '[[fillTime]] = \\frac{m_1}{[[feed]]}' },
    { gives: 'released', tex: '[[released]] = [[catalystVolume]]\\,[[capacity]]\\,\\max(0,\\,[[coverage]]-[[hotCoverage]])' },
    {
      gives: 'meanSlip',
      tex: '[[meanSlip]] = \\frac{[[released]]/[[ammoniaMolarMass]]}{[[exhaustMassFlow]]\\,[[warmUpTime]]/[[exhaustMolarMass]]}',
    },
    { gives: 'stored', tex: '[[stored]] = [[catalystVolume]]\\,[[capacity]]\\,[[coverage]]', source: 'scrDynamics2000' },
  ],
  assumptions: [
    { code: 'teaching_model', text: 'Teaching model: the shape is right, the numbers belong to no real catalyst.' },
    { code: 'balance', text: 'The surface is in balance with the gas at both temperatures.' },
  ],
  limits: [{ code: 'no_verdict', text: 'Not for judging a vehicle.' }],
  cautions: [cautions.noDefeat, cautions.fumes],
  sources: { scrDynamics2000, teachingModelSource, cfr1065 },
  dimensional: 'adsorption constant of a teaching model, held in K and J/mol',
  compute(input, { constants, warn }) {
    warn('teaching_model', 'Teaching model: these numbers belong to no real catalyst.');
    const stored = storedAmmonia(input);
    const hot = storedAmmonia({ ...input, temperature: input.hotTemperature });
    const released = Math.max(0, stored - hot);
    const feed = (input.exhaustMassFlow * input.ammonia * constants.ammoniaMolarMass) / input.exhaustMolarMass;
    const exhaustAmount = (input.exhaustMassFlow * input.warmUpTime) / input.exhaustMolarMass;
    const meanSlip = released / constants.ammoniaMolarMass / exhaustAmount;
    return {
      coverage: ammoniaCoverage(input.temperature, input.ammonia),
      hotCoverage: ammoniaCoverage(input.hotTemperature, input.ammonia),
      feed,
      stored,
      released,
      fillTime: stored / feed,
      meanSlip: meanSlip < 0.1 ? meanSlip : undefined,
    };
  },
  advise: ({ released }) =>
    released > 0
      ? [{ tone: 'note', text: 'A sharp rise in temperature drives ammonia out: a NOx sensor behind then reads too much for a while.' }]
      : [],
});
