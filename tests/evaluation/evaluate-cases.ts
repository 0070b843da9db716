import { evaluateCase, evaluationVersion } from '@wallflow/workshop/cases';

// One row a line, from the first seed on in steps; `tools/evaluate.mjs` bundles and starts this.
const [from = 1, to = 20, step = 1] = process.argv.slice(2).map(Number);
for (let seed = from; seed <= to; seed += step) {
  process.stdout.write(`${JSON.stringify({ version: evaluationVersion, ...evaluateCase(seed) })}\n`);
}
