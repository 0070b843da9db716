import type { LogFile, Logs } from './messages.js';

/** What the chosen files hold: a job file, logs, or why they cannot be read. */
export interface OpenedFiles {
  readonly job?: unknown;
  readonly logs: Logs;
  readonly problem?: string;
}

function isJob(value: unknown): value is { readonly logs?: Readonly<Record<string, unknown>> } {
  return typeof value === 'object' && value !== null && (value as { format?: unknown }).format === 'wallflow-job/1';
}

/** Read a job file with the logs that it names; the job names which log is of before and which of after. */
export async function openFiles(files: readonly File[]): Promise<OpenedFiles> {
  const texts: LogFile[] = await Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() })));
  const job = texts.find(({ name }) => name.toLowerCase().endsWith('.json'));
  if (job === undefined) return { logs: {}, problem: 'None of these files is a job file; it ends in .json.' };
  let parsed: unknown;
  try {
    parsed = JSON.parse(job.text);
  } catch {
    return { logs: {}, problem: `${job.name} is not JSON.` };
  }
  if (!isJob(parsed)) return { logs: {}, problem: `${job.name} is no job file: its format is not wallflow-job/1.` };
  const named = parsed.logs ?? {};
  const found = (side: string) => texts.find(({ name }) => name === named[side]);
  const missing = Object.values(named).filter((name) => !texts.some((text) => text.name === name));
  const [before, after] = [found('before'), found('after')];
  return {
    job: parsed,
    logs: { ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) },
    ...(missing.length === 0 ? {} : { problem: `Choose the logs together with the job file: ${missing.join(', ')} is missing.` }),
  };
}
