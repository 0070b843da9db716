import * as wf from '@wallflow/calculation';
import { massFlow, massPerDistance, massPerEnergy, molarFlow, molarMass, moleFraction, power, ratio, velocity } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { nitrogenDioxideMolarMass } from '../named-constants.js';
import { directive1999, unR49Edition2008, unR49Later } from '../sources.js';
import { noxMassFlow, noxMassRatio } from './kernel.js';

export const noxMassFlowCalculation = wf.defineCalculation({
  id: 'nox-mass-flow',
  subject: 'reductant',
  title: 'NOx: from ppm to grams',
  purpose: 'How many grams of NOx does the exhaust carry per second, per hour, per kilometre or per kilowatt-hour?',
  keywords: 'NOx, ppm, mass flow, wet, dry, u coefficient',
  method: 'ratio of molar masses',
  inputs: {
    noxMoleFraction: wf.quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx reading',
      description: 'NO and NO2 together. Ammonia in the gas is read as NOx by most sensors.',
      range: '0 <= x <= 10000 ppm',
      usual: ['0 ppm', '3000 ppm', 'diesel engines rarely make more; check the scaling of the signal'],
      example: '520 ppm',
      units: ['ppm'],
    }),
    readingBasis: wf.choice({
      label: 'Basis of the reading',
      description: 'A sensor in the exhaust pipe reads wet gas. An analyser after a cooler or a dryer reads dry gas.',
      options: { wet: 'wet gas', dry: 'dried gas' },
      example: 'wet',
    }),
    ...wf.relevantWhen('readingBasis', 'dry', {
      dryToWetFactor: wf.quantity(ratio, {
        symbol: 'k_W',
        label: 'Dry-to-wet factor',
        description: 'Wet reading divided by dry reading.',
        range: '0.5 < x <= 1',
        usual: ['0.85', '1', 'lean diesel exhaust holds 2 % to 13 % water'],
        example: '0.94',
      }),
    }),
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: 'q_{exh}',
      label: 'Exhaust mass flow',
      description: 'Air plus fuel, wet.',
      range: '0 <= x <= 20000 kg/h',
      example: '190 kg/h',
      units: ['kg/h', 'g/s', 'kg/s'],
    }),
    edition: wf.choice({
      label: 'Edition',
      options: {
        exact: 'molar masses (exact)',
        'un-r49-2008': 'u = 0.001587, UN R49 of 2008 and EU directives',
        'un-r49-later': 'u = 0.001586, UN R49 from the 05 series and GTR 4',
      },
      default: ['exact', 'no test regulation was named'],
    }),
    ...wf.relevantWhen('edition', 'exact', {
      exhaustMolarMass: wf.quantity(molarMass, {
        symbol: 'M_{exh}',
        label: 'Molar mass of the exhaust',
        range: '26 <= x <= 31 g/mol',
        usual: [
          '28.5 g/mol',
          '29.1 g/mol',
          'complete lean combustion of diesel fuel stays between 28.97 and 29.03 g/mol with dry intake air, and humid air lowers it a little',
        ],
        default: ['28.994 g/mol', 'diesel exhaust at lambda 2 with dry air; every lean mixture is within 0.2 % of it'],
      }),
    }),
    humidityFactor: wf.quantity(ratio, {
      symbol: 'k_h',
      label: 'Humidity factor',
      range: '0.5 <= x <= 1.5',
      default: ['1', 'the mass that really flows; only a test cycle corrects it to standard humidity'],
    }),
    vehicleSpeed: wf.optional(
      wf.quantity(velocity, {
        symbol: 'v',
        label: 'Road speed',
        description: 'Enter it to see grams per kilometre.',
        range: '0 < x <= 200 km/h',
        example: '22 km/h',
        units: ['km/h', 'm/s'],
      }),
    ),
    brakePower: wf.optional(
      wf.quantity(power, {
        symbol: 'P',
        label: 'Engine power at the crankshaft',
        description: 'Enter it to see grams per kilowatt-hour.',
        range: '0 < x <= 5000 kW',
        example: '25 kW',
        units: ['kW', 'W'],
      }),
    ),
  },
  intermediates: {
    wetMoleFraction: wf.quantityOutput(moleFraction, { symbol: 'x_{wet}', label: 'NOx in the wet gas', digits: 5, units: ['ppm'] }),
    massRatio: wf.quantityOutput(ratio, {
      symbol: 'u',
      label: 'NOx mass per exhaust mass and mole fraction',
      digits: 5,
    }),
  },
  outputs: {
    noxMassFlow: wf.quantityOutput(massFlow, {
      symbol: 'q_{NOx}',
      label: 'NOx mass flow, counted as NO2',
      digits: 5,
      units: ['g/h', 'g/s', 'mg/s', 'kg/s'],
    }),
    noxMolarFlow: wf.quantityOutput(molarFlow, { symbol: '\\dot n_{NOx}', label: 'NOx molar flow', digits: 5, units: ['mol/s'] }),
    noxPerDistance: wf.optional(
      wf.quantityOutput(massPerDistance, { symbol: 'e_d', label: 'NOx per distance, as NO2', digits: 4, units: ['g/km', 'mg/km'] }),
    ),
    noxPerEnergy: wf.optional(
      wf.quantityOutput(massPerEnergy, { symbol: 'e_P', label: 'NOx per energy at the crankshaft, as NO2', digits: 4, units: ['g/kWh'] }),
    ),
  },
  constants: { nitrogenDioxideMolarMass },
  answer: 'noxMassFlow',
  steps: [
    wf.cases(
      'wetMoleFraction',
      { "readingBasis == 'dry'": 'dryToWetFactor * noxMoleFraction', otherwise: 'noxMoleFraction' },
      unR49Edition2008,
      'Annex 4, section 5.2',
    ),
    wf.cases('massRatio', {
      "edition == 'exact'": wf.formula('massRatio', 'nitrogenDioxideMolarMass / exhaustMolarMass', cfr1065, '1065.1005, Table 7'),
      "edition == 'un-r49-2008'": wf.formula('massRatio', '1000 * 0.001587', unR49Edition2008),
      otherwise: wf.formula('massRatio', '1000 * 0.001586', unR49Later),
    }),
    wf.formula(
      'noxMassFlow',
      'massRatio * wetMoleFraction * humidityFactor * exhaustMassFlow',
      unR49Edition2008,
      'raw exhaust, mass emission; worked example p. 305',
    ),
    wf.formula('noxMolarFlow', 'noxMassFlow / nitrogenDioxideMolarMass'),
    wf.formula('noxPerDistance', 'noxMassFlow / vehicleSpeed'),
    wf.formula('noxPerEnergy', 'noxMassFlow / brakePower'),
  ],
  assumptions: {
    as_no2: 'NOx is counted as NO2, whatever its share of NO, as every emission rule does.',
    same_instant: 'Reading and flow belong to the same moment; shift a logged sensor by its delay first.',
  },
  limits: { ammonia: 'After the SCR catalyst, ammonia slip is read as NOx and makes the result too high.' },
  cautions: [cautions.fumes, cautions.sensorFirst],
  sources: [directive1999],
  compute(input, context) {
    // A rule asks for the factor where the reading is dry, and takes it away where it is wet.
    const wetMoleFraction = input.noxMoleFraction * (input.dryToWetFactor ?? 1);
    if (input.edition === 'un-r49-later')
      context.warn('from_memory', 'The coefficient 0.001586 is from memory; the ratio of molar masses supports it.');
    if (input.edition !== 'exact')
      context.method(input.edition === 'un-r49-2008' ? 'u = 0.001587 (UN R49, 2008)' : 'u = 0.001586 (UN R49, later series, from memory)');
    const { nitrogenDioxideMolarMass } = context.constants;
    const { edition, exhaustMolarMass = Number.NaN } = input; // Known where it counts.
    const massRatio = noxMassRatio({ edition, exhaustMolarMass }, nitrogenDioxideMolarMass);
    const flow = noxMassFlow({ wetMoleFraction, exhaustMassFlow: input.exhaustMassFlow, massRatio, humidityFactor: input.humidityFactor });
    return {
      wetMoleFraction,
      massRatio,
      noxMassFlow: flow,
      noxMolarFlow: flow / nitrogenDioxideMolarMass,
      noxPerDistance: input.vehicleSpeed === undefined ? undefined : flow / input.vehicleSpeed,
      noxPerEnergy: input.brakePower === undefined ? undefined : flow / input.brakePower,
    };
  },
});
