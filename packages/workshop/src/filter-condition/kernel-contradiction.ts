/** A reading in SI as the comparison of readings needs it. */
export interface ComparableReading {
  /** Drop less zero and its standard uncertainty, Pa. */
  readonly pressureDrop: number;
  readonly uncertainty: number;
  /** Viscosity times actual volume flow, Pa·m³, and the relative standard uncertainty of the flow. */
  readonly viscousFlow: number;
  readonly flowUncertainty: number;
  /** Mean free path of the gas at the reading's temperature, up to a common factor. */
  readonly meanFreePath: number;
}

/**
 * Whether one filter can have given both readings. Its resistance Δp/(μQ) cannot fall as the flow grows: the parts that go
 * with flow squared and the compaction of soot only raise it. Slip in the pores can lower it in hotter gas, at the very most
 * with the mean free path (free molecular flow). What is left beyond twice the uncertainty is a contradiction.
 */
function excludeEachOther(slow: ComparableReading, fast: ComparableReading): boolean {
  if (fast.viscousFlow < slow.viscousFlow * (1 - 2 * slow.flowUncertainty)) return false;
  const slip = Math.min(1, slow.meanFreePath / fast.meanFreePath);
  const fall = (slip * slow.pressureDrop) / slow.viscousFlow - fast.pressureDrop / fast.viscousFlow;
  return fall > 2 * Math.hypot((slip * slow.uncertainty) / slow.viscousFlow, fast.uncertainty / fast.viscousFlow);
}

/** -1 or 1 beyond twice the uncertainty, otherwise 0. */
function signOf({ pressureDrop, uncertainty }: ComparableReading): number {
  return Math.abs(pressureDrop) <= 2 * uncertainty ? 0 : Math.sign(pressureDrop);
}

/**
 * The first two readings, slower first, that no single filter with a sound sensor can give; undefined when all agree. Where
 * every sign that counts is negative, the hoses are swapped and the sizes are compared.
 */
export function contradiction<R extends ComparableReading>(readings: readonly R[]): readonly [R, R] | undefined {
  const signs = readings.map(signOf);
  const direction = signs.includes(-1) && !signs.includes(1) ? -1 : 1;
  const sized = readings.map((reading) => ({
    reading,
    sign: signOf(reading),
    size: { ...reading, pressureDrop: direction * reading.pressureDrop },
  }));
  for (const slow of sized) {
    for (const fast of sized) {
      const opposite = slow.sign * fast.sign < 0 && slow.reading.viscousFlow <= fast.reading.viscousFlow;
      if (slow !== fast && (opposite || excludeEachOther(slow.size, fast.size))) return [slow.reading, fast.reading];
    }
  }
  return undefined;
}
