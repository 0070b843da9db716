/** UN Regulation No. 24, Annex 7, from memory: nominal gas flow in m³/s and greatest absorption coefficient in 1/m. */
export const smokeLimitByGasFlow: readonly (readonly [flow: number, limit: number])[] = [
  [0.042, 2.26],
  [0.05, 2.08],
  [0.06, 1.9],
  [0.075, 1.72],
  [0.1, 1.495],
  [0.125, 1.345],
  [0.15, 1.225],
  [0.175, 1.14],
  [0.2, 1.065],
];

/** Nominal gas flow in m³/s: displacement in m³ times speed in 1/s, halved for a four-stroke engine (UN R24, Annex 4). */
export function nominalGasFlow(displacement: number, engineSpeed: number, strokes: 2 | 4): number {
  return (displacement * engineSpeed * 2) / strokes;
}

/** Limit between the rows by a straight line, as the regulation prescribes; the end rows hold beyond the ends. */
export function limitByGasFlow(flow: number, table = smokeLimitByGasFlow): number | undefined {
  const above = table.findIndex(([at]) => at >= flow);
  const upper = table[above];
  if (upper === undefined) return table.at(-1)?.[1];
  const lower = table[above - 1];
  if (lower === undefined) return upper[1];
  return lower[1] + ((upper[1] - lower[1]) * (flow - lower[0])) / (upper[0] - lower[0]);
}
