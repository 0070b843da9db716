import type { ChannelName } from '../channels/channels.js';

/** How a raw number of a bus or of a diagnostic answer becomes a value: `raw · step + offset`. */
export interface RawScale {
  /** Bits of the raw number. */
  readonly bits: number;
  readonly signed?: true;
  readonly step: number;
  readonly offset: number;
  /** Unit of the value, by its id. */
  readonly unit: string;
  readonly channel?: ChannelName;
  /** Greatest raw number that is a value; above lie codes. Absent where the standard reserves none. */
  readonly most?: number;
  readonly source: string;
  readonly mark: 'read' | 'from memory';
}

/** What a raw number says. */
export type RawReading =
  | { readonly value: number; readonly unit: string }
  | { readonly none: 'not available' | 'error' | 'reserved' | 'outside' };

/**
 * A raw number as a value. Codes above the greatest value are those of SAE J1939-71: all ones (FF…) not available, FE… an error, FB… to
 * FD… reserved (from memory).
 */
export function readRaw(raw: number, scale: RawScale): RawReading {
  const { bits, signed, step, offset, unit, most } = scale;
  const top = 2 ** bits;
  if (!Number.isInteger(raw) || raw < 0 || raw >= top) return { none: 'outside' };
  if (most !== undefined && raw > most) {
    const first = Math.floor(raw / 2 ** (bits - 8));
    return { none: first === 0xff ? 'not available' : first === 0xfe ? 'error' : 'reserved' };
  }
  const number = signed === true && raw >= top / 2 ? raw - top : raw;
  // Digits beyond twelve are rounding of the step, not of the signal.
  return { value: Number((number * step + offset).toPrecision(12)), unit };
}
