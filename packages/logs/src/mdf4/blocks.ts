/** Why a measurement file cannot be read. */
export class Mdf4Error extends Error {
  readonly code: 'not_mdf4' | 'not_finished' | 'damaged' | 'not_supported';
  constructor(code: Mdf4Error['code'], message: string) {
    super(message);
    this.name = 'Mdf4Error';
    this.code = code;
  }
}

/** One block of the file: its kind, its links, and where its data lie. */
export interface Block {
  readonly kind: string;
  /** Addresses of other blocks; 0 is none. */
  readonly links: readonly number[];
  readonly from: number;
  readonly to: number;
}

const headerLength = 24;

/** Bytes of a file with its blocks (ASAM MDF 4.1, block header: kind, length, number of links, links, data). Little-endian. */
export class BlockFile {
  readonly bytes: Uint8Array;
  readonly view: DataView;

  constructor(bytes: Uint8Array) {
    this.bytes = bytes;
    this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  /** The block at an address; throws where there is none of the kinds that are expected. */
  block(at: number, ...kinds: readonly string[]): Block {
    if (!(at >= 64 && at + headerLength <= this.bytes.length)) throw new Mdf4Error('damaged', `a link leads to ${at}, outside the file`);
    const kind = this.ascii(at, 4);
    if (!kinds.includes(kind)) throw new Mdf4Error('damaged', `at ${at} lies ${JSON.stringify(kind)}, not ${kinds.join(' or ')}`);
    const length = this.number64(at + 8);
    const count = this.number64(at + 16);
    const from = at + headerLength + 8 * count;
    if (length < headerLength || at + length > this.bytes.length || count > 1e6 || from > at + length) {
      throw new Mdf4Error('damaged', `the block at ${at} does not fit into the file`);
    }
    const links = Array.from({ length: count }, (_, index) => this.number64(at + headerLength + 8 * index));
    return { kind, links, from, to: at + length };
  }

  /** A chain of blocks by their first link; a chain that bites its tail is damaged. */
  chain(first: number, kind: string): Block[] {
    const blocks: Block[] = [];
    const seen = new Set<number>();
    for (let at = first; at !== 0; at = blocks.at(-1)?.links[0] ?? 0) {
      if (seen.has(at)) throw new Mdf4Error('damaged', `the chain of ${kind} comes back to ${at}`);
      seen.add(at);
      blocks.push(this.block(at, kind));
    }
    return blocks;
  }

  /** A text block, or the text of a metadata block; empty for no link. */
  text(at: number): string {
    if (at === 0) return '';
    const { kind, from, to } = this.block(at, '##TX', '##MD');
    const end = this.bytes.indexOf(0, from);
    const text = new TextDecoder().decode(this.bytes.subarray(from, end < 0 || end > to ? to : end)).trim();
    if (kind === '##TX') return text;
    const inner = /<TX[^>]*>([\s\S]*?)<\/TX>/.exec(text)?.[1] ?? '';
    return inner
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&quot;/g, '"')
      .replace(/&apos;/g, "'")
      .replace(/&amp;/g, '&')
      .trim();
  }

  ascii(at: number, length: number): string {
    return String.fromCharCode(...this.bytes.subarray(at, at + length));
  }

  /** An unsigned number of 64 bits; what a double cannot hold is no address and no length. */
  number64(at: number): number {
    const value = this.view.getBigUint64(at, true);
    return value > BigInt(Number.MAX_SAFE_INTEGER) ? Number.MAX_SAFE_INTEGER : Number(value);
  }
}
