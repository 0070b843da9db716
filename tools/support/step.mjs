/**
 * Do one step of a longer command: a line with its name, then how long it took. When it fails, show what it printed
 * and end the process with 1.
 *
 * @template {import('./run.mjs').RunResult} R
 * @param {string} name
 * @param {() => Promise<R>} work
 * @returns {Promise<R>}
 */
export async function step(name, work) {
  process.stdout.write(`${name} … `);
  const started = performance.now();
  const result = await work();
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  if (result.code === 0) {
    process.stdout.write(`${seconds} s\n`);
    return result;
  }
  process.stdout.write(`failed after ${seconds} s\n\n${result.output}\n`);
  process.exit(1);
}
