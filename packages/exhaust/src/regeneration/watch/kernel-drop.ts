import { sampleBefore, type WatchLimits, type WatchSample } from './kernel.js';
import { SlidingLargest } from './kernel-window.js';

/**
 * Watches for a pressure drop that rises over the watching time at steady engine speed, line by line. The drop is brought to
 * one temperature by T^1.7, as viscosity over density of a gas goes at equal mass flow.
 */
export class DropWatch {
  private readonly fastest = new SlidingLargest();
  private readonly slowest = new SlidingLargest();
  private lastUnknown = -1;
  private readonly log: readonly WatchSample[];
  private readonly limits: WatchLimits;

  constructor(log: readonly WatchSample[], limits: WatchLimits) {
    this.log = log;
    this.limits = limits;
  }

  /** Takes the next line; share by which the drop has risen, undefined where it has not. */
  next(index: number): number | undefined {
    const { log, limits } = this;
    const speed = log[index]!.engineSpeed;
    if (speed === undefined) this.lastUnknown = index;
    else {
      this.fastest.add(index, speed);
      this.slowest.add(index, -speed);
    }
    const start = sampleBefore(log, index, limits.dropRiseTime);
    const now = correctedDrop(log[index]!);
    const then = start === undefined ? undefined : correctedDrop(log[start]!);
    if (start === undefined || now === undefined || then === undefined || !(then > 0)) return undefined;
    if (this.lastUnknown >= start) return undefined;
    if (this.fastest.since(start) > -this.slowest.since(start) * (1 + limits.steadySpeed)) return undefined;
    return now > then ? now / then - 1 : undefined;
  }
}

function correctedDrop({ pressureDrop, inlet, outlet }: WatchSample): number | undefined {
  const temperature = inlet !== undefined && outlet !== undefined ? (inlet + outlet) / 2 : (inlet ?? outlet);
  return pressureDrop === undefined || temperature === undefined ? undefined : pressureDrop * temperature ** -1.7;
}
