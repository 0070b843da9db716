import {
  type Batch,
  type ChannelName,
  type ColumnAnswer,
  channelOf,
  LogReader,
  type LogReading,
  logData,
  logProblemText,
  type Mapping,
  mappingFor,
  type Question,
  questionText,
  reasonText,
  shown,
} from '@wallflow/logs';
import { formatNumber, unitSymbol } from '@wallflow/units';
import { LogPoints, type PlotData } from './log-points.js';

/** What a tap adds to the answers of a log. */
export type Answer = Pick<Mapping, 'decimal' | 'clock' | 'interval'> & { readonly columns?: Readonly<Record<string, ColumnAnswer>> };

export interface Offer {
  readonly label: string;
  readonly answer: Answer;
}

/** A log in the words of a page. */
export interface LogLook {
  readonly titles: readonly string[];
  /** The answers that were used. */
  readonly mapping?: Mapping;
  readonly rows: number;
  readonly columns: readonly { readonly column: string; readonly what: string; readonly sure: string; readonly how: string }[];
  readonly questions: readonly { readonly text: string; readonly offers: readonly Offer[] }[];
  readonly unused: readonly { readonly column: string; readonly why: string }[];
  /** What a column that is not used can be made. */
  readonly assignments: readonly { readonly label: string; readonly answer: ColumnAnswer }[];
  readonly leftOut: readonly string[];
  readonly windows: readonly string[];
  readonly plot?: PlotData;
}

export type LogLookResult = { readonly ok: true; readonly look: LogLook } | { readonly ok: false; readonly problem: string };

const drawn: readonly ChannelName[] = ['engineSpeed', 'pressureDrop', 'gasTemperature', 'airMassFlow'];
/** What a job takes from a log. */
const assignable: readonly ChannelName[] = ['time', 'engineSpeed', 'pressureDrop', 'gasTemperature', 'airMassFlow', 'coolantTemperature'];
const notUsed: ColumnAnswer = { channel: null };
const part = 262_144;

function choiceLabel(channel: ChannelName, unit: string | undefined): string {
  const { kind, label, perStroke } = channelOf(channel);
  const sign = unit === undefined ? '' : unitSymbol(kind, unit);
  return sign === '' ? label : `${label} in ${sign}${perStroke === true ? ' per stroke' : ''}`;
}

function answerOf(channel: ChannelName, unit: string | undefined): ColumnAnswer {
  return unit === undefined ? { channel } : { channel, unit };
}

const columnOffer = (column: string, channel: ChannelName, unit: string | undefined): Offer => ({
  label: choiceLabel(channel, unit),
  answer: { columns: { [column]: answerOf(channel, unit) } },
});
const withoutIt = (column: string): Offer => ({ label: 'do not use it', answer: { columns: { [column]: notUsed } } });

function offersOf(question: Question): readonly Offer[] {
  switch (question.ask) {
    case 'channel':
    case 'unit':
      return [...question.choices.map(({ channel, unit }) => columnOffer(question.column, channel, unit)), withoutIt(question.column)];
    case 'which column':
      return question.columns.map((column) => ({
        label: column,
        answer: { columns: Object.fromEntries(question.columns.filter((other) => other !== column).map((other) => [other, notUsed])) },
      }));
    case 'wrong values':
      return [
        ...channelOf(question.channel).units.map((unit) => columnOffer(question.column, question.channel, unit)),
        withoutIt(question.column),
      ];
    case 'decimal sign':
      return [
        { label: 'the comma', answer: { decimal: ',' } },
        { label: 'the point', answer: { decimal: '.' } },
      ];
    case 'clock':
      return [
        { label: 'hours and minutes', answer: { clock: 'hours and minutes' } },
        { label: 'minutes and seconds', answer: { clock: 'minutes and seconds' } },
      ];
    case 'time':
      return [
        ...question.columns
          .slice(0, 12)
          .map((column) => ({ label: `${column}, in s`, answer: { columns: { [column]: answerOf('time', 's') } } })),
        { label: 'none: one row a second', answer: { interval: 1 } },
        { label: 'none: ten rows a second', answer: { interval: 0.1 } },
      ];
  }
}

function leftOutTexts({ leftOut }: LogReading): string[] {
  return leftOut.map(({ reason, channel, count, firstLine }) => {
    const what = channel === undefined ? '' : `${channelOf(channel).label}: `;
    return `${what}${reasonText(reason)}, ${count === 1 ? `once, in line ${firstLine}` : `${count} times, first in line ${firstLine}`}`;
  });
}

function windowTexts(reading: LogReading): string[] {
  return logData(reading).windows.map(({ from, to, values }) => {
    const cells = assignable.flatMap((channel) => {
      const value = values[channel];
      if (value === undefined) return [];
      const digits = value.plusMinus > 0 ? Math.min(4, Math.max(0, 1 - Math.floor(Math.log10(value.plusMinus)))) : 1;
      return [`${channelOf(channel).label} ${value.mean.toFixed(digits)} ± ${value.plusMinus.toFixed(digits)} ${value.unit}`.trim()];
    });
    return `${formatNumber(Math.round(from))} to ${formatNumber(Math.round(to))} s: ${cells.join('; ')}`;
  });
}

function looked(reading: LogReading, points: LogPoints, mapping: Mapping | undefined): LogLook {
  const plot = points.reduced((channel, si) => {
    const unit = reading.channels.find((found) => found.channel === channel)?.unit;
    return unit === undefined ? Number.NaN : shown(channel, si, unit);
  });
  return {
    titles: reading.titles,
    ...(mapping === undefined ? {} : { mapping }),
    rows: reading.rows,
    columns: reading.channels.map(({ column, channel, unit, sure, how }) => ({ column, what: choiceLabel(channel, unit), sure, how })),
    questions: reading.questions.map((question) => ({ text: questionText(question), offers: offersOf(question) })),
    unused: reading.unused,
    assignments: assignable.flatMap((channel) =>
      channelOf(channel).units.map((unit) => ({ label: choiceLabel(channel, unit), answer: answerOf(channel, unit) })),
    ),
    leftOut: leftOutTexts(reading),
    windows: windowTexts(reading),
    ...(plot === undefined
      ? {}
      : {
          plot: {
            ...plot,
            series: plot.series.flatMap((series) => {
              const found = reading.channels.find(({ channel }) => channel === series.channel);
              return found === undefined
                ? []
                : [{ ...series, label: channelOf(series.channel).label, unit: unitSymbol(channelOf(series.channel).kind, found.unit) }];
            }),
          },
        }),
  };
}

/** Understand a log for a page; `onProgress` is told the share that was read after each part. */
export function lookAtLog(text: string, mappings: readonly Mapping[], onProgress: (share: number) => void = () => {}): LogLookResult {
  const bytes = new TextEncoder().encode(text);
  const points = new LogPoints(drawn);
  const reader = new LogReader({ mappings, onBatch: (batch: Batch) => points.add(batch) });
  for (let at = 0; at < bytes.length; at += part) {
    reader.push(bytes.subarray(at, at + part));
    onProgress(Math.min(1, (at + part) / bytes.length));
  }
  const reading = reader.end();
  if (!reading.ok) return { ok: false, problem: logProblemText(reading.problem) };
  return { ok: true, look: looked(reading, points, mappingFor(reading.titles, mappings)) };
}
