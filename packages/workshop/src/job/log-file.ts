import type { JobIssue } from './job-issue.js';

/**
 * Gives the text of a file that the job names, or undefined when there is none. The side tells two files of one name apart, where
 * they do not lie in one folder.
 */
export type ReadFile = (name: string, side: 'before' | 'after') => string | undefined;

/** Thrown by a reader to say in words why a file is not read: "it is a folder". Of any other error nothing is shown. */
export class UnreadableFile extends Error {
  override name = 'UnreadableFile';
}

type LogText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly issues: readonly JobIssue[] };

/** Whether a name stays in the folder of the job: neither an absolute path nor one that climbs out. */
function staysInside(name: string): boolean {
  return !/^[/\\]|^[a-z]:|\0/i.test(name) && !name.split(/[/\\]/).includes('..');
}

function refuse(where: string, detail: string): LogText {
  return { ok: false, issues: [{ code: 'log_unreadable', where, detail }] };
}

/** Ask the caller's reader for a log. What it throws, or gives in place of text, is an answer about the file, not a fault of the job. */
export function readLogFile(name: string, side: 'before' | 'after', readFile: ReadFile): LogText {
  if (!staysInside(name)) return refuse(name, 'a log lies in the folder of the job, and its name may not lead out of there');
  let text: unknown;
  try {
    text = readFile(name, side);
  } catch (error) {
    return refuse(name, error instanceof UnreadableFile ? error.message : 'the file could not be opened');
  }
  if (text === undefined || text === null) return refuse(name, 'there is no such file beside the job');
  return typeof text === 'string' ? { ok: true, text } : refuse(name, 'its content was not given as text');
}
