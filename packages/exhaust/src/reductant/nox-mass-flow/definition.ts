import {
  choice,
  choiceWithDefault,
  constant,
  defineCalculation,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { massFlow, massPerDistance, massPerEnergy, molarFlow, molarMass, moleFraction, power, ratio, velocity } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { molarMassOfNitrogenDioxide } from '../constants.js';
import { directive1999, unR49Edition2008, unR49Later } from '../sources.js';
import { noxMassFlow, noxMassRatio } from './kernel.js';

export const noxMassFlowCalculation = defineCalculation({
  id: 'nox-mass-flow',
  version: '1.0.0',
  subject: 'reductant',
  title: 'NOx: from ppm to grams',
  purpose: 'How many grams of NOx does the exhaust carry per second, per hour, per kilometre or per kilowatt-hour?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['NOx', 'ppm', 'mass flow', 'wet', 'dry', 'u coefficient'],
  method: 'ratio of molar masses',
  inputs: z.strictObject({
    noxMoleFraction: quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx reading',
      description: 'NO and NO2 together. Ammonia in the gas is read as NOx by most sensors.',
      min: '0 ppm',
      max: '10000 ppm',
      usual: ['0 ppm', '3000 ppm'],
      usualReason: 'diesel engines rarely make more; check the scaling of the signal',
      example: '400 ppm',
      units: ['ppm'],
    }),
    basis: choice({
      label: 'Basis of the reading',
      description: 'A sensor in the exhaust pipe reads wet gas. An analyser behind a cooler or a dryer reads dry gas.',
      options: { wet: 'wet gas', dry: 'dried gas' },
      example: 'wet',
    }),
    dryToWetFactor: quantity(ratio, {
      symbol: 'k_W',
      label: 'Dry-to-wet factor',
      description: 'Needed for a dry reading only: wet reading divided by dry reading.',
      above: '0.5',
      max: '1',
      usual: ['0.85', '1'],
      usualReason: 'lean diesel exhaust holds 2 % to 13 % water',
      example: '0.94',
    }).optional(),
    exhaustMassFlow: quantity(massFlow, {
      symbol: 'q_{exh}',
      label: 'Exhaust mass flow',
      description: 'Air plus fuel, wet.',
      min: '0 kg/h',
      max: '20000 kg/h',
      example: '205 kg/h',
      units: ['kg/h', 'g/s', 'kg/s'],
    }),
    edition: choiceWithDefault({
      label: 'Mass coefficient',
      options: {
        exact: 'molar masses (exact)',
        'un-r49-2008': 'u = 0.001587, UN R49 of 2008 and EU directives',
        'un-r49-later': 'u = 0.001586, UN R49 from the 05 series and GTR 4',
      },
      example: 'exact',
      default: 'exact',
      defaultReason: 'no test regulation was named',
    }),
    exhaustMolarMass: quantityWithDefault(molarMass, {
      symbol: 'M_{exh}',
      label: 'Molar mass of the wet exhaust',
      min: '26 g/mol',
      max: '31 g/mol',
      usual: ['28.5 g/mol', '29.1 g/mol'],
      usualReason:
        'complete lean combustion of diesel fuel stays between 28.97 and 29.03 g/mol with dry intake air, and humid air lowers it a little',
      example: '28.994 g/mol',
      default: '28.994 g/mol',
      defaultReason: 'diesel exhaust at lambda 2 with dry air; every lean mixture is within 0.2 % of it',
    }),
    humidityFactor: quantityWithDefault(ratio, {
      symbol: 'k_h',
      label: 'Humidity factor',
      min: '0.5',
      max: '1.5',
      example: '1',
      default: '1',
      defaultReason: 'the mass that really flows; only a test cycle corrects it to standard humidity',
    }),
    vehicleSpeed: quantity(velocity, {
      symbol: 'v',
      label: 'Road speed',
      description: 'Give it to get grams per kilometre.',
      above: '0 km/h',
      max: '200 km/h',
      example: '80 km/h',
      units: ['km/h', 'm/s'],
    }).optional(),
    brakePower: quantity(power, {
      symbol: 'P',
      label: 'Engine power at the crankshaft',
      description: 'Give it to get grams per kilowatt-hour.',
      above: '0 kW',
      max: '5000 kW',
      example: '25 kW',
      units: ['kW', 'W'],
    }).optional(),
  }),
  intermediates: {
    wetMoleFraction: quantityOutput(moleFraction, { symbol: 'x_{wet}', label: 'NOx in the wet gas', digits: 5, units: ['ppm'] }),
    massRatio: quantityOutput(ratio, {
      symbol: '1000\\,u',
      label: 'NOx mass per exhaust mass and mole fraction',
      digits: 5,
    }),
  },
  outputs: {
    noxMassFlow: quantityOutput(massFlow, {
      symbol: 'q_{NOx}',
      label: 'NOx mass flow, counted as NO2',
      digits: 5,
      units: ['g/h', 'g/s', 'mg/s', 'kg/s'],
    }),
    noxMolarFlow: quantityOutput(molarFlow, { symbol: '\\dot n_{NOx}', label: 'NOx molar flow', digits: 5, units: ['mol/s'] }),
    noxPerDistance: optional(
      quantityOutput(massPerDistance, { symbol: 'e_d', label: 'NOx per distance, as NO2', digits: 4, units: ['g/km', 'mg/km'] }),
    ),
    noxPerEnergy: optional(
      quantityOutput(massPerEnergy, { symbol: 'e_P', label: 'NOx per energy at the crankshaft, as NO2', digits: 4, units: ['g/kWh'] }),
    ),
  },
  constants: {
    molarMassOfNitrogenDioxide: constant(molarMass, molarMassOfNitrogenDioxide, {
      symbol: 'M_{NO_2}',
      label: 'Molar mass of NO2',
      source: 'cfr1065',
    }),
  },
  steps: [
    {
      gives: 'wetMoleFraction',
      text: 'Reading on a wet basis; a dry reading is multiplied by the dry-to-wet factor.',
      source: 'unR49Edition2008',
      locator: 'Annex 4, section 5.2',
    },
    {
      gives: 'massRatio',
      tex: '[[massRatio]] = \\frac{[[molarMassOfNitrogenDioxide]]}{[[exhaustMolarMass]]}\\quad\\text{or, by edition, } 1000\\,u',
      source: 'cfr1065',
      locator: '1065.1005, Table 7',
    },
    {
      gives: 'noxMolarFlow',
      tex: '[[noxMolarFlow]] = \\frac{[[massRatio]]\\,[[wetMoleFraction]]\\,[[humidityFactor]]\\,[[exhaustMassFlow]]}{[[molarMassOfNitrogenDioxide]]}',
    },
    { gives: 'noxPerDistance', tex: '[[noxPerDistance]] = \\frac{[[noxMassFlow]]}{[[vehicleSpeed]]}' },
    { gives: 'noxPerEnergy', tex: '[[noxPerEnergy]] = \\frac{[[noxMassFlow]]}{[[brakePower]]}' },
    {
      gives: 'noxMassFlow',
      tex: '[[noxMassFlow]] = [[massRatio]]\\,[[wetMoleFraction]]\\,[[humidityFactor]]\\,[[exhaustMassFlow]]',
      source: 'unR49Edition2008',
      locator: 'raw exhaust, mass emission; worked example p. 305',
    },
  ],
  assumptions: [
    { code: 'as_no2', text: 'NOx is counted as NO2, whatever its share of NO, as every emission rule does.' },
    { code: 'same_instant', text: 'Reading and flow belong to the same moment; shift a logged sensor by its delay first.' },
  ],
  limits: [{ code: 'ammonia', text: 'Behind the SCR catalyst ammonia slip is read as NOx; the result then is too high.' }],
  cautions: [cautions.fumes, cautions.sensorFirst],
  sources: { cfr1065, unR49Edition2008, unR49Later, directive1999 },
  compute(input, context) {
    if (input.basis === 'dry' && input.dryToWetFactor === undefined) {
      return missingInputs('dryToWetFactor');
    }
    if (input.basis === 'wet' && input.dryToWetFactor !== undefined) {
      context.warn('factor_unused', 'The reading is wet already; the dry-to-wet factor was not used.', ['dryToWetFactor']);
    }
    const wetMoleFraction = input.noxMoleFraction * (input.basis === 'dry' ? (input.dryToWetFactor ?? 1) : 1);
    if (input.edition === 'un-r49-later')
      context.warn('from_memory', 'The coefficient 0.001586 is from memory; the ratio of molar masses supports it.');
    if (input.edition !== 'exact')
      context.method(input.edition === 'un-r49-2008' ? 'u = 0.001587 (UN R49, 2008)' : 'u = 0.001586 (UN R49, later series, from memory)');
    const massRatio = noxMassRatio(input, context.constants.molarMassOfNitrogenDioxide);
    const flow = noxMassFlow({ wetMoleFraction, exhaustMassFlow: input.exhaustMassFlow, massRatio, humidityFactor: input.humidityFactor });
    return {
      wetMoleFraction,
      massRatio,
      noxMassFlow: flow,
      noxMolarFlow: flow / context.constants.molarMassOfNitrogenDioxide,
      noxPerDistance: input.vehicleSpeed === undefined ? undefined : flow / input.vehicleSpeed,
      noxPerEnergy: input.brakePower === undefined ? undefined : flow / input.brakePower,
    };
  },
});
