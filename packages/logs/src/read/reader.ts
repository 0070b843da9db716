import { type ChannelName, channelOf } from '../channels/channels.js';
import { type Batch, Cleaner } from '../clean/cleaner.js';
import { LeftOutCounts, type LeftOutReason } from '../clean/left-out.js';
import { anyUnit } from '../columns/any-unit.js';
import { unitOfText } from '../columns/unit-text.js';
import { columnKeys, type Mapping, mappingFor } from '../mapping/mapping.js';
import { type SteadyRule, usualRule } from '../steady/rule.js';
import { SteadyFinder } from '../steady/windows.js';
import { sniffBytes, transcoder } from '../text/encoding.js';
import type { CellProblem } from '../text/number.js';
import { type FieldUse, RowScanner, type ScannedRow } from '../text/row-scanner.js';
import { ClockColumn } from './clock-column.js';
import { findLayout, type Layout } from './layout.js';
import { LongRows } from './long-rows.js';
import { makePlan, type Plan, type PlannedColumn } from './plan.js';
import type { Question } from './question.js';
import type { LogProblem, LogReading, LogResult } from './reading.js';

/** How a log is read. */
export interface LogOptions {
  /** Answers to what the titles leave open. */
  readonly mapping?: Mapping;
  /** Mappings of other logs; the one that was made for the same titles is used. */
  readonly mappings?: readonly Mapping[];
  /** What counts as steady. */
  readonly rule?: SteadyRule;
  /** Channels whose values stay although they stand still while the engine speed changes; they are counted all the same. */
  readonly keepStill?: readonly ChannelName[];
  /** Takes the cleaned rows as they come by, a few thousand at a time. */
  readonly onBatch?: (batch: Batch) => void;
}

/** So much of a file is looked at before its columns are settled. */
const headBytes = 262_144;

const cellReasons: Readonly<Record<CellProblem, LeftOutReason>> = {
  'not-a-number': 'not-a-number',
  'thousand-or-decimal': 'thousand-or-decimal',
  'too-large': 'too-large',
  'too-small': 'too-small',
  'unit-in-cell': 'unit-in-cell',
};

interface WideColumn {
  /** Slot in the scanner's row. */
  readonly from: number;
  /** Slot in the cleaner's row. */
  readonly to: number;
  readonly channel: ChannelName;
}

/**
 * Reads a log from bytes that come in parts, in one pass and with a memory that does not grow with the log: `push` them in
 * order, then `end`. The first quarter of a megabyte settles what the columns are.
 */
export class LogReader {
  readonly #options: LogOptions;
  readonly #counts = new LeftOutCounts();
  readonly #steady: SteadyFinder;
  readonly #cleaner: Cleaner;
  #head: Uint8Array[] = [];
  #headSize = 0;
  #transcode: ((part: Uint8Array, last: boolean) => Uint8Array) | undefined;
  #scanner: RowScanner | undefined;
  #layout: Layout | undefined;
  #plan: Plan | undefined;
  #problem: LogProblem | undefined;
  #wide: WideColumn[] = [];
  #long: LongRows | undefined;
  #clock: ClockColumn | undefined;
  #time: (row: ScannedRow) => number = () => Number.NaN;
  #numbers = new Float64Array(0);
  #headerCells: readonly string[] = [];
  #width = 0;
  #mostCells = Number.POSITIVE_INFINITY;
  #rowsSeen = 0;
  #timeSlot = -1;
  #slots: PlannedColumn[] = [];

  constructor(options: LogOptions = {}) {
    this.#options = options;
    this.#steady = new SteadyFinder(options.rule ?? usualRule, this.#counts);
    this.#cleaner = new Cleaner(this.#counts, this.#steady, options);
  }

