import { choice, constant, known, oneOf, quantity, relevantWhen, whenGiven } from '@wallflow/calculation';
import { molarEnergy, moleFraction, ratio, reactionRate, temperature } from '@wallflow/units';
import { gasConstant } from '../../vocabulary/constants.js';
import { bai2016, bissettShadman1985, uncoatedDisk2008 } from '../sources.js';
import type { OxidationLaw, SootKinetics } from './kernel.js';
import { bai2016NitrogenDioxide, bai2016Oxygen, bissettShadman1985Oxygen, konstandopoulos2008Oxygen } from './kernel-sets.js';

export const kineticsOptions = {
  'bai-2016': 'coated filter, or a catalyst ahead of it: Bai et al. 2016, whole filter (misprint corrected)',
  'uncoated-2008': 'uncoated filter, no additive: Konstandopoulos and Papaioannou 2008 (oxygen), Bai et al. 2016 (nitrogen dioxide)',
  'bissett-shadman-1985': 'Bissett and Shadman 1985, oxygen on the soot surface (from memory): for comparison',
  own: 'my own',
} as const;

/** Which rate laws to use, and a reader's own. Shared by every calculation that burns soot. */
export const kineticsInputs = {
  kinetics: choice({
    label: 'Kind of filter (sets how fast soot burns)',
    options: kineticsOptions,
    default: [
      'bai-2016',
      'nearly every road vehicle has a catalyst ahead of the filter or in it; an uncoated filter burns four to seven times slower',
    ],
  }),
  ...relevantWhen('kinetics', 'own', {
    ...oneOf(
      {
        ownOxygenFactor: quantity(reactionRate, {
          symbol: 'A_{O_2}',
          label: 'Own law, oxygen: pre-exponential factor at the reference oxygen',
          range: '0 <= x <= 1e15 1/s',
          usual: ['1e3 1/s', '1e10 1/s', 'published factors lie between 10³ and 10¹⁰ 1/s'],
          example: '16000 1/s',
        }),
        ownNitrogenDioxideFactor: quantity(reactionRate, {
          symbol: 'A_{NO_2}',
          label: 'Own law, nitrogen dioxide: pre-exponential factor at mole fraction 1',
          range: '0 <= x <= 1e12 1/s',
          usual: ['1e2 1/s', '1e6 1/s', 'published factors lie between 10² and 10⁶ 1/s'],
          example: '4200 1/s',
        }),
      },
      { both: 'allowed' },
    ),
    ...whenGiven('ownOxygenFactor', {
      ownOxygenEnergy: quantity(molarEnergy, {
        symbol: 'E_{O_2}',
        label: 'Own law, oxygen: activation energy',
        description: 'From a law without a temperature factor before the exponential; the two kinds are not interchangeable.',
        range: '0 <= x <= 500 kJ/mol',
        usual: ['90 kJ/mol', '190 kJ/mol', 'published energies of diesel soot with oxygen lie between 97 and 183 kJ/mol'],
        example: '108 kJ/mol',
      }),
      ownOxygenReference: quantity(moleFraction, {
        symbol: 'x_{ref}',
        label: 'Own law, oxygen: oxygen content for which the factor holds',
        range: '0 < x <= 100 %',
        usual: ['2 %', '25 %', 'exhaust and test gases hold 2 % to 21 % oxygen'],
        default: ['10 %', 'usual in tests on soot'],
      }),
    }),
    ...whenGiven('ownNitrogenDioxideFactor', {
      ownNitrogenDioxideEnergy: quantity(molarEnergy, {
        symbol: 'E_{NO_2}',
        label: 'Own law, nitrogen dioxide: activation energy',
        range: '0 <= x <= 500 kJ/mol',
        usual: ['40 kJ/mol', '125 kJ/mol', 'published energies of diesel soot with nitrogen dioxide lie between 45 and 122 kJ/mol'],
        example: '45.5 kJ/mol',
      }),
      ownNitrogenDioxideOrder: quantity(ratio, {
        symbol: 'n_{NO_2}',
        label: 'Own law, nitrogen dioxide: order',
        range: '0.1 <= x <= 2',
        default: ['1', 'first order'],
      }),
    }),
  }),
};

/** Gas at the soot. */
export const gasInputs = {
  filterTemperature: quantity(temperature, {
    symbol: 'T',
    label: 'Filter temperature',
    range: '0 <= x <= 1400 °C',
    usual: ['200 °C', '650 °C', 'the laws were fitted from 250 °C to 350 °C with nitrogen dioxide and up to about 600 °C with oxygen'],
    example: '350 °C',
    units: ['degC', 'K', 'degF'],
  }),
  nitrogenDioxide: quantity(moleFraction, {
    symbol: 'x_{NO_2}',
    label: 'Nitrogen dioxide before the filter',
    range: '0 <= x <= 5000 ppm',
    usual: ['0 ppm', '1000 ppm', 'after an oxidation catalyst a diesel has some 50 to 600 ppm'],
    example: '300 ppm',
    units: ['ppm', '%'],
  }),
  oxygen: quantity(moleFraction, {
    symbol: 'x_{O_2}',
    label: 'Oxygen before the filter',
    range: '0 <= x <= 21 %',
    units: ['%', '1'],
    default: ['10 %', 'lean diesel exhaust at part load'],
  }),
};

