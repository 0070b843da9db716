import type { ChannelName } from '../channels/channels.js';
import type { Cleaner } from '../clean/cleaner.js';
import type { LeftOutCounts } from '../clean/left-out.js';
import { readTitle } from '../columns/recognise.js';
import type { Mapping } from '../mapping/mapping.js';
import { readCellNumber } from '../text/number.js';
import type { ScannedRow } from '../text/row-scanner.js';
import { type PlannedColumn, planForName } from './plan.js';
import type { Question } from './question.js';

interface Named {
  readonly slot: number;
  readonly channel: ChannelName;
  /** From the unit of this line to the unit of the channel's first line. */
  readonly factor: number;
  readonly shift: number;
}

/** More names than this are not looked at: no vehicle has them. */
const mostNames = 5000;

/**
 * Rows of a log with one value a line: time, name, value, and mostly a unit. Lines of one time are put together; names that
 * are no channel are passed over and listed.
 */
export class LongRows {
  readonly #slots: { readonly name: number; readonly value: number; readonly unit?: number };
  readonly #cleaner: Cleaner;
  readonly #counts: LeftOutCounts;
  readonly #mapping: Mapping | undefined;
  readonly #sample: ReadonlyMap<string, readonly string[]>;
  readonly #known = new Map<string, Named | undefined>();
  readonly #channels = new Map<ChannelName, PlannedColumn>();
  readonly #unused = new Map<string, string>();
  readonly #questions: Question[] = [];
  #numbers = new Float64Array(0);
  #time = Number.NaN;
  #line = 0;
  #held = false;

  constructor(
    slots: { readonly name: number; readonly value: number; readonly unit?: number },
    cleaner: Cleaner,
    counts: LeftOutCounts,
    mapping: Mapping | undefined,
    sample: ReadonlyMap<string, readonly string[]>,
  ) {
    this.#slots = slots;
    this.#cleaner = cleaner;
    this.#counts = counts;
    this.#mapping = mapping;
    this.#sample = sample;
  }

  get valueSlot(): number {
    return this.#slots.value;
  }

  /** Whether a text behind a value may be its unit. */
  takesUnit(rest: string): boolean {
    void rest;
    return false;
  }

  row(time: number, row: ScannedRow): void {
    const name = row.texts[this.#slots.name] ?? '';
    const unit = this.#slots.unit === undefined ? '' : (row.texts[this.#slots.unit] ?? '');
    const key = `${name}\u0000${unit}`;
    let named = this.#known.get(key);
    if (named === undefined && !this.#known.has(key)) {
      named = this.#known.size < mostNames ? this.#meet(name, unit) : undefined;
      if (this.#known.size < mostNames) this.#known.set(key, named);
    }
    if (named === undefined) return;
    const problem = row.problems[this.#slots.value];
    if (problem !== undefined) this.#counts.add(problem, row.line, named.channel);
    const number = row.numbers[this.#slots.value] as number;
    if (Number.isNaN(number)) return;
    if (!this.#held || time !== this.#time || !Number.isNaN(this.#numbers[named.slot] as number)) this.#flush();
    this.#held = true;
    this.#time = time;
    this.#line = row.line;
    this.#numbers[named.slot] = named.factor === 1 && named.shift === 0 ? number : number * named.factor + named.shift;
  }

  end(): void {
    this.#flush();
  }

  channels(): PlannedColumn[] {
    return [...this.#channels.values()];
  }

  unused(): { column: string; why: string }[] {
    return [...this.#unused].map(([column, why]) => ({ column, why }));
  }

  questions(): Question[] {
    return this.#questions;
  }

  #flush(): void {
    if (this.#held) this.#cleaner.row(this.#time, this.#numbers, this.#line);
    this.#numbers.fill(Number.NaN);
    this.#held = false;
  }

  #meet(name: string, unit: string): Named | undefined {
    const shownName = name.slice(0, 200);
    const numbers = (this.#sample.get(name) ?? []).flatMap((cell) => {
      const read = readCellNumber(cell, this.#mapping?.decimal);
      return read === undefined || typeof read === 'string' ? [] : [read.value];
    });
    const reading = readTitle(name, unit);
    const found = planForName(name, unit, numbers, reading, this.#mapping);
    if (found.question !== undefined) {
      if (this.#questions.length < 200) this.#questions.push(found.question);
      return undefined;
    }
    if (found.column === undefined || found.column.channel === 'time') {
      if (this.#unused.size < 200) this.#unused.set(shownName, found.why ?? 'not a channel that is known');
      return undefined;
    }
    const { channel, scale } = found.column;
    const first = this.#channels.get(channel);
    if (first !== undefined && first.column !== name) {
      this.#questions.push({ ask: 'which column', channel, columns: [first.column, shownName] });
      return undefined;
    }
    if (first !== undefined) {
      // The same channel in another unit, as when a tool is switched over while it records.
      const slot = this.#cleaner.addChannel(channel, first.scale);
      const factor = scale.factor / first.scale.factor;
      return { slot, channel, factor, shift: scale.offset * factor - first.scale.offset };
    }
    const slot = this.#cleaner.addChannel(channel, scale);
    this.#channels.set(channel, { ...found.column, column: shownName });
    const wider = new Float64Array(slot + 1).fill(Number.NaN);
    wider.set(this.#numbers);
    this.#numbers = wider;
    return { slot, channel, factor: 1, shift: 0 };
  }
}
