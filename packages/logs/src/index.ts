/**
 * Logs of engine and exhaust: columns understood, cells read fast, faults left out and counted, steady windows.
 *
 * @packageDocumentation
 */
export type { Channel } from './channels/channel.js';
export { type ChannelName, channelNames, channelOf, channels, isChannelName } from './channels/channels.js';
export type { Batch } from './clean/cleaner.js';
export { type LeftOut, type LeftOutReason, reasonText } from './clean/left-out.js';
export {
  type ColumnAnswer,
  checkMapping,
  type Mapping,
  type MappingProblem,
  type MappingResult,
  makeMapping,
  mappingFor,
  parseMapping,
} from './mapping/mapping.js';
export { type LogData, logData } from './read/data.js';
export { readGroups, type SignalGroup } from './read/from-groups.js';
export { type Sureness, shown } from './read/plan.js';
export type { Choice, Question } from './read/question.js';
export { questionText } from './read/question-text.js';
export { type LogOptions, LogReader, readLog } from './read/reader.js';
export { type ChannelReading, type LogProblem, type LogReading, type LogResult, logProblemText } from './read/reading.js';
export { readLogStream, type StreamOptions } from './read/stream.js';
export { type SteadyRule, usualRule } from './steady/rule.js';
export type { SteadyValue, SteadyWindow } from './steady/windows.js';
export type { FitDefinition, LogEvent, SumsDefinition } from './sums/definition.js';
export type { ExactSum } from './sums/exact-sum.js';
export { type ChannelStatistics, type FitStatistics, finishSums, quantileOf, type SumsResult } from './sums/finish.js';
export {
  addBatch,
  addEvent,
  addFitRow,
  addValue,
  type ChannelSums,
  type FitSums,
  type HistogramSums,
  type MergeResult,
  mergeSums,
  type PartialSums,
  type SumsProblem,
  startSums,
} from './sums/partial-sums.js';
export type { OtherFile } from './text/encoding.js';
