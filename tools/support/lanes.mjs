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
 * @property {() => Promise<Outcome>} run
 */

/** @typedef {Outcome & { name: string, seconds: number }} Finished */

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
      finish({ name: check.name, seconds: 0, passed: 0, failed: 1, note: `not run, because ${need} failed` });
      continue;
    }
    const started = performance.now();
    const job = settle(check).then((outcome) => {
      running.delete(job);
      finish({ ...outcome, name: check.name, seconds: (performance.now() - started) / 1000 });
    });
    running.add(job);
  }
  return checks.flatMap(({ name }) => finished.get(name) ?? []);
}
