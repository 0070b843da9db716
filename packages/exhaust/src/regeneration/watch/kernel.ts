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
  /** Exhaust or air mass flow in kg/s. */
  readonly massFlow?: number | undefined;
  /** Coolant temperature in K. */
  readonly coolantTemperature?: number | undefined;
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
  readonly zoneLimit: number;
  /** Outlet above inlet in K, while rising. */
  readonly outletAbove: number;
  /** Fastest rise in K/s. */
  readonly riseLimit: number;
  /** How long the corrected pressure drop may rise at steady engine speed, in s. */
  readonly dropRiseTime: number;
  /** Change of engine speed that still counts as steady, as a share. */
  readonly steadySpeed: number;
  /** Coolant temperature in K. */
  readonly coolantLimit: number;
  /** Time in s over which a rise is taken. */
  readonly riseTime: number;
  /** Temperature in K from which on a filter counts as burning. */
  readonly burningTemperature: number;
  /** How long it counts as burning after it was last seen hot, in s. */
  readonly hotTime: number;
  /** Engine speed in 1/s below which the engine counts as stopped. */
  readonly stoppedSpeed: number;
  /** Engine speed in 1/s below which it counts as idling. */
  readonly idleSpeed: number;
  /** Fall of the engine speed that is an alarm, as a share. */
  readonly speedLoss: number;
  /** Fall of mass flow or pressure drop that is an alarm, as a share. */
  readonly flowLoss: number;
  /** Time in s over which a fall is taken; over longer gaps from line to line. */
  readonly lossTime: number;
}

export type WatchRule =
  | 'fire'
  | 'oil-pressure'
  | 'engine-stopped'
  | 'speed-drop'
  | 'flow-lost'
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

/** Index of the latest sample at least `age` s older than the one at `index`. The times rise from sample to sample. */
export function sampleBefore(log: readonly { readonly time: number }[], index: number, age: number): number | undefined {
  const now = log[index]!.time;
  let [low, high] = [0, index];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (now - log[middle]!.time >= age) low = middle + 1;
    else high = middle;
  }
  return low === 0 ? undefined : low - 1;
}

/** Rise of a signal in its unit per s over at least `window` s before a sample. */
export function signalRiseRate<S extends { readonly time: number }>(
  log: readonly S[],
  index: number,
  window: number,
  signal: (sample: S) => number | undefined,
) {
  const now = signal(log[index]!);
  const start = now === undefined ? undefined : sampleBefore(log, index, window);
  const then = start === undefined ? undefined : signal(log[start]!);
  if (now === undefined || start === undefined || then === undefined) return undefined;
  return (now - then) / (log[index]!.time - log[start]!.time);
}
