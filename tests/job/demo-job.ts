import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type JobResult, jobAnnex, jobIssueText, jobSheet, runJob, type Sheet } from '@wallflow/workshop';

const folder = fileURLToPath(new URL('../../examples/demo-job/', import.meta.url));

export function demoFile(name: string): string | undefined {
  try {
    return readFileSync(join(folder, name), 'utf8');
  } catch {
    return undefined;
  }
}

// biome-ignore lint/suspicious/noExplicitAny: tests change the JSON in ways that its type forbids
export function demoJob(): any {
  return JSON.parse(demoFile('job.json') ?? '');
}

export function resultOf(raw: unknown, readFile = demoFile): JobResult {
  const outcome = runJob(raw, readFile);
  if (!outcome.ok) throw new Error(outcome.issues.map(jobIssueText).join('\n'));
  return outcome.result;
}

let ofDemo: JobResult | undefined;

/** The result of the demo job as it stands, worked out once; nobody writes into it. */
export function demoResult(): JobResult {
  ofDemo ??= resultOf(demoJob());
  return ofDemo;
}

/** Sheet and annex as one: everything that a job says to a person. */
export function paperOf(result: JobResult): Sheet {
  const sheet = jobSheet(result);
  return { title: sheet.title, blocks: [...sheet.blocks, ...jobAnnex(result).blocks] };
}
