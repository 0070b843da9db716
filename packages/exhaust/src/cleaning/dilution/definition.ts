import * as wf from '@wallflow/calculation';
import { density, dilutionRatio, fraction, mass, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { pourToMarks } from '../exact-volume.js';
import { dilutionPractice, partsArithmetic, waterDensity20 } from '../sources.js';
import { massShareFromParts, partsFromMassShare, partsFromVolumeShare } from './kernel.js';

const volumeUnits = ['mL', 'L', 'floz_US', 'floz_imp', 'gal_US'] as const;
const massOutput = (symbol: string, label: string) => wf.quantityOutput(mass, { symbol, label, digits: 4, units: ['g', 'kg', 'lb'] });
const volumeOutput = (symbol: string, label: string) => wf.quantityOutput(volume, { symbol, label, digits: 4, units: [...volumeUnits] });

// A mark is a decimal fact: it is shown whole, however coarse the other inputs are.
const volumeToMark = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 8, leastDigits: 5, units: [...volumeUnits] });

const inputs = {
  saying: wf.choice({
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
  ...wf.relevantWhen('saying', ['parts', 'one-in', 'unclear'], {
    parts: wf.quantity(dilutionRatio, {
      symbol: 'n',
      label: 'The n of 1:n or 1 in n',
      range: '0 <= x <= 1000',
      usual: ['1', '20', 'on the vehicle 1:1 to 1:4 is usual, in a bath up to 1:20'],
      example: '1:5',
    }),
  }),
  ...wf.relevantWhen('saying', ['volume-percent', 'mass-percent'], {
    percent: wf.quantity(fraction, { symbol: 'c', label: 'Per cent of concentrate', range: '0 < x <= 100 %', example: '16.7 %' }),
  }),
  concentrateDensity: wf.optional(
    wf.quantity(density, {
      symbol: '\\rho_c',
      label: 'Density of the concentrate',
      description: 'From the safety data sheet; needed for per cent by mass, and to give the weights.',
      range: '0.5 <= x <= 2 kg/L',
      example: '1.08 kg/L',
      units: ['kg/L', 'g/mL'],
    }),
  ),
  waterDensity: wf.quantity(density, {
    symbol: '\\rho_w',
    label: 'Density of water at 20 °C',
    range: '0.95 <= x <= 1.01 kg/L',
    units: ['kg/L', 'g/mL'],
    default: ['0.9982 kg/L', 'water at 20 °C'],
  }),
  volumeOf: wf.choice({
    label: 'The volume below is',
    options: { mix: 'the mix that is needed', concentrate: 'the concentrate at hand' },
    example: 'mix',
  }),
  knownVolume: wf.quantity(volume, {
    symbol: 'V_k',
    label: 'Volume',
    range: '0 mL < x <= 1000 L',
    example: '4.6 L',
    units: [...volumeUnits],
  }),
  passes: wf.optional(
    wf.count({
      symbol: 'p',
      label: 'Passes',
      description: 'With it you see how much each pass gets.',
      min: 1,
      max: 20,
      example: 3,
    }),
  ),
  mark: wf.optional(
    wf.quantity(volume, {
      symbol: 'V_g',
      label: 'Graduation of the jug',
      description:
        'Volume between two marks. With it, both volumes to pour end on a mark, and the mix is never weaker than the label says.',
      range: '0.1 mL <= x <= 10 L',
      example: '50 mL',
      units: [...volumeUnits],
    }),
  ),
};

type Inputs = wf.CheckedOf<typeof inputs>;

/** Parts of water per part of concentrate, whatever the label's way of saying it. */
function partsOf(input: Inputs): number | wf.Refusal {
  switch (input.saying) {
    case 'parts':
      return wf.known(input.parts);
    case 'one-in':
      return wf.known(input.parts) >= 1
        ? wf.known(input.parts) - 1
        : wf.noSolution('one part cannot be in less than one part of mix', ['parts']);
    case 'volume-percent':
      return partsFromVolumeShare(wf.known(input.percent));
    case 'mass-percent':
      if (input.concentrateDensity === undefined) return wf.missingInputs('concentrateDensity');
      return partsFromMassShare({
        massShare: wf.known(input.percent),
        concentrateDensity: input.concentrateDensity,
        waterDensity: input.waterDensity,
      });
    default: {
      const n = Number(wf.known(input.parts).toPrecision(4));
      const share = (parts: number) => `${Number((100 / parts).toPrecision(3))} %`;
      return wf.noSolution(
        wf.say`1:${n} can mean one part and ${n} parts of water (${share(n + 1)}) or one part in ${n} parts of mix (${share(Math.max(n, 1))}); read the label or ask the maker of the cleaner, then choose`,
        ['saying'],
      );
    }
  }
}

export const dilutionCalculation = wf.defineCalculation({
  id: 'dilution',
  subject: 'cleaning',
  title: 'Dilute a concentrate',
  purpose: 'How much concentrate and how much water make this mix, as the label states it?',
  keywords: 'mix, parts, percent, jug, concentrate, bottle, passes',
  method: 'parts by volume, decimal to the mark',
  inputs,
  example: { parts: '1:5', passes: 3, mark: '50 mL' },
  intermediates: {
    waterShare: wf.optional(wf.quantityOutput(fraction, { symbol: 'c_w', label: 'Per cent of water', digits: 4, units: ['%'] })),
    waterParts: wf.quantityOutput(dilutionRatio, { symbol: 'n_w', label: 'Parts of water to one part of concentrate', digits: 4 }),
    volumeShare: wf.quantityOutput(fraction, { symbol: 'c_V', label: 'Share of concentrate by volume', digits: 4, units: ['%'] }),
    concentrateMarks: wf.optional(wf.countOutput({ symbol: 'N_c', label: 'Marks of concentrate' })),
    waterMarks: wf.optional(wf.countOutput({ symbol: 'N_w', label: 'Marks of water' })),
    massShare: wf.optional(wf.quantityOutput(fraction, { symbol: 'c_m', label: 'Share of concentrate by mass', digits: 4, units: ['%'] })),
  },
  outputs: {
    mixVolume: volumeOutput('V_m', 'Finished mix'),
    waterVolume: volumeOutput('V_w', 'Water'),
    concentrateMass: wf.optional(massOutput('m_c', 'Concentrate, by weight')),
    waterMass: wf.optional(massOutput('m_w', 'Water, by weight')),
    pouredConcentrate: wf.optional(volumeToMark('V_{c,g}', 'Concentrate to pour, to a mark')),
    pouredWater: wf.optional(volumeToMark('V_{w,g}', 'Water to pour, to a mark')),
    pouredShare: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'c_g', label: 'Share of concentrate in what is poured', digits: 4, units: ['%'] }),
    ),
    volumePerPass: wf.optional(volumeOutput('V_p', 'Mix per pass')),
    concentrateVolume: volumeOutput('V_c', 'Concentrate'),
  },
  answer: 'concentrateVolume',
  steps: [
    wf.formula('waterShare', '1 - percent'),
    wf.cases(
      'waterParts',
      {
        "saying == 'parts'": 'parts',
        "saying == 'one-in'": 'parts - 1',
        "saying == 'volume-percent'": 'waterShare / percent',
        otherwise: 'waterShare / waterDensity * concentrateDensity / percent',
      },
      partsArithmetic,
    ),
    wf.formula('volumeShare', '1 / (1 + waterParts)', partsArithmetic),
    wf.formula('massShare', 'concentrateDensity / (concentrateDensity + waterParts * waterDensity)', partsArithmetic),
    wf.cases('mixVolume', { "volumeOf == 'mix'": 'knownVolume', otherwise: 'knownVolume * (1 + waterParts)' }, partsArithmetic),
    wf.formula('concentrateVolume', 'mixVolume / (1 + waterParts)', partsArithmetic),
    wf.formula('waterVolume', 'waterParts * concentrateVolume', partsArithmetic),
    wf.formula('volumePerPass', 'mixVolume / passes', partsArithmetic),
    wf.found(
      'concentrateMarks',
      ['(concentrateMarks + waterMarks) * mark >= (1 - 10 ^ (-9)) * mixVolume'],
      dilutionPractice,
      undefined,
      'Fewest marks of concentrate that make enough mix, compared to nine digits.',
    ),
    wf.found(
      'waterMarks',
      ['waterMarks <= (1 + 10 ^ (-9)) * waterParts * concentrateMarks', 'waterMarks + 1 > (1 - 10 ^ (-9)) * waterParts * concentrateMarks'],
      dilutionPractice,
      undefined,
      'Most marks of water that leave the mix no weaker than the label.',
    ),
    wf.formula('pouredConcentrate', 'concentrateMarks * mark', dilutionPractice),
    wf.formula('pouredWater', 'waterMarks * mark', dilutionPractice),
    wf.formula('pouredShare', 'concentrateMarks / (concentrateMarks + waterMarks)', partsArithmetic),
    wf.formula('concentrateMass', 'concentrateDensity * concentrateVolume', partsArithmetic),
    wf.formula('waterMass', 'waterDensity * waterVolume', partsArithmetic),
  ],
  assumptions: { additive_volumes: 'Volumes add up; a water-based cleaner shrinks by well under 1 % on mixing, an alcohol by up to 4 %.' },
  limits: { label_counts: 'The label and the safety data sheet of the cleaner come before any figure here.' },
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.waste, cautions.makerFirst],
  dimensional: 'volumes to pour are rounded to decimal marks',
  sources: [waterDensity20],
  compute(input) {
    const parts = partsOf(input);
    if (typeof parts !== 'number') return parts;
    const mixVolume = input.volumeOf === 'mix' ? input.knownVolume : input.knownVolume * (1 + parts);
    const concentrateVolume = input.volumeOf === 'mix' ? mixVolume / (1 + parts) : input.knownVolume;
    const waterVolume = parts * concentrateVolume;
    const { concentrateDensity, waterDensity, mark } = input;
    // Concentrate at hand cannot be rounded up, as there is no more of it.
    const poured = mark === undefined || input.volumeOf === 'concentrate' ? undefined : pourToMarks(mixVolume, parts, mark);
    return {
      waterShare: input.percent === undefined ? undefined : 1 - input.percent,
      waterParts: parts,
      volumeShare: 1 / (1 + parts),
      massShare: concentrateDensity === undefined ? undefined : massShareFromParts(parts, concentrateDensity, waterDensity),
      mixVolume,
      waterVolume,
      concentrateVolume,
      volumePerPass: input.passes === undefined ? undefined : mixVolume / input.passes,
      concentrateMass: concentrateDensity === undefined ? undefined : concentrateDensity * concentrateVolume,
      waterMass: concentrateDensity === undefined ? undefined : waterDensity * waterVolume,
      concentrateMarks: poured?.concentrateMarks,
      waterMarks: poured?.waterMarks,
      pouredConcentrate: poured?.concentrate,
      pouredWater: poured?.water,
      pouredShare: poured === undefined ? undefined : poured.concentrate / (poured.concentrate + poured.water),
    };
  },
  advise: ({ volumePerPass }) => [
    { tone: 'do', text: 'Put the water in first, then the concentrate; write strength and date on the container.' },
    ...(volumePerPass === undefined
      ? []
      : ([
          { tone: 'note', text: 'Whether a pass of that size fills this filter is answered by “How much cleaning mix for this filter”.' },
        ] as const)),
  ],
});
