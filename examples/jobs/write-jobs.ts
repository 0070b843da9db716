// Writes the files of the example jobs: npx esbuild examples/jobs/write-jobs.ts --bundle --platform=node --format=esm
// --conditions=@wallflow/source | node --input-type=module - examples/jobs
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exampleJobs } from './make-jobs.js';

const folder = process.argv[2] ?? '.';
for (const { story, files } of exampleJobs()) {
  mkdirSync(join(folder, story.name), { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, story.name, name), text);
}
