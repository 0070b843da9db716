import type { Channel } from '../channels/channel.js';
import { type ChannelName, channelOf } from '../channels/channels.js';
import { limitsInSI } from '../channels/limits.js';
import { inUnit, type Scale, scaleOf } from '../channels/scale.js';
import { isLostSignal } from '../clean/lost-signals.js';
import type { Candidate, TitleReading } from '../columns/recognise.js';
import { type ColumnUnit, unitOfText } from '../columns/unit-text.js';
import { type ColumnAnswer, columnKeys, type Mapping } from '../mapping/mapping.js';
import { readClock, readMoment } from '../text/moment.js';
import { readCellNumber } from '../text/number.js';
import type { Layout } from './layout.js';
import type { Choice, Question } from './question.js';

/** How sure a reading of a column is. */
export type Sureness = 'certain' | 'likely';

/** A column that is read. */
export interface PlannedColumn {
  readonly index: number;
  /** Its title, numbered where an equal one stands before it. */
  readonly column: string;
  readonly channel: ChannelName;
  /** Id of the unit. */
  readonly unit: string;
  readonly scale: Scale;
  readonly sure: Sureness;
  /** In a sentence how that was found out. */
  readonly how: string;
}

/** How the time of a row is found. */
export type TimePlan =
  | { readonly form: 'number'; readonly column: PlannedColumn; readonly since1970: boolean }
  | { readonly form: 'moment'; readonly column: PlannedColumn; readonly dayIndex?: number; readonly minutes: boolean }
  | { readonly form: 'interval'; readonly seconds: number };

/** A log with one value a line: which columns say what. */
export interface LongPlan {
  readonly name: number;
  readonly value: number;
  readonly unit?: number;
}

/** What is read of a log, and what is asked. */
export interface Plan {
  readonly columns: readonly PlannedColumn[];
  readonly time?: TimePlan;
  readonly long?: LongPlan;
  readonly unused: readonly { readonly column: string; readonly why: string }[];
  readonly questions: readonly Question[];
}

/** A share of the first rows outside the limits beyond which the column is taken for something else. */
const strangeShare = 0.2;

interface Sampled {
  readonly numbers: readonly number[];
  readonly texts: readonly string[];
  /** What stands behind the numbers, where it is the same in all cells. */
  readonly unitInCells?: string;
}

function sample(layout: Layout, index: number, decimal: Mapping['decimal']): Sampled {
  const texts = layout.sample.map(({ cells }) => cells[index]?.trim() ?? '').filter((cell) => cell !== '');
  const numbers: number[] = [];
  const rests = new Set<string>();
  for (const text of texts) {
    const read = readCellNumber(text, decimal);
    if (read === undefined || typeof read === 'string') continue;
    numbers.push(read.value);
    rests.add(read.rest);
  }
  const [rest = ''] = rests;
  return { numbers, texts, ...(rests.size === 1 && rest !== '' ? { unitInCells: rest } : {}) };
}

/** The share of numbers that a channel cannot have in a unit. */
function shareOutside(channel: Channel, scale: Scale, numbers: readonly number[]): number {
  const [least, greatest] = limitsInSI(channel);
  const toSI = (number: number) => (number + scale.offset) * scale.factor;
  // A lost signal says nothing about what the column is.
  const signals = numbers.filter((number) => !isLostSignal(number));
  if (signals.length === 0) return 0;
  return signals.filter((number) => toSI(number) < least || toSI(number) > greatest).length / signals.length;
}

function unitById(channel: Channel, id: string): ColumnUnit | undefined {
  const scale = scaleOf(channel.kind, id);
  return scale && { id, scale };
}

function whereText(candidate: Candidate): string {
  switch (candidate.unitWhere) {
    case 'unit row':
      return 'unit from the row of units';
    case 'after a comma':
      return 'unit behind the comma';
    case 'last word':
    case 'after a slash':
      return 'unit at the end of the title';
    default:
      return 'unit in brackets';
  }
}

interface Resolved {
  readonly column?: PlannedColumn;
  readonly question?: Question;
  readonly why?: string;
}

const perStrokeNote = (channel: Channel) => (channel.perStroke === true ? ' per stroke' : '');

function withConvention(unit: ColumnUnit): string {
  return unit.conventional === true ? '; the conventional unit of that spelling, the others differ by less than half a percent' : '';
}

function choicesOf(candidates: readonly Candidate[]): Choice[] {
  return candidates.slice(0, 12).map(({ channel, unit }) => ({ channel, ...(unit === undefined ? {} : { unit: unit.id }) }));
}

