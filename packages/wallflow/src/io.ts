import type { Mapping } from '@wallflow/logs';
import type { FileOutcome } from '@wallflow/logs/files';

/** What a command needs of the world, so that tests can give it one. */
export interface Io {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** All of standard input, or undefined when it is a terminal; throws `UnreadableFile` when it does not end in time. */
  readonly readInput: () => Promise<string | undefined>;
  /** The text of a file, undefined when there is none; throws `UnreadableFile` when there is one that cannot be read. */
  readonly readFile: (path: string) => string | undefined;
  /** The same for a file in a folder or below it; throws when a link leads out of there. */
  readonly readFileWithin: (folder: string, name: string) => string | undefined;
  /** The same as bytes; without it logs of a job are read as text. */
  readonly readBytesWithin?: (folder: string, name: string) => Uint8Array | undefined;
  /** The bytes of a file part by part; rejects with the system's error. Without it logs are read whole. */
  readonly readParts?: (path: string) => AsyncIterable<Uint8Array>;
  /** Names of the files in a folder, sorted; undefined for what is no folder. */
  readonly filesIn?: (path: string) => readonly string[] | undefined;
  /** Many logs, several at a time. */
  readonly readLogs?: (
    paths: readonly string[],
    mappings: readonly Mapping[],
    onProgress: (progress: { readonly files: number; readonly bytes: number }) => void,
  ) => Promise<readonly FileOutcome[]>;
  /** Writes over one line of a terminal; absent where there is none. */
  readonly progress?: (text: string) => void;
  /** Makes the folders that are missing; throws the system's error when that cannot be done. */
  readonly writeFile: (path: string, text: string) => void;
}

/** Exit codes: 0 done, 1 the input was refused, 2 the command was used wrongly. */
export type ExitCode = 0 | 1 | 2;

/** The command line itself was wrong; the message says what would be right. */
export class UsageError extends Error {}

/** Read JSON as programs write it, a byte order mark at its start included. */
export function parseJson(text: string): unknown {
  return JSON.parse(text.replace(/^\ufeff/, ''));
}

/** A value as the command line prints it. */
export function json(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}
