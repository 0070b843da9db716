import { type SootKinetics, sootOxidationRate } from '../../soot/oxidation/kernel.js';

/** A line of a log of a regeneration in SI. */
export interface QualitySample {
  /** Time in s. */
  readonly time: number;
  /** Temperature before or in the filter in K. */
  readonly temperature: number;
}

/** Time in s above a temperature, longest time without a break, and how often it fell below again before the end. */
export function timeAboveTemperature(log: readonly QualitySample[], threshold: number) {
  let total = 0;
  let run = 0;
  let longest = 0;
  let interruptions = 0;
  for (let i = 1; i < log.length; i += 1) {
    const [first, last] = [log[i - 1]!, log[i]!];
    const span = last.time - first.time;
    const part = span * shareAbove(first.temperature, last.temperature, threshold);
    total += part;
    const falls = first.temperature > threshold && last.temperature <= threshold;
    const rises = first.temperature <= threshold && last.temperature > threshold;
    if (rises) run = 0;
    run += part;
    longest = Math.max(longest, run);
    if (rises && total > part) interruptions += 1;
    if (falls) run = 0;
  }
  return { total, longest, interruptions };
}

/** The same line by line, as one works it out by hand: time above since the line before, in all, without a break, and returns. */
export function intervalsOf(log: readonly QualitySample[], threshold: number) {
  let [soFar, unbroken] = [0, 0];
  return log.map(({ time, temperature }, index) => {
    const line = { lineTime: time, lineTemperature: temperature };
    const before = log[index - 1];
    if (before === undefined) return { ...line, above: undefined, soFar: undefined, unbroken: undefined, cameBack: undefined };
    const above = (time - before.time) * shareAbove(before.temperature, temperature, threshold);
    const cameBack = before.temperature <= threshold && temperature > threshold && soFar > 0 ? 1 : undefined;
    unbroken = before.temperature > threshold ? unbroken + above : above;
    soFar += above;
    return { ...line, above, soFar, unbroken, cameBack };
  });
}

/** Share of a straight line between two temperatures that lies above a threshold. */
function shareAbove(first: number, last: number, threshold: number): number {
  const [low, high] = first < last ? [first, last] : [last, first];
  if (low >= threshold && high > threshold) return 1;
  return high <= threshold ? 0 : (high - threshold) / (high - low);
}

/** Share of soot that the log should have burnt, 1 − e^(−∫k dt). */
export function expectedBurnOff(log: readonly QualitySample[], kinetics: SootKinetics, oxygen: number, gasConstant?: number): number {
  return -Math.expm1(-burnExponent(log, kinetics, oxygen, gasConstant));
}

/**
 * ∫k dt of a log, with temperatures straight between the lines; Simpson's rule on parts in which the temperature changes by
 * at most 0.5 %.
 */
export function burnExponent(log: readonly QualitySample[], kinetics: SootKinetics, oxygen: number, gasConstant?: number): number {
  let exponent = 0;
  const rate = (temperature: number) => sootOxidationRate(kinetics, { temperature, oxygen, nitrogenDioxide: 0 }, gasConstant).total;
  for (let i = 1; i < log.length; i += 1) {
    const [first, last] = [log[i - 1]!, log[i]!];
    const span = last.time - first.time;
    const change = Math.abs(last.temperature - first.temperature) / (last.temperature + first.temperature);
    const parts = 2 * Math.min(1000, Math.max(2, Math.ceil(200 * change)));
    let sum = 0;
    for (let k = 0; k <= parts; k += 1) {
      const weight = k === 0 || k === parts ? 1 : k % 2 === 1 ? 4 : 2;
      sum += weight * rate(first.temperature + ((last.temperature - first.temperature) * k) / parts);
    }
    exponent += (span * sum) / (3 * parts);
  }
  return exponent;
}
