import { type BlockFile, Mdf4Error } from './blocks.js';

/** A block that unpacks to more than this is a bomb, not a measurement. */
const mostUnpacked = 2_000_000_000;

async function inflate(packed: Uint8Array, expected: number): Promise<Uint8Array> {
  if (expected > mostUnpacked) throw new Mdf4Error('not_supported', `a block of ${expected} bytes is too large`);
  const result = new Uint8Array(expected);
  let filled = 0;
  try {
    const stream = new Blob([packed as Uint8Array<ArrayBuffer>]).stream().pipeThrough(new DecompressionStream('deflate'));
    const reader = stream.getReader();
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      if (filled + value.length > expected) throw new Mdf4Error('damaged', 'a compressed block unpacks to more than it says');
      result.set(value, filled);
      filled += value.length;
    }
  } catch (error) {
    if (error instanceof Mdf4Error) throw error;
    throw new Mdf4Error('damaged', 'a compressed block cannot be unpacked');
  }
  if (filled !== expected) throw new Mdf4Error('damaged', 'a compressed block unpacks to less than it says');
  return result;
}

/** Undo the transposition that makes columns compress well: the bytes lie column by column, what is over at the end stays. */
function transposeBack(bytes: Uint8Array, columns: number): Uint8Array {
  const rows = columns > 0 ? Math.floor(bytes.length / columns) : 0;
  const result = bytes.slice();
  for (let column = 0; column < columns; column += 1) {
    for (let row = 0; row < rows; row += 1) result[row * columns + column] = bytes[column * rows + row] as number;
  }
  return result;
}

/** All bytes of the records of a data group, put together from plain and compressed blocks and lists of them. */
export async function recordBytes(file: BlockFile, at: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let total = 0;
  const add = (part: Uint8Array) => {
    parts.push(part);
    total += part.length;
    if (total > mostUnpacked) throw new Mdf4Error('not_supported', 'the records of a group are too many to be held');
  };
  const visit = async (address: number, lists: Set<number>): Promise<void> => {
    if (address === 0) return;
    const kind = file.ascii(address, 4);
    if (kind === '##DV' || kind === '##LD' || kind === '##RD') throw new Mdf4Error('not_supported', 'its values are stored by columns');
    const block = file.block(address, '##DT', '##DZ', '##DL', '##HL');
    if (block.kind === '##DT') add(file.bytes.subarray(block.from, block.to));
    else if (block.kind === '##DZ') {
      const zip = file.view.getUint8(block.from + 2);
      const columns = file.view.getUint32(block.from + 4, true);
      const expected = file.number64(block.from + 8);
      const packed = file.number64(block.from + 16);
      const start = block.from + 24;
      if (start + packed > block.to || zip > 1) throw new Mdf4Error('damaged', `the compressed block at ${address} is not whole`);
      const bytes = await inflate(file.bytes.subarray(start, start + packed), expected);
      add(zip === 1 ? transposeBack(bytes, columns) : bytes);
    } else if (block.kind === '##HL') await visit(block.links[0] ?? 0, lists);
    else {
      for (let list = address; list !== 0; ) {
        if (lists.has(list)) throw new Mdf4Error('damaged', `a list of data comes back to ${list}`);
        lists.add(list);
        const { links } = file.block(list, '##DL');
        for (const link of links.slice(1)) await visit(link, lists);
        list = links[0] ?? 0;
      }
    }
  };
  await visit(at, new Set());
  if (parts.length === 1) return parts[0] as Uint8Array;
  const whole = new Uint8Array(total);
  let filled = 0;
  for (const part of parts) {
    whole.set(part, filled);
    filled += part.length;
  }
  return whole;
}
