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
