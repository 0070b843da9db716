// Writes the logs of the demo job: npx esbuild examples/demo-job/write-logs.ts --bundle --platform=node --format=esm
// --conditions=@wallflow/source | node --input-type=module - examples/demo-job
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoLogs } from './make-logs.js';

const folder = process.argv[2] ?? '.';
for (const [name, text] of Object.entries(demoLogs())) writeFileSync(join(folder, name), text);
