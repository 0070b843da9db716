import { countingProcessorTime } from './processor-time.mjs';

/**
 * @typedef {object} Outcome
 * @property {number} passed
 * @property {number} failed
 * @property {string} [note] one line shown beside the result
 * @property {string} [output] shown when something failed
 */

/**
 * @typedef {object} Check
 * @property {string} name
 * @property {readonly string[]} [needs] checks that must have passed before this one starts
 * @property {boolean} [always] run even where a pass is kept
 * @property {() => Promise<Outcome>} run
 */

/**
 * What a check came to, with the time by the clock and the processor time of the commands that it ran, in seconds.
 *
 * @typedef {Outcome & { name: string, seconds: number, processor: number }} Finished
 */

/**
 * The named checks and all that they need, in the order of `checks`.
 *
 * @param {readonly Check[]} checks
 * @param {readonly string[]} names
 * @returns {Check[]}
 */
export function withNeeds(checks, names) {
  const byName = new Map(checks.map((check) => [check.name, check]));
  const wanted = new Set();
  /** @param {string} name */
  const want = (name) => {
    const check = byName.get(name);
    if (check === undefined) throw new Error(`no check is called ${name}; there are: ${[...byName.keys()].join(', ')}`);
    if (wanted.has(name)) return;
    wanted.add(name);
    for (const need of check.needs ?? []) want(need);
  };
  for (const name of names) want(name);
  return checks.filter((check) => wanted.has(check.name));
}

/**
 * The checks of which a kept pass will do. One that another needs is run again with it, as what it made may be gone or of another
 * state by now.
 *
 * @param {readonly Check[]} checks
 * @param {(name: string) => Outcome | undefined} kept
 * @returns {Map<string, Outcome>}
 */
export function notToRun(checks, kept) {
  /** @type {Map<string, Outcome>} */
  const left = new Map();
  for (const check of checks) {
    const outcome = check.always === true ? undefined : kept(check.name);
    if (outcome !== undefined) left.set(check.name, outcome);
  }
  /** @param {Check} check */
  const run = ({ needs = [] }) => {
    for (const need of needs) {
      left.delete(need);
      const needed = checks.find(({ name }) => name === need);
      if (needed !== undefined) run(needed);
    }
  };
  for (const check of checks) if (!left.has(check.name)) run(check);
  return left;
}

/**
 * @param {Check} check
 * @returns {Promise<Outcome>}
 */
async function settle(check) {
  try {
    return await check.run();
  } catch (error) {
    return { passed: 0, failed: 1, output: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

/**
 * Run all checks, a few at a time. A check whose needs failed is not run and counts as failed.
 *
 * @param {readonly Check[]} checks
 * @param {number} lanes
 * @param {(finished: Finished) => void} report
 * @returns {Promise<Finished[]>}
 */
export async function runInLanes(checks, lanes, report) {
  const waiting = [...checks];
  /** @type {Map<string, Finished>} */
  const finished = new Map();
  /** @type {Set<Promise<void>>} */
  const running = new Set();

  /** @param {Finished} result */
  const finish = (result) => {
    finished.set(result.name, result);
    report(result);
  };
  /** @param {Check} check */
  const failedNeed = (check) => (check.needs ?? []).find((need) => (finished.get(need)?.failed ?? 0) > 0);
  /** @param {Check} check */
  const ready = (check) => (check.needs ?? []).every((need) => finished.has(need));

  while (waiting.length > 0 || running.size > 0) {
    const next = waiting.findIndex((check) => failedNeed(check) !== undefined || (running.size < lanes && ready(check)));
    const check = next < 0 ? undefined : waiting.splice(next, 1)[0];
    if (check === undefined) {
      if (running.size === 0) throw new Error(`these checks wait for each other: ${waiting.map(({ name }) => name).join(', ')}`);
      await Promise.race(running);
      continue;
    }
    const need = failedNeed(check);
    if (need !== undefined) {
      finish({ name: check.name, seconds: 0, processor: 0, passed: 0, failed: 1, note: `not run, because ${need} failed` });
      continue;
    }
    const started = performance.now();
    const job = countingProcessorTime(() => settle(check)).then(({ result, processor }) => {
      running.delete(job);
      finish({ ...result, name: check.name, seconds: (performance.now() - started) / 1000, processor });
    });
    running.add(job);
  }
  return checks.flatMap(({ name }) => finished.get(name) ?? []);
}
