/** What a command needs of the world, so that tests can give it one. */
export interface Io {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** All of standard input, or undefined when it is a terminal. */
  readonly readInput: () => Promise<string | undefined>;
  readonly readFile: (path: string) => string | undefined;
  readonly writeFile: (path: string, text: string) => void;
}

/** Exit codes: 0 done, 1 the input was refused, 2 the command was used wrongly. */
export type ExitCode = 0 | 1 | 2;

/** The command line itself was wrong; the message says what would be right. */
export class UsageError extends Error {}

export function json(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}
