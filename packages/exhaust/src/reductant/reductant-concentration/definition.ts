import * as wf from '@wallflow/calculation';
import { density, massFraction, ratio, refractiveIndex, temperature } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { targetUreaFraction, ureaMolarMass } from '../named-constants.js';
import { excessFromDensityAt20, waterDensityAt20 } from '../solution/density.js';
import { indexDifferenceAt20, refractiveIndexAt20 } from '../solution/refractive-index.js';
import { densitySlopePractice, itmoIndex, pace1986, solubilityOfUrea } from '../solution/sources.js';
import { indexConstants, indexExcessFormula, indexSlopeFormula, molarityEquation, solutionDensity } from '../solution/working.js';
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
  'near-lower-limit': 'not clear: at the lower limit within the uncertainty',
  'near-upper-limit': 'not clear: at the upper limit within the uncertainty',
  'not-urea-and-water': 'index and density contradict each other: not plain urea and water',
} as const;

const index = (symbol: string, label: string) => wf.quantityOutput(refractiveIndex, { symbol, label, digits: 5, leastDigits: 5 });
const indexUncertainty = (symbol: string, label: string) => wf.quantityOutput(refractiveIndex, { symbol, label, digits: 2 });
const densityOf = (symbol: string, label: string, digits: number) =>
  wf.quantityOutput(density, { symbol, label, digits, leastDigits: Math.min(4, digits), units: ['kg/m3', 'kg/L'] });
const urea = (symbol: string, label: string, digits = 3) => wf.quantityOutput(massFraction, { symbol, label, digits, units: ['%'] });
const distance = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 2 });
const indexLimit = (value: number, symbol: string, label: string) =>
  wf.constant(refractiveIndex, value, { symbol, label, source: iso22241Part1 });
const densityLimit = (value: number, symbol: string, label: string) =>
  wf.constant(density, value, { symbol, label, source: iso22241Part1 });

/** Where urea and water cannot lie: below water or above the solution saturated at 20 °C, with some room for reading errors. */
const possibleUrea = [-0.01, 0.53] as const;

