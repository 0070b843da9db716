import { AsyncLocalStorage } from 'node:async_hooks';

/** @type {AsyncLocalStorage<{ seconds: number }>} */
const account = new AsyncLocalStorage();

/**
 * Do some work, and count the processor time of every command that it runs to its end. What the work computes in this process is
 * not in it, as two pieces of work may share it.
 *
 * @template T
 * @param {() => Promise<T>} work
 * @returns {Promise<{ result: T, processor: number }>} seconds, of the commands and of all that they started and waited for
 */
export async function countingProcessorTime(work) {
  const count = { seconds: 0 };
  const result = await account.run(count, work);
  return { result, processor: count.seconds };
}

/**
 * Where a command that starts now enters its seconds at its end.
 *
 * @returns {(seconds: number) => void}
 */
export function processorTimeAccount() {
  const count = account.getStore();
  return (seconds) => {
    if (count !== undefined) count.seconds += seconds;
  };
}

/**
 * A command below a shell that writes, at its end, what it used to the fourth stream: Node tells a process what it used itself, and
 * not what its children did.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @returns {readonly [string, readonly string[]]}
 */
export function withProcessorTime(command, args) {
  // The command itself shall not have that stream: what goes on beyond its end would keep it open.
  return ['sh', ['-c', '"$0" "$@" 3>&-; code=$?; times >&3; exit $code', command, ...args]];
}

/**
 * Seconds, user and system, of the children of a shell, out of what its `times` printed: `0m0.00s 0m0.00s` for itself, and a second
 * such line for its children.
 *
 * @param {string} printed
 */
export function processorTimeOf(printed) {
  const [, children = ''] = printed.trim().split('\n');
  return [...children.matchAll(/(\d+)m([\d.,]+)s/g)].reduce(
    (sum, [, minutes, seconds = '']) => sum + 60 * Number(minutes) + Number(seconds.replace(',', '.')),
    0,
  );
}
