import {
  choice,
  defineCalculation,
  missingInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  type Refusal,
} from '@wallflow/calculation';
import { density, dilutionRatio, fraction, mass, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { pourToMarks } from '../exact-volume.js';
import { dilutionPractice, partsArithmetic, waterDensity20 } from '../sources.js';
import { massShareFromParts, partsFromMassShare, partsFromVolumeShare } from './kernel.js';

const volumeUnits = ['mL', 'L', 'floz_US', 'floz_imp', 'gal_US'] as const;
const massOutput = (symbol: string, label: string) => quantityOutput(mass, { symbol, label, digits: 4, units: ['g', 'kg', 'lb'] });
const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 4, units: [...volumeUnits] });

// A mark is a decimal fact: it is shown whole, however coarse the other inputs are.
const volumeToMark = (symbol: string, label: string) =>
  quantityOutput(volume, { symbol, label, digits: 8, leastDigits: 5, units: [...volumeUnits] });

const inputs = z.strictObject({
  saying: choice({
    label: 'How the label says it',
    options: {
      parts: '1:n, one part of concentrate and n parts of water',
      'one-in': '1 in n, one part of concentrate in n parts of mix',
      'volume-percent': 'per cent by volume',
      'mass-percent': 'per cent by mass',
      unclear: '1:n, and it does not say which of the two',
    },
    example: 'parts',
  }),
  parts: quantity(dilutionRatio, {
    symbol: 'n',
    label: 'The n of 1:n or 1 in n',
    min: '0',
    max: '1000',
    usual: ['1', '20'],
    usualReason: 'on the vehicle 1:1 to 1:4 is usual, in a bath up to 1:20',
    example: '1:4',
  }).optional(),
  percent: quantity(fraction, {
    symbol: 'c',
    label: 'Per cent of concentrate',
    above: '0 %',
    max: '100 %',
    example: '20 %',
  }).optional(),
  concentrateDensity: quantity(density, {
    symbol: '\\rho_c',
    label: 'Density of the concentrate',
    description: 'From the safety data sheet; needed for per cent by mass, and to give the weights.',
    min: '0.5 kg/L',
    max: '2 kg/L',
    example: '1.08 kg/L',
    units: ['kg/L', 'g/mL'],
  }).optional(),
  waterDensity: quantityWithDefault(density, {
    symbol: '\\rho_w',
    label: 'Density of the water',
    min: '0.95 kg/L',
    max: '1.01 kg/L',
    example: '0.9982 kg/L',
    units: ['kg/L', 'g/mL'],
    default: '0.9982 kg/L',
    defaultReason: 'water at 20 °C',
  }),
  known: choice({
    label: 'The volume below is',
    options: { mix: 'the mix that is needed', concentrate: 'the concentrate at hand' },
    example: 'mix',
  }),
  knownVolume: quantity(volume, {
    symbol: 'V_k',
    label: 'Volume',
    above: '0 mL',
    max: '1000 L',
    example: '1500 mL',
    units: [...volumeUnits],
  }),
  mark: quantity(volume, {
    symbol: 'V_g',
    label: 'Distance of the marks on the jug',
    description: 'With it, the volumes to pour end on a mark and the mix never gets weaker than the label says.',
    min: '0.1 mL',
    max: '10 L',
    example: '50 mL',
    units: [...volumeUnits],
  }).optional(),
});

type Inputs = z.output<typeof inputs>;

/** Parts of water per part of concentrate, whatever the label's way of saying it. */
function partsOf(input: Inputs): number | Refusal {
  switch (input.saying) {
    case 'parts':
      return input.parts ?? missingInputs('parts');
    case 'one-in':
      if (input.parts === undefined) return missingInputs('parts');
      return input.parts >= 1 ? input.parts - 1 : noSolution('one part cannot be in less than one part of mix', ['parts']);
    case 'volume-percent':
      return input.percent === undefined ? missingInputs('percent') : partsFromVolumeShare(input.percent);
    case 'mass-percent':
      if (input.percent === undefined) return missingInputs('percent');
      if (input.concentrateDensity === undefined) return missingInputs('concentrateDensity');
      return partsFromMassShare({
        massShare: input.percent,
        concentrateDensity: input.concentrateDensity,
        waterDensity: input.waterDensity,
      });
    default: {
      const n = Number((input.parts ?? 4).toPrecision(4));
      const share = (parts: number) => `${Number((100 / parts).toPrecision(3))} %`;
      return noSolution(
        `1:${n} can mean one part and ${n} parts of water (${share(n + 1)}) or one part in ${n} parts of mix (${share(Math.max(n, 1))}); read the label or ask its maker, then choose`,
        ['saying'],
      );
    }
  }
}

