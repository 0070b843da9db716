import * as wf from '@wallflow/calculation';
import { dilutionRatio, fraction, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { filterGeometryCalculation } from '../../filter/filter-geometry/definition.js';
import { inletVoidVolume } from '../../filter/filter-geometry/kernel.js';
import { geometryInputs } from '../../filter/inputs.js';
import { resolveGeometry } from '../../filter/resolve.js';
import { sameGeometry } from '../same-geometry.js';
import { dilutionPractice, fillPractice, partsArithmetic } from '../sources.js';
import { bottleFor, cleaningVolumes } from './kernel.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });

export const cleaningVolumesCalculation = wf.defineCalculation({
  id: 'cleaning-volumes',
  subject: 'cleaning',
  title: 'How much cleaning mix for this filter',
  purpose: 'How much concentrate and water does an on-vehicle clean of this filter need, and how many passes does my bottle last?',
  keywords: 'mix, dilution, concentrate, passes, rinse, bottle, DPF, enough',
  method: 'open volume of the inlet channels times fill and passes, divided by parts',
  inputs: {
    ...geometryInputs,
    dilutionRatio: wf.quantity(dilutionRatio, {
      symbol: 'n',
      label: 'Dilution, parts of water to one part of concentrate',
      description: 'As the label says it: 1:4 is one part concentrate and four parts water, that is 20 %, not 25 %.',
      range: '0 <= x <= 200',
      usual: ['1', '20', 'on the vehicle 1:1 to 1:4 is usual, in a bath up to 1:20'],
      example: '1:5',
    }),
    fillShare: wf.quantity(fraction, {
      symbol: 'f',
      label: 'Fill per pass, share of the open inlet volume',
      range: '0 < x <= 200 %',
      usual: ['30 %', '100 %', 'common practice, no source'],
      default: ['80 %', 'common practice, no source'],
    }),
    passes: wf.count({
      symbol: 'p',
      label: 'Passes',
      description: 'Stop earlier if a pass lowers the pressure drop by less than a tenth.',
      min: 1,
      max: 20,
      default: [3, 'common practice, no source: 2 to 4'],
    }),
    rinseVolume: wf.quantity(volume, {
      symbol: 'V_r',
      label: 'Demineralised water to rinse with',
      range: '0 <= x <= 200 L',
      units: ['L', 'mL', 'gal_US'],
      default: ['1 L', 'common practice, no source: 0.5 to 1 L'],
    }),
    concentrateAtHand: wf.optional(
      wf.quantity(volume, {
        symbol: 'V_b',
        label: 'Concentrate at hand',
        description: 'Such as what is in the bottle. With it you see how many passes it lasts and what each pass then gets.',
        range: '0 L < x <= 200 L',
        example: '1.5 L',
        units: ['L', 'mL', 'floz_US', 'gal_US'],
      }),
    ),
  },
  example: { filterDiameter: '190.5 mm', filterLength: '203.2 mm', concentrateAtHand: '1.5 L' },
  intermediates: {
    inletVolume: volumeOutput('V_i', 'Open volume of the inlet channels'),
    volumePerPass: volumeOutput('V_p', 'Mix per pass'),
    concentrateShare: wf.quantityOutput(fraction, { symbol: 'c', label: 'Share of concentrate in the mix', digits: 3, units: ['%'] }),
  },
  outputs: {
    mixVolume: volumeOutput('V_m', 'Finished mix'),
    waterVolume: volumeOutput('V_w', 'Water in the mix'),
    demineralisedWater: volumeOutput('V_d', 'Demineralised water in all, with the rinse'),
    concentrateVolume: volumeOutput('V_c', 'Concentrate'),
    mixAtHand: wf.optional(volumeOutput('V_{m,b}', 'Mix that the concentrate at hand makes')),
    passesAtHand: wf.optional(wf.countOutput({ symbol: 'p_b', label: 'Full passes with the concentrate at hand' })),
    mixPerPassAtHand: wf.optional(volumeOutput('V_{p,b}', 'Mix per pass, if what is at hand is shared among all passes')),
    fillAtHand: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'f_b', label: 'Open inlet volume that such a pass fills', digits: 2, units: ['%'] }),
    ),
    bottle: wf.optional(
      wf.choiceOutput({
        label: 'Does the concentrate at hand last?',
        options: {
          enough: 'yes, for all passes',
          thin: 'only if each pass gets less: still within common practice',
          short: 'no: buy more, or make fewer passes',
        },
      }),
    ),
  },
  answer: 'concentrateVolume',
  steps: [
    wf.nested('inletVolume', filterGeometryCalculation, sameGeometry, 'inletVoidVolume'),
    wf.formula('volumePerPass', 'fillShare * inletVolume', fillPractice),
    wf.formula('mixVolume', 'passes * volumePerPass', fillPractice),
    wf.formula('concentrateShare', '1 / (1 + dilutionRatio)', partsArithmetic),
    wf.formula('waterVolume', 'mixVolume * dilutionRatio / (1 + dilutionRatio)', partsArithmetic),
    wf.formula('demineralisedWater', 'waterVolume + rinseVolume', fillPractice),
    wf.formula('concentrateVolume', 'mixVolume / (1 + dilutionRatio)', partsArithmetic),
    wf.formula('mixAtHand', 'concentrateAtHand * (1 + dilutionRatio)', partsArithmetic),
    wf.formula('passesAtHand', 'floor(mixAtHand / volumePerPass)', fillPractice),
    wf.formula('mixPerPassAtHand', 'mixAtHand / passes', partsArithmetic),
    wf.formula('fillAtHand', 'mixPerPassAtHand / inletVolume', fillPractice),
    wf.verdict('bottle', { enough: 'mixAtHand >= mixVolume', thin: 'fillAtHand >= 0.3', short: 'otherwise' }, fillPractice),
  ],
  assumptions: {
    additive_volumes: 'Volumes of concentrate and water add up; for water-based cleaners the error is well below 1 %.',
    empty_channels: 'The inlet channels are taken as empty; soot and ash leave less room.',
  },
  limits: { label_counts: 'The label and the safety data sheet of the cleaner come before any figure here.' },
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.pressureAndSteam, cautions.waste, cautions.makerFirst],
  sources: [dilutionPractice],
  compute(input) {
    const geometry = resolveGeometry(input);
    if (wf.isRefusal(geometry)) return geometry;
    const inletVolume = inletVoidVolume(geometry.channels);
    const volumes = cleaningVolumes({ ...input, inletVolume });
    const bottle =
      input.concentrateAtHand === undefined ? undefined : bottleFor(input.concentrateAtHand, volumes, { ...input, inletVolume });
    return {
      ...volumes,
      inletVolume,
      concentrateShare: 1 / (1 + input.dilutionRatio),
      demineralisedWater: volumes.waterVolume + input.rinseVolume,
      mixAtHand: bottle?.mixAtHand,
      passesAtHand: bottle?.passesAtHand,
      mixPerPassAtHand: bottle?.mixPerPassAtHand,
      fillAtHand: bottle?.fillAtHand,
      bottle: bottle?.bottle,
    };
  },
  advise: ({ bottle, passesAtHand }, { passes }) => [
    ...(bottle === 'enough' ? ([{ tone: 'note', text: wf.say`The concentrate at hand lasts for all ${passes} passes.` }] as const) : []),
    ...(bottle === 'thin' || bottle === 'short'
      ? ([
          {
            tone: 'note',
            text: wf.say`The concentrate at hand lasts for ${passesAtHand ?? 0} of ${passes} full passes. Do not make the mix weaker to stretch it.`,
          },
        ] as const)
      : []),
    { tone: 'do', text: 'Let the filter cool to hand-warm, mark the containers, and keep what runs out.' },
    {
      tone: 'do-not',
      text: 'Do not put more liquid in than the channels hold: it runs on to the sensors and the catalyst after the filter.',
    },
  ],
});