/** One column: the reading that is left when unit and values have had their say, or the question. */
function resolve(index: number, column: string, reading: TitleReading, seen: Sampled): Resolved {
  if (reading.candidates.length === 0) {
    return { why: reading.notMeasured === true ? 'a set value or a limit, not a measurement' : 'not a channel that is known' };
  }
  if (seen.numbers.length === 0 && seen.texts.length > 0 && reading.candidates.every(({ channel }) => channel !== 'time')) {
    return { why: 'holds no numbers' };
  }
  const fromCells = seen.unitInCells;
  let candidates = reading.candidates;
  let cellsGaveUnit = false;
  if (fromCells !== undefined && candidates.every(({ unit }) => unit === undefined)) {
    const withUnit = candidates.flatMap((candidate): Candidate[] => {
      const unit = unitOfText(channelOf(candidate.channel), fromCells);
      return unit === undefined ? [] : [{ ...candidate, unit }];
    });
    if (withUnit.length > 0) {
      candidates = withUnit;
      cellsGaveUnit = true;
    }
  }
  // A channel that people give in one unit only needs none in the title.
  const assumed = candidates.map((candidate): Candidate => {
    const { units } = channelOf(candidate.channel);
    const [only] = units;
    if (candidate.unit !== undefined || reading.strangeUnit !== undefined || units.length !== 1 || only === undefined) return candidate;
    const unit = unitById(channelOf(candidate.channel), only);
    return unit === undefined ? candidate : { ...candidate, unit };
  });
  const fitting = assumed.filter(
    ({ channel, unit }) => unit === undefined || shareOutside(channelOf(channel), unit.scale, seen.numbers) <= strangeShare,
  );
  if (fitting.length === 0) {
    const [first] = assumed;
    if (first?.unit === undefined) return { why: 'not a channel that is known' };
    const share = shareOutside(channelOf(first.channel), first.unit.scale, seen.numbers);
    return { question: { ask: 'wrong values', column, channel: first.channel, share, example: seen.texts[0] ?? '' } };
  }
  const channelsLeft = new Set(fitting.map(({ channel }) => channel));
  const [chosen] = fitting;
  if (chosen === undefined || channelsLeft.size > 1) return { question: { ask: 'channel', column, choices: choicesOf(fitting) } };
  const channel = channelOf(chosen.channel);
  const { unit } = chosen;
  if (unit === undefined) {
    const choices = channel.units.map((id) => ({ channel: chosen.channel, unit: id }));
    return { question: { ask: 'unit', column, ...(reading.strangeUnit === undefined ? {} : { given: reading.strangeUnit }), choices } };
  }
  // Only some of the words were there and the values decide nothing: one meaning among those that are known is still a guess.
  const ruledOut = reading.candidates.length > 1 && !cellsGaveUnit;
  if (chosen.fit === 'part' && reading.candidates[0]?.unit === undefined && !ruledOut) {
    return { question: { ask: 'channel', column, choices: choicesOf(fitting) } };
  }
  const unitSaid = cellsGaveUnit ? 'unit in the cells' : chosen.unitWhere !== undefined ? whereText(chosen) : undefined;
  const notes = [
    chosen.fit === 'whole' ? 'title understood' : 'title understood in part',
    ...(chosen.extra ? ['with words that are not known'] : []),
    unitSaid ?? (channel.kind === 'ratio' ? 'no unit needed' : 'no unit given, the usual one assumed'),
    ...(ruledOut ? ['the values rule out the other meanings'] : []),
  ];
  const sure = chosen.fit === 'whole' && !chosen.extra && unitSaid !== undefined && !ruledOut ? 'certain' : 'likely';
  const how = `${notes.join(', ')}${withConvention(unit)}${perStrokeNote(channel)}`;
  return { column: { index, column, channel: chosen.channel, unit: unit.id, scale: unit.scale, sure, how } };
}

function answered(index: number, column: string, answer: ColumnAnswer, reading: TitleReading, seen: Sampled): Resolved {
  if (answer.channel === null) return { why: 'not used, as the mapping says' };
  const channel = channelOf(answer.channel);
  const given = reading.candidates.find((candidate) => candidate.channel === answer.channel)?.unit;
  const unit =
    answer.unit === undefined ? (given ?? soleUnit(channel)) : (unitById(channel, answer.unit) ?? unitOfText(channel, answer.unit));
  if (unit === undefined) {
    if (answer.channel === 'time' && seen.texts.some((text) => readMoment(text) !== undefined))
      return resolve(index, column, timeReading, seen);
    return {
      question: { ask: 'unit', column, choices: channel.units.map((id) => ({ channel: answer.channel as ChannelName, unit: id })) },
    };
  }
  const share = shareOutside(channel, unit.scale, seen.numbers);
  if (share > strangeShare)
    return { question: { ask: 'wrong values', column, channel: answer.channel, share, example: seen.texts[0] ?? '' } };
  return {
    column: { index, column, channel: answer.channel, unit: unit.id, scale: unit.scale, sure: 'certain', how: 'as the mapping says' },
  };
}

