// npm test: everything that must pass. `npm test -- --only lint,types` runs the named checks and what they need; `--again` those too
// that have passed on exactly these files.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs, stripVTControlCharacters } from 'node:util';
import { checks } from './checks/all.mjs';
import { installedChromium } from './support/chromium.mjs';
import { fingerprint, keptPasses } from './support/kept-passes.mjs';
import { notToRun, runInLanes, withNeeds } from './support/lanes.mjs';
import { root } from './support/root.mjs';

// Two checks at a time keep two processors busy; most checks use one thread.
const lanes = 2;
const mostLines = 150;

const { values } = parseArgs({ options: { only: { type: 'string' }, again: { type: 'boolean', default: false } } });

/** @returns {import('./support/lanes.mjs').Check[]} */
function selected() {
  try {
    return withNeeds(checks, values.only?.split(',') ?? checks.map(({ name }) => name));
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    process.exit(2);
  }
}

/** @param {import('./support/lanes.mjs').Finished} finished */
function report({ name, seconds, processor, passed, failed, note }) {
  const state = failed > 0 ? 'FAIL' : passed > 0 ? 'ok  ' : '-   ';
  const count = passed + failed > 1 ? `${passed} passed${failed > 0 ? `, ${failed} failed` : ''}` : '';
  const remark = [count, note ?? ''].filter((part) => part !== '').join(' · ');
  process.stdout.write(
    `${state} ${name.padEnd(14)}${seconds.toFixed(1).padStart(6)} s ${processor.toFixed(1).padStart(6)} s  ${remark}`.trimEnd(),
  );
  process.stdout.write('\n');
}

/**
 * Show what a failed check printed; of a long text the end, and where the whole of it is.
 *
 * @param {string} name
 * @param {string} output
 */
function explain(name, output) {
  const lines = stripVTControlCharacters(output).trimEnd().split('\n');
  process.stdout.write(`\n── ${name} ${'─'.repeat(60)}\n`);
  if (lines.length > mostLines) {
    const log = join('out', 'test', `${name}.log`);
    mkdirSync(join(root, 'out', 'test'), { recursive: true });
    writeFileSync(join(root, log), `${lines.join('\n')}\n`);
    process.stdout.write(`… ${lines.length - mostLines} lines before these are in ${log}\n`);
  }
  process.stdout.write(`${lines.slice(-mostLines).join('\n')}\n`);
}

/**
 * The processor time of the whole: of the commands, and of this process and its helpers, which are not ended yet.
 *
 * @param {readonly import('./support/lanes.mjs').Finished[]} results
 */
function processorTime(results) {
  const { user, system } = process.cpuUsage();
  return results.reduce((sum, { processor }) => sum + processor, (user + system) / 1e6);
}

process.stdout.write(`${''.padEnd(17)}  time    processor\n`);
const chosen = selected();
const state = fingerprint(root, [installedChromium()]);
const kept = keptPasses(join(root, 'out', 'passed'), state);
const unchanged = notToRun(chosen, (name) => (values.again ? undefined : kept.of(name)));
const known = [...unchanged].map(([name, outcome]) => ({ ...outcome, name, seconds: 0, processor: 0 }));
for (const one of known) report({ ...one, note: [one.note ?? '', 'passed on these very files'].filter(Boolean).join(' · ') });
const ran = await runInLanes(
  chosen.filter(({ name }) => !unchanged.has(name)),
  lanes,
  report,
);
// What changed while the checks ran belongs to neither state.
if (fingerprint(root, [installedChromium()]) === state) for (const one of ran) kept.keep(one.name, one);
const results = [...known, ...ran];
for (const { name, failed, output } of results) if (failed > 0 && output !== undefined) explain(name, output);
const passed = results.reduce((sum, result) => sum + result.passed, 0);
const failed = results.reduce((sum, result) => sum + result.failed, 0);
process.exitCode = failed > 0 ? 1 : 0;
process.stdout.write(`\n${Math.round(processorTime(results))} s of processor time\n`);
process.stdout.write(`${passed} passed, ${failed} failed\n`);
