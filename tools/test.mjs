// npm test: everything that must pass. `npm test -- --only lint,types` runs the named checks and what they need.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs, stripVTControlCharacters } from 'node:util';
import { checks } from './checks/all.mjs';
import { runInLanes, withNeeds } from './support/lanes.mjs';
import { root } from './support/root.mjs';

// Two checks at a time keep two processors busy; most checks use one thread.
const lanes = 2;
const mostLines = 150;

const { values } = parseArgs({ options: { only: { type: 'string' } } });

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
function report({ name, seconds, passed, failed, note }) {
  const state = failed > 0 ? 'FAIL' : passed > 0 ? 'ok  ' : '-   ';
  const count = passed + failed > 1 ? `${passed} passed${failed > 0 ? `, ${failed} failed` : ''}` : '';
  const remark = [count, note ?? ''].filter((part) => part !== '').join(' · ');
  process.stdout.write(`${state} ${name.padEnd(14)}${seconds.toFixed(1).padStart(6)} s  ${remark}`.trimEnd());
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

const results = await runInLanes(selected(), lanes, report);
for (const { name, failed, output } of results) if (failed > 0 && output !== undefined) explain(name, output);
const passed = results.reduce((sum, result) => sum + result.passed, 0);
const failed = results.reduce((sum, result) => sum + result.failed, 0);
process.exitCode = failed > 0 ? 1 : 0;
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