/** What a balance with these laws leaves out. */
export const oneLaw = {
  one_rate_law:
    'One rate law, without a band: filters of one kind burn from half as fast to twice as fast, so the result can be off by as much.',
};

const bai = { source: bai2016 };

/** The numbers of the published laws, so that they can be shown and traced. */
export const kineticsConstants = {
  gasConstant,
  baiOxygenFactor: constant(reactionRate, bai2016Oxygen.preExponential, { symbol: 'A_{O_2}', label: 'Factor of the oxygen law', ...bai }),
  baiOxygenEnergy: constant(molarEnergy, bai2016Oxygen.activationEnergy, { symbol: 'E_{O_2}', label: 'Energy of the oxygen law', ...bai }),
  baiNitrogenDioxideFactor: constant(reactionRate, bai2016NitrogenDioxide.preExponential, {
    symbol: 'A_{NO_2}',
    label: 'Factor of the nitrogen dioxide law',
    ...bai,
  }),
  baiNitrogenDioxideEnergy: constant(molarEnergy, bai2016NitrogenDioxide.activationEnergy, {
    symbol: 'E_{NO_2}',
    label: 'Energy of the nitrogen dioxide law',
    ...bai,
  }),
  uncoatedOxygenFactor: constant(reactionRate, konstandopoulos2008Oxygen.preExponential, {
    symbol: 'A_{O_2,u}',
    label: 'Factor of the oxygen law of the uncoated filter',
    source: uncoatedDisk2008,
  }),
  uncoatedOxygenEnergy: constant(molarEnergy, konstandopoulos2008Oxygen.activationEnergy, {
    symbol: 'E_{O_2,u}',
    label: 'Energy of the oxygen law of the uncoated filter',
    source: uncoatedDisk2008,
  }),
  bissettOxygenFactor: constant(reactionRate, bissettShadman1985Oxygen.preExponential, {
    symbol: 'A_{O_2,s}',
    label: 'Factor of the surface law at 10 % oxygen',
    source: bissettShadman1985,
  }),
  bissettOxygenEnergy: constant(molarEnergy, bissettShadman1985Oxygen.activationEnergy, {
    symbol: 'E_{O_2,s}',
    label: 'Energy of the surface law',
    source: bissettShadman1985,
  }),
};

/** Which set of laws. */
export type KineticsName = 'bai-2016' | 'uncoated-2008' | 'bissett-shadman-1985' | 'own';

type Values<S> = { readonly [Key in keyof S]: number };

interface KineticsChoice {
  readonly kinetics: KineticsName;
  readonly ownOxygenFactor?: number | undefined;
  readonly ownOxygenEnergy?: number | undefined;
  readonly ownOxygenReference?: number | undefined;
  readonly ownNitrogenDioxideFactor?: number | undefined;
  readonly ownNitrogenDioxideEnergy?: number | undefined;
  readonly ownNitrogenDioxideOrder?: number | undefined;
}

/** The laws that the reader chose. */
export function chosenKinetics(choice: KineticsChoice, constants: Values<typeof kineticsConstants>): SootKinetics {
  if (choice.kinetics === 'bai-2016' || choice.kinetics === 'uncoated-2008') {
    const coated = choice.kinetics === 'bai-2016';
    return {
      oxygen: {
        ...(coated ? bai2016Oxygen : konstandopoulos2008Oxygen),
        preExponential: coated ? constants.baiOxygenFactor : constants.uncoatedOxygenFactor,
        activationEnergy: coated ? constants.baiOxygenEnergy : constants.uncoatedOxygenEnergy,
      },
      nitrogenDioxide: {
        ...bai2016NitrogenDioxide,
        preExponential: constants.baiNitrogenDioxideFactor,
        activationEnergy: constants.baiNitrogenDioxideEnergy,
      },
    };
  }
  if (choice.kinetics === 'bissett-shadman-1985') {
    const { bissettOxygenFactor: preExponential, bissettOxygenEnergy: activationEnergy } = constants;
    return { oxygen: { ...bissettShadman1985Oxygen, preExponential, activationEnergy } };
  }
  return {
    oxygen: law(choice.ownOxygenFactor, choice.ownOxygenEnergy, 1, choice.ownOxygenReference),
    nitrogenDioxide: law(choice.ownNitrogenDioxideFactor, choice.ownNitrogenDioxideEnergy, choice.ownNitrogenDioxideOrder, 1),
  };
}

function law(
  preExponential: number | undefined,
  energy: number | undefined,
  order: number | undefined,
  reference: number | undefined,
): OxidationLaw | undefined {
  if (preExponential === undefined) return undefined;
  return { preExponential, activationEnergy: known(energy), oxidantOrder: known(order), referenceFraction: known(reference) };
}