const timeReading: TitleReading = { candidates: [{ channel: 'time', fit: 'whole', extra: false }] };

function soleUnit(channel: Channel): ColumnUnit | undefined {
  const [only] = channel.units;
  return channel.units.length === 1 && only !== undefined ? unitById(channel, only) : undefined;
}

/** A column of clocks, of seconds since 1970, or of plain numbers. */
function timeOf(
  index: number,
  column: string,
  reading: TitleReading,
  seen: Sampled,
  mapping: Mapping | undefined,
): TimePlan | Question | undefined {
  const second = unitById(channelOf('time'), 's');
  if (second === undefined) return undefined;
  const planned = (unit: ColumnUnit, sure: Sureness, how: string): PlannedColumn => ({
    index,
    column,
    channel: 'time',
    unit: unit.id,
    scale: unit.scale,
    sure,
    how,
  });
  const clocks = seen.texts.filter((text) => readMoment(text) !== undefined);
  if (clocks.length > 0 && clocks.length >= 0.5 * seen.texts.length) {
    const two = clocks.filter((text) => readMoment(text)?.twoParts === true);
    // Hours and minutes would repeat from row to row; and once a part is over 23, or has a fraction, it is minutes and seconds.
    const minutes = clocks.some((text) => /^\d{1,3}:\d{2}[.,]\d+$/.test(text) || Number(/^(\d+):\d{2}$/.exec(text)?.[1] ?? 0) > 23);
    if (two.length > 0 && !minutes && mapping?.clock === undefined) return { ask: 'clock', column, example: two[0] ?? '' };
    return {
      form: 'moment',
      column: planned(
        second,
        'certain',
        clocks.some((text) => readClock(text) === undefined) ? 'date and clock in the cells' : 'clock in the cells',
      ),
      minutes: mapping?.clock === 'minutes and seconds' || minutes,
    };
  }
  if (seen.numbers.length === 0) return undefined;
  const middle = [...seen.numbers].sort((a, b) => a - b)[seen.numbers.length >> 1] ?? 0;
  const candidate = reading.candidates.find(({ channel }) => channel === 'time');
  if (candidate?.unit !== undefined) {
    const sure = candidate.extra ? 'likely' : 'certain';
    const si = middle * candidate.unit.scale.factor;
    return {
      form: 'number',
      column: planned(candidate.unit, sure, `title understood, ${whereText(candidate)}`),
      since1970: si > 3e8 && si < 5e9,
    };
  }
  if (middle > 3e8 && middle < 5e9)
    return { form: 'number', column: planned(second, 'likely', 'seconds since 1970, by their size'), since1970: true };
  const milli = unitById(channelOf('time'), 'ms');
  if (milli !== undefined && middle > 3e11 && middle < 5e12) {
    return { form: 'number', column: planned(milli, 'likely', 'milliseconds since 1970, by their size'), since1970: true };
  }
  if (seen.unitInCells !== undefined) {
    const unit = unitOfText(channelOf('time'), seen.unitInCells);
    if (unit !== undefined)
      return { form: 'number', column: planned(unit, 'certain', 'title understood, unit in the cells'), since1970: false };
  }
  return {
    ask: 'unit',
    column,
    ...(reading.strangeUnit === undefined ? {} : { given: reading.strangeUnit }),
    choices: channelOf('time').units.map((unit) => ({ channel: 'time', unit })),
  };
}

const isQuestion = (value: TimePlan | Question): value is Question => 'ask' in value;

