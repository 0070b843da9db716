import { parseArgs } from 'node:util';
import { visibleText } from '@wallflow/workshop';
import { describe } from './commands/describe.js';
import { findCalculation } from './commands/find.js';
import { job } from './commands/job.js';
import { judge } from './commands/judge.js';
import { list } from './commands/list.js';
import { log } from './commands/log.js';
import { run } from './commands/run.js';
import { sweepCommand } from './commands/sweep.js';
import { commandHelp, help } from './help.js';
import { type ExitCode, type Io, json, UsageError } from './io.js';
import { shownAs } from './shown.js';

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
        map: { type: 'string' },
        can: { type: 'string' },
        system: { type: 'string' },
        locale: { type: 'string' },
        over: { type: 'string' },
        from: { type: 'string' },
        to: { type: 'string' },
        points: { type: 'string' },
        logarithmic: { type: 'boolean', default: false },
        show: { type: 'string' },
        csv: { type: 'boolean', default: false },
        plot: { type: 'boolean', default: false },
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

function showHelp(io: Io, command: string | undefined): ExitCode {
  const text = command === undefined ? help : commandHelp.get(command);
  if (text === undefined) throw new UsageError(`there is no command "${command}"`);
  io.out(text);
  return 0;
}

/** A world in which nothing that came from outside can steer the terminal. */
function safely(io: Io): Io {
  return { ...io, out: (text) => io.out(visibleText(text)), error: (text) => io.error(visibleText(text)) };
}

async function dispatch(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parse(argv);
  const [command, first, ...rest] = positionals;
  if (values.version) {
    io.out(`${version}\n`);
    return 0;
  }
  if (values.help || command === 'help') {
    noMore(command === 'help' ? rest : []);
    return showHelp(io, command === 'help' ? first : command);
  }
  switch (command) {
    case 'list':
      noMore(first === undefined ? [] : [first]);
      return list(io, { json: values.json, subject: values.subject });
    case 'describe':
      noMore(rest);
      return describe(io, findCalculation(first), values.json);
    case 'run':
      return run(io, findCalculation(first), rest, values.json, shownAs(values.system, values.locale));
    case 'sweep':
      return sweepCommand(io, findCalculation(first), rest, values);
    case 'judge':
      return judge(io, first === undefined ? [] : [first, ...rest], values.json);
    case 'job':
      noMore(rest);
      return job(io, first, { json: values.json, out: values.out, can: values.can });
    case 'log':
      noMore(rest);
      return log(io, first, { json: values.json, map: values.map, plot: values.plot, can: values.can });
    default:
      throw new UsageError(command === undefined ? 'name a command' : `there is no command "${command}"`);
  }
}

/** Run a command line. Refused input and wrong usage are answers, not exceptions. */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  try {
    return await dispatch(argv, safely(io));
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    if (argv.includes('--json')) safely(io).out(json({ ok: false, usage: error.message }));
    else safely(io).error(`wallflow: ${error.message}${/[.?!]$/.test(error.message) ? '' : '.'}\n\`wallflow help\` shows what there is.\n`);
    return 2;
  }
}
