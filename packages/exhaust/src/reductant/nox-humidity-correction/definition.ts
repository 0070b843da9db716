import * as wf from '@wallflow/calculation';
import { massRatio, moleFraction, ratio, temperature } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { waterMolarMass } from '../named-constants.js';
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

export const noxHumidityCorrectionCalculation = wf.defineCalculation({
  id: 'nox-humidity-correction',
  subject: 'reductant',
  title: 'NOx at standard humidity',
  purpose: 'What would the NOx be if the intake air had the humidity of the standard?',
  keywords: 'humidity, NOx, correction',
  method: 'factor of a named edition',
  inputs: {
    edition: wf.choice({
      label: 'Edition',
      description: 'Moist air lowers NOx. The editions correct for it differently, so quote the edition with the result.',
      options: editions,
      example: 'cfr-1065',
    }),
    noxMoleFraction: wf.quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx reading',
      range: '0 <= x <= 10000 ppm',
      example: '520 ppm',
      units: ['ppm'],
    }),
    intakeHumidity: wf.quantity(massRatio, {
      symbol: 'H_a',
      label: 'Water in the intake air per dry air',
      range: '0 <= x <= 40 g/kg',
      usual: ['0 g/kg', '25 g/kg', 'the factors were made for temperate air'],
      example: '14 g/kg',
      units: ['g/kg'],
    }),
    ...wf.relevantWhen('edition', 'directive-1999', {
      intakeTemperature: wf.quantity(temperature, {
        symbol: 'T_a',
        label: 'Intake air temperature',
        range: '-20 <= x <= 60 °C',
        units: ['degC'],
        default: ['25 °C', 'the reference temperature of the directives'],
      }),
      fuelToAirRatio: wf.quantity(massRatio, {
        symbol: 'r',
        label: 'Fuel per dry air, by mass',
        range: '0 <= x <= 69 g/kg',
        units: ['g/kg'],
        default: ['33 g/kg', 'about lambda 2'],
      }),
    }),
  },
  intermediates: {
    waterMoleFraction: wf.quantityOutput(moleFraction, {
      symbol: 'x_{H_2O}',
      label: 'Water in the intake air, by volume',
      digits: 4,
      units: ['%', 'ppm'],
    }),
  },
  outputs: {
    humidityFactor: wf.quantityOutput(ratio, { symbol: 'k_h', label: 'Humidity factor', digits: 5 }),
    correctedNox: wf.quantityOutput(moleFraction, { symbol: 'x_{cor}', label: 'NOx at standard humidity', digits: 5, units: ['ppm'] }),
  },
  answer: 'correctedNox',
  steps: [
    wf.formula('waterMoleFraction', 'intakeHumidity / (intakeHumidity + waterMolarMass / airMolarMass)', cfr1065),
    wf.cases('humidityFactor', {
      "edition == 'cfr-1065'": wf.formula('humidityFactor', '9.953 * waterMoleFraction + 0.832', cfr1065, '1065.670(a)'),
      "edition == 'cfr-1066'": wf.formula('humidityFactor', '1 / (1 - 0.0329 * (1000 * intakeHumidity - 10.71))', cfr1066),
      "edition == 'un-r49-2008'": wf.formula('humidityFactor', '1 / (1 - 0.0182 * (1000 * intakeHumidity - 10.71))', unR49Edition2008),
      "edition == 'un-r49-later'": wf.formula('humidityFactor', '15.698 * intakeHumidity + 0.832', unR49Later),
      otherwise: wf.formula(
        'humidityFactor',
        '1 / (1 + (0.309 * fuelToAirRatio - 0.0266) * (1000 * intakeHumidity - 10.71) + (0.00954 - 0.209 * fuelToAirRatio) * (intakeTemperature - 298))',
        directive1999,
      ),
    }),
    wf.formula('correctedNox', 'humidityFactor * noxMoleFraction'),
  ],
  assumptions: {
    test_only: 'The correction is for comparing test results. Dosing and real emissions follow the uncorrected NOx.',
  },
  limits: { diesel_only: 'For compression-ignition engines.' },
  constants: { waterMolarMass, airMolarMass },
  dimensional: 'the formula of the directives is empirical in kelvin',
  compute(input, context) {
    const { intakeTemperature = 298.15, fuelToAirRatio = 0 } = input; // Only the directives use them, and there they are known.
    const humidityFactor = noxHumidityFactor({ ...input, intakeTemperature, fuelToAirRatio });
    if (!(humidityFactor > 0.5 && humidityFactor < 2))
      return wf.noSolution('this edition gives no sensible factor for such air', ['intakeHumidity']);
    const memory = fromMemory.has(input.edition);
    context.method(memory ? wf.say`${editions[input.edition]} (from memory)` : editions[input.edition]);
    if (memory)
      context.warn('from_memory', wf.say`The formula of ${editions[input.edition]} is from memory; read the text before relying on it.`);
    return {
      waterMoleFraction: waterMoleFraction(input.intakeHumidity),
      humidityFactor,
      correctedNox: input.noxMoleFraction * humidityFactor,
    };
  },
});
