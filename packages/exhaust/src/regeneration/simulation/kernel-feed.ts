/** Gas at the filter inlet at one time. */
export interface FeedPoint {
  /** Time in s. */
  readonly time: number;
  /** Exhaust mass flow in kg/s. */
  readonly massFlow: number;
  /** Temperature in K. */
  readonly temperature: number;
  /** Mole fraction of oxygen. */
  readonly oxygen: number;
  /** Mole fraction of nitrogen dioxide. */
  readonly nitrogenDioxide: number;
}

type Column = 'massFlow' | 'temperature' | 'oxygen' | 'nitrogenDioxide';

/** The feed between two points, linear in time; `at` moves it to a time and leaves the values in its fields. */
export class FeedSegment {
  massFlow = 0;
  temperature = 0;
  oxygen = 0;
  nitrogenDioxide = 0;
  readonly from: number;
  readonly to: number;
  private readonly first: FeedPoint;
  private readonly last: FeedPoint;

  constructor(first: FeedPoint, last: FeedPoint, to: number) {
    this.first = first;
    this.last = last;
    this.from = first.time;
    this.to = to;
  }

  at(time: number): void {
    const span = this.last.time - this.from;
    const share = span > 0 ? (time - this.from) / span : 0;
    const value = (key: Column) => this.first[key] + share * (this.last[key] - this.first[key]);
    this.massFlow = value('massFlow');
    this.temperature = value('temperature');
    this.oxygen = value('oxygen');
    this.nitrogenDioxide = value('nitrogenDioxide');
  }
}

/**
 * Segments of a feed given by points in order of time, up to a duration in s. Two points of the same time make a jump;
 * before the first point and after the last one the feed stays as it is there.
 */
export function feedSegments(points: readonly FeedPoint[], duration: number): FeedSegment[] {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  const all = [...(first.time > 0 ? [{ ...first, time: 0 }] : []), ...points, { ...last, time: Math.max(duration, last.time) }];
  const segments: FeedSegment[] = [];
  for (let i = 1; i < all.length; i += 1) {
    const from = all[i - 1]!;
    const to = all[i]!;
    if (to.time > from.time && from.time < duration) segments.push(new FeedSegment(from, to, Math.min(to.time, duration)));
  }
  return segments;
}