  /** The next part of the file. */
  push(part: Uint8Array): void {
    if (this.#problem !== undefined) return;
    if (this.#scanner !== undefined) {
      this.#scanner.push(this.#transcode?.(part, false) ?? part);
      return;
    }
    // Always the same bytes, so that what is found does not depend on how the file is cut into parts.
    const taken = part.slice(0, headBytes - this.#headSize);
    this.#head.push(taken);
    this.#headSize += taken.length;
    if (this.#headSize < headBytes) return;
    this.#begin(false);
    if (taken.length < part.length) this.push(part.subarray(taken.length));
  }

  /** The file has ended: what was understood of it. */
  end(): LogResult {
    if (this.#problem === undefined && this.#scanner === undefined) this.#begin(true);
    if (this.#problem !== undefined) return { ok: false, problem: this.#problem };
    const rest = this.#transcode?.(new Uint8Array(0), true);
    if (rest !== undefined && rest.length > 0) this.#scanner?.push(rest);
    this.#scanner?.end();
    this.#long?.end();
    this.#cleaner.end();
    return this.#reading();
  }

  #begin(whole: boolean): void {
    const head = new Uint8Array(this.#headSize);
    let at = 0;
    for (const part of this.#head) {
      head.set(part, at);
      at += part.length;
    }
    this.#head = [];
    const sniffed = sniffBytes(head);
    if ('other' in sniffed) {
      this.#problem = { code: 'not_text', what: sniffed.other };
      return;
    }
    this.#transcode = transcoder(sniffed.encoding);
    const bytes = this.#transcode(head.subarray(sniffed.mark), false);
    const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;
    const text = new TextDecoder().decode(start, { stream: !whole });
    if (text.trim() === '') {
      this.#problem = { code: 'empty' };
      return;
    }
    const { mapping: given, mappings = [] } = this.#options;
    const asked = new Set(
      [...(given === undefined ? [] : [given]), ...mappings].flatMap((known) => [...known.titles, ...Object.keys(known.columns)]),
    );
    const layout = findLayout(text, asked);
    if (layout === undefined) {
      this.#problem = { code: 'no_table', begins: text.trim().slice(0, 60).replace(/\s+/g, ' ') };
      return;
    }
    const mapping = given ?? mappingFor(layout.titles, mappings);
    this.#layout = layout;
    this.#plan = makePlan(layout, mapping);
    this.#headerCells = layout.titles;
    this.#width = layout.titles.length;
    // Where commas part the cells, even an empty cell too many may be due to a decimal comma.
    if (layout.separator === ',') this.#mostCells = layout.cells;
    this.#settle(layout, this.#plan, mapping);
    this.#scanner?.push(start.subarray(new TextEncoder().encode(text.slice(0, layout.firstSign)).length));
  }

  /** Settle which columns are read as what. */
  #settle(layout: Layout, plan: Plan, mapping: Mapping | undefined): void {
    const uses: FieldUse[] = layout.titles.map(() => 'skip');
    const { time, long } = plan;
    for (const { index } of plan.columns) uses[index] = 'number';
    if (time?.form === 'moment') {
      uses[time.column.index] = 'text';
      if (time.dayIndex !== undefined) uses[time.dayIndex] = 'text';
    }
    // Without a time the rows are counted, so that it is plain what an answer would bring.
    if (time === undefined) uses[0] = 'text';
    if (long !== undefined) {
      uses[long.name] = 'text';
      uses[long.value] = 'number';
      if (long.unit !== undefined) uses[long.unit] = 'text';
    }
    const slotOf = (index: number) => uses.slice(0, index).filter((use) => use !== 'skip').length;
    const bySlot = new Map<number, PlannedColumn>();
    for (const column of plan.columns) {
      bySlot.set(slotOf(column.index), column);
      if (column.channel === 'time') continue;
      this.#wide.push({ from: slotOf(column.index), to: this.#cleaner.addChannel(column.channel, column.scale), channel: column.channel });
    }
    this.#numbers = new Float64Array(this.#wide.length);
    this.#time = this.#timeReader(plan, slotOf);
    this.#slots = uses.flatMap((use, index) => (use === 'skip' ? [] : [bySlot.get(slotOf(index)) as PlannedColumn]));
    const valueSlot = long === undefined ? -1 : slotOf(long.value);
    if (long !== undefined) {
      const slots = { name: slotOf(long.name), value: valueSlot, ...(long.unit === undefined ? {} : { unit: slotOf(long.unit) }) };
      this.#long = new LongRows(slots, this.#cleaner, this.#counts, mapping, namesIn(layout, long));
    }
    const accepts = (slot: number, rest: string): boolean => {
      const column = bySlot.get(slot);
      if (column !== undefined) return unitOfText(channelOf(column.channel), rest)?.id === column.unit;
      return slot === valueSlot && this.#long?.takesUnit(rest) === true;
    };
    this.#scanner = new RowScanner(
      {
        separator: layout.separator.charCodeAt(0),
        uses,
        ...(mapping?.decimal === undefined ? {} : { decimal: mapping.decimal }),
        accepts,
        isUnit: anyUnit,
        firstLine: layout.firstLine,
      },
      (row) => this.#row(row),
    );
  }

  #timeReader(plan: Plan, slotOf: (index: number) => number): (row: ScannedRow) => number {
    const { time } = plan;
    if (time === undefined) return () => Number.NaN;
    if (time.form === 'interval') {
      let count = -1;
      return () => {
        count += 1;
        return count * time.seconds;
      };
    }
    const slot = slotOf(time.column.index);
    this.#timeSlot = slot;
    if (time.form === 'moment') {
      const clock = new ClockColumn(time.minutes);
      this.#clock = clock;
      const daySlot = time.dayIndex === undefined ? undefined : slotOf(time.dayIndex);
      return (row) => clock.read(row.texts[slot] ?? '', daySlot === undefined ? undefined : row.texts[daySlot]);
    }
    const { factor, offset } = time.column.scale;
    let base = time.since1970 ? Number.NaN : 0;
    return (row) => {
      const number = row.numbers[slot] as number;
      if (Number.isNaN(base) && !Number.isNaN(number)) base = number;
      // The difference first: seconds since 1970 leave few digits for a fraction.
      return (number - base + offset) * factor;
    };
  }

  #row(row: ScannedRow): void {
    if (row.blank) return;
    this.#rowsSeen += 1;
    if (row.beyond > 0 || row.cells > this.#mostCells) {
      this.#counts.add(isComment(row) ? 'comment' : 'too-many-cells', row.line);
      return;
    }
    if (row.unfinished && row.cells < this.#width && this.#rowsSeen > 1) {
      this.#counts.add('cut-off', row.line);
      return;
    }
    const time = this.#time(row);
    if (Number.isNaN(time)) {
      this.#counts.add(this.#whyNoTime(row), row.line);
      return;
    }
    if (this.#long !== undefined) {
      this.#long.row(time, row);
      return;
    }
    const numbers = this.#numbers;
    const wide = this.#wide;
    for (let i = 0; i < wide.length; i += 1) {
      const { from, to, channel } = wide[i] as WideColumn;
      numbers[to] = row.numbers[from] as number;
      const problem = row.problems[from];
      if (problem !== undefined) this.#counts.add(cellReasons[problem], row.line, channel);
    }
    this.#cleaner.row(time, numbers, row.line);
  }

  #whyNoTime(row: ScannedRow): LeftOutReason {
    if (isComment(row)) return 'comment';
    if (this.#plan?.time === undefined) return 'no-time';
    const text = new TextDecoder().decode(row.bytes.subarray(row.from, Math.min(row.to, row.from + 2000)));
    const cells = text.split(this.#layout?.separator ?? ',').map((cell) => cell.trim().replace(/^"|"$/g, ''));
    const alike = this.#headerCells.filter((title, index) => title !== '' && cells[index] === title).length;
    if (alike >= Math.max(1, this.#headerCells.length / 2)) return 'header-again';
    const { unitRow } = this.#layout ?? {};
    if (unitRow?.every((unit, index) => (cells[index] ?? '').includes(unit))) return 'header-again';
    const anyNumber = row.numbers.some((number, slot) => slot !== this.#timeSlot && !Number.isNaN(number));
    return anyNumber ? 'no-time' : 'no-row';
  }

  #reading(): LogReading {
    const plan = this.#plan as Plan;
    const layout = this.#layout as Layout;
    const questions: Question[] = [...plan.questions, ...(this.#long?.questions() ?? [])];
    const refused = this.#refusedSigns(questions);
    if (this.#scanner !== undefined) this.#counts.add('too-long', this.#scanner.overlongLine, undefined, this.#scanner.overlong);
    for (const channel of refused) this.#steady.dropChannel(channel);
    const windows =
      refused.has('engineSpeed') || refused.has('time') ? [] : this.#steady.windows((channel) => this.#cleaner.stepOf(channel));
    const channels = [...plan.columns, ...(this.#long?.channels() ?? [])].filter(({ channel }) => !refused.has(channel));
    return {
      ok: true,
      channels: channels.map(({ column, channel, unit, how, sure }) => ({ column, channel, unit, how, sure })),
      rows: this.#cleaner.rows,
      leftOut: this.#counts.list(),
      windows,
      questions,
      unused: [...plan.unused, ...(this.#long?.unused() ?? [])],
      titles: columnKeys(layout.titles),
      above: layout.above,
      time:
        this.#cleaner.rows === 0
          ? undefined
          : {
              from: this.#cleaner.firstTime,
              to: this.#cleaner.lastTime,
              ...(this.#clock?.begins === undefined ? {} : { begins: this.#clock.begins }),
            },
      restarts: this.#cleaner.restarts,
    };
  }

  /**
   * Columns whose decimal sign is open. `1.206` in a file that has decimal commas elsewhere may be a thousand; a column with
   * both signs cannot be read at all. Either shows only when the whole file is known, so the column is taken back here.
   */
  #refusedSigns(questions: Question[]): Set<ChannelName> {
    const refused = new Set<ChannelName>();
    const signs = this.#scanner?.signs ?? [];
    const commasSeen = signs.some(({ commas }) => commas > 0);
    const pointsSeen = signs.some(({ points }) => points > 0);
    const commaParts = this.#layout?.separator === ',';
    signs.forEach((counts, slot) => {
      const column = this.#slots[slot];
      const isLongValue = this.#long !== undefined && slot === this.#long.valueSlot;
      if (column === undefined && !isLongValue) return;
      const both = (counts.points > 0 || counts.doubtfulPoints > 0) && (counts.commas > 0 || counts.doubtfulCommas > 0);
      const thousand =
        (counts.doubtfulPoints > 0 && commasSeen) ||
        (counts.doubtfulCommas > 0 && pointsSeen) ||
        (counts.doubtfulCommas > 0 && commaParts && !commasSeen);
      if (!both && !thousand) return;
      const reason: LeftOutReason = thousand ? 'thousand-or-decimal' : 'mixed-signs';
      const lost = isLongValue ? (this.#long?.channels() ?? []) : column === undefined ? [] : [column];
      for (const { channel, column: name } of lost) {
        refused.add(channel);
        questions.push({ ask: 'decimal sign', column: name, channel });
        this.#counts.add(reason, this.#layout?.firstLine ?? 1, channel, this.#cleaner.rows);
      }
    });
    return refused;
  }
}

function isComment(row: ScannedRow): boolean {
  let at = row.from;
  while (row.bytes[at] === 32 || row.bytes[at] === 34) at += 1;
  return row.bytes[at] === 35 || (row.bytes[at] === 47 && row.bytes[at + 1] === 47);
}

/** The names in the first rows of a log with one value a line, each with its unit and numbers. */
function namesIn(layout: Layout, long: NonNullable<Plan['long']>): Map<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { cells } of layout.sample) {
    const name = cells[long.name]?.trim() ?? '';
    if (name !== '') names.set(name, [...(names.get(name) ?? []), cells[long.value] ?? '']);
  }
  return names;
}

/** Read a log that is at hand as a whole. Never throws on data. */
export function readLog(content: string | Uint8Array, options: LogOptions = {}): LogResult {
  const reader = new LogReader(options);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  for (let at = 0; at < bytes.length; at += 262_144) reader.push(bytes.subarray(at, at + 262_144));
  return reader.end();
}
