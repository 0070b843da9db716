import type { BlockFile } from './blocks.js';

/** From a raw number to the physical one. */
export type Conversion = (raw: number) => number;

/**
 * The conversion of a channel: none, linear or rational. Tables and texts make states of numbers; undefined for them, as what
 * they give is no measured value.
 */
export function conversionOf(file: BlockFile, at: number): { readonly convert: Conversion | undefined; readonly unit: string } {
  if (at === 0) return { convert: (raw) => raw, unit: '' };
  const { from, links } = file.block(at, '##CC');
  const kind = file.view.getUint8(from);
  const count = file.view.getUint16(from + 6, true);
  const value = (index: number) => (index < count ? file.view.getFloat64(from + 24 + 8 * index, true) : Number.NaN);
  const unit = file.text(links[1] ?? 0);
  switch (kind) {
    case 0:
      return { convert: (raw) => raw, unit };
    case 1: {
      const [offset, factor] = [value(0), value(1)];
      return { convert: (raw) => offset + factor * raw, unit };
    }
    case 2: {
      const [a, b, c, d, e, f] = [value(0), value(1), value(2), value(3), value(4), value(5)];
      return { convert: (raw) => ((a * raw + b) * raw + c) / ((d * raw + e) * raw + f), unit };
    }
    default:
      return { convert: undefined, unit };
  }
}