export const dilutionCalculation = defineCalculation({
  id: 'dilution',
  version: '1.1.0',
  subject: 'cleaning',
  title: 'Dilute a concentrate',
  purpose: 'How much concentrate and how much water make this mix, in the words of the label?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['mix', 'parts', 'percent', 'jug', 'concentrate'],
  method: 'parts by volume, decimal to the mark',
  inputs,
  example: { parts: '1:4', mark: '50 mL' },
  intermediates: {
    waterParts: quantityOutput(dilutionRatio, { symbol: 'n_w', label: 'Parts of water to one part of concentrate', digits: 4 }),
    volumeShare: quantityOutput(fraction, { symbol: 'c_V', label: 'Share of concentrate by volume', digits: 4, units: ['%'] }),
    massShare: optional(quantityOutput(fraction, { symbol: 'c_m', label: 'Share of concentrate by mass', digits: 4, units: ['%'] })),
  },
  outputs: {
    mixVolume: volumeOutput('V_m', 'Mix'),
    waterVolume: volumeOutput('V_w', 'Water'),
    concentrateMass: optional(massOutput('m_c', 'Concentrate, by weight')),
    waterMass: optional(massOutput('m_w', 'Water, by weight')),
    pouredConcentrate: optional(volumeToMark('V_{c,g}', 'Concentrate to pour, to a mark')),
    pouredWater: optional(volumeToMark('V_{w,g}', 'Water to pour, to a mark')),
    pouredShare: optional(
      quantityOutput(fraction, { symbol: 'c_g', label: 'Share of concentrate in what is poured', digits: 4, units: ['%'] }),
    ),
    concentrateVolume: volumeOutput('V_c', 'Concentrate'),
  },
  constants: {},
  steps: [
    { gives: 'waterParts', text: 'From the label ([[saying]]): [[waterParts]].', source: 'partsArithmetic' },
    { gives: 'volumeShare', tex: '[[volumeShare]] = \\frac{1}{1+[[waterParts]]}', source: 'partsArithmetic' },
    {
      gives: 'massShare',
      tex: '[[massShare]] = \\frac{[[concentrateDensity]]}{[[concentrateDensity]]+[[waterParts]]\\,[[waterDensity]]}',
      source: 'partsArithmetic',
    },
    { gives: 'mixVolume', text: 'As needed, or concentrate times one plus the parts of water: [[mixVolume]].', source: 'partsArithmetic' },
    { gives: 'waterVolume', tex: '[[waterVolume]] = [[mixVolume]]\\,\\frac{[[waterParts]]}{1+[[waterParts]]}', source: 'partsArithmetic' },
    {
      gives: 'pouredConcentrate',
      text: 'Up to the next mark, never weaker than the label: [[pouredConcentrate]].',
      source: 'dilutionPractice',
    },
    { gives: 'pouredWater', text: 'Down to the last mark that keeps the strength: [[pouredWater]].', source: 'dilutionPractice' },
    { gives: 'concentrateMass', tex: '[[concentrateMass]] = [[concentrateDensity]]\\,[[concentrateVolume]]', source: 'partsArithmetic' },
    { gives: 'waterMass', tex: '[[waterMass]] = [[waterDensity]]\\,[[waterVolume]]', source: 'partsArithmetic' },
    { gives: 'concentrateVolume', tex: '[[concentrateVolume]] = \\frac{[[mixVolume]]}{1+[[waterParts]]}', source: 'partsArithmetic' },
  ],
  assumptions: [
    {
      code: 'additive_volumes',
      text: 'Volumes add up; a water-based cleaner shrinks by well under 1 % on mixing, an alcohol by up to 4 %.',
    },
  ],
  limits: [{ code: 'label_counts', text: 'The label and the safety data sheet of the cleaner come before any figure here.' }],
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.waste, cautions.makerFirst],
  sources: { partsArithmetic, dilutionPractice, waterDensity20 },
  dimensional: 'volumes to pour are rounded to decimal marks',
  compute(input) {
    const parts = partsOf(input);
    if (typeof parts !== 'number') return parts;
    const mixVolume = input.known === 'mix' ? input.knownVolume : input.knownVolume * (1 + parts);
    const concentrateVolume = input.known === 'mix' ? mixVolume / (1 + parts) : input.knownVolume;
    const { concentrateDensity, waterDensity, mark } = input;
    // Concentrate at hand cannot be rounded up: there is no more of it.
    const poured = mark === undefined || input.known === 'concentrate' ? undefined : pourToMarks(mixVolume, parts, mark);
    return {
      waterParts: parts,
      volumeShare: 1 / (1 + parts),
      massShare: concentrateDensity === undefined ? undefined : massShareFromParts(parts, concentrateDensity, waterDensity),
      mixVolume,
      waterVolume: mixVolume - concentrateVolume,
      concentrateVolume,
      concentrateMass: concentrateDensity === undefined ? undefined : concentrateDensity * concentrateVolume,
      waterMass: concentrateDensity === undefined ? undefined : waterDensity * (mixVolume - concentrateVolume),
      pouredConcentrate: poured?.concentrate,
      pouredWater: poured?.water,
      pouredShare: poured === undefined ? undefined : poured.concentrate / (poured.concentrate + poured.water),
    };
  },
  advise: () => [{ tone: 'do', text: 'Put the water in first, then the concentrate; write strength and date on the container.' }],
});
