import * as wf from '@wallflow/calculation';
import { fraction, thermalConductivity } from '@wallflow/units';
import { waterPerDryAirOfHumidity } from '../composition/kernel.js';
import { dynamicViscosityCalculation } from '../dynamic-viscosity/definition.js';
import { diluteAirViscosity } from '../dynamic-viscosity/kernel.js';
import { gasTemperatureField } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { mixtureFields } from '../mixture-fields.js';
import { mixtureWorking, ofParts, optionalMixture, partsOf } from '../mixture-working.js';
import { iapwsConductivity, lemmonJacobsen2004, polingPrausnitz, standardAtmosphere, vesovic1990 } from '../sources.js';
import { type ExhaustSpecies, exhaustSpecies, molarMassOf, type PerSpecies } from '../species.js';
import { diluteViscosities } from '../viscosity-of-mixture/dilute-gas.js';
import { diluteViscosityRows, hindranceOf, hindranceRows, hindranceTable, viscosityOutput } from '../wilke-working.js';
import { type ConductivityConstants, conductivityConstants, diluteAirConductivity, diluteConductivities } from './dilute-gas.js';
import { airConductivityStandardAtmosphere, exhaustConductivity } from './kernel.js';

const conductivityOutput = (symbol: string, label: string) =>
  wf.quantityOutput(thermalConductivity, { symbol, label, digits: 4, units: ['mW/(m.K)', 'W/(m.K)'] });

const lemmonJacobsen = ({ criticalTemperature, viscosityFactor, terms }: ConductivityConstants, viscosity: string) => {
  const others = terms.map(
    ([factor, power]) => ` ${factor < 0 ? '-' : '+'} ${Math.abs(factor)} * (${criticalTemperature} / gasTemperature) ^ ${power}`,
  );
  return `as(${viscosityFactor} * in(${viscosity}, 'uPa.s')${others.join('')}, 'mW/(m.K)')`;
};

const conductivityFormulas: Readonly<Record<ExhaustSpecies, string>> = {
  nitrogen: lemmonJacobsen(conductivityConstants.nitrogen, 'partViscosity'),
  oxygen: lemmonJacobsen(conductivityConstants.oxygen, 'partViscosity'),
  argon: lemmonJacobsen(conductivityConstants.argon, 'partViscosity'),
  carbonDioxide:
    "as(0.475598 * sqrt(gasTemperature) * (1 + 0.4 * (1 + exp(-183.5 / gasTemperature) * (0.02387869 * gasTemperature / 100 + 4.350794 - 10.33404 * 100 / gasTemperature + 7.98159 * (100 / gasTemperature) ^ 2 - 1.940558 * (100 / gasTemperature) ^ 3))) / (0.4226159 + 0.6280115 * 251.196 / gasTemperature - 0.5387661 * (251.196 / gasTemperature) ^ 2 + 0.6735941 * (251.196 / gasTemperature) ^ 3 - 0.4362677 * (251.196 / gasTemperature) ^ 6 + 0.2255388 * (251.196 / gasTemperature) ^ 7), 'mW/(m.K)')",
  water:
    "as(sqrt(gasTemperature / 647.096) / (0.002443221 + 0.01323095 * 647.096 / gasTemperature + 0.006770357 * (647.096 / gasTemperature) ^ 2 - 0.003454586 * (647.096 / gasTemperature) ^ 3 + 0.0004096266 * (647.096 / gasTemperature) ^ 4), 'mW/(m.K)')",
};

/** What is shown of a mixture on the way to its conductivity; nothing where the gas is taken as air. */
function mixtureShown(mixture: PerSpecies | undefined, humidity: number | undefined, temperature: number) {
  const [viscosities, conductivities] = [diluteViscosities(temperature), diluteConductivities(temperature)];
  const shares = Object.fromEntries(exhaustSpecies.map((species) => [species, mixture?.[species]])) as Record<
    ExhaustSpecies,
    number | undefined
  >;
  return {
    ...shares,
    waterPerDryAir: mixture && waterPerDryAirOfHumidity(wf.known(humidity)),
    gasParts:
      mixture &&
      partsOf(mixture, molarMassOf, (species) => ({ partViscosity: viscosities[species], partConductivity: conductivities[species] })),
    hindrances: mixture && hindranceOf(mixture, viscosities),
  };
}

