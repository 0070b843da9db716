import type { Mapping } from '@wallflow/logs';
import { usableMappings } from '../logs/usable-mappings.js';
import { nameOfAfter } from './log-names.js';
import type { LogFile, Logs } from './messages.js';

/** What the chosen files hold: a job file, logs, or why they cannot be read. */
export interface OpenedFiles {
  readonly job?: unknown;
  readonly logs: Logs;
  /** The answers that the job file keeps for its logs. */
  readonly mappings?: readonly Mapping[];
  readonly problem?: string;
}

/** Files of the first version are read like those of today. */
const formats: ReadonlySet<unknown> = new Set(['wallflow-job/1', 'wallflow-job/2']);

function isJob(value: unknown): value is { readonly logs?: Readonly<Record<string, unknown>> } {
  return typeof value === 'object' && value !== null && formats.has((value as { format?: unknown }).format);
}

/** A chosen file, with when it was last written. */
interface Chosen extends LogFile {
  readonly written: number;
}

/** A log that a job names may lie in a folder; a browser tells the name alone. */
const ownName = (path: unknown) => (typeof path === 'string' ? (path.split(/[/\\]/).at(-1) ?? '') : '');

const sides = ({ before, after }: { readonly before?: Chosen | undefined; readonly after?: Chosen | undefined }): Logs => ({
  ...(before === undefined ? {} : { before: { name: before.name, text: before.text } }),
  ...(after === undefined ? {} : { after: { name: after.name, text: after.text } }),
});

/**
 * Two logs of one name are two logs, since many tools export under one name for ever. Nothing in them says which was read before
 * the work; the older file was, as a rule. Undefined where the names alone tell the two apart.
 */
function twins(before: string, after: string, files: readonly Chosen[]): Omit<OpenedFiles, 'job'> | undefined {
  const alike = files.filter(({ name }) => name === before);
  const renamed = after === nameOfAfter(before) && alike.length > 1 && !files.some(({ name }) => name === after);
  if (before === '' || alike.length === 0 || !(after === before || renamed)) return undefined;
  if (alike.length === 1)
    return {
      logs: {},
      problem: `The job names two logs ${before}, and only one of them was chosen. Choose both together with the job file.`,
    };
  const [first, second, third] = alike.toSorted((one, other) => one.written - other.written);
  if (third !== undefined || first?.written === second?.written)
    return { logs: {}, problem: `Nothing tells the logs named ${before} apart: open each of them at its own side.` };
  return {
    logs: sides({ before: first, after: second }),
    problem: `Two logs are named ${before}: the older file is taken as read before the work, the newer one as read after it. Check that this is right.`,
  };
}

/** Read a job file with the logs that it names; the job names which log is of before and which of after. */
export async function openFiles(files: readonly File[]): Promise<OpenedFiles> {
  const texts: Chosen[] = await Promise.all(
    files.map(async (file) => ({ name: file.name, text: await file.text(), written: file.lastModified })),
  );
  const job = texts.find(({ name }) => name.toLowerCase().endsWith('.json'));
  if (job === undefined) return { logs: {}, problem: 'None of these files is a job file; it ends in .json.' };
  let parsed: unknown;
  try {
    parsed = JSON.parse(job.text);
  } catch {
    return { logs: {}, problem: `${job.name} is not JSON.` };
  }
  if (!isJob(parsed)) return { logs: {}, problem: `${job.name} is no job file: its format is not wallflow-job/2.` };
  const named = parsed.logs ?? {};
  const mappings = usableMappings(named.mappings);
  const logs = texts.filter((text) => text !== job);
  const alike = twins(ownName(named.before), ownName(named.after), logs);
  if (alike !== undefined) return { job: parsed, mappings, ...alike };
  const found = (side: string) => logs.find(({ name }) => name === ownName(named[side]));
  const missing = ['before', 'after'].filter((side) => named[side] !== undefined && found(side) === undefined);
  return {
    job: parsed,
    mappings,
    logs: sides({ before: found('before'), after: found('after') }),
    ...(missing.length === 0
      ? {}
      : { problem: `Choose the logs together with the job file: ${missing.map((side) => String(named[side])).join(', ')} is missing.` }),
  };
}
