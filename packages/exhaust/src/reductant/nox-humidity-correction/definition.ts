import { choice, defineCalculation, noSolution, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { massRatio, moleFraction, ratio, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { cfr1066, directive1999, unR49Edition2008, unR49Later } from '../sources.js';
import { noxHumidityFactor, waterMoleFraction } from './kernel.js';

const editions = {
  'un-r49-later': 'UN R49 from the 05 series, GTR 4',
  'un-r49-2008': 'UN R49 of 2008',
  'directive-1999': 'Directives 1999/96/EC and 2005/55/EC',
  'cfr-1065': '40 CFR 1065.670, compression ignition',
  'cfr-1066': '40 CFR 1066.615, light vehicles',
} as const;

const fromMemory: ReadonlySet<string> = new Set(['un-r49-later', 'directive-1999', 'cfr-1066']);

export const noxHumidityCorrectionCalculation = defineCalculation({
  id: 'nox-humidity-correction',
  version: '1.0.0',
  subject: 'reductant',
  title: 'NOx at standard humidity',
  purpose: 'What would the NOx be if the intake air had the humidity of the standard?',
  usedBy: ['developer', 'trainer'],
  keywords: ['humidity', 'NOx', 'correction'],
  method: 'factor of a named edition',
  inputs: z.strictObject({
    edition: choice({
      label: 'Edition',
      description: 'Moist air lowers NOx. The editions correct for it differently, so the edition belongs to the result.',
      options: editions,
      example: 'cfr-1065',
    }),
    noxMoleFraction: quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx reading',
      min: '0 ppm',
      max: '10000 ppm',
      example: '700.5 ppm',
      units: ['ppm'],
    }),
    intakeHumidity: quantity(massRatio, {
      symbol: 'H_a',
      label: 'Water in the intake air per dry air',
      min: '0 g/kg',
      max: '40 g/kg',
      usual: ['0 g/kg', '25 g/kg'],
      usualReason: 'the factors were made for temperate air',
      example: '14 g/kg',
      units: ['g/kg'],
    }),
    intakeTemperature: quantityWithDefault(temperature, {
      symbol: 'T_a',
      label: 'Intake air temperature',
      description: 'Used by the directives alone.',
      min: '-20 °C',
      max: '60 °C',
      example: '25 °C',
      units: ['degC'],
      default: '25 °C',
      defaultReason: 'the reference temperature of the directives',
    }),
    fuelToAirRatio: quantityWithDefault(massRatio, {
      symbol: 'r',
      label: 'Fuel per dry air, by mass',
      description: 'Used by the directives alone.',
      min: '0 g/kg',
      max: '69 g/kg',
      example: '33 g/kg',
      units: ['g/kg'],
      default: '33 g/kg',
      defaultReason: 'about lambda 2',
    }),
  }),
  intermediates: {
    waterMoleFraction: quantityOutput(moleFraction, {
      symbol: 'x_{H_2O}',
      label: 'Water in the intake air, by moles',
      digits: 4,
      units: ['%', 'ppm'],
    }),
  },
  outputs: {
    humidityFactor: quantityOutput(ratio, { symbol: 'k_h', label: 'Humidity factor', digits: 5 }),
    correctedNox: quantityOutput(moleFraction, { symbol: 'x_{cor}', label: 'NOx at standard humidity', digits: 5, units: ['ppm'] }),
  },
  constants: {},
  steps: [
    {
      gives: 'waterMoleFraction',
      tex: '[[waterMoleFraction]] = \\frac{[[intakeHumidity]]}{[[intakeHumidity]]+M_{H_2O}/M_{air}}',
      source: 'cfr1065',
    },
    { gives: 'humidityFactor', text: 'Edition: [[edition]].', source: 'cfr1065', locator: '1065.670(a) for the molar form' },
    { gives: 'correctedNox', tex: '[[correctedNox]] = [[humidityFactor]]\\,[[noxMoleFraction]]' },
  ],
  assumptions: [
    {
      code: 'test_only',
      text: 'The correction serves to compare test results. What is dosed and what is emitted follow the uncorrected NOx.',
    },
  ],
  limits: [{ code: 'diesel_only', text: 'For compression-ignition engines.' }],
  cautions: [],
  sources: { cfr1065, unR49Edition2008, unR49Later, directive1999, cfr1066 },
  dimensional: 'the formula of the directives is empirical in kelvin',
  compute(input, context) {
    const humidityFactor = noxHumidityFactor(input);
    if (!(humidityFactor > 0.5 && humidityFactor < 2))
      return noSolution('this edition gives no sensible factor for such air', ['intakeHumidity']);
    const memory = fromMemory.has(input.edition);
    context.method(`${editions[input.edition]}${memory ? ' (from memory)' : ''}`);
    if (memory)
      context.warn('from_memory', `The formula of ${editions[input.edition]} is from memory; read the text before relying on it.`);
    return {
      waterMoleFraction: waterMoleFraction(input.intakeHumidity),
      humidityFactor,
      correctedNox: input.noxMoleFraction * humidityFactor,
    };
  },
});
