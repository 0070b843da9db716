import type { SignalGroup } from '@wallflow/logs';
import type { JobIssue } from './job-issue.js';

/** What a log holds: its text, its bytes in any encoding, or the signals of a measurement file. */
export type LogContent = string | Uint8Array | readonly SignalGroup[];

/**
 * Gives what a file holds that the job names, or undefined when there is none. The side tells two files of one name apart, where
 * they do not lie in one folder.
 */
export type ReadFile = (name: string, side: 'before' | 'after') => LogContent | undefined;

/** Thrown by a reader to say in words why a file is not read: "it is a folder". Of any other error nothing is shown. */
export class UnreadableFile extends Error {
  override name = 'UnreadableFile';
}

type LogFile = { readonly ok: true; readonly content: LogContent } | { readonly ok: false; readonly issues: readonly JobIssue[] };

/** Whether a name stays in the folder of the job: neither an absolute path nor one that climbs out. */
function staysInside(name: string): boolean {
  return !/^[/\\]|^[a-z]:|\0/i.test(name) && !name.split(/[/\\]/).includes('..');
}

/** Whether what a caller gave is a log's content at all. */
export function isContent(content: unknown): content is LogContent {
  if (typeof content === 'string' || content instanceof Uint8Array) return true;
  return (
    Array.isArray(content) && content.every((group) => typeof group === 'object' && group !== null && 'time' in group && 'signals' in group)
  );
}

function refuse(where: string, detail: string): LogFile {
  return { ok: false, issues: [{ code: 'log_unreadable', where, detail }] };
}

/** Ask the caller's reader for a log. What it throws, or gives in place of text, is an answer about the file, not a fault of the job. */
export function readLogFile(name: string, side: 'before' | 'after', readFile: ReadFile): LogFile {
  if (!staysInside(name)) return refuse(name, 'a log lies in the folder of the job, and its name may not lead out of there');
  let content: unknown;
  try {
    content = readFile(name, side);
  } catch (error) {
    return refuse(name, error instanceof UnreadableFile ? error.message : 'the file could not be opened');
  }
  if (content === undefined || content === null) return refuse(name, 'there is no such file beside the job');
  if (isContent(content)) return { ok: true, content };
  return refuse(name, 'its content was given neither as text nor as bytes');
}