/** Decide what is read of a log and what is asked. */
export function makePlan(layout: Layout, mapping?: Mapping): Plan {
  const keys = columnKeys(layout.titles);
  const long = longForm(layout);
  const unused: { column: string; why: string }[] = [];
  const questions: Question[] = [];
  const columns: PlannedColumn[] = [];
  const times: { plan: TimePlan; index: number }[] = [];
  const timeQuestions: Question[] = [];
  let dayIndex: number | undefined;
  const longColumns = long === undefined ? [] : [long.name, long.value, long.unit];
  keys.forEach((column, index) => {
    if (longColumns.includes(index)) return;
    const reading = layout.readings[index] ?? { candidates: [] };
    const seen = sample(layout, index, mapping?.decimal);
    const answer = mapping !== undefined && Object.hasOwn(mapping.columns, column) ? mapping.columns[column] : undefined;
    const isTimeColumn = answer === undefined ? reading.candidates.some(({ channel }) => channel === 'time') : answer.channel === 'time';
    if (answer?.channel === null) unused.push({ column, why: 'not used, as the mapping says' });
    else if (isTimeColumn) {
      if (reading.role === 'date' && seen.texts.length > 0 && seen.texts.every((text) => readMoment(text) === undefined)) {
        dayIndex = index;
        return;
      }
      const unit = answer?.unit === undefined ? undefined : unitById(channelOf('time'), answer.unit);
      const given: TitleReading = unit === undefined ? reading : { candidates: [{ channel: 'time', fit: 'whole', extra: false, unit }] };
      const plan = timeOf(index, column, given, seen, mapping);
      if (plan === undefined) unused.push({ column, why: 'holds no time that can be read' });
      else if (isQuestion(plan)) timeQuestions.push(plan);
      else times.push({ plan, index });
    } else if (long === undefined) {
      if (reading.role === 'index') {
        unused.push({ column, why: 'a running number' });
        return;
      }
      const found = answer === undefined ? resolve(index, column, reading, seen) : answered(index, column, answer, reading, seen);
      if (found.column !== undefined) columns.push(found.column);
      else if (found.question !== undefined) questions.push(found.question);
      else unused.push({ column, why: found.why ?? 'not a channel that is known' });
    } else unused.push({ column, why: 'not part of name, value and unit' });
  });
  const kept = onePerChannel(columns, questions);
  const time = chooseTime(times, timeQuestions, unused, dayIndex, mapping);
  if (time === undefined) {
    questions.unshift(...timeQuestions);
    if (timeQuestions.length === 0) questions.unshift({ ask: 'time', columns: keys.slice(0, 40) });
  }
  const timeColumn = time === undefined || time.form === 'interval' ? [] : [time.column];
  return {
    columns: [...timeColumn, ...kept],
    ...(time === undefined ? {} : { time }),
    ...(long === undefined ? {} : { long }),
    unused,
    questions,
  };
}

/** Numbers with a unit come first, then a moment; a day of its own is put to the clock. */
function chooseTime(
  times: readonly { plan: TimePlan; index: number }[],
  asked: readonly Question[],
  unused: { column: string; why: string }[],
  dayIndex: number | undefined,
  mapping: Mapping | undefined,
): TimePlan | undefined {
  const rank = ({ plan }: { plan: TimePlan }) => (plan.form === 'number' ? (plan.column.sure === 'certain' ? 0 : 2) : 1);
  const [first, ...others] = [...times].sort((a, b) => rank(a) - rank(b) || a.index - b.index);
  for (const { plan } of others)
    if (plan.form !== 'interval') unused.push({ column: plan.column.column, why: 'another column gives the time' });
  if (first !== undefined) {
    for (const question of asked) if ('column' in question) unused.push({ column: question.column, why: 'another column gives the time' });
    return first.plan.form === 'moment' && dayIndex !== undefined ? { ...first.plan, dayIndex } : first.plan;
  }
  return mapping?.interval === undefined ? undefined : { form: 'interval', seconds: mapping.interval };
}

function onePerChannel(columns: readonly PlannedColumn[], questions: Question[]): PlannedColumn[] {
  const byChannel = new Map<ChannelName, PlannedColumn[]>();
  for (const column of columns) byChannel.set(column.channel, [...(byChannel.get(column.channel) ?? []), column]);
  const kept: PlannedColumn[] = [];
  for (const [channel, same] of byChannel) {
    const [only, ...more] = same;
    if (only !== undefined && more.length === 0) kept.push(only);
    else questions.push({ ask: 'which column', channel, columns: same.map(({ column }) => column) });
  }
  return kept;
}

function longForm(layout: Layout): LongPlan | undefined {
  const at = (role: string) => layout.readings.findIndex((reading) => reading.role === role);
  const name = at('name');
  const value = at('value');
  const unit = at('unit');
  if (name < 0 || value < 0) return undefined;
  return { name, value, ...(unit < 0 ? {} : { unit }) };
}

/** A channel and unit for one name of a log with one value a line, as for a column with that title. */
export function planForName(
  name: string,
  unitText: string,
  numbers: readonly number[],
  reading: TitleReading,
  mapping?: Mapping,
): Resolved {
  const seen: Sampled = { numbers, texts: numbers.map(String), ...(unitText === '' ? {} : { unitInCells: unitText }) };
  const answer = mapping !== undefined && Object.hasOwn(mapping.columns, name) ? mapping.columns[name] : undefined;
  return answer === undefined ? resolve(0, name, reading, seen) : answered(0, name, answer, reading, seen);
}

/** A number of SI of a channel in a unit, for showing. */
export function shown(channel: ChannelName, si: number, unit: string): number {
  return inUnit(channelOf(channel).kind, si, unit);
}
