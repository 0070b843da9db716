import { type CellProblem, type DecimalSign, readCellNumber } from './number.js';

/** What a column is to the scanner: passed over, a number, or text that somebody else reads. */
export type FieldUse = 'skip' | 'number' | 'text';

/** One row as the scanner hands it over. The arrays are used again for the next row. */
export interface ScannedRow {
  /** The line of the file on which it begins. */
  line: number;
  /** How many cells it has. */
  cells: number;
  /** Cells with text beyond the width of the table. */
  beyond: number;
  /** Whether all cells are blank. */
  blank: boolean;
  /** Whether it was the last of the file and had no line end. */
  unfinished: boolean;
  /** Numbers by slot; NaN where there is none. */
  readonly numbers: Float64Array;
  /** Why there is none although something stood there, by slot. */
  readonly problems: (CellProblem | undefined)[];
  /** Text by slot. */
  readonly texts: string[];
  /** Bytes of the row, for those that look at it as a whole. */
  from: number;
  to: number;
  bytes: Uint8Array;
}

/** What a column's cells have shown of its decimal sign. */
export interface SignCounts {
  points: number;
  commas: number;
  /** `1.206`, which may be a thousand. */
  doubtfulPoints: number;
  doubtfulCommas: number;
}

const LF = 10;
const CR = 13;
const QUOTE = 34;
const SPACE = 32;
const COMMA = 44;
const MINUS = 45;
const POINT = 46;

/** Powers of ten that a double holds exactly: a number of up to 15 digits over one of them is rounded once, as `Number` does. */
const powersOfTen = Float64Array.from({ length: 16 }, (_, exponent) => Number(`1e${exponent}`));
/** A row longer than this is not one. */
const longestRow = 8_388_608;
const longestCell = 4096;
/** A quoted cell longer than this is a stray quotation mark. */
const longestQuoted = 65_536;
const notYet = -2;

/** Options of a {@link RowScanner}. */
export interface ScannerOptions {
  /** The byte that parts cells. */
  readonly separator: number;
  /** What each column is. */
  readonly uses: readonly FieldUse[];
  /** The decimal sign, where an answer settled it. */
  readonly decimal?: DecimalSign;
  /** What may stand behind a number in a cell of a column, by column: its own unit. */
  readonly accepts?: (slot: number, rest: string) => boolean;
  /** Whether a text behind a number is a unit at all. */
  readonly isUnit?: (rest: string) => boolean;
  /** The line on which the first row begins. */
  readonly firstLine: number;
}

/**
 * Cuts bytes of UTF-8 into rows and reads the numbers where they stand, without making text of them: text is made only of
 * cells that are not plain digits. Memory is one part of the file and the row that its end cuts through.
 */
export class RowScanner {
  readonly #separator: number;
  readonly #slots: Int32Array;
  readonly #isText: Uint8Array;
  readonly #accepts: (slot: number, rest: string) => boolean;
  readonly #isUnit: (rest: string) => boolean;
  readonly #known: DecimalSign;
  readonly #row: ScannedRow;
  readonly #onRow: (row: ScannedRow) => void;
  readonly #decoder = new TextDecoder();
  readonly #doubtfulMatters: boolean;
  #line: number;
  #rest: Uint8Array | undefined;
  #skipLine = false;
  #ending = false;
  /** Numbers by slot: what the decimal signs looked like. */
  readonly signs: SignCounts[];
  /** Rows that were longer than anything sensible. */
  overlong = 0;
  /** Line of the first of them. */
  overlongLine = 0;
  /** Line of the first quotation mark without a partner. */
  unmatchedQuote: number | undefined;

