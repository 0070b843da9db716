/**
 * Inputs that describe the filter and the engine rather than one reading: they are the same in the next calculator. What
 * changes with every reading, as flow, temperature and drop, is never carried over.
 */
export const rememberedInputs: ReadonlySet<string> = new Set([
  'filterDiameter',
  'filterLength',
  'filterVolume',
  'cellDensity',
  'wallThickness',
  'layout',
  'inletWidthRatio',
  'plugLength',
  'substrate',
  'channelLength',
  'catalystVolume',
  'displacement',
  'strokes',
  'volumetricEfficiency',
]);
