import {
  choice,
  choiceWithDefault,
  defineCalculation,
  missingInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { absolutePressure, massFraction, massRatio, moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { directive1999, unR49Edition2008 } from '../sources.js';
import { dryWetByWaterBalance, dryWetDirective, dryWetFromCarbon, dryWetR49, dryWetR49WithCooler, residualWaterFactor } from './kernel.js';

export const dryWetCorrectionCalculation = defineCalculation({
  id: 'dry-wet-correction',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Dry and wet readings',
  purpose: 'What would a reading of dried gas be in the wet exhaust, and the other way round?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['dry', 'wet', 'ppm', 'water', 'analyser'],
  method: 'water balance of the combustion',
  inputs: z.strictObject({
    edition: choiceWithDefault({
      label: 'Formula',
      description: 'The formulas differ by up to one per cent: name the edition with the result.',
      options: {
        'water-balance': 'water balance of the combustion (exact)',
        'un-r49-2008': 'UN R49 of 2008, with the factor 1.008',
        'un-r49-2008-cooler': 'UN R49 of 2008, with the vapour pressure behind the cooler',
        'un-r49-2008-carbon': 'UN R49 of 2008, from CO2 and CO in the dried gas',
        'directive-1999': 'Directives 1999/96/EC and 2005/55/EC',
      },
      example: 'water-balance',
      default: 'water-balance',
      defaultReason: 'no test regulation was named',
    }),
    fuelToAirRatio: quantity(massRatio, {
      symbol: 'r',
      label: 'Fuel per dry air, by mass',
      description: 'One over the air-fuel ratio: about 69 g/kg at lambda 1, 35 g/kg at lambda 2.',
      above: '0 g/kg',
      max: '69 g/kg',
      usual: ['8 g/kg', '65 g/kg'],
      usualReason: 'diesel engines run lean, lambda 1.05 to 8',
      example: '33.4 g/kg',
      units: ['g/kg'],
    }),
    intakeHumidity: quantityWithDefault(massRatio, {
      symbol: 'H_a',
      label: 'Water in the intake air per dry air',
      min: '0 g/kg',
      max: '50 g/kg',
      example: '10 g/kg',
      units: ['g/kg'],
      default: '10 g/kg',
      defaultReason: 'temperate summer air; 5 g/kg change the factor by 0.8 %',
    }),
    hydrogenFraction: quantityWithDefault(massFraction, {
      symbol: 'w_H',
      label: 'Hydrogen in the fuel, by mass',
      min: '10 %',
      max: '16 %',
      usual: ['12 %', '14.5 %'],
      usualReason: 'diesel fuels',
      example: '13.5 %',
      units: ['%'],
      default: '13.5 %',
      defaultReason: 'CH1.86, usual for road diesel',
    }),
    oxygenFraction: quantityWithDefault(massFraction, {
      symbol: 'w_O',
      label: 'Oxygen in the fuel, by mass',
      description: 'About 0.8 % with 7 % biodiesel.',
      min: '0 %',
      max: '12 %',
      example: '0 %',
      units: ['%'],
      default: '0 %',
      defaultReason: 'fuel without oxygen',
    }),
    coolerVapourPressure: quantity(absolutePressure, {
      symbol: 'p_r',
      label: 'Vapour pressure of water behind the cooler',
      description: 'For the formula with the cooler alone: 0.87 kPa at 5 °C.',
      min: '0 kPa',
      max: '5 kPa',
      example: '0.87 kPa',
      units: ['kPa', 'mbar'],
    }).optional(),
    barometricPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_b',
      label: 'Barometric pressure',
      min: '60 kPa',
      max: '110 kPa',
      example: '101.3 kPa',
      units: ['kPa', 'mbar'],
      default: '101.325 kPa',
      defaultReason: 'standard atmosphere; used by the formula with the cooler alone',
    }),
    carbonDioxide: quantity(moleFraction, {
      symbol: 'x_{CO_2}',
      label: 'CO2 in the dried gas',
      description: 'For the formula from the carbon gases alone.',
      min: '0 %',
      max: '16 %',
      example: '7.1 %',
      units: ['%', 'ppm'],
    }).optional(),
    carbonMonoxide: quantityWithDefault(moleFraction, {
      symbol: 'x_{CO}',
      label: 'CO in the dried gas',
      min: '0 ppm',
      max: '20000 ppm',
      example: '50 ppm',
      units: ['ppm', '%'],
      default: '0 ppm',
      defaultReason: 'next to nothing in lean diesel exhaust; used by the formula from the carbon gases alone',
    }),
    hydrogenToCarbon: quantityWithDefault(ratio, {
      symbol: '\\alpha',
      label: 'Hydrogen atoms per carbon atom in the fuel',
      min: '1',
      max: '2.5',
      example: '1.86',
      default: '1.86',
      defaultReason: 'usual for road diesel; used by the formula from the carbon gases alone',
    }),
    reading: quantity(moleFraction, {
      symbol: 'x',
      label: 'Reading to be converted',
      min: '0 ppm',
      max: '1000000 ppm',
      example: '495 ppm',
      units: ['ppm', '%'],
    }),
    readingBasis: choice({ label: 'Basis of that reading', options: { dry: 'dried gas', wet: 'wet gas' }, example: 'dry' }),
  }),
  intermediates: {
    factorByEdition: quantityOutput(ratio, { symbol: 'k_{ed}', label: 'Factor by the chosen formula', digits: 6 }),
    factorByWaterBalance: quantityOutput(ratio, { symbol: 'k_{H_2O}', label: 'Factor by the water balance, for comparison', digits: 6 }),
  },
  outputs: {
    dryToWetFactor: quantityOutput(ratio, { symbol: 'k_W', label: 'Dry-to-wet factor', digits: 5 }),
    dryReading: optional(
      quantityOutput(moleFraction, { symbol: 'x_{dry}', label: 'Reading in dried gas', digits: 5, units: ['ppm', '%'] }),
    ),
    wetReading: quantityOutput(moleFraction, { symbol: 'x_{wet}', label: 'Reading in wet gas', digits: 5, units: ['ppm', '%'] }),
  },
  constants: {},
  steps: [
    {
      gives: 'factorByWaterBalance',
      tex: '[[factorByWaterBalance]] = \\frac{n_{dry}}{n_{dry}+n_{H_2O}},\\quad n_{H_2O} = \\frac{[[intakeHumidity]]}{M_{H_2O}} + \\frac{[[fuelToAirRatio]]\\,[[hydrogenFraction]]}{2 M_H}',
      source: 'waterBalance',
    },
    {
      gives: 'factorByEdition',
      text: 'The formula of the chosen edition; the one of 2008 is multiplied by 1.008 for the water that a cooler leaves.',
      source: 'unR49Edition2008',
      locator: '5.2',
    },
    { gives: 'dryToWetFactor', tex: '[[dryToWetFactor]] = [[factorByEdition]]' },
    { gives: 'dryReading', tex: '[[dryReading]] = \\frac{x_{wet}}{[[dryToWetFactor]]}' },
    { gives: 'wetReading', tex: '[[wetReading]] = [[dryToWetFactor]]\\,x_{dry}' },
  ],
  assumptions: [{ code: 'lean_complete', text: 'The engine runs lean and burns its fuel completely.' }],
  limits: [
    { code: 'no_reductant_water', text: 'Water from dosed reductant is left out; it adds up to about 0.5 % behind the injector.' },
    { code: 'directive_fuel', text: 'The formula of the directives holds for one diesel fuel and takes no hydrogen content.' },
  ],
  cautions: [cautions.fumes],
  sources: {
    unR49Edition2008,
    directive1999,
    waterBalance: {
      type: 'derivation',
      title: 'Moles after complete lean combustion, molar masses of 40 CFR 1065.1005; agrees with the bracket of UN R49 within 0.01 %',
      mark: 'read',
    },
  },
  compute(input, context) {
    const factorByWaterBalance = dryWetByWaterBalance(input);
    if (input.edition === 'un-r49-2008-cooler' && input.coolerVapourPressure === undefined) return missingInputs('coolerVapourPressure');
    if (input.edition === 'un-r49-2008-carbon' && input.carbonDioxide === undefined) return missingInputs('carbonDioxide');
    const factorByEdition = {
      'water-balance': factorByWaterBalance,
      'un-r49-2008': dryWetR49(input) * residualWaterFactor,
      'un-r49-2008-cooler': dryWetR49WithCooler(input, input.coolerVapourPressure ?? 0, input.barometricPressure),
      'un-r49-2008-carbon': dryWetFromCarbon({ ...input, carbonDioxide: input.carbonDioxide ?? 0 }),
      'directive-1999': dryWetDirective(input),
    }[input.edition];
    context.method(
      {
        'water-balance': 'water balance',
        'un-r49-2008': 'UN R49, 2008',
        'un-r49-2008-cooler': 'UN R49, 2008, with the cooler',
        'un-r49-2008-carbon': 'UN R49, 2008, from the carbon gases',
        'directive-1999': 'Directive 1999/96/EC (from memory)',
      }[input.edition],
    );
    if (input.edition === 'directive-1999')
      context.warn('from_memory', 'The formula of the directive is from memory; its worked example was recomputed and agrees.');
    const wetReading = input.readingBasis === 'wet' ? input.reading : input.reading * factorByEdition;
    const dryReading = input.readingBasis === 'wet' ? input.reading / factorByEdition : input.reading;
    if (wetReading > 1 || dryReading > 1) return noSolution('the converted reading would be more than the whole gas', ['reading']);
    return { factorByWaterBalance, factorByEdition, dryToWetFactor: factorByEdition, dryReading, wetReading };
  },
});
