import { defineCalculation, quantityOutput } from '@wallflow/calculation';
import { massRatio, molarMass, moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { oxygenDemand, stoichiometricAirFuelRatio } from '../air-fuel-ratio/kernel.js';
import { fuelFields, humidityField, lambdaField } from '../fields.js';
import { molarMassConstants } from '../molar-mass-constants.js';
import { atomBalance } from '../sources.js';
import { molarMassOfMixture, moleMean, perSpecies } from '../species.js';
import { airPerCarbon, dryBasis, exhaustComposition, exhaustPerCarbon, waterPerDryAirOfHumidity } from './kernel.js';

const share = (symbol: string, label: string) => quantityOutput(moleFraction, { symbol, label, digits: 4, units: ['%', 'ppm'] });

export const exhaustCompositionCalculation = defineCalculation({
  id: 'exhaust-composition',
  version: '1.0.0',
  subject: 'gas',
  title: 'Composition of diesel exhaust',
  purpose: 'What is in the exhaust at this lambda, wet as in the pipe and dry as after a cold analyser?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['oxygen', 'carbon dioxide', 'water', 'molar mass', 'lambda'],
  method: 'atom balance of complete combustion',
  inputs: z.strictObject({ lambda: lambdaField, ...fuelFields, humidity: humidityField }),
  intermediates: {
    oxygenDemand: quantityOutput(ratio, { symbol: 's', label: 'Moles of oxygen needed per mole of carbon', digits: 5 }),
    waterPerDryAir: quantityOutput(ratio, { symbol: 'h', label: 'Moles of water per mole of dry intake air', digits: 4 }),
    airPerCarbon: quantityOutput(ratio, { symbol: 'a', label: 'Moles of dry air per mole of carbon', digits: 5 }),
    exhaustPerCarbon: quantityOutput(ratio, { symbol: 'n', label: 'Moles of wet exhaust per mole of carbon', digits: 5 }),
    airFuelRatio: quantityOutput(massRatio, { symbol: 'L', label: 'Air-fuel ratio by mass, dry air', digits: 4, units: ['1'] }),
  },
  outputs: {
    oxygen: share('x_{O_2}', 'Oxygen, wet'),
    carbonDioxide: share('x_{CO_2}', 'Carbon dioxide, wet'),
    water: share('x_{H_2O}', 'Water, wet'),
    nitrogen: share('x_{N_2}', 'Nitrogen, wet'),
    argon: share('x_{Ar}', 'Argon, wet'),
    oxygenDry: share('x_{O_2,d}', 'Oxygen, dry'),
    carbonDioxideDry: share('x_{CO_2,d}', 'Carbon dioxide, dry'),
    molarMass: quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass of wet exhaust', digits: 6, units: ['g/mol'] }),
  },
  constants: molarMassConstants,
  steps: [
    {
      gives: 'oxygenDemand',
      tex: '[[oxygenDemand]] = 1+\\frac{[[hydrogenToCarbon]]}{4}-\\frac{[[oxygenToCarbon]]}{2}',
      source: 'atomBalance',
    },
    { gives: 'airPerCarbon', tex: '[[airPerCarbon]] = \\frac{[[lambda]]\\,[[oxygenDemand]]}{0.209445}', source: 'atomBalance' },
    { gives: 'airFuelRatio', text: 'That air over the fuel, by mass.', source: 'atomBalance' },
    {
      gives: 'waterPerDryAir',
      tex: '[[waterPerDryAir]] = \\frac{28.96559}{18.01528}\\,[[humidity]]',
      source: 'cfr1065',
      locator: '1065.1005(f)(2), Table 7',
    },
    {
      gives: 'exhaustPerCarbon',
      tex: '[[exhaustPerCarbon]] = 1+\\frac{[[hydrogenToCarbon]]}{2}-[[oxygenDemand]]+[[airPerCarbon]]\\left(1+[[waterPerDryAir]]\\right)',
      source: 'atomBalance',
    },
    {
      gives: 'oxygen',
      tex: '[[oxygen]] = \\frac{\\left([[lambda]]-1\\right)[[oxygenDemand]]}{[[exhaustPerCarbon]]}',
      source: 'atomBalance',
    },
    {
      gives: 'carbonDioxide',
      tex: '[[carbonDioxide]] = \\frac{1+0.000375\\,[[airPerCarbon]]}{[[exhaustPerCarbon]]}',
      source: 'atomBalance',
    },
    {
      gives: 'water',
      tex: '[[water]] = \\frac{[[hydrogenToCarbon]]/2+[[airPerCarbon]]\\,[[waterPerDryAir]]}{[[exhaustPerCarbon]]}',
      source: 'atomBalance',
    },
    { gives: 'nitrogen', tex: '[[nitrogen]] = \\frac{0.78084\\,[[airPerCarbon]]}{[[exhaustPerCarbon]]}', source: 'atomBalance' },
    { gives: 'argon', tex: '[[argon]] = \\frac{0.00934\\,[[airPerCarbon]]}{[[exhaustPerCarbon]]}', source: 'atomBalance' },
    { gives: 'oxygenDry', tex: '[[oxygenDry]] = \\frac{[[oxygen]]}{1-[[water]]}' },
    { gives: 'carbonDioxideDry', tex: '[[carbonDioxideDry]] = \\frac{[[carbonDioxide]]}{1-[[water]]}' },
    {
      gives: 'molarMass',
      tex: '[[molarMass]] = [[nitrogenMolarMass]]\\,[[nitrogen]]+[[oxygenMolarMass]]\\,[[oxygen]]+[[carbonDioxideMolarMass]]\\,[[carbonDioxide]]+[[waterMolarMass]]\\,[[water]]+[[argonMolarMass]]\\,[[argon]]',
      source: 'cfr1065',
      locator: '1065.1005(f)(2), Table 7',
    },
  ],
  assumptions: [
    {
      code: 'complete_combustion',
      text: 'All fuel is burnt to carbon dioxide and water; lean diesel exhaust is so within 0.1 % of its volume.',
    },
    {
      code: 'dry_air_composition',
      text: 'Dry air as in 40 CFR 1065: 78.084 % nitrogen, 20.9445 % oxygen, 0.934 % argon, 375 ppm carbon dioxide.',
    },
  ],
  limits: [
    { code: 'lean_only', text: 'For lambda of 1 and more. A rich purge also makes carbon monoxide and hydrogen.' },
    { code: 'no_condensate', text: 'Water stays vapour: not in a cold exhaust, where it drips.' },
  ],
  cautions: [],
  sources: { atomBalance, cfr1065 },
  compute(input, { constants }) {
    const exhaust = { lambda: input.lambda, fuel: input, waterPerDryAir: waterPerDryAirOfHumidity(input.humidity) };
    const wet = exhaustComposition(exhaust);
    const dry = dryBasis(wet);
    return {
      ...wet,
      oxygenDemand: oxygenDemand(input),
      waterPerDryAir: exhaust.waterPerDryAir,
      airPerCarbon: airPerCarbon(exhaust),
      exhaustPerCarbon: moleMean(
        exhaustPerCarbon(exhaust),
        perSpecies(() => 1),
      ),
      oxygenDry: dry.oxygen,
      carbonDioxideDry: dry.carbonDioxide,
      airFuelRatio: input.lambda * stoichiometricAirFuelRatio(input),
      molarMass: molarMassOfMixture(
        wet,
        perSpecies((species) => constants[`${species}MolarMass`]),
      ),
    };
  },
});
