import { deflateSync } from 'node:zlib';

export interface WrittenChannel {
  readonly name: string;
  readonly unit?: string;
  /** cn_type and cn_sync_type; 2 and 1 for the time. */
  readonly type?: number;
  readonly sync?: number;
  readonly dataType: number;
  readonly bits: number;
  readonly bit?: number;
  readonly byte: number;
  /** Type of the conversion and its numbers. */
  readonly conversion?: readonly [type: number, ...values: readonly number[]];
  readonly flags?: number;
  readonly invalidBit?: number;
}

export interface WrittenGroup {
  readonly channels: readonly WrittenChannel[];
  readonly records: Uint8Array;
  readonly dataBytes: number;
  readonly invalidBytes?: number;
  readonly cycles: number;
  /** How the records are stored. */
  readonly store?: 'plain' | 'compressed' | 'transposed' | 'list';
  readonly recordIds?: number;
}

/** Writes measurement files for tests, after the block tables of ASAM MDF 4.1; nothing of it is shared with the reader. */
export function writeMdf4(groups: readonly WrittenGroup[], version = '4.10    '): Uint8Array {
  let bytes = new Uint8Array(64);
  const ascii = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  const append = (part: Uint8Array): number => {
    const at = bytes.length;
    const padded = new Uint8Array(at + Math.ceil(part.length / 8) * 8);
    padded.set(bytes);
    padded.set(part, at);
    bytes = padded;
    return at;
  };
  const block = (kind: string, links: readonly number[], data: Uint8Array): number => {
    const part = new Uint8Array(24 + 8 * links.length + data.length);
    const view = new DataView(part.buffer);
    part.set(ascii(kind));
    view.setBigUint64(8, BigInt(part.length), true);
    view.setBigUint64(16, BigInt(links.length), true);
    links.forEach((link, index) => {
      view.setBigUint64(24 + 8 * index, BigInt(link), true);
    });
    part.set(data, 24 + 8 * links.length);
    return append(part);
  };
  const fill = (length: number, set: (view: DataView) => void) => {
    const data = new Uint8Array(length);
    set(new DataView(data.buffer));
    return data;
  };
  const text = (value: string) => block('##TX', [], new Uint8Array([...new TextEncoder().encode(value), 0]));
  const packed = (records: Uint8Array, kind: number, columns: number) => {
    const rows = Math.floor(records.length / columns);
    const turned =
      kind === 0
        ? records
        : records.map((_, index) =>
            index < rows * columns ? records[(index % rows) * columns + Math.floor(index / rows)]! : records[index]!,
          );
    const zip = deflateSync(turned);
    const head = fill(24, (view) => {
      view.setUint8(0, 'D'.charCodeAt(0));
      view.setUint8(1, 'T'.charCodeAt(0));
      view.setUint8(2, kind);
      view.setUint32(4, kind === 0 ? 0 : columns, true);
      view.setBigUint64(8, BigInt(records.length), true);
      view.setBigUint64(16, BigInt(zip.length), true);
    });
    return block('##DZ', [], new Uint8Array([...head, ...zip]));
  };
  const store = ({ records, store: how = 'plain', dataBytes, invalidBytes = 0 }: WrittenGroup): number => {
    const length = dataBytes + invalidBytes;
    if (how === 'plain') return block('##DT', [], records);
    if (how === 'compressed') return packed(records, 0, length);
    if (how === 'transposed') return packed(records, 1, length);
    // A list of lists: the cut does not mind the records.
    const cut = Math.floor(records.length / 3) + 1;
    const parts = [
      block('##DT', [], records.slice(0, cut)),
      packed(records.slice(cut, 2 * cut), 0, length),
      block('##DT', [], records.slice(2 * cut)),
    ];
    const second = block('##DL', [0, parts[2]!], new Uint8Array(16));
    return block('##HL', [block('##DL', [second, parts[0]!, parts[1]!], new Uint8Array(24))], new Uint8Array(8));
  };
  const header = append(new Uint8Array(24 + 6 * 8 + 32));
  let next = 0;
  for (const group of [...groups].reverse()) {
    let channel = 0;
    for (const written of [...group.channels].reverse()) {
      const [kind, ...values] = written.conversion ?? [0];
      const conversion =
        written.conversion === undefined
          ? 0
          : block(
              '##CC',
              [0, 0, 0, 0],
              fill(24 + 8 * values.length, (view) => {
                view.setUint8(0, kind);
                view.setUint16(6, values.length, true);
                values.forEach((value, index) => {
                  view.setFloat64(24 + 8 * index, value, true);
                });
              }),
            );
      const data = fill(72, (view) => {
        view.setUint8(0, written.type ?? 0);
        view.setUint8(1, written.sync ?? 0);
        view.setUint8(2, written.dataType);
        view.setUint8(3, written.bit ?? 0);
        view.setUint32(4, written.byte, true);
        view.setUint32(8, written.bits, true);
        view.setUint32(12, written.flags ?? 0, true);
        view.setUint32(16, written.invalidBit ?? 0, true);
      });
      channel = block(
        '##CN',
        [channel, 0, text(written.name), 0, conversion, 0, written.unit === undefined ? 0 : text(written.unit), 0],
        data,
      );
    }
    const cg = block(
      '##CG',
      [0, channel, 0, 0, 0, 0],
      fill(32, (view) => {
        view.setBigUint64(8, BigInt(group.cycles), true);
        view.setUint32(24, group.dataBytes, true);
        view.setUint32(28, group.invalidBytes ?? 0, true);
      }),
    );
    next = block(
      '##DG',
      [next, cg, store(group), 0],
      fill(8, (view) => view.setUint8(0, group.recordIds ?? 0)),
    );
  }
  const view = new DataView(bytes.buffer);
  bytes.set(ascii(`MDF     ${version}`));
  view.setUint16(28, 410, true);
  bytes.set(ascii('##HD'), header);
  view.setBigUint64(header + 8, BigInt(24 + 6 * 8 + 32), true);
  view.setBigUint64(header + 16, 6n, true);
  view.setBigUint64(header + 24, BigInt(next), true);
  return bytes;
}