export const reductantConcentrationCalculation = wf.defineCalculation({
  id: 'reductant-concentration',
  subject: 'reductant',
  title: 'Reductant quality from a refractometer or a hydrometer',
  purpose: 'How much urea is in the reductant, and is it inside the limits of the standard?',
  keywords: 'urea, refractometer, hydrometer, refractive index, density, AUS 32, ISO 22241, quality, DEF, SCR',
  method: 'published relation for urea in water, shifted to 20 °C',
  inputs: {
    ...wf.oneOf(
      {
        refractometerPercent: wf.quantity(massFraction, {
          symbol: 'w_r',
          label: 'Refractometer for reductant, per cent of urea',
          description: 'As read on the scale for reductant. For one that compensates for temperature enter 20 °C below.',
          range: '0 <= x <= 50 %',
          usual: ['20 %', '40 %', 'reductant reads near 32.5 %; far from it the fluid is something else'],
          example: '30.1 %',
          units: ['%'],
        }),
        refractiveIndex: wf.quantity(refractiveIndex, {
          symbol: 'n',
          label: 'Refractive index, sodium D line',
          description: 'From a refractometer with an index scale. A sugar scale needs its own table first.',
          range: '1.32 <= x <= 1.43',
          usual: ['1.36', '1.40', 'reductant reads near 1.383; far from it the fluid is something else'],
          example: '1.3788',
        }),
        fluidDensity: wf.quantity(density, {
          symbol: '\\rho',
          label: 'Density of the fluid',
          description: 'From a hydrometer, or weighed. A density of 1.31 cannot be: a saturated urea solution has about 1.15 kg/L.',
          range: '980 <= x <= 1160 kg/m3',
          usual: ['1060 kg/m3', '1120 kg/m3', 'reductant has 1090 kg/m³; far from it the fluid is something else'],
          example: '1084 kg/m3',
          units: ['kg/m3', 'kg/L', 'g/mL'],
        }),
        specificGravity: wf.quantity(ratio, {
          symbol: 'd',
          label: 'Specific gravity against water at 20 °C',
          description: 'From a hydrometer with such a scale. A printed 1.31 is a misprint: the fluid has 1.09.',
          range: '0.98 <= x <= 1.16',
          usual: ['1.06', '1.12', 'reductant has 1.092; far from it the fluid is something else'],
          example: '1.086',
        }),
      },
      { both: 'allowed' },
    ),
    fluidTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Fluid temperature',
      description: 'Enter 20 °C for an instrument that compensates for temperature itself.',
      range: '-5 <= x <= 45 °C',
      usual: ['10 °C', '30 °C', 'the shift to 20 °C is a straight line that was taken near 20 °C'],
      example: '20 °C',
      units: ['degC', 'degF'],
    }),
    ...wf.whenGiven('refractometerPercent', {
      percentUncertainty: wf.quantity(massFraction, {
        symbol: 'u_r',
        label: 'Uncertainty of the per cent read (±)',
        range: '0.01 <= x <= 5 %',
        units: ['%'],
        default: ['0.3 %', 'usual for a hand refractometer with divisions of half a per cent, common practice, no source'],
      }),
    }),
    ...wf.whenGiven('refractiveIndex', {
      indexUncertainty: wf.quantity(refractiveIndex, {
        symbol: 'u_n',
        label: 'Uncertainty of the index read (±)',
        range: '0.00001 <= x <= 0.01',
        default: ['0.0003', 'usual for a hand refractometer, common practice, no source'],
      }),
    }),
    ...wf.whenGiven(['fluidDensity', 'specificGravity'], {
      densityUncertainty: wf.quantity(density, {
        symbol: 'u_\\rho',
        label: 'Uncertainty of the density (±)',
        range: '0.01 <= x <= 50 kg/m3',
        units: ['kg/m3', 'g/L'],
        default: ['1 kg/m3', 'usual for a glass hydrometer, common practice, no source'],
      }),
    }),
  },
  example: { refractometerPercent: '30.1 %' },
  intermediates: {
    indexRead: wf.optional(index('n_T', 'Refractive index at the reading')),
    indexAt20: wf.optional(index('n_{20}', 'Refractive index at 20 °C')),
    indexExcess: wf.optional(
      wf.quantityOutput(ratio, { symbol: '\\Delta n', label: 'Index above that of water, by the relation at 25 °C', digits: 4 }),
    ),
    ureaFromIndex: wf.optional(urea('w_n', 'Urea by the index')),
    indexUncertaintyAt20: wf.optional(indexUncertainty('u_{n,20}', 'Uncertainty of the index at 20 °C')),
    ureaUncertaintyByIndex: wf.optional(urea('u_{w,n}', 'Uncertainty of the urea by the index', 2)),
    densityRead: wf.optional(densityOf('\\rho_T', 'Density at the reading', 5)),
    densityAt20: wf.optional(densityOf('\\rho_{20}', 'Density of the fluid at 20 °C', 5)),
    densityExcess: wf.optional(
      wf.quantityOutput(ratio, { symbol: '\\epsilon', label: 'Density above that of water, by the relation at 25 °C', digits: 4 }),
    ),
    ureaFromDensity: wf.optional(urea('w_\\rho', 'Urea by the density')),
    densityUncertaintyAt20: wf.optional(densityOf('u_{\\rho,20}', 'Uncertainty of the density at 20 °C', 2)),
    ureaUncertaintyByDensity: wf.optional(urea('u_{w,\\rho}', 'Uncertainty of the urea by the density', 2)),
    ureaUncertainty: urea('u_w', 'Uncertainty of the urea content', 2),
    aboveLeast: distance('z_{min}', 'Reading above the lower limit, in multiples of its uncertainty'),
    belowMost: distance('z_{max}', 'Reading below the upper limit, in multiples of its uncertainty'),
  },
  outputs: {
    ureaFraction: urea('w', 'Urea in the fluid, by mass'),
    addedWater: wf.optional(
      wf.quantityOutput(massFraction, {
        symbol: 'w_+',
        label: 'Added water in this fluid',
        description: 'If it was standard reductant of 32.5 % to begin with.',
        digits: 2,
        units: ['%'],
      }),
    ),
    verdict: wf.choiceOutput({ label: 'Quality', options: verdicts }),
  },
  answer: 'verdict',
  constants: {
    ...solutionDensity.constants,
    ...indexConstants,
    ureaMolarMass,
    targetUreaFraction,
    leastIndex: indexLimit(iso22241Limits.refractiveIndex[0], 'n_{min}', 'Lower limit of the index'),
    mostIndex: indexLimit(iso22241Limits.refractiveIndex[1], 'n_{max}', 'Upper limit of the index'),
    leastDensity: densityLimit(iso22241Limits.density[0], '\\rho_{min}', 'Lower limit of the density'),
    mostDensity: densityLimit(iso22241Limits.density[1], '\\rho_{max}', 'Upper limit of the density'),
  },
  steps: [
    wf.cases('indexRead', {
      'known(refractiveIndex)': 'refractiveIndex',
      otherwise: wf.solved(
        'indexRead',
        molarityEquation('refractometerPercent', `(${indexExcessFormula('indexRead')})`),
        {},
        pace1986,
        undefined,
        'Index of a solution with the per cent that were read, by its moles per litre at 25 °C.',
      ),
    }),
    wf.solved(
      'indexAt20',
      `indexAt20 = indexRead + ${indexSlopeFormula('ureaFromIndex')} * (fluidTemperature - referenceTemperature)`,
      { within: 1e-9 },
      itmoIndex,
      undefined,
      'The slope depends a little on the urea content, which follows below.',
    ),
    wf.formula('indexExcess', indexExcessFormula('indexAt20'), pace1986),
    wf.solved(
      'ureaFromIndex',
      molarityEquation('ureaFromIndex', 'indexExcess'),
      {},
      pace1986,
      undefined,
      'Moles per litre at 25 °C on both sides.',
    ),
    wf.cases('indexUncertaintyAt20', {
      'known(refractiveIndex)': 'sqrt(indexUncertainty ^ 2 + (0.4e-4 * (fluidTemperature - referenceTemperature)) ^ 2)',
      otherwise: 'sqrt((0.165 * percentUncertainty) ^ 2 + (0.4e-4 * (fluidTemperature - referenceTemperature)) ^ 2)',
    }),
    wf.formula(
      'ureaUncertaintyByIndex',
      'sqrt(0.0005 ^ 2 + indexUncertaintyAt20 ^ 2) / 0.165',
      itmoIndex,
      undefined,
      'The relation holds within 0.0005; 0.00165 of the index are one per cent of urea.',
    ),
    wf.cases('densityRead', { 'known(fluidDensity)': 'fluidDensity', otherwise: 'specificGravity * waterDensity' }),
    wf.solved(
      'densityAt20',
      'densityAt20 = densityRead + (0.21 + 0.19 * min(0.52, max(0, ureaFromDensity)) / 0.325) * (fluidTemperature - referenceTemperature)',
      { within: 1e-9 },
      densitySlopePractice,
      'in kg/m³ per kelvin',
      'The slope depends a little on the urea content, which follows below.',
    ),
    wf.formula('densityExcess', '(densityAt20 / waterDensity - 1) / densityScale', pace1986),
    wf.formula('ureaFromDensity', '(sqrt(0.2658 ^ 2 + 4 * 0.033 * densityExcess) - 0.2658) / (2 * 0.033)', pace1986),
    wf.formula('densityUncertaintyAt20', 'sqrt(densityUncertainty ^ 2 + (0.2 * (fluidTemperature - referenceTemperature)) ^ 2)'),
    wf.formula(
      'ureaUncertaintyByDensity',
      'sqrt(2 ^ 2 + densityUncertaintyAt20 ^ 2) / 289',
      pace1986,
      undefined,
      'The published relations differ by 2 kg/m³; 2.89 kg/m³ are one per cent of urea.',
    ),
    wf.cases('ureaUncertainty', { 'known(ureaFromIndex)': 'ureaUncertaintyByIndex', otherwise: 'ureaUncertaintyByDensity' }),
    wf.cases('ureaFraction', { 'known(ureaFromIndex)': 'max(0, ureaFromIndex)', otherwise: 'max(0, ureaFromDensity)' }),
    wf.formula('addedWater', '1 - ureaFraction / targetUreaFraction'),
    wf.cases(
      'aboveLeast',
      {
        'known(indexAt20)': '(indexAt20 - leastIndex) / indexUncertaintyAt20',
        otherwise: '(densityAt20 - leastDensity) / densityUncertaintyAt20',
      },
      iso22241Part1,
      'Table 1',
    ),
    wf.cases(
      'belowMost',
      {
        'known(indexAt20)': '(mostIndex - indexAt20) / indexUncertaintyAt20',
        otherwise: '(mostDensity - densityAt20) / densityUncertaintyAt20',
      },
      iso22241Part1,
      'Table 1',
    ),
    wf.verdict('verdict', {
      'not-urea-and-water':
        'known(ureaFromIndex) and known(ureaFromDensity) and abs(ureaFromIndex - ureaFromDensity) > sqrt(ureaUncertaintyByIndex ^ 2 + ureaUncertaintyByDensity ^ 2)',
      'too-weak': 'aboveLeast < -1',
      'too-strong': 'belowMost < -1',
      'near-lower-limit': 'aboveLeast < 1',
      'near-upper-limit': 'belowMost < 1',
      within: 'otherwise',
    }),
  ],
  assumptions: {
    urea_and_water: 'The fluid is urea and water. Coolant, salt and sugar raise the index too: a right index does not prove purity.',
    sodium_line: 'The refractometer reads at the sodium D line, 589 nm.',
  },
  limits: {
    relation_scaled:
      'No published table over concentration and temperature was available. The relation of 1986 at 25 °C was scaled to meet the middle of the limits of ISO 22241-1 at 20 °C.',
    not_a_purity_test:
      'Oil, fuel, metals and phosphate poison the catalyst in amounts that neither index nor density shows. Look for a film, a colour or a smell.',
  },
  cautions: [cautions.makerFirst, cautions.waste],
  dimensional: 'empirical relations in molarity, index and kg/m³',
  sources: [solubilityOfUrea],
  compute(input, context) {
    const { refractiveIndex: typedIndex, refractometerPercent: percent } = input;
    if (typedIndex !== undefined && percent !== undefined)
      context.warn('index_twice', 'Refractive index and per cent were both entered; the index was used.', ['refractometerPercent']);
    const indexRead = typedIndex ?? (percent === undefined ? undefined : refractiveIndexAt20(percent));
    // Each uncertainty has a default where its reading was entered.
    const { indexUncertainty = 0, percentUncertainty = 0, densityUncertainty = 0, fluidTemperature } = input;
    const instrument = typedIndex === undefined ? percentUncertainty * indexPerUrea : indexUncertainty;
    const byIndex = indexRead === undefined ? undefined : concentrationFromIndex(indexRead, fluidTemperature, instrument);
    const densityRead = input.fluidDensity ?? (input.specificGravity === undefined ? undefined : input.specificGravity * waterDensityAt20);
    if (input.fluidDensity !== undefined && input.specificGravity !== undefined) {
      context.warn('density_twice', 'Density and specific gravity were both entered; the density was used.', ['specificGravity']);
    }
    const byDensity = densityRead === undefined ? undefined : concentrationFromDensity(densityRead, fluidTemperature, densityUncertainty);
    const reading = wf.known(byIndex ?? byDensity);
    const readings = [
      { path: typedIndex === undefined ? 'refractometerPercent' : 'refractiveIndex', ureaFraction: byIndex?.ureaFraction },
      { path: input.fluidDensity === undefined ? 'specificGravity' : 'fluidDensity', ureaFraction: byDensity?.ureaFraction },
    ];
    for (const { path, ureaFraction } of readings) {
      if (ureaFraction === undefined) continue;
      if (ureaFraction < possibleUrea[0])
        return wf.noSolution('the reading is below that of pure water: check the instrument with water', [path]);
      if (ureaFraction > possibleUrea[1]) {
        return wf.noSolution('the reading is above that of a saturated urea solution: it is another fluid, or a typing error', [path]);
      }
    }
    const limits = byIndex === undefined ? iso22241Limits.density : iso22241Limits.refractiveIndex;
    const belong =
      byIndex === undefined ||
      byDensity === undefined ||
      Math.abs(byIndex.ureaFraction - byDensity.ureaFraction) <= Math.hypot(byIndex.ureaUncertainty, byDensity.ureaUncertainty);
    const verdict = belong ? qualityVerdict(reading.at20, reading.uncertainty, limits) : 'not-urea-and-water';
    if (Math.abs(fluidTemperature - 293.15) > 0.5) {
      context.warn('shifted_to_20', 'The limits hold at 20 °C; the reading was shifted there, which adds to its uncertainty.', [
        'fluidTemperature',
      ]);
    }
    const ureaFraction = Math.max(0, reading.ureaFraction);
    return {
      indexRead,
      indexAt20: byIndex?.at20,
      indexExcess: byIndex === undefined ? undefined : indexDifferenceAt20(byIndex.at20),
      ureaFromIndex: byIndex?.ureaFraction,
      indexUncertaintyAt20: byIndex?.uncertainty,
      ureaUncertaintyByIndex: byIndex?.ureaUncertainty,
      densityRead,
      densityAt20: byDensity?.at20,
      densityExcess: byDensity === undefined ? undefined : excessFromDensityAt20(byDensity.at20),
      ureaFromDensity: byDensity?.ureaFraction,
      densityUncertaintyAt20: byDensity?.uncertainty,
      ureaUncertaintyByDensity: byDensity?.ureaUncertainty,
      ureaUncertainty: reading.ureaUncertainty,
      aboveLeast: (reading.at20 - limits[0]) / reading.uncertainty,
      belowMost: (limits[1] - reading.at20) / reading.uncertainty,
      ureaFraction,
      addedWater: ureaFraction < iso22241Limits.ureaFraction[0] ? 1 - ureaFraction / context.constants.targetUreaFraction : undefined,
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
        { tone: 'do' as const, text: 'Drain and refill with fluid of known quality before you judge the catalyst or the sensors.' },
        {
          tone: 'note' as const,
          text: 'Test the dosed quantity as well: weak fluid and a low quantity multiply. 30.1 % of urea and 43 mL of 50 mL make 20 % less ammonia.',
        },
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
