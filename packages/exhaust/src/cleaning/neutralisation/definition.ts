import {
  choiceWithDefault,
  constant,
  defineCalculation,
  inconsistentInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  amount,
  density,
  mass,
  massFraction,
  molarConcentration,
  molarEnergy,
  molarMass,
  ratio,
  specificHeatCapacity,
  temperatureDifference,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import {
  acidBase,
  acidConstants,
  chargeBalance,
  effluentPractice,
  neutralisationHeating,
  strengthOfAcid,
  waterDensity20,
} from '../sources.js';
import { acidMass, alkaliToNeutralise, protonsGiven } from './kernel.js';

const ph = (symbol: string, label: string, description: string, example: string) => ({
  symbol,
  label,
  description,
  min: '0',
  max: '14',
  example,
});
const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 3, units: ['L', 'mL', 'gal_US'] });
const ofAcid = (value: number, symbol: string, label: string) => constant(molarMass, value, { symbol, label, source: 'acidBase' });

const pk = (value: number, symbol: string, label: string) => constant(ratio, value, { symbol, label, source: 'acidConstants' });

export const neutralisationCalculation = defineCalculation({
  id: 'neutralisation',
  version: '1.1.0',
  subject: 'cleaning',
  title: 'Neutralise the wash liquid',
  purpose: 'How much acid does the caught wash liquid take before it may be handed over, and how much waste is it then?',
  usedBy: ['technician', 'developer'],
  keywords: ['effluent', 'waste', 'pH', 'acid', 'alkaline', 'citric'],
  method: 'charge balance at the pH that is wanted; alkali from a titration, or from the pH if there is no buffer',
  inputs: z.strictObject({
    washVolume: quantity(volume, {
      symbol: 'V',
      label: 'Wash and rinse liquid that was caught',
      above: '0 L',
      max: '10000 L',
      example: '20 L',
      units: ['L', 'mL', 'gal_US'],
    }),
    alkalinity: quantity(molarConcentration, {
      symbol: 'a',
      label: 'Alkalinity by titration',
      description:
        'Strong acid that a sample takes to the pH that is wanted. Better than the pH: cleaners hold a buffer that pH does not show.',
      min: '0 mol/L',
      max: '20 mol/L',
      example: '0.1 mol/L',
      units: ['mol/L', 'mmol/L'],
    }).optional(),
    startPh: quantity(
      ratio,
      ph('pH_1', 'pH of the liquid', 'Give this only when no titration was done: it gives the least dose.', '12'),
    ).optional(),
    targetPh: quantityWithDefault(ratio, {
      ...ph('pH_2', 'pH that is wanted', 'As the authority or the waste carrier asks.', '8'),
      min: '4',
      usual: ['6', '9'],
      usualReason: 'common practice, no source: consents for trade effluent',
      default: '8',
      defaultReason: 'common practice, no source: between 6 and 9',
    }),
    acid: choiceWithDefault({
      label: 'Acid',
      options: {
        citric: 'citric acid, anhydrous',
        'citric-monohydrate': 'citric acid, monohydrate',
        acetic: 'acetic acid',
        sulfamic: 'sulfamic acid',
      },
      example: 'citric',
      default: 'citric',
      defaultReason: 'mild, solid, free of chloride and sulphate',
    }),
    acidStrength: quantityWithDefault(massFraction, {
      symbol: 'w',
      label: 'Strength of the acid, by mass',
      min: '1 %',
      max: '100 %',
      example: '100 %',
      default: '100 %',
      defaultReason: 'pure solid',
    }),
    acidDensity: quantity(density, {
      symbol: '\\rho',
      label: 'Density of the acid, if it is a liquid',
      min: '900 kg/m3',
      max: '1900 kg/m3',
      example: '1.05 kg/L',
      units: ['kg/L', 'kg/m3'],
    }).optional(),
  }),
  example: { alkalinity: '0.1 mol/L' },
  intermediates: {
    alkali: quantityOutput(amount, { symbol: 'n', label: 'Alkali to neutralise', digits: 4, units: ['mol', 'mmol'] }),
    protons: quantityOutput(ratio, { symbol: 'z', label: 'Protons that a molecule of the acid gives up to that pH', digits: 3 }),
    pureAcid: quantityOutput(mass, { symbol: 'm_a', label: 'Pure acid', digits: 4, units: ['g', 'kg'] }),
  },
  outputs: {
    acidVolume: optional(volumeOutput('V_a', 'Acid to add, by volume')),
    effluentVolume: volumeOutput('V_e', 'Waste in the end'),
    temperatureRise: quantityOutput(temperatureDifference, { symbol: '\\Delta T', label: 'The liquid warms by about', digits: 2 }),
    acidMass: quantityOutput(mass, { symbol: 'm', label: 'Acid to add', digits: 4, units: ['g', 'kg', 'lb'] }),
  },
  constants: {
    unitConcentration: constant(molarConcentration, 1000, {
      symbol: 'c^\\circ',
      label: 'Concentration that pH counts from',
      source: 'acidBase',
    }),
    ionProduct: constant(ratio, 14, { symbol: 'pK_w', label: 'Ion product of water at 25 °C', source: 'acidBase' }),
    citricMolarMass: ofAcid(0.192124, 'M_1', 'Molar mass of citric acid'),
    citricMonohydrateMolarMass: ofAcid(0.210139, 'M_2', 'Molar mass of citric acid monohydrate'),
    aceticMolarMass: ofAcid(0.060052, 'M_3', 'Molar mass of acetic acid'),
    sulfamicMolarMass: ofAcid(0.097094, 'M_4', 'Molar mass of sulfamic acid'),
    citricFirst: pk(3.128, 'pK_{1}', 'First step of citric acid'),
    citricSecond: pk(4.761, 'pK_{2}', 'Second step of citric acid'),
    citricThird: pk(6.396, 'pK_{3}', 'Third step of citric acid'),
    aceticOnly: pk(4.756, 'pK_{a}', 'Acetic acid'),
    sulfamicOnly: pk(1.0, 'pK_{s}', 'Sulfamic acid'),
    neutralisationHeat: constant(molarEnergy, 56e3, { symbol: 'h', label: 'Heat of neutralisation', source: 'acidBase' }),
    waterDensity: constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: 'waterDensity20' }),
    waterHeatCapacity: constant(specificHeatCapacity, 4180, { symbol: 'c_w', label: 'Specific heat of water', source: 'acidBase' }),
  },
  steps: [
    {
      gives: 'alkali',
      text: 'Titrated alkalinity times volume; or hydroxide at the pH less what may stay, times volume: [[alkali]].',
      source: 'acidBase',
    },
    {
      gives: 'protons',
      text: 'Mean number of protons that [[acid]] has given up at [[targetPh]], from the constants of its steps: [[protons]].',
      source: 'acidConstants',
    },
    {
      gives: 'pureAcid',
      text: 'Charge balance: amount of alkali over the protons given, times the molar mass of [[acid]]: [[pureAcid]].',
      source: 'chargeBalance',
    },
    { gives: 'acidVolume', tex: '[[acidVolume]] = \\frac{[[acidMass]]}{[[acidDensity]]}', source: 'strengthOfAcid' },
    { gives: 'effluentVolume', text: 'Wash liquid and acid together: [[effluentVolume]].', source: 'effluentPractice' },
    {
      gives: 'temperatureRise',
      tex: '[[temperatureRise]] = \\frac{[[alkali]]\\,[[neutralisationHeat]]}{[[washVolume]]\\,[[waterDensity]]\\,[[waterHeatCapacity]]}',
      source: 'neutralisationHeating',
    },
    { gives: 'acidMass', tex: '[[acidMass]] = \\frac{[[pureAcid]]}{[[acidStrength]]}', source: 'strengthOfAcid' },
  ],
  assumptions: [
    {
      code: 'ideal_solution',
      text: 'Constants of the acid at 25 °C in very dilute water. Salts make citric acid give more: at pH 6 about a sixth more at 0.1 mol/L, at pH 8 not a hundredth.',
    },
  ],
  limits: [
    {
      code: 'ph_hides_buffer',
      text: 'By pH alone the dose is the least possible: silicates, carbonates and amines of a cleaner take more. Titrate a sample.',
    },
    { code: 'not_the_metals', text: 'A neutral liquid still holds metals from ash and coating: neutral is not yet fit for a drain.' },
  ],
  cautions: [
    {
      code: 'acid_and_alkali',
      text: 'Acid and alkali heat up and can spit: goggles and gloves, acid slowly into the dilute liquid, stirring, never the other way round.',
    },
    {
      code: 'no_mixing_with_bleach',
      text: 'Never near bleach or chlorine cleaners: acid sets chlorine free. Sulphide or nitrite wastes give off poisonous gas.',
    },
    cautions.caustic,
    cautions.waste,
    cautions.makerFirst,
  ],
  sources: { acidBase, chargeBalance, acidConstants, strengthOfAcid, neutralisationHeating, effluentPractice, waterDensity20 },
  compute(input, { constants, method, warn }) {
    const { washVolume, alkalinity, startPh, targetPh } = input;
    if (alkalinity !== undefined && startPh !== undefined) {
      return inconsistentInputs('give the titration or the pH, not both: the titration counts', ['alkalinity'], ['startPh']);
    }
    let concentration: number | undefined = alkalinity;
    if (startPh !== undefined) {
      if (startPh < targetPh) return noSolution('the liquid is already below the pH that is wanted: no acid is needed', ['startPh']);
      method('hydroxide ions from the pH, without a buffer: the least dose');
      warn('least_dose', 'From the pH alone the dose is the least possible; add it in steps and measure.', ['startPh']);
      const { unitConcentration, ionProduct } = constants;
      concentration = alkaliToNeutralise({ startPh, targetPh, unitConcentration, ionProduct });
    }
    if (concentration === undefined) {
      return noSolution('the alkalinity of the liquid is not known: titrate a sample, or measure its pH', ['alkalinity']);
    }
    const alkali = concentration * washVolume;
    const { citricFirst, citricSecond, citricThird, citricMolarMass, citricMonohydrateMolarMass } = constants;
    const citric = [citricFirst, citricSecond, citricThird];
    const acid = {
      citric: { molarMass: citricMolarMass, steps: citric },
      'citric-monohydrate': { molarMass: citricMonohydrateMolarMass, steps: citric },
      acetic: { molarMass: constants.aceticMolarMass, steps: [constants.aceticOnly] },
      sulfamic: { molarMass: constants.sulfamicMolarMass, steps: [constants.sulfamicOnly] },
    }[input.acid];
    const protons = protonsGiven(targetPh, acid.steps);
    const pureAcid = acidMass(alkali, acid.molarMass, protons);
    const toAdd = pureAcid / input.acidStrength;
    const acidVolume = input.acidDensity === undefined ? undefined : toAdd / input.acidDensity;
    return {
      alkali,
      protons,
      pureAcid,
      acidVolume,
      // A solid takes roughly the room of as much water.
      effluentVolume: washVolume + (acidVolume ?? toAdd / constants.waterDensity),
      temperatureRise: (alkali * constants.neutralisationHeat) / (washVolume * constants.waterDensity * constants.waterHeatCapacity),
      acidMass: toAdd,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Add three quarters, stir, measure, then go on in small steps; write volume, pH and carrier on the waste note.' },
    { tone: 'do-not', text: 'Do not pour it into a surface drain; into the foul sewer only with the consent of the water company.' },
  ],
});
