import {
  choiceOutput,
  defineCalculation,
  inconsistentInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { density, massFraction, ratio, refractiveIndex, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { waterDensityAt20 } from '../solution/density.js';
import { refractiveIndexAt20 } from '../solution/refractive-index.js';
import { densitySlopePractice, itmoIndex, pace1986, solubilityOfUrea, tanaka2001 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import {
  concentrationFromDensity,
  concentrationFromIndex,
  indexPerUrea,
  iso22241Limits,
  type QualityVerdict,
  qualityVerdict,
} from './kernel.js';

const verdicts = {
  within: 'inside the limits of ISO 22241-1',
  'too-weak': 'too weak',
  'too-strong': 'too strong',
  'near-lower-limit': 'undecided: at the lower limit within the uncertainty',
  'near-upper-limit': 'undecided: at the upper limit within the uncertainty',
  'not-urea-and-water': 'index and density do not belong together: not plain urea and water',
} as const;

/** Where urea and water cannot lie: below water or above the solution saturated at 20 °C, with some room for reading errors. */
const possibleUrea = [-0.01, 0.53] as const;

export const reductantConcentrationCalculation = defineCalculation({
  id: 'reductant-concentration',
  version: '1.1.0',
  subject: 'reductant',
  title: 'Reductant quality from a refractometer or a hydrometer',
  purpose: 'How much urea is in the reductant, and is it inside the limits of the standard?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['urea', 'refractometer', 'hydrometer', 'refractive index', 'density', 'AUS 32', 'ISO 22241', 'quality'],
  method: 'published relation for urea in water, shifted to 20 °C',
  inputs: z.strictObject({
    refractometerPercent: quantity(massFraction, {
      symbol: 'w_r',
      label: 'Refractometer for reductant, per cent of urea',
      description: 'As read on the scale for reductant. For one that compensates for temperature enter 20 °C below.',
      min: '0 %',
      max: '50 %',
      usual: ['20 %', '40 %'],
      usualReason: 'reductant reads near 32.5 %; far from it the fluid is something else',
      example: '30.1 %',
      units: ['%'],
    }).optional(),
    refractiveIndex: quantity(refractiveIndex, {
      symbol: 'n',
      label: 'Refractive index, sodium D line',
      description: 'From a refractometer with an index scale. A sugar scale needs its own table first.',
      min: '1.32',
      max: '1.43',
      usual: ['1.36', '1.40'],
      usualReason: 'reductant reads near 1.383; far from it the fluid is something else',
      example: '1.3829',
    }).optional(),
    density: quantity(density, {
      symbol: '\\rho',
      label: 'Density',
      description: 'From a hydrometer, or weighed. A density of 1.31 cannot be: a saturated urea solution has about 1.15 kg/L.',
      min: '980 kg/m3',
      max: '1160 kg/m3',
      usual: ['1060 kg/m3', '1120 kg/m3'],
      usualReason: 'reductant has 1090 kg/m³; far from it the fluid is something else',
      example: '1090 kg/m3',
      units: ['kg/m3', 'kg/L', 'g/mL'],
    }).optional(),
    specificGravity: quantity(ratio, {
      symbol: 'd',
      label: 'Specific gravity against water at 20 °C',
      description: 'From a hydrometer with such a scale. A printed 1.31 is a misprint: the fluid has 1.09.',
      min: '0.98',
      max: '1.16',
      usual: ['1.06', '1.12'],
      usualReason: 'reductant has 1.092; far from it the fluid is something else',
      example: '1.092',
    }).optional(),
    temperature: quantity(temperature, {
      symbol: 'T',
      label: 'Temperature of the fluid at the reading',
      description: 'Enter 20 °C for an instrument that compensates for temperature itself.',
      min: '-5 °C',
      max: '45 °C',
      usual: ['10 °C', '30 °C'],
      usualReason: 'the shift to 20 °C is a straight line that was taken near 20 °C',
      example: '20 °C',
      units: ['degC', 'degF'],
    }),
    percentUncertainty: quantityWithDefault(massFraction, {
      symbol: 'u_r',
      label: 'How well that refractometer reads (±)',
      min: '0.01 %',
      max: '5 %',
      example: '0.3 %',
      units: ['%'],
      default: '0.3 %',
      defaultReason: 'usual for a hand refractometer with divisions of half a per cent, common practice, no source',
    }),
    indexUncertainty: quantityWithDefault(refractiveIndex, {
      symbol: 'u_n',
      label: 'How well the refractometer reads (±)',
      min: '0.00001',
      max: '0.01',
      example: '0.0003',
      default: '0.0003',
      defaultReason: 'usual for a hand refractometer, common practice, no source',
    }),
    densityUncertainty: quantityWithDefault(density, {
      symbol: 'u_\\rho',
      label: 'How well the density is known (±)',
      min: '0.01 kg/m3',
      max: '50 kg/m3',
      example: '1 kg/m3',
      units: ['kg/m3', 'g/L'],
      default: '1 kg/m3',
      defaultReason: 'usual for a glass hydrometer, common practice, no source',
    }),
  }),
  example: { refractometerPercent: '30.1 %', temperature: '20 °C' },
  intermediates: {
    indexRead: optional(
      quantityOutput(refractiveIndex, { symbol: 'n_T', label: 'Refractive index at the reading', digits: 5, leastDigits: 5 }),
    ),
    indexAt20: optional(
      quantityOutput(refractiveIndex, { symbol: 'n_{20}', label: 'Refractive index at 20 °C', digits: 5, leastDigits: 5 }),
    ),
    densityAt20: optional(
      quantityOutput(density, { symbol: '\\rho_{20}', label: 'Density at 20 °C', digits: 5, leastDigits: 4, units: ['kg/m3', 'kg/L'] }),
    ),
    ureaFromIndex: optional(quantityOutput(massFraction, { symbol: 'w_n', label: 'Urea by the index', digits: 3, units: ['%'] })),
    ureaFromDensity: optional(quantityOutput(massFraction, { symbol: 'w_\\rho', label: 'Urea by the density', digits: 3, units: ['%'] })),
    ureaUncertainty: quantityOutput(massFraction, { symbol: 'u_w', label: 'Uncertainty of the urea content', digits: 2, units: ['%'] }),
  },
  outputs: {
    ureaFraction: quantityOutput(massFraction, { symbol: 'w', label: 'Urea, by mass', digits: 3, units: ['%'] }),
    addedWater: optional(
      quantityOutput(massFraction, {
        symbol: 'w_+',
        label: 'Added water in this fluid',
        description: 'If it was standard reductant of 32.5 % to begin with.',
        digits: 2,
        units: ['%'],
      }),
    ),
    verdict: choiceOutput({ label: 'Quality', options: verdicts }),
  },
  constants: {},
  steps: [
    { gives: 'indexRead', text: 'As read, or that of a solution with the per cent that were read.', source: 'pace1986' },
    {
      gives: 'indexAt20',
      tex: '[[indexAt20]] = [[indexRead]] - \\frac{dn}{dT}\\,([[temperature]] - 293.15\\,\\mathrm{K})',
      source: 'itmoIndex',
    },
    {
      gives: 'ureaFromIndex',
      text: 'Molar concentration from the index above water, then the mass fraction by the density of the solution.',
      source: 'pace1986',
    },
    {
      gives: 'densityAt20',
      tex: '[[densityAt20]] = \\rho_T - \\frac{d\\rho}{dT}\\,([[temperature]] - 293.15\\,\\mathrm{K})',
      source: 'densitySlopePractice',
    },
    { gives: 'ureaFromDensity', text: 'The mass fraction whose density at 20 °C this is.', source: 'pace1986' },
    { gives: 'ureaUncertainty', text: 'Relation, shift to 20 °C and instrument together.' },
    { gives: 'ureaFraction', text: 'By the index if it was read, otherwise by the density.' },
    { gives: 'addedWater', tex: '[[addedWater]] = 1 - \\frac{[[ureaFraction]]}{0.325}' },
    {
      gives: 'verdict',
      text: 'The reading at 20 °C against the limits of the standard, with its uncertainty.',
      source: 'iso22241Part1',
      locator: 'Table 1',
    },
  ],
  assumptions: [
    {
      code: 'urea_and_water',
      text: 'The fluid is urea and water. Coolant, salt and sugar raise the index too: a right index does not prove purity.',
    },
    { code: 'sodium_line', text: 'The refractometer reads at the sodium D line, 589 nm.' },
  ],
  limits: [
    {
      code: 'relation_scaled',
      text: 'No published table over concentration and temperature was available. The relation of 1986 at 25 °C was scaled to meet the middle of the limits of ISO 22241-1 at 20 °C.',
    },
    {
      code: 'not_a_purity_test',
      text: 'Oil, fuel, metals and phosphate poison the catalyst in amounts that neither index nor density shows. Look for a film, a colour or a smell.',
    },
  ],
  cautions: [cautions.makerFirst, cautions.waste],
  sources: { iso22241Part1, pace1986, itmoIndex, tanaka2001, densitySlopePractice, solubilityOfUrea },
  dimensional: 'empirical relations in molarity, index and kg/m³',
  compute(input, context) {
    const { refractiveIndex: typedIndex, refractometerPercent: percent } = input;
    if (typedIndex !== undefined && percent !== undefined)
      context.warn('index_twice', 'Refractive index and per cent were both given; the index was used.', ['refractometerPercent']);
    const indexRead = typedIndex ?? (percent === undefined ? undefined : refractiveIndexAt20(percent));
    const instrument = typedIndex === undefined ? input.percentUncertainty * indexPerUrea : input.indexUncertainty;
    const byIndex = indexRead === undefined ? undefined : concentrationFromIndex(indexRead, input.temperature, instrument);
    const density = input.density ?? (input.specificGravity === undefined ? undefined : input.specificGravity * waterDensityAt20);
    if (input.density !== undefined && input.specificGravity !== undefined) {
      context.warn('density_twice', 'Density and specific gravity were both given; the density was used.', ['specificGravity']);
    }
    const byDensity = density === undefined ? undefined : concentrationFromDensity(density, input.temperature, input.densityUncertainty);
    const reading = byIndex ?? byDensity;
    if (reading === undefined)
      return inconsistentInputs(
        'enter the per cent of a refractometer, the refractive index, the density or the specific gravity',
        ['refractometerPercent'],
        ['refractiveIndex'],
        ['density'],
        ['specificGravity'],
      );
    const readings = [
      { path: typedIndex === undefined ? 'refractometerPercent' : 'refractiveIndex', ureaFraction: byIndex?.ureaFraction },
      { path: input.density === undefined ? 'specificGravity' : 'density', ureaFraction: byDensity?.ureaFraction },
    ];
    for (const { path, ureaFraction } of readings) {
      if (ureaFraction === undefined) continue;
      if (ureaFraction < possibleUrea[0])
        return noSolution('the reading is below that of pure water: check the instrument with water', [path]);
      if (ureaFraction > possibleUrea[1]) {
        return noSolution('the reading is above that of a saturated urea solution: it is another fluid, or a slip of the pen', [path]);
      }
    }
    const limits = byIndex === undefined ? iso22241Limits.density : iso22241Limits.refractiveIndex;
    const belong =
      byIndex === undefined ||
      byDensity === undefined ||
      Math.abs(byIndex.ureaFraction - byDensity.ureaFraction) <= Math.hypot(byIndex.ureaUncertainty, byDensity.ureaUncertainty);
    const verdict = belong ? qualityVerdict(reading.at20, reading.uncertainty, limits) : 'not-urea-and-water';
    if (Math.abs(input.temperature - 293.15) > 0.5) {
      context.warn('shifted_to_20', 'The limits hold at 20 °C; the reading was shifted there, which adds to its uncertainty.', [
        'temperature',
      ]);
    }
    const ureaFraction = Math.max(0, reading.ureaFraction);
    return {
      indexRead,
      indexAt20: byIndex?.at20,
      ureaFromIndex: byIndex?.ureaFraction,
      densityAt20: byDensity?.at20,
      ureaFromDensity: byDensity?.ureaFraction,
      ureaUncertainty: reading.ureaUncertainty,
      ureaFraction,
      addedWater: ureaFraction < iso22241Limits.ureaFraction[0] ? 1 - ureaFraction / 0.325 : undefined,
      verdict,
    };
  },
  advise: ({ verdict }) => adviceFor(verdict),
});

function adviceFor(verdict: QualityVerdict | 'not-urea-and-water') {
  switch (verdict) {
    case 'within':
      return [
        {
          tone: 'note' as const,
          text: 'The urea content is right. Look elsewhere for the fault, and look for a film of oil or fuel on the fluid.',
        },
      ];
    case 'too-weak':
      return [
        { tone: 'do' as const, text: 'Sample the top, the middle and the bottom of the tank, and the container it was filled from.' },
        { tone: 'do' as const, text: 'Drain and refill with fluid of known quality before judging the catalyst or the sensors.' },
        { tone: 'do-not' as const, text: 'Do not add urea to correct it.' },
      ];
    case 'too-strong':
      return [
        { tone: 'do' as const, text: 'Look for evaporation and crystals; drain and refill with fluid of known quality.' },
        { tone: 'do-not' as const, text: 'Do not thin it with tap water.' },
      ];
    case 'not-urea-and-water':
      return [
        {
          tone: 'do' as const,
          text: 'Treat the fluid as contaminated: do not run the pump, drain, flush by the maker’s procedure, and find out what was filled.',
        },
      ];
    default:
      return [
        { tone: 'do' as const, text: 'Repeat the reading at 20 °C with an instrument checked in pure water; this one cannot decide.' },
      ];
  }
}
