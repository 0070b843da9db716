import type { KindName, Quantity } from './types.js';

/** Absolute pressure from a gauge reading; the ambient pressure of the place and day is needed. */
export function toAbsolute(gauge: Quantity<'gaugePressure'>, ambient: Quantity<'absolutePressure'>): Quantity<'absolutePressure'> {
  return (gauge + ambient) as Quantity<'absolutePressure'>;
}

/** Gauge pressure: how far an absolute pressure is above the ambient one. */
export function toGauge(absolute: Quantity<'absolutePressure'>, ambient: Quantity<'absolutePressure'>): Quantity<'gaugePressure'> {
  return (absolute - ambient) as Quantity<'gaugePressure'>;
}

/** First minus second, as the kind that differences of this kind have. */
export function difference(first: Quantity<'absolutePressure'>, second: Quantity<'absolutePressure'>): Quantity<'differentialPressure'>;
export function difference(first: Quantity<'gaugePressure'>, second: Quantity<'gaugePressure'>): Quantity<'differentialPressure'>;
export function difference(first: Quantity<'temperature'>, second: Quantity<'temperature'>): Quantity<'temperatureDifference'>;
export function difference(first: number, second: number): number {
  return first - second;
}

/** Order of two quantities of one kind: -1, 0 or 1. */
export function compare<K extends KindName>(first: Quantity<K>, second: Quantity<NoInfer<K>>): -1 | 0 | 1 {
  return first < second ? -1 : first > second ? 1 : 0;
}
