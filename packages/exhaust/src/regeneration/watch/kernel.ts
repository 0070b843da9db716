/** One line of a log in SI; what was not measured is left out. */
export interface WatchSample {
  /** Time in s. */
  readonly time: number;
  /** Gas temperature before the filter in K. */
  readonly inlet?: number | undefined;
  /** Temperature in the filter in K. */
  readonly bed?: number | undefined;
  /** Gas temperature after the filter in K. */
  readonly outlet?: number | undefined;
  /** Pressure drop of the filter in Pa. */
  readonly pressureDrop?: number | undefined;
  /** Engine speed in 1/s. */
  readonly engineSpeed?: number | undefined;
  /** Coolant temperature in K. */
  readonly coolant?: number | undefined;
  readonly oilPressureLamp?: boolean | undefined;
  readonly fire?: boolean | undefined;
  readonly smokeOrSmell?: boolean | undefined;
}

/** Limits of the watch in SI. */
export interface WatchLimits {
  /** Inlet temperature in K that must not last. */
  readonly inletLasting: number;
  /** How long it may last, in s. */
  readonly inletTime: number;
  /** Highest temperature anywhere in the filter zone in K. */
  readonly anywhere: number;
  /** Outlet above inlet in K, while rising. */
  readonly outletAbove: number;
  /** Fastest rise in K/s. */
  readonly rise: number;
  /** How long the corrected pressure drop may rise at steady engine speed, in s. */
  readonly dropTime: number;
  /** Change of engine speed that still counts as steady, as a share. */
  readonly steadySpeed: number;
  /** Coolant temperature in K. */
  readonly coolant: number;
  /** Time in s over which a rise is taken. */
  readonly window: number;
}

export type WatchRule =
  | 'fire'
  | 'oil-pressure'
  | 'over-temperature'
  | 'outlet-over-inlet'
  | 'rise'
  | 'hot-inlet'
  | 'drop-rising'
  | 'coolant'
  | 'smoke';

/** A rule that was broken for the first time. */
export interface WatchEvent {
  readonly rule: WatchRule;
  readonly time: number;
  /** What was found, in SI; nothing for what is seen rather than measured. */
  readonly value?: number;
}

/** Latest sample at least `age` s older than the one at `index`. */
export function sampleBefore<S extends { readonly time: number }>(log: readonly S[], index: number, age: number): S | undefined {
  const now = log[index]!.time;
  for (let i = index - 1; i >= 0; i -= 1) if (now - log[i]!.time >= age) return log[i];
  return undefined;
}

/** Rise of a signal in its unit per s over at least `window` s before a sample. */
export function riseOf<S extends { readonly time: number }>(
  log: readonly S[],
  index: number,
  window: number,
  signal: (sample: S) => number | undefined,
) {
  const here = log[index]!;
  const before = sampleBefore(log, index, window);
  const [now, then] = [signal(here), before === undefined ? undefined : signal(before)];
  if (before === undefined || now === undefined || then === undefined) return undefined;
  return (now - then) / (here.time - before.time);
}
