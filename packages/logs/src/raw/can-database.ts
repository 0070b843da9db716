/** One signal of a CAN database file. */
export interface CanSignal {
  readonly name: string;
  /** First bit and length as the file counts them. */
  readonly start: number;
  readonly length: number;
  readonly bigEndian: boolean;
  readonly signed: boolean;
  readonly factor: number;
  readonly offset: number;
  readonly unit: string;
  /** Number of the signal in SAE J1939, where the file gives it. */
  readonly spn?: number;
}

/** One message of a CAN database file. */
export interface CanMessage {
  readonly name: string;
  /** Without the bit that marks a long identifier. */
  readonly id: number;
  readonly extended: boolean;
  /** Parameter group of SAE J1939, for a long identifier. */
  readonly group?: number;
  readonly signals: readonly CanSignal[];
}

/** A database file, with the lines that were not understood. */
export interface CanDatabase {
  readonly messages: readonly CanMessage[];
  readonly notUnderstood: readonly number[];
}

/** A signal that is found in a frame. */
export interface CanValue {
  readonly signal: CanSignal;
  /** NaN for what SAE J1939 reserves: not available, an error. */
  readonly value: number;
}

/**
 * The parameter group of a long identifier (SAE J1939-21, from memory): data page, format and, from format 240 on, the group
 * extension; below that the second byte is an address and no part of it.
 */
export function parameterGroup(id: number): number {
  const format = (id >>> 16) & 0xff;
  const group = (id >>> 8) & 0x3ff00;
  return format >= 240 ? group | ((id >>> 8) & 0xff) : group;
}

const message = /^BO_\s+(\d+)\s+(\w+)\s*:\s*(\d+)\s+\S+\s*$/;
const signal = /^SG_\s+(\w+)\s*(?:M|m\d+M?)?\s*:\s*(\d+)\|(\d+)@([01])([+-])\s*\(\s*([^,]+?)\s*,\s*([^)]+?)\s*\)\s*\[[^\]]*\]\s*"([^"]*)"/;
const spn = /^BA_\s+"SPN"\s+SG_\s+(\d+)\s+(\w+)\s+(\d+)\s*;/;
const otherWords =
  /^(?:VERSION|NS_|BS_|BU_|BA_|BA_DEF_|BA_DEF_DEF_|CM_|VAL_|VAL_TABLE_|EV_|BO_TX_BU_|SIG_GROUP_|SIG_VALTYPE_|SG_MUL_VAL_|[A-Z_]+\s*$|"|$)/;

/** Read the messages and signals of a CAN database file: what is needed to read values, and no more. Never throws. */
export function readCanDatabase(text: string): CanDatabase {
  const messages: {
    name: string;
    id: number;
    extended: boolean;
    group?: number;
    signals: { -readonly [K in keyof CanSignal]: CanSignal[K] }[];
  }[] = [];
  const notUnderstood: number[] = [];
  const byId = new Map<number, (typeof messages)[number]>();
  text.split(/\r\n|\r|\n/).forEach((raw, index) => {
    const line = raw.trim();
    if (line.startsWith('BO_ ')) {
      const found = message.exec(line);
      if (found === null) {
        notUnderstood.push(index + 1);
        return;
      }
      // Bit 31 marks a long identifier; it is no part of it.
      const given = Number(found[1]);
      const extended = given >= 2 ** 31;
      const id = extended ? given - 2 ** 31 : given;
      const entry = { name: found[2] ?? '', id, extended, ...(extended ? { group: parameterGroup(id) } : {}), signals: [] };
      messages.push(entry);
      byId.set(given, entry);
    } else if (line.startsWith('SG_ ')) {
      const found = signal.exec(line);
      const owner = messages.at(-1);
      const [, name = '', start, length, order, sign, factor, offset, unit = ''] = found ?? [];
      const numbers = [start, length, factor, offset].map(Number);
      if (found === null || owner === undefined || !numbers.every(Number.isFinite) || Number(length) < 1 || Number(length) > 64) {
        notUnderstood.push(index + 1);
        return;
      }
      const [at = 0, bits = 0, scale = 1, shift = 0] = numbers;
      owner.signals.push({
        name,
        start: at,
        length: bits,
        bigEndian: order === '0',
        signed: sign === '-',
        factor: scale,
        offset: shift,
        unit,
      });
    } else {
      const number = spn.exec(line);
      const named = number === null ? undefined : byId.get(Number(number[1]))?.signals.find(({ name }) => name === number[2]);
      if (named !== undefined) named.spn = Number(number?.[3]);
      else if (number === null && !otherWords.test(line) && /^[A-Z]{2}_/.test(line)) notUnderstood.push(index + 1);
    }
  });
  return { messages, notUnderstood };
}

/** The raw bits of a signal; undefined where the frame is too short. */
function rawBits({ start, length, bigEndian }: CanSignal, bytes: Uint8Array): bigint | undefined {
  let raw = 0n;
  for (let i = 0; i < length; i += 1) {
    // Little-endian: bits upwards from the first. Big-endian: from the greatest bit downwards, through the bytes in their order.
    const bit = bigEndian ? 8 * (start >> 3) + (7 - (start & 7)) + i : start + i;
    const byte = bytes[bit >> 3];
    if (byte === undefined) return undefined;
    const value = BigInt((byte >> (bigEndian ? 7 - (bit & 7) : bit & 7)) & 1);
    raw |= value << BigInt(bigEndian ? length - 1 - i : i);
  }
  return raw;
}

/** Whether a raw number of a whole number of bytes is one that SAE J1939 reserves: FB… and above. */
function isReserved(raw: bigint, length: number): boolean {
  return length >= 8 && length % 8 === 0 && raw >> BigInt(length - 8) > 0xfan;
}

/**
 * The values of a frame. A long identifier finds its message by the parameter group, whatever its priority and sender are; its
 * reserved codes are no values.
 */
export function readFrame(database: CanDatabase, id: number, extended: boolean, bytes: Uint8Array): readonly CanValue[] | undefined {
  const group = extended ? parameterGroup(id) : undefined;
  const found =
    database.messages.find((known) => known.extended === extended && known.id === id) ??
    (extended ? database.messages.find((known) => known.group === group) : undefined);
  return found?.signals.flatMap((one) => {
    const raw = rawBits(one, bytes);
    if (raw === undefined) return [];
    if (extended && isReserved(raw, one.length)) return [{ signal: one, value: Number.NaN }];
    const negative = one.signed && raw >> BigInt(one.length - 1) === 1n;
    const number = Number(negative ? raw - (1n << BigInt(one.length)) : raw);
    return [{ signal: one, value: number * one.factor + one.offset }];
  });
}
