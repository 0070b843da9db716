import { type AnyCalculation, subjects } from '@wallflow/calculation';
import { registry } from '../index.js';
import { type ExitCode, type Io, json, UsageError } from '../io.js';

interface ListOptions {
  readonly json: boolean;
  readonly subject: string | undefined;
}

function entry({ id, title, subject, version, spec }: AnyCalculation) {
  return { id, title, subject, version, purpose: spec.purpose };
}

/** `wallflow list`: every calculation, by subject. */
export function list(io: Io, options: ListOptions): ExitCode {
  if (options.subject !== undefined && !(subjects as readonly string[]).includes(options.subject)) {
    throw new UsageError(`"${options.subject}" is not a subject; use one of ${subjects.join(', ')}`);
  }
  const chosen = registry.all.filter(({ subject }) => options.subject === undefined || subject === options.subject);
  if (options.json) {
    io.out(json(chosen.map(entry)));
    return 0;
  }
  for (const subject of subjects) {
    const group = chosen.filter((calculation) => calculation.subject === subject);
    if (group.length === 0) continue;
    const column = Math.max(...group.map(({ id }) => id.length)) + 2;
    io.out(`${subject}\n${group.map(({ id, title }) => `  ${id.padEnd(column)}${title}\n`).join('')}\n`);
  }
  return 0;
}
