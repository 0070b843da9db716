import { countOutput, defineCalculation, isRefusal, quantityOutput } from '@wallflow/calculation';
import { area, fraction, length, volume } from '@wallflow/units';
import * as z from 'zod';
import { konstandopoulos2000 } from '../../sources.js';
import { geometryInputs } from '../inputs.js';
import { resolveGeometry } from '../resolve.js';
import { checkerboard, wang2021 } from '../sources.js';
import { cellPitch, cornerWall, filtrationArea, inletVoidVolume } from './kernel.js';

const width = (symbol: string, label: string, digits = 5) => quantityOutput(length, { symbol, label, digits, units: ['mm', 'mil', 'um'] });

export const filterGeometryCalculation = defineCalculation({
  id: 'filter-geometry',
  version: '1.1.1',
  subject: 'filter',
  title: 'Channels and filtration area of a wall-flow filter',
  purpose: 'How wide are the channels, how many are there, and how much wall does the gas pass?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['cpsi', 'mil', 'open frontal area', 'filtration area', 'channel'],
  method: 'square cells of one pitch',
  inputs: z.strictObject(geometryInputs),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    pitch: width('s', 'Pitch of the cells'),
    cornerWall: quantityOutput(length, {
      symbol: 'w_c',
      label: 'Wall left between the corners of the wider cells',
      digits: 4,
      units: ['mm', 'mil', 'um'],
    }),
    openLength: quantityOutput(length, { symbol: 'L', label: 'Length that filters', digits: 5, units: ['mm', 'in'] }),
    inletShare: quantityOutput(fraction, { symbol: 'x_{in}', label: 'Inlet cells out of all', digits: 4, units: ['1', '%'] }),
    outletShare: quantityOutput(fraction, { symbol: 'x_{out}', label: 'Outlet cells out of all', digits: 4, units: ['1', '%'] }),
    frontalArea: quantityOutput(area, { symbol: 'A_f', label: 'Face area', digits: 5, units: ['cm2', 'm2', 'in2'] }),
  },
  outputs: {
    inletWidth: width('\\alpha_{in}', 'Clear width of an inlet channel'),
    outletWidth: width('\\alpha_{out}', 'Clear width of an outlet channel'),
    bodyVolume: quantityOutput(volume, { symbol: 'V_f', label: 'Volume of the filter', digits: 5, units: ['L', 'in3'] }),
    inletCount: countOutput({ symbol: 'N_{in}', label: 'Inlet channels' }),
    outletCount: countOutput({ symbol: 'N_{out}', label: 'Outlet channels' }),
    openFrontalArea: quantityOutput(fraction, {
      symbol: 'OFA',
      label: 'Open part of the face, all channels',
      digits: 4,
      units: ['%', '1'],
    }),
    inletOpenFrontalArea: quantityOutput(fraction, {
      symbol: 'OFA_{in}',
      label: 'Open part of the inlet face',
      description: 'What the gas meets: the outlet channels are plugged there.',
      digits: 4,
      units: ['%', '1'],
    }),
    inletVoidVolume: quantityOutput(volume, {
      symbol: 'V_{in}',
      label: 'Empty volume of the inlet channels',
      description: 'Room for soot and ash.',
      units: ['L', 'cm3'],
    }),
    filtrationArea: quantityOutput(area, {
      symbol: 'A_w',
      label: 'Filtration area',
      description: 'Wall between inlet and outlet channels, counted on the inlet side.',
      units: ['m2', 'ft2'],
    }),
  },
  constants: {},
  steps: [
    { gives: 'pitch', tex: '[[pitch]] = \\frac{1}{\\sqrt{[[cellDensity]]}}', source: 'konstandopoulos2000', locator: 'Eq. A3' },
    {
      gives: 'outletWidth',
      tex: '[[outletWidth]] = \\frac{2\\left([[pitch]]-[[wallThickness]]\\right)}{1+[[inletWidthRatio]]}',
      source: 'konstandopoulos2000',
      locator: 'Eq. A3 for equal cells',
    },
    { gives: 'inletWidth', tex: '[[inletWidth]] = [[inletWidthRatio]]\\,[[outletWidth]]' },
    {
      gives: 'cornerWall',
      text: 'Cells of one sort are diagonal neighbours, one pitch apart both ways: the square root of two times what the wider width leaves of the pitch, [[cornerWall]].',
      source: 'checkerboard',
    },
    { gives: 'openLength', tex: '[[openLength]] = [[filterLength]]-2\\,[[plugLength]]' },
    { gives: 'bodyVolume', text: '[[bodyVolume]]: as given, or from diameter and length.' },
    { gives: 'frontalArea', tex: '[[frontalArea]] = \\frac{[[bodyVolume]]}{[[filterLength]]}' },
    { gives: 'inletShare', text: 'Plug pattern: [[layout]]. Inlet cells out of all: [[inletShare]].' },
    { gives: 'outletShare', tex: '[[outletShare]] = 1-[[inletShare]]' },
    {
      gives: 'inletCount',
      text: 'Inlet cells out of all, times cell density and face area, to the nearest whole channel: [[inletCount]]. What follows counts cells by area, not whole ones.',
      source: 'wang2021',
      locator: 'Eq. 11',
    },
    { gives: 'outletCount', text: 'The others are outlets: [[outletCount]].' },
    {
      gives: 'inletOpenFrontalArea',
      tex: '[[inletOpenFrontalArea]] = [[inletShare]]\\,[[cellDensity]]\\,[[inletWidth]]^{2}',
    },
    {
      gives: 'openFrontalArea',
      tex: '[[openFrontalArea]] = [[inletOpenFrontalArea]]+[[outletShare]]\\,[[cellDensity]]\\,[[outletWidth]]^{2}',
    },
    {
      gives: 'inletVoidVolume',
      tex: '[[inletVoidVolume]] = [[inletOpenFrontalArea]]\\,[[frontalArea]]\\,[[openLength]]',
    },
    {
      gives: 'filtrationArea',
      tex: '[[filtrationArea]] = 4\\,\\min\\left([[inletShare]],[[outletShare]]\\right)\\,[[cellDensity]]\\,[[frontalArea]]\\,[[inletWidth]]\\,[[openLength]]',
      source: 'konstandopoulos2000',
      locator: 'Eq. A1 and nomenclature',
    },
  ],
  assumptions: [
    { code: 'square_cells', text: 'Square cells of one pitch over the whole face; broken cells at the rim count as whole ones by area.' },
  ],
  limits: [
    {
      code: 'no_segments',
      text: 'Cement joints of a filter glued from segments are not taken off; they cost a few per cent of the cells.',
    },
    {
      code: 'cut_corners',
      text: 'Cells are taken as full squares. Where wide inlet cells would nearly touch, real ones have cut corners: their area is smaller than this says.',
    },
    {
      code: 'area_of_unequal_cells',
      text: 'With unequal cells the wall is wider on the inlet side than on the outlet side; the inlet side is counted here, where soot settles. The drop calculations let gas pass over the narrower width.',
    },
    {
      code: 'three_to_one_area',
      text: 'With three inlet cells per outlet cell only walls between an inlet and an outlet cell count; gas that seeps along other walls, 3 to 4 % by a two-dimensional solution, is left out.',
    },
  ],
  cautions: [],
  sources: { konstandopoulos2000, wang2021, checkerboard },
  compute(input, { warn }) {
    const resolved = resolveGeometry(input);
    if (isRefusal(resolved)) return resolved;
    const { channels, frontalArea, filterVolume } = resolved;
    const { inletWidth, outletWidth, inletCount, outletCount, openLength } = channels;
    if (cornerWall(input.cellDensity, channels) < input.wallThickness) {
      warn(
        'thin_corners',
        'The corners of the wider cells leave less wall than the wall thickness: such cells are made with cut corners, and are narrower than this says.',
        ['inletWidthRatio'],
      );
    }
    const inletOpenFrontalArea = (inletCount * inletWidth ** 2) / frontalArea;
    return {
      pitch: cellPitch(input.cellDensity),
      cornerWall: cornerWall(input.cellDensity, channels),
      openLength,
      inletShare: inletCount / (inletCount + outletCount),
      outletShare: outletCount / (inletCount + outletCount),
      frontalArea,
      inletWidth,
      outletWidth,
      bodyVolume: filterVolume,
      inletCount: Math.round(inletCount),
      outletCount: Math.round(outletCount),
      openFrontalArea: inletOpenFrontalArea + (outletCount * outletWidth ** 2) / frontalArea,
      inletOpenFrontalArea,
      inletVoidVolume: inletVoidVolume(channels),
      filtrationArea: filtrationArea(channels),
    };
  },
});
