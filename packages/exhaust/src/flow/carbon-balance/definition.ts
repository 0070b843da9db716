import {
  choiceWithDefault,
  constant,
  defineCalculation,
  noSolution,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { massFlow, massFraction, molarFlow, molarMass, moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { carbonMassFraction, oxygenDemand } from '../../gas/air-fuel-ratio/kernel.js';
import { waterPerDryAirOfHumidity } from '../../gas/composition/kernel.js';
import { molarMassOfDryAir } from '../../gas/constants.js';
import { fuelFields, humidityField } from '../../gas/fields.js';
import { atomicMass, dryAir } from '../../gas/species.js';
import { cfr1065 } from '../../sources.js';
import { massBalance } from '../sources.js';
import { carbonBalance, carbonBalanceMolarFlow } from './kernel.js';

const trace = (symbol: string, label: string, max: string, example: string, defaultReason: string) =>
  quantityWithDefault(moleFraction, {
    symbol,
    label,
    min: '0 ppm',
    max,
    usual: ['0 ppm', '3000 ppm'],
    usualReason: 'a sound diesel gives less',
    example,
    default: '0 ppm',
    defaultReason,
    units: ['ppm', '%'],
  });

export const exhaustFlowCarbonBalanceCalculation = defineCalculation({
  id: 'exhaust-flow-carbon-balance',
  version: '1.0.0',
  subject: 'flow',
  title: 'Exhaust flow by carbon balance',
  purpose: 'How much exhaust comes out, from the fuel burnt and the carbon dioxide in the gas?',
  usedBy: ['developer', 'trainer'],
  keywords: ['carbon balance', 'fuel flow', 'carbon dioxide'],
  method: 'carbon balance, 40 CFR 1065.655',
  inputs: z.strictObject({
    fuelMassFlow: quantity(massFlow, {
      symbol: '\\dot m_{fuel}',
      label: 'Fuel mass flow',
      above: '0.001 kg/h',
      max: '3000 kg/h',
      usual: ['0.3 kg/h', '200 kg/h'],
      usualReason: 'road and machine diesels burn this much',
      example: '4 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    carbonDioxide: quantity(moleFraction, {
      symbol: 'x_{CO_2}',
      label: 'Carbon dioxide reading',
      above: '0.1 %',
      max: '20 %',
      usual: ['1 %', '15.5 %'],
      usualReason: 'diesel exhaust from idle to full load',
      example: '4.8 %',
      units: ['%', 'ppm'],
    }),
    carbonMonoxide: trace('x_{CO}', 'Carbon monoxide reading', '5 %', '200 ppm', 'small beside carbon dioxide in lean exhaust'),
    hydrocarbons: trace('x_{HC}', 'Hydrocarbon reading, per carbon atom', '2 %', '50 ppm', 'small beside carbon dioxide in lean exhaust'),
    basis: choiceWithDefault({
      label: 'Basis of the readings',
      options: { dry: 'dry: after a cooler or a water trap', wet: 'wet: hot sample or sensor' },
      example: 'dry',
      default: 'dry',
      defaultReason: 'bench and hand-held analysers dry their sample',
    }),
    ...fuelFields,
    carbonFraction: quantity(massFraction, {
      symbol: 'w_{C,g}',
      label: 'Carbon in the fuel by mass, if analysed',
      description: 'Left out, it follows from the formula of the fuel.',
      min: '20 %',
      max: '100 %',
      usual: ['75 %', '88 %'],
      usualReason: 'diesel and biodiesel lie in this range',
      example: '86.9 %',
      units: ['%'],
    }).optional(),
    humidity: humidityField,
    waterPerDryExhaust: quantity(ratio, {
      symbol: 'w_g',
      label: 'Water per mole of dry exhaust, if known',
      description: 'Left out, it follows from the fuel and the humidity.',
      min: '0',
      max: '0.6',
      usual: ['0.005', '0.2'],
      usualReason: 'diesel exhaust in common weather',
      example: '0.06',
    }).optional(),
    intakeCarbonDioxide: quantityWithDefault(moleFraction, {
      symbol: 'x_{CO_2,int}',
      label: 'Carbon dioxide in the intake air',
      min: '0 ppm',
      max: '0.1 %',
      usual: ['0 ppm', '800 ppm'],
      usualReason: 'outdoor air holds about 420 ppm, a workshop more',
      example: '375 ppm',
      default: '375 ppm',
      defaultReason: 'the value that 40 CFR 1065.655(c)(3) allows; 50 ppm more change the result by 0.1 % at 5 % carbon dioxide',
      units: ['ppm'],
    }),
  }),
  intermediates: {
    fuelCarbonFraction: quantityOutput(massFraction, { symbol: 'w_C', label: 'Carbon in the fuel by mass', digits: 4, units: ['%'] }),
    carbonPerDryExhaust: quantityOutput(ratio, { symbol: 'x_{C,d}', label: 'Carbon from the fuel per mole of dry exhaust', digits: 5 }),
    airPerDryExhaust: quantityOutput(ratio, { symbol: 'a', label: 'Dry intake air per mole of dry exhaust', digits: 5 }),
    resultingWater: quantityOutput(ratio, { symbol: 'w', label: 'Water per mole of dry exhaust', digits: 4 }),
    lambda: quantityOutput(ratio, { symbol: '\\lambda', label: 'Lambda', digits: 3 }),
  },
  outputs: {
    exhaustMolarFlow: quantityOutput(molarFlow, {
      symbol: '\\dot n_{exh}',
      label: 'Exhaust molar flow',
      digits: 5,
      units: ['mol/s', 'mol/h'],
    }),
    airMassFlow: quantityOutput(massFlow, {
      symbol: '\\dot m_{air}',
      label: 'Intake air mass flow, moist',
      digits: 4,
      units: ['kg/h', 'g/s'],
    }),
    exhaustMassFlow: quantityOutput(massFlow, { symbol: '\\dot m_{exh}', label: 'Exhaust mass flow', digits: 4, units: ['kg/h', 'g/s'] }),
  },
  constants: {
    carbonAtomicMass: constant(molarMass, atomicMass.carbon, { symbol: 'M_C', label: 'Molar mass of carbon', source: 'cfr1065' }),
    airMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M_{air}', label: 'Molar mass of dry air', source: 'cfr1065' }),
  },
  steps: [
    { gives: 'fuelCarbonFraction', text: 'As analysed, else from the formula of the fuel.', source: 'cfr1065', locator: '1065.655(d)' },
    {
      gives: 'carbonPerDryExhaust',
      text: 'Carbon read in the gas, brought to dry exhaust, less what the intake air brought. Readings: [[basis]].',
      source: 'cfr1065',
      locator: '1065.655(c)',
    },
    {
      gives: 'airPerDryExhaust',
      tex: '[[airPerDryExhaust]] = 1+\\left(\\frac{[[hydrogenToCarbon]]}{4}-\\frac{[[oxygenToCarbon]]}{2}\\right)[[carbonPerDryExhaust]]',
      source: 'cfr1065',
      locator: '1065.655(c)',
    },
    {
      gives: 'resultingWater',
      text: 'As given, else half a mole per mole of hydrogen atoms of the fuel and the humidity of the intake air.',
      source: 'cfr1065',
      locator: '1065.655(c)',
    },
    {
      gives: 'exhaustMolarFlow',
      tex: '[[exhaustMolarFlow]] = \\frac{[[fuelMassFlow]]\\,[[fuelCarbonFraction]]\\left(1+[[resultingWater]]\\right)}{[[carbonAtomicMass]]\\,[[carbonPerDryExhaust]]}',
      source: 'cfr1065',
      locator: '1065.655(f)(3)',
    },
    { gives: 'lambda', text: 'The air found over the air that the fuel needs.' },
    {
      gives: 'airMassFlow',
      tex: '[[airMassFlow]] = \\frac{[[exhaustMolarFlow]]}{1+[[resultingWater]]}\\,[[airPerDryExhaust]]\\,[[airMolarMass]]\\left(1+[[humidity]]\\right)',
      source: 'massBalance',
    },
    { gives: 'exhaustMassFlow', tex: '[[exhaustMassFlow]] = [[airMassFlow]] + [[fuelMassFlow]]', source: 'massBalance' },
  ],
  assumptions: [
    {
      code: 'steady',
      text: 'Fuel flow and gas readings belong to the same steady state; the regulation allows this route for steady tests only.',
    },
    { code: 'undiluted', text: 'The sample is undiluted and no carbon is stored: not during a regeneration, when soot burns too.' },
  ],
  limits: [
    {
      code: 'weak_reading',
      text: 'At idle the carbon dioxide is low and its error counts in full: 0.1 % of volume in 2 % is 5 % of the flow.',
    },
    { code: 'lean_only', text: 'For lean exhaust; hydrogen is not counted.' },
  ],
  cautions: [],
  sources: { cfr1065, massBalance },
  compute(input, { constants, warn }) {
    const waterPerDryAir = waterPerDryAirOfHumidity(input.humidity);
    const balance = carbonBalance({ ...input, fuel: input, waterPerDryAir });
    if (!(balance.carbonPerDryExhaust > 0)) {
      return noSolution('the gas holds no more carbon than the intake air: engine off, probe out or analyser wrong', ['carbonDioxide']);
    }
    const fuelCarbonFraction = input.carbonFraction ?? carbonMassFraction(input);
    const moles = carbonBalanceMolarFlow(input.fuelMassFlow, balance, fuelCarbonFraction, constants.carbonAtomicMass);
    const dryAirMoles = (moles / (1 + balance.waterPerDryExhaust)) * balance.airPerDryExhaust;
    const lambda = (balance.airPerDryExhaust * dryAir.oxygen) / (balance.carbonPerDryExhaust * oxygenDemand(input));
    if (lambda < 1)
      warn('rich_mixture', 'More carbon than this fuel gives in lean exhaust: check the analyser, its basis and the fuel.', [
        'carbonDioxide',
      ]);
    const airMassFlow = dryAirMoles * constants.airMolarMass * (1 + input.humidity);
    return {
      fuelCarbonFraction,
      carbonPerDryExhaust: balance.carbonPerDryExhaust,
      airPerDryExhaust: balance.airPerDryExhaust,
      resultingWater: balance.waterPerDryExhaust,
      lambda,
      exhaustMolarFlow: moles,
      airMassFlow,
      exhaustMassFlow: airMassFlow + input.fuelMassFlow,
    };
  },
});
