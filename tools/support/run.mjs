import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { processorTimeAccount, processorTimeOf, withProcessorTime } from './processor-time.mjs';
import { root } from './root.mjs';

const onWindows = process.platform === 'win32';

/**
 * @typedef {object} RunResult
 * @property {number} code exit code; 127 when the command could not be started
 * @property {string} stdout
 * @property {string} output standard output and standard error in the order in which they came
 */

/**
 * Run a command to its end and keep what it prints. Nothing is thrown for a failing command.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd?: string, env?: NodeJS.ProcessEnv, input?: string }} [options]
 * @returns {Promise<RunResult>}
 */
export function run(command, args, options = {}) {
  const { FORCE_COLOR: _, ...inherited } = process.env;
  return new Promise((resolve) => {
    const [file, words] = onWindows ? [command, args] : withProcessorTime(command, args);
    const child = spawn(file, words, {
      cwd: options.cwd ?? root,
      env: { ...inherited, NO_COLOR: '1', ...options.env },
      shell: onWindows,
      stdio: ['pipe', 'pipe', 'pipe', 'pipe'],
    });
    const charge = processorTimeAccount();
    let times = '';
    let stdout = '';
    let output = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      stdout += text;
      output += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      output += text;
    });
    /** @type {import('node:stream').Readable} */ (child.stdio[3]).setEncoding('utf8').on('data', (text) => {
      times += text;
    });
    child.on('error', (error) => resolve({ code: 127, stdout, output: `${output}${error.message}\n` }));
    child.on('close', (code) => {
      charge(processorTimeOf(times));
      resolve({ code: code ?? 1, stdout, output });
    });
    child.stdin.on('error', () => {});
    child.stdin.end(options.input ?? '');
  });
}

/**
 * Run a tool that the workspace has installed.
 *
 * @param {string} name
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export function runInstalled(name, args, options) {
  return run(join(root, 'node_modules', '.bin', name), args, options);
}
