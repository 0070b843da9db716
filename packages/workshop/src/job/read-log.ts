import {
  channelOf,
  type LogReading,
  type LogResult,
  logProblemText,
  type Mapping,
  type Question,
  questionText,
  readGroups,
  readLog as readText,
  reasonText,
  type SteadyWindow,
} from '@wallflow/logs';
import { type ChannelName, channelNames, channels } from './channels.js';
import type { JobIssue } from './job-issue.js';
import { isContent, type LogContent } from './log-file.js';
import type { SteadyReading } from './steady.js';

/** The steady readings of a log, with sentences on what was left out of it. */
export interface JobLog {
  readonly steady: readonly SteadyReading[];
  readonly notes: readonly string[];
}

type JobLogResult = { readonly ok: true; readonly log: JobLog } | { readonly ok: false; readonly issues: readonly JobIssue[] };

const required: readonly ChannelName[] = ['time', 'engineSpeed', 'pressureDrop', 'gasTemperature'];
/** A column that may be one of these is asked about: without its answer the job would be another. */
const asked: ReadonlySet<string> = new Set([...required, 'airMassFlow']);
/** What a table that is no log is shown with; its cells are none of a job's business. */
const titlesShown = 12;
const titleLength = 40;
const mostIssues = 10;
/** Samples closer than this are taken as one: neighbours in a log repeat each other. In s. */
const independent = 5;
/** One wrong sample is a dropout; with more than this share of them the signal does not stand still. */
const mostOutliers = 0.25;

const isJobChannel = (name: string): name is ChannelName => Object.hasOwn(channels, name);
const shortTitle = (title: string) => (title.length > titleLength ? `${title.slice(0, titleLength - 1)}…` : title);

function allowedScatter(name: ChannelName, middle: number): number {
  const channel = channels[name];
  return 'scatter' in channel ? Math.max(channel.scatter.floor, channel.scatter.share * Math.abs(middle)) : Number.POSITIVE_INFINITY;
}

function steadyReading(window: SteadyWindow, inLog: ReadonlySet<ChannelName>): SteadyReading {
  const { from, to, samples, values } = window;
  const mean: { -readonly [K in ChannelName]?: number } = {};
  const uncertainty: { -readonly [K in ChannelName]?: number } = {};
  const restless: ChannelName[] = [];
  const lost: ChannelName[] = [];
  for (const name of channelNames) {
    const value = values[name];
    if (value === undefined) {
      if (inLog.has(name)) lost.push(name);
      continue;
    }
    const { deviation, plusMinus, outliers } = value;
    if (deviation > allowedScatter(name, value.mean) / 2 || outliers > mostOutliers * (value.samples + outliers)) restless.push(name);
    mean[name] = value.mean;
    const counted = Math.max(1, Math.min(value.samples, (to - from) / independent));
    // Scatter shrinks in the mean, the step of a signal that stands still does not.
    const step = Math.sqrt(Math.max(0, plusMinus ** 2 - deviation ** 2));
    uncertainty[name] = Math.hypot(deviation / Math.sqrt(counted), step);
  }
  return { from, to, samples, mean, uncertainty, restless, lost };
}

function notesOf({ leftOut, restarts, questions }: LogReading): string[] {
  // Of columns that no job uses it need not speak.
  const cells = leftOut.filter(({ channel }) => channel === undefined || isJobChannel(channel));
  return [
    ...cells.map(({ reason, channel, count, firstLine }) => {
      const what = channel === undefined ? '' : `${channelOf(channel).label}, `;
      return `${what}${count === 1 ? `line ${firstLine}` : `${count} times, first in line ${firstLine}`}: ${reasonText(reason)}`;
    }),
    ...(restarts === 0 ? [] : [`the time started anew ${restarts === 1 ? 'once' : `${restarts} times`}; no stretch reaches across that`]),
    ...questions
      .filter((question) => concerns(question).includes('coolantTemperature'))
      .map((question) => `not used: ${questionText(question)}`),
  ];
}

/** The channels that an answer could give. */
function concerns(question: Question): readonly string[] {
  switch (question.ask) {
    case 'channel':
    case 'unit':
      return question.choices.map(({ channel }) => channel);
    case 'which column':
    case 'wrong values':
    case 'decimal sign':
      return [question.channel];
    case 'clock':
    case 'time':
      return ['time'];
  }
}

function read(content: LogContent, mappings: readonly Mapping[]): LogResult {
  // A sensor that stands still is what the job judges: left out, nothing would be said of it.
  const options = { mappings, keepStill: ['pressureDrop'] } as const;
  return typeof content === 'string' || content instanceof Uint8Array ? readText(content, options) : readGroups(content, options);
}

/**
 * The steady readings of a log of any tool. What its titles leave open is an issue and never guessed, as far as the job would use
 * it; `mappings` hold the answers that were given for logs of that shape.
 */
export function readJobLog(content: LogContent, where: string, mappings: readonly Mapping[] = []): JobLogResult {
  if (!isContent(content)) return { ok: false, issues: [{ code: 'log_unreadable', where, detail: 'it is neither text nor bytes' }] };
  const reading = read(content, mappings);
  if (!reading.ok) return { ok: false, issues: [{ code: 'log_unreadable', where, detail: logProblemText(reading.problem) }] };
  // Signals of a measurement file bring their time along.
  const found = new Set<string>(['time', ...reading.channels.map(({ channel }) => channel)]);
  if (typeof content === 'string' || content instanceof Uint8Array) {
    if (!reading.channels.some(({ channel }) => channel === 'time')) found.delete('time');
  }
  const open = reading.questions.filter((question) => concerns(question).some((channel) => asked.has(channel) && !found.has(channel)));
  const empty = new Set(reading.unused.flatMap(({ column, why }) => (why === 'holds no numbers' ? [column] : [])));
  const titles = reading.titles.slice(0, titlesShown).map((title) => `${shortTitle(title)}${empty.has(title) ? ' (without numbers)' : ''}`);
  const missing = required
    .filter((name) => !found.has(name))
    .map((name): JobIssue => ({ code: 'log_column_missing', where, column: name, found: titles }));
  const questions = open.map((question): JobIssue => ({ code: 'log_question', where, question: questionText(question) }));
  if (missing.length + questions.length > 0) return { ok: false, issues: [...missing, ...questions].slice(0, mostIssues) };
  const inLog = new Set(channelNames.filter((name) => name !== 'time' && found.has(name)));
  return { ok: true, log: { steady: reading.windows.map((window) => steadyReading(window, inLog)), notes: notesOf(reading) } };
}
