/** @typedef {import('./lanes.mjs').Outcome} Outcome */

/**
 * A command that either succeeds or fails counts as one.
 *
 * @param {import('./run.mjs').RunResult} result
 * @returns {Outcome}
 */
export function fromCommand(result) {
  return result.code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, output: result.output };
}

/**
 * A list of findings counts as one check, which passes when the list is empty.
 *
 * @param {readonly string[]} findings
 * @returns {Outcome}
 */
export function fromFindings(findings) {
  return findings.length === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, output: `${findings.join('\n')}\n` };
}
