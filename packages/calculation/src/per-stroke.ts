/** Control units show air and fuel for one stroke of one cylinder: no flow without engine speed and cylinders. */
const stroke = /(?:\/|\bper\b)\s*(?:strokes?|str|stk|st|hub|cyl(?:inders?)?)\.?$/i;

/** What turns an amount per stroke into a flow; undefined for any other unit. */
export function perStrokeText(unit: string): string | undefined {
  if (!stroke.test(unit.trim())) return undefined;
  const formula = /^\s*mg\b/.test(unit) ? ' For four-stroke engines mg × cylinders × rpm × 0.00003 gives kg/h.' : '';
  return `counts one stroke of one cylinder: multiply it by the number of cylinders, and by half the engine speed of a four-stroke engine.${formula}`;
}