  constructor(options: ScannerOptions, onRow: (row: ScannedRow) => void) {
    this.#separator = options.separator;
    this.#known = options.decimal;
    this.#doubtfulMatters = options.decimal === undefined;
    this.#accepts = options.accepts ?? (() => false);
    this.#isUnit = options.isUnit ?? (() => false);
    this.#line = options.firstLine;
    this.#onRow = onRow;
    this.#slots = new Int32Array(options.uses.length).fill(-1);
    const used = options.uses.filter((use) => use !== 'skip').length;
    this.#isText = new Uint8Array(used);
    let slot = 0;
    options.uses.forEach((use, index) => {
      if (use === 'skip') return;
      this.#slots[index] = slot;
      this.#isText[slot] = use === 'text' ? 1 : 0;
      slot += 1;
    });
    this.signs = Array.from({ length: used }, () => ({ points: 0, commas: 0, doubtfulPoints: 0, doubtfulCommas: 0 }));
    this.#row = {
      line: 0,
      cells: 0,
      beyond: 0,
      blank: true,
      unfinished: false,
      numbers: new Float64Array(used),
      problems: new Array(used).fill(undefined),
      texts: new Array(used).fill(''),
      from: 0,
      to: 0,
      bytes: new Uint8Array(0),
    };
  }

  /** Read the next part of the file. */
  push(part: Uint8Array): void {
    const bytes = this.#joined(part);
    const used = this.#scan(bytes, false);
    this.#rest = used < bytes.length ? bytes.slice(used) : undefined;
    if (this.#rest !== undefined && this.#rest.length > longestRow) this.#giveUpRow();
  }

  /** Read what is left when the file has ended. */
  end(): void {
    const bytes = this.#joined(new Uint8Array(0));
    this.#ending = true;
    this.#scan(bytes, true);
    this.#rest = undefined;
  }

  #joined(part: Uint8Array): Uint8Array {
    if (this.#rest === undefined) return part;
    const bytes = new Uint8Array(this.#rest.length + part.length);
    bytes.set(this.#rest);
    bytes.set(part, this.#rest.length);
    return bytes;
  }

  /** Drop a row that never ends, up to its line end. */
  #giveUpRow(): void {
    if (this.overlong === 0) this.overlongLine = this.#line;
    this.overlong += 1;
    this.#skipLine = true;
    this.#rest = undefined;
  }

  /** Read whole rows; how many bytes they took. With `last`, also a row without a line end. */
  #scan(bytes: Uint8Array, last: boolean): number {
    const length = bytes.length;
    const separator = this.#separator;
    const slots = this.#slots;
    const width = slots.length;
    const row = this.#row;
    const { numbers, problems, texts } = row;
    row.bytes = bytes;
    let at = 0;
    if (this.#skipLine) {
      const lineEnd = bytes.indexOf(LF);
      if (lineEnd < 0) return length;
      at = lineEnd + 1;
      this.#skipLine = false;
      this.#line += 1;
    }
    for (;;) {
      const start = at;
      if (start >= length) return start;
      let column = 0;
      let lines = 0;
      row.beyond = 0;
      row.blank = true;
      numbers.fill(Number.NaN);
      let ended = false;
      let lineEnd = 0;
      while (!ended) {
        const slot = column < width ? (slots[column] as number) : -1;
        const begun = at;
        let byte = at < length ? (bytes[at] as number) : -1;
        let done = false;
        if (slot >= 0) {
          problems[slot] = undefined;
          if (this.#isText[slot] === 0) {
            // The fast path: digits, a decimal sign, digits, and then the end of the cell.
            let p = at;
            let negative = false;
            if (byte === MINUS) {
              negative = true;
              p += 1;
            }
            let mantissa = 0;
            const digitsFrom = p;
            let digit = p < length ? (bytes[p] as number) - 48 : -1;
            const first = digit;
            while (digit >= 0 && digit <= 9) {
              mantissa = mantissa * 10 + digit;
              p += 1;
              digit = p < length ? (bytes[p] as number) - 48 : -1;
            }
            const whole = p - digitsFrom;
            let fraction = 0;
            const sign = digit + 48;
            if (whole > 0 && (sign === POINT || (sign === COMMA && separator !== COMMA))) {
              p += 1;
              const fractionFrom = p;
              digit = p < length ? (bytes[p] as number) - 48 : -1;
              while (digit >= 0 && digit <= 9) {
                mantissa = mantissa * 10 + digit;
                p += 1;
                digit = p < length ? (bytes[p] as number) - 48 : -1;
              }
              fraction = p - fractionFrom;
            }
            const end = p < length ? (bytes[p] as number) : -1;
            const closed = end === separator || end === LF || end === CR;
            if (closed && whole > 0 && whole + fraction <= 15 && (p === digitsFrom + whole || fraction > 0)) {
              if (fraction > 0) {
                if (this.#doubtfulMatters) {
                  const doubtful = fraction === 3 && whole <= 3 && first !== 0;
                  const signs = this.signs[slot] as SignCounts;
                  if (sign === POINT) {
                    if (doubtful) signs.doubtfulPoints += 1;
                    else signs.points += 1;
                  } else if (doubtful) signs.doubtfulCommas += 1;
                  else signs.commas += 1;
                  numbers[slot] = (negative ? -mantissa : mantissa) / (powersOfTen[fraction] as number) + 0;
                  done = true;
                } else if ((sign === POINT) === (this.#known === '.')) {
                  numbers[slot] = (negative ? -mantissa : mantissa) / (powersOfTen[fraction] as number) + 0;
                  done = true;
                }
              } else {
                numbers[slot] = negative && mantissa !== 0 ? -mantissa : mantissa;
                done = true;
              }
              if (done) {
                at = p;
                row.blank = false;
              }
            }
          }
        }
        if (!done) {
          // Find the end of the cell, then see what it is.
          while (byte === SPACE) {
            at += 1;
            byte = at < length ? (bytes[at] as number) : -1;
          }
          let quoted = false;
          let contentFrom = at;
          let contentTo = at;
          if (byte === QUOTE) {
            const close = this.#closingQuote(bytes, at + 1);
            // Perhaps the next part brings the partner, or what follows it.
            if (close === notYet && !last) return start;
            if (close < 0) this.unmatchedQuote ??= this.#line;
            else {
              quoted = true;
              contentFrom = at + 1;
              contentTo = close;
              for (let i = at + 1; i < close; i += 1) {
                const inside = bytes[i];
                if (inside === LF || (inside === CR && bytes[i + 1] !== LF)) lines += 1;
              }
              at = close + 1;
              byte = at < length ? (bytes[at] as number) : -1;
            }
          }
          while (byte !== separator && byte !== LF && byte !== CR && byte !== -1) {
            at += 1;
            byte = at < length ? (bytes[at] as number) : -1;
          }
          if (!quoted) {
            contentFrom = begun;
            contentTo = at;
          }
          if (byte === -1 && !last) return start;
          let filled = contentTo > contentFrom;
          if (filled && !quoted) {
            filled = false;
            for (let i = contentFrom; i < contentTo; i += 1) {
              const sign = bytes[i] as number;
              if (sign !== SPACE && sign !== 9) {
                filled = true;
                break;
              }
            }
          }
          if (filled) row.blank = false;
          if (slot >= 0) {
            if (this.#isText[slot] === 1) texts[slot] = filled ? this.#text(bytes, contentFrom, contentTo, quoted) : '';
            else if (filled) this.#slowNumber(slot, this.#text(bytes, contentFrom, contentTo, quoted));
          } else if (column >= width && filled) row.beyond += 1;
        }
        // What ends the cell?
        byte = at < length ? (bytes[at] as number) : -1;
        column += 1;
        if (byte === separator) at += 1;
        else {
          ended = true;
          if (byte === -1) {
            if (!last) return start;
            lineEnd = at;
          } else {
            lineEnd = at;
            if (byte === CR) {
              // Whether a line feed follows may stand in the next part.
              if (at + 1 >= length && !last) return start;
              at += bytes[at + 1] === LF ? 2 : 1;
            } else at += 1;
          }
          row.unfinished = byte === -1;
        }
      }
      // Slots that the row is too short for.
      if (column < width) {
        for (let rest = column; rest < width; rest += 1) {
          const slot = slots[rest] as number;
          if (slot >= 0) {
            problems[slot] = undefined;
            texts[slot] = '';
          }
        }
      }
      row.line = this.#line;
      row.cells = column;
      row.from = start;
      row.to = lineEnd;
      this.#line += 1 + lines;
      this.#onRow(row);
    }
  }

  /**
   * The partner of a quotation mark, `notYet` where the part ends first, -1 where it has none: what lies between is too long
   * for a cell, or no separator follows, as when a stray mark meets the next quoted cell.
   */
  #closingQuote(bytes: Uint8Array, from: number): number {
    let at = from;
    for (;;) {
      const close = bytes.indexOf(QUOTE, at);
      if ((close < 0 ? bytes.length : close) - from > longestQuoted) return -1;
      if (close < 0) return notYet;
      let next = close + 1;
      if (bytes[next] === QUOTE) {
        at = close + 2;
        continue;
      }
      while (bytes[next] === SPACE) next += 1;
      if (next >= bytes.length) return this.#ending ? close : notYet;
      const byte = bytes[next];
      return byte === this.#separator || byte === LF || byte === CR ? close : -1;
    }
  }

  #text(bytes: Uint8Array, from: number, to: number, quoted: boolean): string {
    const end = Math.min(to, from + longestCell);
    const text = this.#decoder.decode(bytes.subarray(from, end));
    return quoted ? text.replace(/""/g, '"') : text.trim();
  }

  #slowNumber(slot: number, text: string): void {
    const { numbers, problems } = this.#row;
    const read = readCellNumber(text, this.#known);
    if (read === undefined) return;
    if (typeof read === 'string') {
      problems[slot] = read;
      return;
    }
    if (read.rest !== '' && !this.#accepts(slot, read.rest)) {
      problems[slot] = this.#isUnit(read.rest) ? 'unit-in-cell' : 'not-a-number';
      return;
    }
    const signs = this.signs[slot] as SignCounts;
    if (read.decimal === '.') signs.points += 1;
    else if (read.decimal === ',') signs.commas += 1;
    if (read.doubtful === '.') signs.doubtfulPoints += 1;
    else if (read.doubtful === ',') signs.doubtfulCommas += 1;
    numbers[slot] = read.value;
  }
}
