import type { WatchLimits, WatchRule, WatchSample } from './kernel.js';
import { SlidingLargest, windowStart } from './kernel-window.js';

/**
 * Watches over the flow that cools a burning filter, line by line. A filter counts as burning while any of its temperatures
 * was hot within the last minute, or while none is known. Flow is lost where the engine stops or idles, or where speed,
 * mass flow or pressure drop fall far below what they were some seconds, or one line, before.
 */
export class FlowWatch {
  private readonly hottest = new SlidingLargest();
  private readonly speed = new SlidingLargest();
  private readonly massFlow = new SlidingLargest();
  private readonly drop = new SlidingLargest();
  private hotFrom = 0;
  private lossFrom = 0;
  private readonly log: readonly WatchSample[];
  private readonly limits: WatchLimits;

  constructor(log: readonly WatchSample[], limits: WatchLimits) {
    this.log = log;
    this.limits = limits;
  }

  /** Takes the next line and writes what it breaks. */
  next(index: number, found: Partial<Record<WatchRule, number | true>>): void {
    const { log, limits } = this;
    const { inlet, bed, outlet, engineSpeed, massFlow, pressureDrop } = log[index]!;
    for (const temperature of [inlet, bed, outlet]) if (temperature !== undefined) this.hottest.add(index, temperature);
    if (engineSpeed !== undefined) this.speed.add(index, engineSpeed);
    if (massFlow !== undefined) this.massFlow.add(index, massFlow);
    if (pressureDrop !== undefined) this.drop.add(index, pressureDrop);
    this.hotFrom = windowStart(log, index, limits.hotTime, this.hotFrom);
    this.lossFrom = windowStart(log, index, limits.lossTime, this.lossFrom);
    const hottest = this.hottest.since(this.hotFrom);
    if (hottest !== -Infinity && hottest < limits.burningTemperature) return;
    if (engineSpeed !== undefined) {
      if (engineSpeed < limits.stoppedSpeed) found['engine-stopped'] = engineSpeed;
      else if (engineSpeed < limits.idleSpeed || engineSpeed < (1 - limits.speedLoss) * this.speed.since(this.lossFrom))
        found['speed-drop'] = engineSpeed;
    }
    const [lost, before] = this.lostFlow(massFlow, pressureDrop);
    if (lost !== undefined && before > 0) found['flow-lost'] = 1 - lost / before;
  }

  /** Mass flow, or else pressure drop, that has fallen too far, and what it was before. */
  private lostFlow(massFlow: number | undefined, pressureDrop: number | undefined): readonly [number | undefined, number] {
    const floor = 1 - this.limits.flowLoss;
    const flowBefore = this.massFlow.since(this.lossFrom);
    if (massFlow !== undefined && massFlow < floor * flowBefore) return [massFlow, flowBefore];
    const dropBefore = this.drop.since(this.lossFrom);
    if (pressureDrop !== undefined && pressureDrop < floor * dropBefore) return [pressureDrop, dropBefore];
    return [undefined, 0];
  }
}
