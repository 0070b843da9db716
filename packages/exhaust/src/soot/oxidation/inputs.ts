import { choiceWithDefault, constant, missingInputs, quantity, quantityWithDefault, type Refusal } from '@wallflow/calculation';
import { molarEnergy, molarHeatCapacity, moleFraction, ratio, reactionRate, temperature } from '@wallflow/units';
import { molarGasConstant } from '../../gas/constants.js';
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
  kinetics: choiceWithDefault({
    label: 'Rate at which soot burns: kind of filter',
    options: kineticsOptions,
    example: 'bai-2016',
    default: 'bai-2016',
    defaultReason:
      'nearly every road vehicle has a catalyst ahead of the filter or in it; an uncoated filter burns four to seven times slower',
  }),
  ownOxygenFactor: quantity(reactionRate, {
    symbol: 'A_{O_2}',
    label: 'Own law, oxygen: pre-exponential factor at the reference oxygen',
    min: '0 1/s',
    max: '1e15 1/s',
    usual: ['1e3 1/s', '1e10 1/s'],
    usualReason: 'published factors lie between 10³ and 10¹⁰ 1/s',
    example: '16000 1/s',
  }).optional(),
  ownOxygenEnergy: quantity(molarEnergy, {
    symbol: 'E_{O_2}',
    label: 'Own law, oxygen: activation energy',
    description: 'From a law without a temperature factor before the exponential; the two kinds are not interchangeable.',
    min: '0 kJ/mol',
    max: '500 kJ/mol',
    usual: ['90 kJ/mol', '190 kJ/mol'],
    usualReason: 'published energies of diesel soot with oxygen lie between 97 and 183 kJ/mol',
    example: '108 kJ/mol',
  }).optional(),
  ownOxygenReference: quantity(moleFraction, {
    symbol: 'x_{ref}',
    label: 'Own law, oxygen: oxygen content for which the factor holds',
    above: '0 %',
    max: '100 %',
    usual: ['2 %', '25 %'],
    usualReason: 'exhaust and test gases hold 2 % to 21 % oxygen',
    example: '10 %',
  }).optional(),
  ownNitrogenDioxideFactor: quantity(reactionRate, {
    symbol: 'A_{NO_2}',
    label: 'Own law, nitrogen dioxide: pre-exponential factor at mole fraction 1',
    min: '0 1/s',
    max: '1e12 1/s',
    usual: ['1e2 1/s', '1e6 1/s'],
    usualReason: 'published factors lie between 10² and 10⁶ 1/s',
    example: '4200 1/s',
  }).optional(),
  ownNitrogenDioxideEnergy: quantity(molarEnergy, {
    symbol: 'E_{NO_2}',
    label: 'Own law, nitrogen dioxide: activation energy',
    min: '0 kJ/mol',
    max: '500 kJ/mol',
    usual: ['40 kJ/mol', '125 kJ/mol'],
    usualReason: 'published energies of diesel soot with nitrogen dioxide lie between 45 and 122 kJ/mol',
    example: '45.5 kJ/mol',
  }).optional(),
  ownNitrogenDioxideOrder: quantity(ratio, {
    symbol: 'n_{NO_2}',
    label: 'Own law, nitrogen dioxide: order',
    min: '0.1',
    max: '2',
    example: '1.13',
  }).optional(),
};

/** Gas at the soot. */
export const gasInputs = {
  temperature: quantity(temperature, {
    symbol: 'T',
    label: 'Filter temperature',
    min: '0 °C',
    max: '1400 °C',
    usual: ['200 °C', '650 °C'],
    usualReason: 'the laws were fitted from 250 °C to 350 °C with nitrogen dioxide and up to about 600 °C with oxygen',
    example: '350 °C',
    units: ['degC', 'K', 'degF'],
  }),
  nitrogenDioxide: quantity(moleFraction, {
    symbol: 'x_{NO_2}',
    label: 'Nitrogen dioxide before the filter',
    min: '0 ppm',
    max: '5000 ppm',
    usual: ['0 ppm', '1000 ppm'],
    usualReason: 'behind an oxidation catalyst a diesel has some 50 to 600 ppm',
    example: '300 ppm',
    units: ['ppm', '%'],
  }),
  oxygen: quantityWithDefault(moleFraction, {
    symbol: 'x_{O_2}',
    label: 'Oxygen before the filter',
    min: '0 %',
    max: '21 %',
    example: '10 %',
    units: ['%', '1'],
    default: '10 %',
    defaultReason: 'lean diesel exhaust at part load',
  }),
};

const bai = { source: 'bai2016' };

/** The numbers of the published laws, so that they can be shown and traced. */
export const kineticsConstants = {
  gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
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
    source: 'uncoatedDisk2008',
  }),
  uncoatedOxygenEnergy: constant(molarEnergy, konstandopoulos2008Oxygen.activationEnergy, {
    symbol: 'E_{O_2,u}',
    label: 'Energy of the oxygen law of the uncoated filter',
    source: 'uncoatedDisk2008',
  }),
  bissettOxygenFactor: constant(reactionRate, bissettShadman1985Oxygen.preExponential, {
    symbol: 'A_{O_2,s}',
    label: 'Factor of the surface law at 10 % oxygen',
    source: 'bissettShadman1985',
  }),
  bissettOxygenEnergy: constant(molarEnergy, bissettShadman1985Oxygen.activationEnergy, {
    symbol: 'E_{O_2,s}',
    label: 'Energy of the surface law',
    source: 'bissettShadman1985',
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

/** The laws that the reader chose, or the issue that says what is missing of their own. */
export function chosenKinetics(choice: KineticsChoice, constants: Values<typeof kineticsConstants>): SootKinetics | Refusal {
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
  const { ownOxygenFactor, ownOxygenEnergy, ownNitrogenDioxideFactor, ownNitrogenDioxideEnergy } = choice;
  if (ownOxygenFactor === undefined && ownNitrogenDioxideFactor === undefined) return missingInputs('ownOxygenFactor');
  if (ownOxygenFactor !== undefined && ownOxygenEnergy === undefined) return missingInputs('ownOxygenEnergy');
  if (ownNitrogenDioxideFactor !== undefined && ownNitrogenDioxideEnergy === undefined) return missingInputs('ownNitrogenDioxideEnergy');
  return {
    oxygen: law(ownOxygenFactor, ownOxygenEnergy, 1, choice.ownOxygenReference ?? 0.1),
    nitrogenDioxide: law(ownNitrogenDioxideFactor, ownNitrogenDioxideEnergy, choice.ownNitrogenDioxideOrder ?? 1, 1),
  };
}

function law(
  factor: number | undefined,
  energy: number | undefined,
  oxidantOrder: number,
  referenceFraction: number,
): OxidationLaw | undefined {
  if (factor === undefined || energy === undefined) return undefined;
  return { preExponential: factor, activationEnergy: energy, oxidantOrder, referenceFraction };
}
