import { parseArgs } from 'node:util';
import { describe } from './commands/describe.js';
import { findCalculation } from './commands/find.js';
import { job } from './commands/job.js';
import { list } from './commands/list.js';
import { run } from './commands/run.js';
import { type ExitCode, type Io, json, UsageError } from './io.js';

const help = `wallflow: diesel exhaust-aftertreatment calculations with units

  wallflow list [--subject <subject>]        every calculation
  wallflow describe <id>                     inputs, outputs, cautions, sources
  wallflow run <id> key="value unit" ...     one calculation; or JSON on standard input
  wallflow job <file> [--out <folder>]       a whole workshop job and its job sheet

  --json       machine-readable output, with every command
  --version    the version
Exit codes: 0 done, 1 the input was refused, 2 wrong usage.
`;

const version = '0.1.0';

function parse(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        json: { type: 'boolean', default: false },
        subject: { type: 'string' },
        out: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
        version: { type: 'boolean', default: false },
      },
    });
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}

function noMore(words: readonly string[]): void {
  if (words.length > 0) throw new UsageError(`"${words[0]}" is not expected here`);
}

async function dispatch(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parse(argv);
  const [command, first, ...rest] = positionals;
  if (values.version) {
    io.out(`${version}\n`);
    return 0;
  }
  if (values.help || command === 'help') {
    io.out(help);
    return 0;
  }
  switch (command) {
    case 'list':
      noMore(first === undefined ? [] : [first]);
      return list(io, { json: values.json, subject: values.subject });
    case 'describe':
      noMore(rest);
      return describe(io, findCalculation(first), values.json);
    case 'run':
      return run(io, findCalculation(first), rest, values.json);
    case 'job':
      noMore(rest);
      return job(io, first, { json: values.json, out: values.out });
    default:
      throw new UsageError(command === undefined ? 'name a command' : `there is no command "${command}"`);
  }
}

/** Run a command line. Refused input and wrong usage are answers, not exceptions. */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  try {
    return await dispatch(argv, io);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    if (argv.includes('--json')) io.out(json({ ok: false, usage: error.message }));
    else io.error(`wallflow: ${error.message}.\n\n${help}`);
    return 2;
  }
}
