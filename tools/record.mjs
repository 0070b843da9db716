// Write down what tests compare later states with: the catalogue of texts, and the result of each calculation's example. A result
// that has a record keeps it, so that a changed number asks for a new version; `npm run record -- gas-density` writes that one anew.
import { runInstalled } from './support/run.mjs';

const ids = process.argv.slice(2);
const vitest = ['--run', '--config', 'tests/vitest.config.ts', '--project', 'unit', 'tests/unit/records'];
await runInstalled('vitest', vitest, { env: { WALLFLOW_RECORD: ['new', ...ids].join(',') } });
await runInstalled('biome', ['format', '--config-path=tools', '--write', 'packages/exhaust/src/vocabulary', 'tests/unit/records']);
// What is written only counts for a run that starts after it.
const { code, output } = await runInstalled('vitest', vitest);
process.stdout.write(output);
process.exitCode = code;
