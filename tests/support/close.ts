import type { OutputField, Outputs } from '@wallflow/calculation';

type Values = Readonly<Record<string, unknown>>;
type Scale = (field: Extract<OutputField, { type: 'quantity' }>) => number;

/** Keys of outputs that differ by more than the given relative difference, after scaling the first. */
export function differing(fields: Outputs, first: Values, second: Values, relative: number, scale: Scale = () => 1): string[] {
  return Object.entries(fields).flatMap(([key, field]) => {
    const a = first[key];
    const b = second[key];
    if (a === undefined || b === undefined) return a === b ? [] : [key];
    if (field.type === 'quantity') {
      const scaled = (a as number) * scale(field);
      const size = Math.max(Math.abs(scaled), Math.abs(b as number));
      // A difference of two nearly equal numbers keeps the rounding of those numbers.
      return Math.abs(scaled - (b as number)) <= relative * size + 1e-13 * Math.abs(scale(field)) ? [] : [key];
    }
    if (field.type === 'table') {
      const rowsA = a as Values[];
      const rowsB = b as Values[];
      if (rowsA.length !== rowsB.length) return [key];
      const bad = rowsA.some((row, index) => differing(field.columns, row, rowsB[index] ?? {}, relative, scale).length > 0);
      return bad ? [key] : [];
    }
    return a === b ? [] : [key];
  });
}
