import * as wf from '@wallflow/calculation';
import { molarHeatCapacity, molarMass, ratio, specificEnergy, specificHeatCapacity, temperatureDifference } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { waterPerDryAirOfHumidity } from '../composition/kernel.js';
import { gasTemperatureField } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { mixtureFields } from '../mixture-fields.js';
import { mixtureWorking, partsOf } from '../mixture-working.js';
import { griMech30, nasaTm4513 } from '../sources.js';
import { type ExhaustSpecies, exhaustSpecies, molarMassOfMixture, perExhaustSpecies } from '../species.js';
import { enthalpyReferenceTemperature, heatCapacityRatio, molarHeatCapacityOfMixture, sensibleEnthalpyOfMixture } from './kernel.js';
import { nasaBreakTemperature, nasaEnthalpy, nasaHeatCapacity, nasaPolynomials } from './nasa.js';

/** A sum with the signs of its coefficients. */
const sumOf = (coefficients: readonly number[], term: (power: number) => string) =>
  coefficients
    .flatMap((a, power) => (a === 0 ? [] : [`${a < 0 ? '-' : '+'} ${Math.abs(a)}${term(power)}`]))
    .join(' ')
    .replace(/^\+ /, '')
    .replace(/^- /, '-');
const heatOf = (a: readonly number[]) =>
  sumOf(a.slice(0, 5), (power) => (power === 0 ? '' : ` * gasTemperature${power === 1 ? '' : ` ^ ${power}`}`));
const enthalpyOf = (a: readonly number[], at: string) =>
  sumOf([...a.slice(5), ...a.slice(0, 5)], (power) => (power === 0 ? '' : ` * ${at}${power === 1 ? '' : ` ^ ${power} / ${power}`}`));

/** A formula below and one above the temperature where the polynomials change, for each gas. */
const polynomials = (formulaOf: (coefficients: readonly number[], species: ExhaustSpecies) => string) =>
  Object.fromEntries(
    exhaustSpecies.flatMap((species) => {
      const { low, high } = nasaPolynomials[species];
      const is = `part == '${species}'`;
      return [
        [`${is} and gasTemperature < ${nasaBreakTemperature}`, formulaOf(low, species)],
        [is, formulaOf(high, species)],
      ];
    }),
  );