export const thermalConductivityCalculation = wf.defineCalculation({
  id: 'thermal-conductivity',
  subject: 'gas',
  title: 'Thermal conductivity of exhaust gas',
  purpose: 'How well does the gas conduct heat at its temperature?',
  keywords: 'thermal conductivity, heat transfer',
  method: 'dilute air, Lemmon and Jacobsen 2004',
  inputs: {
    gasTemperature: gasTemperatureField({
      range: '200 <= T <= 1500 K',
      usual: ['250 K', '1173 K', 'the correlations are checked up to about here'],
    }),
    model: wf.choice({
      label: 'Model',
      options: {
        'dilute-air': 'as air: dilute gas, Lemmon and Jacobsen 2004',
        'standard-atmosphere': 'as air: US Standard Atmosphere 1976',
        mixture: 'by composition: dilute-gas correlations, Mason and Saxena',
      },
      default: [
        'dilute-air',
        'needs no composition; exhaust of lambda 2 is 7 % lower at 300 K, 2 % lower at 600 K and 1 % higher at 1000 K',
      ],
    }),
    ...wf.relevantWhen('model', 'mixture', mixtureFields),
  },
  intermediates: {
    airViscosity: viscosityOutput('\\mu_a', 'Viscosity of air as a dilute gas'),
    ...optionalMixture,
    gasParts: wf.optional(
      wf.tableOutput({
        label: 'Parts of the gas',
        columns: {
          ...mixtureWorking.columns,
          partViscosity: viscosityOutput('\\mu_i', 'Viscosity of the part'),
          partConductivity: conductivityOutput('k_i', 'Thermal conductivity of the part'),
        },
      }),
    ),
    hindrances: wf.optional(hindranceTable({ viscosity: '\\mu_k', hindrance: 'h_k' }, 'How the parts hinder each other')),
    diluteAir: conductivityOutput('k_0', 'Dilute air'),
    standardAtmosphere: conductivityOutput('k_{SA}', 'Air by the standard atmosphere'),
    byComposition: wf.optional(conductivityOutput('k_m', 'By composition')),
    modelDifference: wf.quantityOutput(fraction, {
      symbol: '\\delta',
      label: 'Standard atmosphere against dilute air',
      digits: 2,
      units: ['%'],
    }),
  },
  outputs: { conductivity: conductivityOutput('k', 'Thermal conductivity') },
  constants: mixtureWorking.constants,
  steps: [
    wf.nested('airViscosity', dynamicViscosityCalculation, { gasTemperature: 'gasTemperature' }, 'diluteGas'),
    wf.formula('diluteAir', lemmonJacobsen(conductivityConstants.air, 'airViscosity'), lemmonJacobsen2004, 'Eq. 5'),
    wf.formula(
      'standardAtmosphere',
      '0.00264638 * gasTemperature ^ 1.5 / (gasTemperature + 245.4 * 10 ^ (-12 / gasTemperature))',
      standardAtmosphere,
      'Eq. 53',
    ),
    ...mixtureWorking.steps,
    wf.rows(
      'gasParts',
      { ...mixtureWorking.rows, partViscosity: diluteViscosityRows, partConductivity: ofParts((species) => conductivityFormulas[species]) },
      polingPrausnitz,
      'Eq. 10-6.2',
      'Pure gases by Lemmon and Jacobsen, Vesovic and others, IAPWS.',
    ),
    wf.rows('hindrances', hindranceRows('partViscosity'), polingPrausnitz, 'Eq. 10-6.2'),
    wf.formula('byComposition', 'sum(gasParts.share * gasParts.partConductivity / hindrances.hindrance)', polingPrausnitz, 'Eq. 10-6.2'),
    wf.formula('modelDifference', 'standardAtmosphere / diluteAir - 1'),
    wf.cases('conductivity', {
      "model == 'mixture'": 'byComposition',
      "model == 'standard-atmosphere'": 'standardAtmosphere',
      otherwise: 'diluteAir',
    }),
  ],
  assumptions: { dilute: 'Pressure does not matter; true below about 1 MPa.' },
  limits: { mixing_rule: 'The mixing rule itself is good to about 3 %; the correlations of the pure gases to about 2 %.' },
  sources: [vesovic1990, iapwsConductivity],
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const diluteAir = diluteAirConductivity(input.gasTemperature);
    const standard = airConductivityStandardAtmosphere(input.gasTemperature);
    const { gas, humidity } = input;
    const mixture = gas === undefined || humidity === undefined ? undefined : mixtureOf({ ...input, gas, humidity }, context);
    const byComposition = mixture && exhaustConductivity(mixture, input.gasTemperature);
    const air = input.model === 'standard-atmosphere' ? standard : diluteAir;
    context.method(
      { 'dilute-air': 'as dilute air', 'standard-atmosphere': 'as air of the standard atmosphere', mixture: 'by composition' }[input.model],
    );
    if (input.model !== 'mixture') context.assume('as_air', 'The gas is taken as air.');
    return {
      airViscosity: diluteAirViscosity(input.gasTemperature),
      ...mixtureShown(mixture, humidity, input.gasTemperature),
      diluteAir,
      standardAtmosphere: standard,
      byComposition,
      modelDifference: standard / diluteAir - 1,
      conductivity: byComposition ?? air,
    };
  },
});
