import * as wf from '@wallflow/calculation';
import { massRatio, molarMass, moleFraction, ratio } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { oxygenDemand, stoichiometricAirFuelRatio } from '../air-fuel-ratio/kernel.js';
import { fuelFields, humidityField, lambdaField } from '../mixture-fields.js';
import { molarMassConstants } from '../molar-mass-constants.js';
import { atomBalance } from '../sources.js';
import { molarMassOfMixture, moleMean, perExhaustSpecies } from '../species.js';
import { airPerCarbon, dryBasis, exhaustComposition, exhaustPerCarbon, waterPerDryAirOfHumidity } from './kernel.js';

const share = (symbol: string, label: string) => wf.quantityOutput(moleFraction, { symbol, label, digits: 4, units: ['%', 'ppm'] });

export const exhaustCompositionCalculation = wf.defineCalculation({
  id: 'exhaust-composition',
  subject: 'gas',
  title: 'Composition of diesel exhaust',
  purpose: 'What is in the exhaust at this lambda, wet as in the pipe and dry as after a cold analyser?',
  keywords: 'oxygen, carbon dioxide, water, molar mass, lambda',
  method: 'atom balance of complete combustion',
  inputs: { lambda: lambdaField, ...fuelFields, humidity: humidityField },
  intermediates: {
    oxygenDemand: wf.quantityOutput(ratio, { symbol: 's', label: 'Moles of oxygen needed per mole of carbon', digits: 5 }),
    waterPerDryAir: wf.quantityOutput(ratio, { symbol: 'h', label: 'Moles of water per mole of dry intake air', digits: 4 }),
    airPerCarbon: wf.quantityOutput(ratio, { symbol: 'a', label: 'Moles of dry air per mole of carbon', digits: 5 }),
    exhaustPerCarbon: wf.quantityOutput(ratio, { symbol: 'n', label: 'Moles of wet exhaust per mole of carbon', digits: 5 }),
    airFuelRatio: wf.quantityOutput(massRatio, { symbol: 'L', label: 'Air-fuel ratio by mass, dry air', digits: 4, units: ['1'] }),
  },
  outputs: {
    oxygen: share('x_{O_2}', 'Oxygen, wet'),
    carbonDioxide: share('x_{CO_2}', 'Carbon dioxide, wet'),
    water: share('x_{H_2O}', 'Water, wet'),
    nitrogen: share('x_{N_2}', 'Nitrogen, wet'),
    argon: share('x_{Ar}', 'Argon, wet'),
    oxygenDry: share('x_{O_2,d}', 'Oxygen, dry'),
    carbonDioxideDry: share('x_{CO_2,d}', 'Carbon dioxide, dry'),
    molarMass: wf.quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass of wet exhaust', digits: 6, units: ['g/mol'] }),
  },
  constants: { ...molarMassConstants, airMolarMass },
  answer: 'molarMass',
  steps: [
    wf.formula('oxygenDemand', '1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2', atomBalance),
    wf.formula('airPerCarbon', 'lambda * oxygenDemand / 0.209445', atomBalance),
    wf.formula(
      'airFuelRatio',
      "airPerCarbon * in(airMolarMass, 'g/mol') / (12.0107 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon)",
      atomBalance,
      undefined,
      'That air over the fuel, by mass.',
    ),
    wf.formula('waterPerDryAir', 'airMolarMass / waterMolarMass * humidity', cfr1065, '1065.1005(f)(2), Table 7'),
    wf.formula('exhaustPerCarbon', '1 + hydrogenToCarbon / 2 - oxygenDemand + airPerCarbon * (1 + waterPerDryAir)', atomBalance),
    wf.formula('oxygen', '((lambda - 1) * oxygenDemand) / exhaustPerCarbon', atomBalance),
    wf.formula('carbonDioxide', '(1 + 0.000375 * airPerCarbon) / exhaustPerCarbon', atomBalance),
    wf.formula('water', '(hydrogenToCarbon / 2 + airPerCarbon * waterPerDryAir) / exhaustPerCarbon', atomBalance),
    wf.formula('nitrogen', '0.78084 * airPerCarbon / exhaustPerCarbon', atomBalance),
    wf.formula('argon', '0.00934 * airPerCarbon / exhaustPerCarbon', atomBalance),
    wf.formula('oxygenDry', 'oxygen / (1 - water)'),
    wf.formula('carbonDioxideDry', 'carbonDioxide / (1 - water)'),
    wf.formula(
      'molarMass',
      'nitrogenMolarMass * nitrogen + oxygenMolarMass * oxygen + carbonDioxideMolarMass * carbonDioxide + waterMolarMass * water + argonMolarMass * argon',
      cfr1065,
      '1065.1005(f)(2), Table 7',
    ),
  ],
  assumptions: {
    complete_combustion: 'All fuel is burnt to carbon dioxide and water; for lean diesel exhaust this holds to within 0.1 % by volume.',
    dry_air_composition: 'Dry air as in 40 CFR 1065: 78.084 % nitrogen, 20.9445 % oxygen, 0.934 % argon, 375 ppm carbon dioxide.',
  },
  limits: {
    lean_only: 'For lambda of 1 and more. A rich purge also makes carbon monoxide and hydrogen.',
    no_condensate: 'Water stays vapour: not in a cold exhaust, where it condenses.',
  },
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
        perExhaustSpecies(() => 1),
      ),
      oxygenDry: dry.oxygen,
      carbonDioxideDry: dry.carbonDioxide,
      airFuelRatio: input.lambda * stoichiometricAirFuelRatio(input),
      molarMass: molarMassOfMixture(
        wet,
        perExhaustSpecies((species) => constants[`${species}MolarMass`]),
      ),
    };
  },
});
