import { readGroups, type SignalGroup } from '../read/from-groups.js';
import type { LogOptions } from '../read/reader.js';
import type { LogReading } from '../read/reading.js';
import { type Block, BlockFile, Mdf4Error } from './blocks.js';
import { type Conversion, conversionOf } from './conversion.js';
import { recordBytes } from './data.js';
import { type FieldLayout, fieldReader, isNumeric } from './values.js';

/** One signal of a measurement file. */
export interface Mdf4Channel {
  readonly name: string;
  /** As the file spells it; empty where it says none. */
  readonly unit: string;
  /** Physical values; NaN where the file marks one as invalid. */
  readonly values: Float64Array;
}

/** Signals that were sampled together. */
export interface Mdf4Group {
  readonly name: string;
  /** Seconds since the start of the measurement; undefined for a group without a clock. */
  readonly time: Float64Array | undefined;
  readonly channels: readonly Mdf4Channel[];
  /** Signals that are no plain numbers, and why. */
  readonly passedOver: readonly { readonly name: string; readonly why: 'no number' | 'a table or text' | 'in an array' }[];
}

/** What a measurement file holds. */
export interface Mdf4File {
  /** As in the file: `4.10`. */
  readonly version: string;
  readonly groups: readonly Mdf4Group[];
}

/** Types of a channel (cn_type). */
const fixedLength = 0;
const master = 2;
const virtualMaster = 3;
const synchronised = 4;

interface Field {
  readonly name: string;
  readonly unit: string;
  readonly type: number;
  readonly sync: number;
  readonly layout: FieldLayout;
  readonly convert: Conversion | undefined;
  readonly compound: boolean;
  /** All of its values are invalid. */
  readonly invalid: boolean;
  /** Place of its bit among the bits that mark invalid values. */
  readonly invalidBit: number | undefined;
}

function fieldOf(file: BlockFile, { links, from }: Block): Field {
  const { view } = file;
  const { convert, unit } = conversionOf(file, links[4] ?? 0);
  const flags = view.getUint32(from + 12, true);
  return {
    name: file.text(links[2] ?? 0),
    unit: file.text(links[6] ?? 0) || unit,
    type: view.getUint8(from),
    sync: view.getUint8(from + 1),
    layout: {
      type: view.getUint8(from + 2),
      bit: view.getUint8(from + 3),
      byte: view.getUint32(from + 4, true),
      bits: view.getUint32(from + 8, true),
    },
    convert,
    compound: (links[1] ?? 0) !== 0,
    invalid: (flags & 1) !== 0,
    invalidBit: (flags & 2) === 0 ? undefined : view.getUint32(from + 16, true),
  };
}

async function groupsOf(file: BlockFile, { links, from }: Block): Promise<Mdf4Group[]> {
  const chain = file.chain(links[1] ?? 0, '##CG');
  const [first, ...others] = chain;
  if (first === undefined) return [];
  // Records of several kinds in one stream wait for somebody to sort the file.
  if (others.length > 0 || file.view.getUint8(from) !== 0) throw new Mdf4Error('not_supported', 'its records are not sorted by group');
  const cycles = file.number64(first.from + 8);
  const dataBytes = file.view.getUint32(first.from + 24, true);
  const invalidBytes = file.view.getUint32(first.from + 28, true);
  const length = dataBytes + invalidBytes;
  const fields = file.chain(first.links[1] ?? 0, '##CN').map((block) => fieldOf(file, block));
  const bytes = cycles === 0 || length === 0 ? new Uint8Array(0) : await recordBytes(file, links[2] ?? 0);
  const rows = length === 0 ? 0 : Math.min(cycles, Math.floor(bytes.length / length));
  if (rows < cycles && length > 0) throw new Mdf4Error('damaged', `a group has ${rows} of its ${cycles} records`);
  const name = file.text(first.links[2] ?? 0);
  const channels: Mdf4Channel[] = [];
  const passedOver: { name: string; why: Mdf4Group['passedOver'][number]['why'] }[] = [];
  let time: Float64Array | undefined;
  for (const field of fields) {
    const isTime = (field.type === master || field.type === virtualMaster) && field.sync === 1;
    if (field.compound) passedOver.push({ name: field.name, why: 'in an array' });
    else if (field.convert === undefined) passedOver.push({ name: field.name, why: 'a table or text' });
    else if (field.type === virtualMaster) {
      const { convert } = field;
      if (isTime) time = Float64Array.from({ length: cycles }, (_, row) => convert(row));
    } else if ((field.type !== fixedLength && field.type !== master && field.type !== synchronised) || !fits(field.layout, dataBytes)) {
      passedOver.push({ name: field.name, why: 'no number' });
    } else {
      const values = valuesOf(bytes, field, field.convert, rows, length, dataBytes);
      if (isTime) time = values;
      else channels.push({ name: field.name, unit: field.unit, values });
    }
  }
  return [{ name, time, channels, passedOver }];
}

function fits(layout: FieldLayout, dataBytes: number): boolean {
  return isNumeric(layout) && layout.byte + Math.ceil((layout.bit + layout.bits) / 8) <= dataBytes;
}

function valuesOf(bytes: Uint8Array, field: Field, convert: Conversion, rows: number, length: number, dataBytes: number): Float64Array {
  const values = new Float64Array(rows);
  if (field.invalid) return values.fill(Number.NaN);
  const read = fieldReader(bytes, field.layout);
  const { invalidBit } = field;
  for (let row = 0; row < rows; row += 1) {
    const at = row * length;
    const marked = invalidBit !== undefined && ((bytes[at + dataBytes + (invalidBit >> 3)] ?? 0) >> (invalidBit & 7)) & 1;
    values[row] = marked ? Number.NaN : convert(read(at));
  }
  return values;
}

/**
 * Read a measurement file of ASAM MDF 4, read only: groups whose records are sorted, numbers, conversions that are linear or
 * rational, plain and compressed blocks. Rejects with `Mdf4Error` for anything else, saying what it is.
 */
export async function readMdf4(bytes: Uint8Array): Promise<Mdf4File> {
  const file = new BlockFile(bytes);
  const start = bytes.length < 88 ? '' : file.ascii(0, 8);
  if (start === 'UnFinMF ') throw new Mdf4Error('not_finished', 'the recording was not closed; open it once in the program that made it');
  if (start !== 'MDF     ') throw new Mdf4Error('not_mdf4', 'it does not begin as a measurement file does');
  const version = file.ascii(8, 8).replace(/\0/g, ' ').trim();
  if (!version.startsWith('4')) throw new Mdf4Error('not_supported', `its version is ${version.slice(0, 8)}, not 4`);
  const header = file.block(64, '##HD');
  const groups: Mdf4Group[] = [];
  for (const block of file.chain(header.links[0] ?? 0, '##DG')) groups.push(...(await groupsOf(file, block)));
  return { version, groups };
}

/** The signals of a measurement file that were sampled with a clock; rejects as `readMdf4` does. */
export async function mdf4Signals(bytes: Uint8Array): Promise<SignalGroup[]> {
  const { groups } = await readMdf4(bytes);
  return groups.flatMap(({ time, channels }) => (time === undefined ? [] : [{ time, signals: channels }]));
}

/**
 * Understand the signals of a measurement file as those of any log. In `leftOut` a line is the number of the sample. Rejects as
 * `readMdf4` does.
 */
export async function readMdf4Log(bytes: Uint8Array, options: LogOptions = {}): Promise<LogReading> {
  return readGroups(await mdf4Signals(bytes), options);
}
