// The two functions used here; the package brings no types, and its published ones are for all of it.
declare module 'd3-array' {
  /** The bounds widened to round numbers. */
  export function nice(start: number, stop: number, count: number): [number, number];
  /** About as many round numbers between the bounds. */
  export function ticks(start: number, stop: number, count: number): number[];
}
