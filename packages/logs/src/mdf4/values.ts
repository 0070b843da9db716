/** How a channel lies in a record. */
export interface FieldLayout {
  /** 0 unsigned, 1 unsigned big-endian, 2 signed, 3 signed big-endian, 4 floating, 5 floating big-endian (ASAM MDF 4.1, cn_data_type). */
  readonly type: number;
  readonly byte: number;
  readonly bit: number;
  readonly bits: number;
}

/** Whether a field is a number that can be read: whole floating ones, and integers that a double holds. */
export function isNumeric({ type, bit, bits }: FieldLayout): boolean {
  if (type > 5 || bits < 1) return false;
  return type >= 4 ? bit === 0 && (bits === 16 || bits === 32 || bits === 64) : bits <= 64 && bit + bits <= 72;
}

function half(raw: number): number {
  const sign = raw & 0x8000 ? -1 : 1;
  const exponent = (raw >> 10) & 31;
  const fraction = raw & 1023;
  if (exponent === 0) return sign * fraction * 2 ** -24;
  if (exponent === 31) return fraction === 0 ? sign * Number.POSITIVE_INFINITY : Number.NaN;
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}

/** A reader of one field from records; the position is that of the record's first byte. */
export function fieldReader(bytes: Uint8Array, { type, byte, bit, bits }: FieldLayout): (at: number) => number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const little = type % 2 === 0;
  if (type >= 4) {
    if (bits === 64) return (at) => view.getFloat64(at + byte, little);
    if (bits === 32) return (at) => view.getFloat32(at + byte, little);
    return (at) => half(view.getUint16(at + byte, little));
  }
  const signed = type >= 2;
  if (bit === 0 && bits === 8) return signed ? (at) => view.getInt8(at + byte) : (at) => view.getUint8(at + byte);
  if (bit === 0 && bits === 16) return signed ? (at) => view.getInt16(at + byte, little) : (at) => view.getUint16(at + byte, little);
  if (bit === 0 && bits === 32) return signed ? (at) => view.getInt32(at + byte, little) : (at) => view.getUint32(at + byte, little);
  const length = Math.ceil((bit + bits) / 8);
  const width = BigInt(bits);
  const mask = (1n << width) - 1n;
  return (at) => {
    let raw = 0n;
    for (let i = 0; i < length; i += 1) {
      const part = bytes[at + byte + (little ? length - 1 - i : i)] as number;
      raw = (raw << 8n) | BigInt(part);
    }
    raw = (raw >> BigInt(bit)) & mask;
    return Number(signed && raw >> (width - 1n) === 1n ? raw - (1n << width) : raw);
  };
}
