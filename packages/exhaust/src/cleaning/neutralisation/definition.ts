import * as wf from '@wallflow/calculation';
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
import { acidMass, alkaliToNeutralise, freeAlkali, protonsGiven } from './kernel.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 3, units: ['L', 'mL', 'gal_US'] });
const ofAcid = (value: number, symbol: string, label: string) => wf.constant(molarMass, value, { symbol, label, source: acidBase });

const pk = (value: number, symbol: string, label: string) => wf.constant(ratio, value, { symbol, label, source: acidConstants });

export const neutralisationCalculation = wf.defineCalculation({
  id: 'neutralisation',
  subject: 'cleaning',
  title: 'Neutralise the wash liquid',
  purpose: 'How much acid does the collected wash liquid need before it may be handed over, and how much waste is it then?',
  keywords: 'effluent, waste, pH, acid, alkaline, citric',
  method: 'charge balance at the target pH; alkali from a titration, or from the pH if there is no buffer',
  inputs: {
    washVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Wash and rinse liquid collected',
      range: '0 < x <= 10000 L',
      example: '8 L',
      units: ['L', 'mL', 'gal_US'],
    }),
    ...wf.oneOf({
      alkalinity: wf.quantity(molarConcentration, {
        symbol: 'a',
        label: 'Alkalinity by titration',
        description:
          'Strong acid that a sample takes down to the target pH. Better than the pH, which does not show the buffer in a cleaner.',
        range: '0 <= x <= 20 mol/L',
        example: '0.1 mol/L',
        units: ['mol/L', 'mmol/L'],
      }),
      startPh: wf.quantity(ratio, {
        symbol: 'pH_1',
        label: 'pH of the liquid',
        description: 'Only if no titration was done: it gives the smallest dose.',
        range: '0 <= x <= 14',
        example: '12',
      }),
    }),
    targetPh: wf.quantity(ratio, {
      symbol: 'pH_2',
      label: 'Target pH',
      description: 'As the authority or the waste carrier asks.',
      range: '4 <= x <= 14',
      usual: ['6', '9', 'common practice, no source: consents for trade effluent'],
      default: ['8', 'common practice, no source: between 6 and 9'],
    }),
    acid: wf.choice({
      label: 'Acid',
      options: {
        citric: 'citric acid, anhydrous',
        'citric-monohydrate': 'citric acid, monohydrate',
        acetic: 'acetic acid',
        sulfamic: 'sulfamic acid',
      },
      default: ['citric', 'mild, solid, free of chloride and sulphate'],
    }),
    acidStrength: wf.quantity(massFraction, {
      symbol: 'w',
      label: 'Strength of the acid, by mass',
      range: '1 <= x <= 100 %',
      default: ['100 %', 'pure solid'],
    }),
    acidDensity: wf.optional(
      wf.quantity(density, {
        symbol: '\\rho',
        label: 'Density of the acid, if it is a liquid',
        range: '900 <= x <= 1900 kg/m3',
        example: '1.05 kg/L',
        units: ['kg/L', 'kg/m3'],
      }),
    ),
  },
  example: { alkalinity: '0.1 mol/L' },
  intermediates: {
    alkaliAtStart: wf.optional(
      wf.quantityOutput(molarConcentration, { symbol: 'a_1', label: 'Free alkali in the liquid', digits: 3, units: ['mmol/L'] }),
    ),
    alkaliAtTarget: wf.optional(
      wf.quantityOutput(molarConcentration, { symbol: 'a_2', label: 'Free alkali at the target pH', digits: 3, units: ['mmol/L'] }),
    ),
    alkali: wf.quantityOutput(amount, { symbol: 'n', label: 'Alkali to neutralise', digits: 4, units: ['mol', 'mmol'] }),
    acidMolarMass: wf.quantityOutput(molarMass, { symbol: 'M_a', label: 'Molar mass of the acid', digits: 5, units: ['g/mol'] }),
    protons: wf.quantityOutput(ratio, { symbol: 'z', label: 'Protons that a molecule of the acid gives up to that pH', digits: 3 }),
    pureAcid: wf.quantityOutput(mass, { symbol: 'm_a', label: 'Pure acid', digits: 4, units: ['g', 'kg'] }),
  },
  outputs: {
    acidVolume: wf.optional(volumeOutput('V_a', 'Acid to add, by volume')),
    effluentVolume: volumeOutput('V_e', 'Waste in all'),
    temperatureRise: wf.quantityOutput(temperatureDifference, { symbol: '\\Delta T', label: 'Temperature rise, about', digits: 2 }),
    acidMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Acid to add', digits: 4, units: ['g', 'kg', 'lb'] }),
  },
  constants: {
    unitConcentration: wf.constant(molarConcentration, 1000, {
      symbol: 'c^\\circ',
      label: 'Concentration at pH 0',
      source: acidBase,
    }),
    ionProduct: wf.constant(ratio, 14, { symbol: 'pK_w', label: 'Ion product of water at 25 °C', source: acidBase }),
    citricMolarMass: ofAcid(0.192124, 'M_1', 'Molar mass of citric acid'),
    citricMonohydrateMolarMass: ofAcid(0.210139, 'M_2', 'Molar mass of citric acid monohydrate'),
    aceticMolarMass: ofAcid(0.060052, 'M_3', 'Molar mass of acetic acid'),
    sulfamicMolarMass: ofAcid(0.097094, 'M_4', 'Molar mass of sulfamic acid'),
    citricFirst: pk(3.128, 'pK_{1}', 'First step of citric acid'),
    citricSecond: pk(4.761, 'pK_{2}', 'Second step of citric acid'),
    citricThird: pk(6.396, 'pK_{3}', 'Third step of citric acid'),
    aceticOnly: pk(4.756, 'pK_{a}', 'Acetic acid'),
    sulfamicOnly: pk(1.0, 'pK_{s}', 'Sulfamic acid'),
    neutralisationHeat: wf.constant(molarEnergy, 56e3, { symbol: 'h', label: 'Heat of neutralisation', source: acidBase }),
    waterDensity: wf.constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: waterDensity20 }),
    waterHeatCapacity: wf.constant(specificHeatCapacity, 4180, { symbol: 'c_w', label: 'Specific heat of water', source: acidBase }),
  },
  answer: 'acidMass',
  steps: [
    wf.formula('alkaliAtStart', 'unitConcentration * (10 ^ (startPh - ionProduct) - 10 ^ (-startPh))', acidBase),
    wf.cases('alkaliAtTarget', { 'known(startPh)': 'unitConcentration * (10 ^ (targetPh - ionProduct) - 10 ^ (-targetPh))' }, acidBase),
    wf.cases(
      'alkali',
      { 'known(alkalinity)': 'alkalinity * washVolume', otherwise: '(alkaliAtStart - alkaliAtTarget) * washVolume' },
      acidBase,
    ),
    wf.cases(
      'acidMolarMass',
      {
        "acid == 'citric'": 'citricMolarMass',
        "acid == 'citric-monohydrate'": 'citricMonohydrateMolarMass',
        "acid == 'acetic'": 'aceticMolarMass',
        otherwise: 'sulfamicMolarMass',
      },
      acidBase,
    ),
    wf.cases(
      'protons',
      {
        "acid == 'acetic'": '1 / (1 + 10 ^ (aceticOnly - targetPh))',
        "acid == 'sulfamic'": '1 / (1 + 10 ^ (sulfamicOnly - targetPh))',
        otherwise:
          '(10 ^ (targetPh - citricFirst) + 2 * 10 ^ (2 * targetPh - citricFirst - citricSecond) + 3 * 10 ^ (3 * targetPh - citricFirst - citricSecond - citricThird)) / (1 + 10 ^ (targetPh - citricFirst) + 10 ^ (2 * targetPh - citricFirst - citricSecond) + 10 ^ (3 * targetPh - citricFirst - citricSecond - citricThird))',
      },
      acidConstants,
    ),
    wf.formula('pureAcid', 'alkali * acidMolarMass / protons', chargeBalance),
    wf.formula('acidMass', 'pureAcid / acidStrength', strengthOfAcid),
    wf.formula('acidVolume', 'acidMass / acidDensity', strengthOfAcid),
    wf.cases(
      'effluentVolume',
      { 'known(acidDensity)': 'washVolume + acidVolume', otherwise: 'washVolume + acidMass / waterDensity' },
      effluentPractice,
    ),
    wf.formula('temperatureRise', 'alkali * neutralisationHeat / (washVolume * waterDensity * waterHeatCapacity)', neutralisationHeating),
  ],
  assumptions: {
    ideal_solution:
      'Constants of the acid at 25 °C in very dilute water. In salty water citric acid gives more: at pH 6 about a sixth more at 0.1 mol/L, at pH 8 less than a hundredth.',
  },
  limits: {
    ph_hides_buffer:
      'By pH alone the dose is the least possible: silicates, carbonates and amines in a cleaner take more. Titrate a sample.',
    not_the_metals: 'A neutral liquid still holds metals from ash and coating: it is not yet fit for a drain.',
  },
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
  compute(input, { constants, method, warn }) {
    const { washVolume, alkalinity, startPh, targetPh } = input;
    const { unitConcentration, ionProduct } = constants;
    const freeAt = (ph: number) => (startPh === undefined ? undefined : freeAlkali(ph, unitConcentration, ionProduct));
    let concentration: number | undefined = alkalinity;
    if (startPh !== undefined) {
      if (startPh < targetPh) return wf.noSolution('the liquid is already below the target pH: no acid is needed', ['startPh']);
      method('hydroxide ions from the pH, without a buffer: the smallest dose');
      warn('least_dose', 'From the pH alone this is the smallest possible dose: add it in steps and measure.', ['startPh']);
      concentration = alkaliToNeutralise({ startPh, targetPh, unitConcentration, ionProduct });
    }
    const alkali = wf.known(concentration) * washVolume;
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
      alkaliAtStart: startPh === undefined ? undefined : freeAt(startPh),
      alkaliAtTarget: freeAt(targetPh),
      alkali,
      acidMolarMass: acid.molarMass,
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