export const exhaustHeatCapacityCalculation = wf.defineCalculation({
  id: 'exhaust-heat-capacity',
  subject: 'gas',
  title: 'Heat capacity and enthalpy of exhaust gas',
  purpose: 'How much heat does a kilogram of exhaust carry at its temperature?',
  keywords: 'heat capacity, enthalpy, specific heat ratio',
  method: 'NASA polynomials of the pure gases, ideal mixture',
  inputs: {
    gasTemperature: gasTemperatureField({
      range: '200 <= T <= 3500 K',
      usual: [
        '250 K',
        '1700 K',
        {
          below: 'exhaust and intake air are seldom so cold',
          above: 'gases begin to dissociate, and the composition is no longer fixed',
        },
      ],
    }),
    ...mixtureFields,
  },
  example: { lambda: '2' },
  intermediates: {
    ...mixtureWorking.intermediates,
    gasParts: wf.tableOutput({
      label: 'Parts of the gas',
      columns: {
        ...mixtureWorking.columns,
        heatOverConstant: wf.quantityOutput(ratio, { symbol: 'C_{p,i}/R', label: 'Molar heat capacity over the gas constant', digits: 5 }),
        enthalpyOverConstant: wf.quantityOutput(temperatureDifference, {
          symbol: 'H_i/R',
          label: 'Molar enthalpy above 25 °C over the gas constant',
          digits: 5,
          units: ['K'],
        }),
      },
    }),
    mixtureMolarMass: wf.quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass', digits: 6, units: ['g/mol'] }),
    molarHeatCapacity: wf.quantityOutput(molarHeatCapacity, { symbol: 'C_p', label: 'Molar heat capacity', digits: 5 }),
  },
  outputs: {
    heatCapacity: wf.quantityOutput(specificHeatCapacity, { symbol: 'c_p', label: 'Heat capacity at constant pressure', digits: 5 }),
    enthalpy: wf.quantityOutput(specificEnergy, {
      symbol: 'h',
      label: 'Enthalpy above 25 °C',
      description: 'Heat that warms the gas from 25 °C to its temperature; negative below 25 °C. Water stays vapour.',
      digits: 5,
      units: ['kJ/kg', 'J/kg'],
    }),
    heatCapacityRatio: wf.quantityOutput(ratio, { symbol: '\\gamma', label: 'Ratio of specific heats', digits: 5 }),
  },
  answer: 'heatCapacity',
  constants: { ...mixtureWorking.constants, gasConstant },
  steps: [
    ...mixtureWorking.steps,
    wf.rows(
      'gasParts',
      {
        ...mixtureWorking.rows,
        heatOverConstant: polynomials(heatOf),
        enthalpyOverConstant: polynomials(
          (a, species) =>
            `${enthalpyOf(a, 'gasTemperature')} - (${enthalpyOf(nasaPolynomials[species].low, `${enthalpyReferenceTemperature}`)})`,
        ),
      },
      nasaTm4513,
      'nitrogen; the other gases GRI-Mech 3.0; one set of coefficients below and one above 1000 K',
    ),
    wf.formula('mixtureMolarMass', 'sum(gasParts.share * gasParts.partMolarMass)', cfr1065, '1065.1005(f)(2), Table 7'),
    wf.formula('molarHeatCapacity', 'gasConstant * sum(gasParts.share * gasParts.heatOverConstant)', nasaTm4513),
    wf.formula('enthalpy', 'gasConstant * sum(gasParts.share * gasParts.enthalpyOverConstant) / mixtureMolarMass', nasaTm4513),
    wf.formula('heatCapacityRatio', 'molarHeatCapacity / (molarHeatCapacity - gasConstant)'),
    wf.formula('heatCapacity', 'molarHeatCapacity / mixtureMolarMass'),
  ],
  assumptions: { ideal_gas: 'Ideal gas: pressure does not matter.' },
  limits: {
    not_air: 'Exhaust is not air: with dry intake air its heat capacity at 600 K is 1.5 % (lambda 6) to 8.6 % (lambda 1) higher.',
    no_condensation: 'The heat of condensing water is not in it.',
  },
  sources: [griMech30],
  dimensional: 'polynomials fitted in kelvin',
  compute(input, context) {
    const { gasTemperature } = input;
    const { constants } = context;
    const mixture = mixtureOf(input, context);
    const molarMasses = perExhaustSpecies((species) => constants[`${species}MolarMass`]);
    const mixtureMolarMass = molarMassOfMixture(mixture, molarMasses);
    const molar = molarHeatCapacityOfMixture(mixture, gasTemperature, constants.gasConstant);
    const enthalpyOverConstant = (species: ExhaustSpecies) =>
      nasaEnthalpy(nasaPolynomials[species], gasTemperature) - nasaEnthalpy(nasaPolynomials[species], enthalpyReferenceTemperature);
    return {
      ...mixture,
      waterPerDryAir: waterPerDryAirOfHumidity(input.humidity, constants.airMolarMass, constants.waterMolarMass),
      gasParts: partsOf(mixture, molarMasses, (species) => ({
        heatOverConstant: nasaHeatCapacity(nasaPolynomials[species], gasTemperature),
        enthalpyOverConstant: enthalpyOverConstant(species),
      })),
      mixtureMolarMass,
      molarHeatCapacity: molar,
      heatCapacity: molar / mixtureMolarMass,
      enthalpy: sensibleEnthalpyOfMixture(mixture, gasTemperature, constants.gasConstant) / mixtureMolarMass,
      heatCapacityRatio: heatCapacityRatio(molar, constants.gasConstant),
    };
  },
});
