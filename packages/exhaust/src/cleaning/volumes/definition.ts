import { count, defineCalculation, isRefusal, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { dilutionRatio, fraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { inletVoidVolume } from '../../filter/filter-geometry/kernel.js';
import { geometryInputs } from '../../filter/inputs.js';
import { resolveGeometry } from '../../filter/resolve.js';
import { konstandopoulos2000 } from '../../sources.js';
import { dilutionPractice, fillPractice, partsArithmetic } from '../sources.js';
import { cleaningVolumes } from './kernel.js';

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });

export const cleaningVolumesCalculation = defineCalculation({
  id: 'cleaning-volumes',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'How much cleaning mix for this filter',
  purpose: 'How much concentrate and water does an on-vehicle clean of this filter need?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['mix', 'dilution', 'concentrate', 'passes', 'rinse'],
  method: 'open volume of the inlet channels times fill and passes, divided by parts',
  inputs: z.strictObject({
    ...geometryInputs,
    dilutionRatio: quantity(dilutionRatio, {
      symbol: 'n',
      label: 'Dilution, parts of water to one part of concentrate',
      description: 'As the label says it: 1:4 is one part concentrate and four parts water, that is 20 %, not 25 %.',
      min: '0',
      max: '200',
      usual: ['1', '20'],
      usualReason: 'on the vehicle 1:1 to 1:4 is usual, in a bath up to 1:20',
      example: '1:1',
    }),
    fillShare: quantityWithDefault(fraction, {
      symbol: 'f',
      label: 'Fill per pass, share of the open inlet volume',
      above: '0 %',
      max: '200 %',
      usual: ['30 %', '100 %'],
      usualReason: 'common practice, no source',
      example: '80 %',
      default: '80 %',
      defaultReason: 'common practice, no source',
    }),
    passes: count({
      symbol: 'p',
      label: 'Passes',
      description: 'Stop earlier when a pass lowers the drop by less than a tenth.',
      min: 1,
      max: 20,
      example: 3,
      default: 3,
      defaultReason: 'common practice, no source: 2 to 4',
    }),
    rinseVolume: quantityWithDefault(volume, {
      symbol: 'V_r',
      label: 'Demineralised water to rinse with',
      min: '0 L',
      max: '200 L',
      example: '1 L',
      units: ['L', 'mL', 'gal_US'],
      default: '1 L',
      defaultReason: 'common practice, no source: 0.5 to 1 L',
    }),
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    inletVolume: volumeOutput('V_i', 'Open volume of the inlet channels'),
    volumePerPass: volumeOutput('V_p', 'Mix per pass'),
    concentrateShare: quantityOutput(fraction, { symbol: 'c', label: 'Share of concentrate in the mix', digits: 3, units: ['%'] }),
  },
  outputs: {
    mixVolume: volumeOutput('V_m', 'Mix in all'),
    waterVolume: volumeOutput('V_w', 'Water in the mix'),
    demineralisedWater: volumeOutput('V_d', 'Demineralised water in all, with the rinse'),
    concentrateVolume: volumeOutput('V_c', 'Concentrate'),
  },
  constants: {},
  steps: [
    {
      gives: 'inletVolume',
      text: 'Width squared times open length times number of the inlet channels: [[inletVolume]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A3',
    },
    { gives: 'volumePerPass', tex: '[[volumePerPass]] = [[fillShare]]\\,[[inletVolume]]', source: 'fillPractice' },
    { gives: 'mixVolume', tex: '[[mixVolume]] = [[passes]]\\,[[volumePerPass]]', source: 'fillPractice' },
    { gives: 'concentrateShare', tex: '[[concentrateShare]] = \\frac{1}{1+[[dilutionRatio]]}', source: 'partsArithmetic' },
    {
      gives: 'waterVolume',
      tex: '[[waterVolume]] = [[mixVolume]]\\,\\frac{[[dilutionRatio]]}{1+[[dilutionRatio]]}',
      source: 'partsArithmetic',
    },
    { gives: 'demineralisedWater', tex: '[[demineralisedWater]] = [[waterVolume]]+[[rinseVolume]]', source: 'fillPractice' },
    { gives: 'concentrateVolume', tex: '[[concentrateVolume]] = \\frac{[[mixVolume]]}{1+[[dilutionRatio]]}', source: 'partsArithmetic' },
  ],
  assumptions: [
    { code: 'additive_volumes', text: 'Volumes of concentrate and water add up; for water-based cleaners the error is well below 1 %.' },
    { code: 'empty_channels', text: 'The inlet channels are taken as empty; soot and ash leave less room.' },
  ],
  limits: [{ code: 'label_counts', text: 'The label and the safety data sheet of the cleaner come before any figure here.' }],
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.pressureAndSteam, cautions.waste, cautions.makerFirst],
  sources: { konstandopoulos2000, fillPractice, dilutionPractice, partsArithmetic },
  compute(input) {
    const geometry = resolveGeometry(input);
    if (isRefusal(geometry)) return geometry;
    const inletVolume = inletVoidVolume(geometry.channels);
    const volumes = cleaningVolumes({ ...input, inletVolume });
    return {
      ...volumes,
      inletVolume,
      concentrateShare: 1 / (1 + input.dilutionRatio),
      demineralisedWater: volumes.waterVolume + input.rinseVolume,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Let the filter cool to hand-warm, mark the containers, and keep what runs out.' },
    { tone: 'do-not', text: 'Do not put more liquid in than the channels hold: it runs on to sensors and the catalyst behind.' },
  ],
});
