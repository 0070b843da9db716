import { type ColumnAnswer, type Mapping, makeMapping } from '../mapping/mapping.js';
import type { SignalGroup } from '../read/from-groups.js';
import { type CanDatabase, type CanMessage, readFrame } from './can-database.js';
import { truckParameters } from './parameters.js';

/** Signals of a recorded bus, and which of them are known by their number. */
export interface FrameSignals {
  readonly groups: readonly SignalGroup[];
  /** Answers for the signals whose number in SAE J1939 (SPN) is known here. */
  readonly mapping: Mapping;
  /** Frames of messages that the database does not have, and the first lines that are no frames. */
  readonly unknownFrames: number;
  readonly notUnderstood: readonly number[];
}

// A line of the open log format of the Linux CAN tools: `(1436509052.249713) can0 0CF00400#FFFF82DF1AFFFFFF`. An identifier of
// three digits is a short one, of eight a long one (from memory of that format).
const frame = /^\((\d+(?:\.\d+)?)\)\s+\S+\s+([0-9a-fA-F]{3}|[0-9a-fA-F]{8})#((?:[0-9a-fA-F]{2}){0,64})(?:\s+[TR])?\s*$/;
const linesNamed = 10;

/** Whether a text begins as a log of frames does. */
export function isFrameLog(text: string): boolean {
  const first = text.split(/\r?\n/, 20).find((line) => line.trim() !== '');
  return first !== undefined && frame.test(first);
}

interface Collected {
  readonly time: number[];
  readonly values: Map<string, number[]>;
}

/** Take the signals out of a log of frames with a database that the user brings. Never throws. */
export function frameSignals(text: string, database: CanDatabase): FrameSignals {
  const byMessage = new Map<CanMessage, Collected>();
  const owners = new Map(database.messages.flatMap((message) => message.signals.map((signal) => [signal, message] as const)));
  const notUnderstood: number[] = [];
  let unknownFrames = 0;
  let start = Number.NaN;
  text.split(/\r?\n/).forEach((line, index) => {
    if (line.trim() === '') return;
    const [, at, id = '', hex = ''] = frame.exec(line.trim()) ?? [];
    if (at === undefined) {
      if (notUnderstood.length < linesNamed) notUnderstood.push(index + 1);
      return;
    }
    const bytes = Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
    const found = readFrame(database, Number.parseInt(id, 16), id.length === 8, bytes);
    const message = found?.[0] === undefined ? undefined : owners.get(found[0].signal);
    if (found === undefined || message === undefined) {
      unknownFrames += 1;
      return;
    }
    const time = Number(at);
    if (Number.isNaN(start)) start = time;
    const kept = byMessage.get(message) ?? { time: [], values: new Map(message.signals.map(({ name }) => [name, []])) };
    byMessage.set(message, kept);
    kept.time.push(time - start);
    const read = new Map(found.map(({ signal, value }) => [signal.name, value]));
    for (const [name, values] of kept.values) values.push(read.get(name) ?? Number.NaN);
  });
  const groups = [...byMessage].map(([{ signals }, { time, values }]) => ({
    time,
    signals: signals.map(({ name, unit }) => ({ name, unit, values: values.get(name) ?? [] })),
  }));
  const titles = groups.flatMap(({ signals }) => signals.map(({ name }) => name));
  const columns: Record<string, ColumnAnswer> = {};
  for (const { signals } of byMessage.keys()) {
    for (const { name, unit, spn } of signals) {
      const channel = spn === undefined ? undefined : truckParameters.get(spn)?.channel;
      if (channel !== undefined) columns[name] = unit === '' ? { channel } : { channel, unit };
    }
  }
  return { groups, mapping: makeMapping(titles, columns), unknownFrames, notUnderstood };
}
