import * as wf from '@wallflow/calculation';
import { area, fraction, length, ratio, volume } from '@wallflow/units';
import { konstandopoulos2000 } from '../../sources.js';
import { geometryInputs } from '../inputs.js';
import { resolveGeometry } from '../resolve.js';
import { checkerboard, wang2021 } from '../sources.js';
import { cellPitch, cornerWall, filtrationArea, inletVoidVolume } from './kernel.js';

const width = (symbol: string, label: string, digits = 5) =>
  wf.quantityOutput(length, { symbol, label, digits, units: ['mm', 'mil', 'um'] });
const share = (symbol: string, label: string, description?: string) =>
  wf.quantityOutput(fraction, { symbol, label, ...(description === undefined ? {} : { description }), digits: 4, units: ['%', '1'] });
const cells = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 6 });

export const filterGeometryCalculation = wf.defineCalculation({
  id: 'filter-geometry',
  subject: 'filter',
  title: 'Channels and filtration area of a wall-flow filter',
  purpose: 'How wide are the channels, how many are there, and how much wall does the gas pass?',
  keywords: 'cpsi, mil, open frontal area, filtration area, channel, DPF',
  method: 'square cells of one pitch',
  inputs: geometryInputs,
  intermediates: {
    pitch: width('s', 'Pitch of the cells'),
    cornerWall: width('w_c', 'Wall left between the corners of the wider cells', 4),
    openLength: wf.quantityOutput(length, { symbol: 'L', label: 'Length that filters', digits: 5, units: ['mm', 'in'] }),
    inletShare: share('x_{in}', 'Inlet cells out of all'),
    outletShare: share('x_{out}', 'Outlet cells out of all'),
    frontalArea: wf.quantityOutput(area, { symbol: 'A_f', label: 'Face area', digits: 5, units: ['cm2', 'm2', 'in2'] }),
    inletCells: cells('n_{in}', 'Inlet cells by area'),
    outletCells: cells('n_{out}', 'Outlet cells by area'),
  },
  outputs: {
    inletWidth: width('\\alpha_{in}', 'Clear width of an inlet channel'),
    outletWidth: width('\\alpha_{out}', 'Clear width of an outlet channel'),
    bodyVolume: wf.quantityOutput(volume, { symbol: 'V_f', label: 'Volume of the filter', digits: 5, units: ['L', 'in3'] }),
    inletCount: wf.countOutput({ symbol: 'N_{in}', label: 'Inlet channels' }),
    outletCount: wf.countOutput({ symbol: 'N_{out}', label: 'Outlet channels' }),
    openFrontalArea: share('OFA', 'Open part of the face, all channels'),
    inletOpenFrontalArea: share('OFA_{in}', 'Open part of the inlet face', 'What the gas meets: the outlet channels are plugged there.'),
    inletVoidVolume: wf.quantityOutput(volume, {
      symbol: 'V_{in}',
      label: 'Empty volume of the inlet channels',
      description: 'Room for soot and ash.',
      units: ['L', 'cm3'],
    }),
    filtrationArea: wf.quantityOutput(area, {
      symbol: 'A_w',
      label: 'Filtration area',
      description: 'Wall between inlet and outlet channels, counted on the inlet side.',
      units: ['m2', 'ft2'],
    }),
  },
  answer: 'filtrationArea',
  steps: [
    wf.formula('pitch', '1 / sqrt(cellDensity)', konstandopoulos2000, 'Eq. A3'),
    wf.formula('outletWidth', '2 * (pitch - wallThickness) / (1 + inletWidthRatio)', konstandopoulos2000, 'Eq. A3 for equal cells'),
    wf.formula('inletWidth', 'inletWidthRatio * outletWidth'),
    wf.formula(
      'cornerWall',
      'sqrt(2) * (pitch - max(inletWidth, outletWidth))',
      checkerboard,
      undefined,
      'Cells of one sort are diagonal neighbours, one pitch apart both ways.',
    ),
    wf.formula('openLength', 'filterLength - 2 * plugLength'),
    wf.cases('bodyVolume', { 'known(filterVolume)': 'filterVolume', otherwise: 'pi / 4 * filterDiameter ^ 2 * filterLength' }),
    wf.formula('frontalArea', 'bodyVolume / filterLength'),
    wf.cases('inletShare', { "layout == 'alternate'": '1 / 2', otherwise: '3 / 4' }),
    wf.formula('outletShare', '1 - inletShare'),
    wf.formula('inletCells', 'inletShare * cellDensity * frontalArea', wang2021, 'Eq. 11', 'Cells cut by the rim count by their area.'),
    wf.formula('outletCells', 'outletShare * cellDensity * frontalArea', wang2021, 'Eq. 11'),
    wf.formula('inletCount', 'round(inletCells)'),
    wf.formula('outletCount', 'round(outletCells)'),
    wf.formula('inletOpenFrontalArea', 'inletCells * inletWidth ^ 2 / frontalArea'),
    wf.formula('openFrontalArea', 'inletOpenFrontalArea + outletCells * outletWidth ^ 2 / frontalArea'),
    wf.formula('inletVoidVolume', 'inletCells * inletWidth ^ 2 * openLength'),
    wf.formula(
      'filtrationArea',
      '4 * min(inletCells, outletCells) * inletWidth * openLength',
      konstandopoulos2000,
      'Eq. A1 and nomenclature',
      'Each inlet channel has an outlet channel on every side, or with three inlets for one outlet, each outlet channel an inlet channel.',
    ),
  ],
  assumptions: { square_cells: 'Square cells of one pitch over the whole face; broken cells at the rim count as whole ones by area.' },
  limits: {
    no_segments: 'Cement joints of a filter glued from segments are not deducted; they take up a few per cent of the cells.',
    cut_corners:
      'Cells are taken as full squares. Where wide inlet cells would nearly touch, real ones have cut corners: their area is smaller than this says.',
    area_of_unequal_cells:
      'With unequal cells the wall is wider on the inlet side than on the outlet side; the inlet side is counted here, where soot settles. The drop calculations let gas pass over the narrower width.',
    three_to_one_area:
      'With three inlet cells per outlet cell only walls between an inlet and an outlet cell count; gas that seeps along other walls, 3 to 4 % by a two-dimensional solution, is left out.',
  },
  compute(input, { warn }) {
    const resolved = resolveGeometry(input);
    if (wf.isRefusal(resolved)) return resolved;
    const { channels, frontalArea, filterVolume } = resolved;
    const { inletWidth, outletWidth, inletCount, outletCount } = channels;
    if (cornerWall(input.cellDensity, channels) < input.wallThickness) {
      warn(
        'thin_corners',
        'The corners of the wider cells leave less wall than the wall thickness: such cells are made with cut corners, and are narrower than this says.',
        ['inletWidthRatio'],
      );
    }
    const inletOpenFrontalArea = (inletCount * inletWidth ** 2) / frontalArea;
    const cellCount = inletCount + outletCount;
    return {
      ...channels,
      pitch: cellPitch(input.cellDensity),
      cornerWall: cornerWall(input.cellDensity, channels),
      inletShare: inletCount / cellCount,
      outletShare: outletCount / cellCount,
      frontalArea,
      inletCells: inletCount,
      outletCells: outletCount,
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
