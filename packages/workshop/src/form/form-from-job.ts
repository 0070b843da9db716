import { codeSections, type FormInput, lineSections, readingSections, rowSections, singleSections } from './job-from-form.js';

function at(record: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (inner, key) => (typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key) ? (inner as FormInput)[key] : undefined),
    record,
  );
}

function asRows(value: unknown): unknown[] {
  return Array.isArray(value) ? value : [];
}

function defined(record: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}

/** Text of the head; anything else that a file may hold there is nothing that a field could show. */
function textAt(job: unknown, path: readonly string[]): string | undefined {
  const found = at(job, path);
  return typeof found === 'string' ? found : undefined;
}

/** What the form shows of a job file; parts that it has no field for are left out. */
export function formFromJob(job: unknown): FormInput {
  const input: Record<string, unknown> = {
    about: [
      defined({
        title: textAt(job, ['title']),
        vehicle: textAt(job, ['vehicle', 'description']),
        odometer: textAt(job, ['vehicle', 'odometer']),
        date: textAt(job, ['date']),
        reference: textAt(job, ['reference']),
        technician: textAt(job, ['technician']),
        complaint: textAt(job, ['complaint']),
      }),
    ],
    closing: [defined({ rootCause: textAt(job, ['rootCause']), nextCheck: textAt(job, ['nextCheck']) })],
  };
  for (const [key, path] of Object.entries(singleSections)) input[key] = [at(job, path) ?? {}];
  for (const [key, path] of Object.entries(rowSections)) {
    input[key] = asRows(at(job, path));
    // The list inside the record is a section of its own.
    const inner = path.at(-1);
    for (const [single, outer] of Object.entries(singleSections)) {
      if (inner === undefined || outer.join('.') !== path.slice(0, -1).join('.')) continue;
      const { [inner]: _, ...rest } = (at(job, outer) ?? {}) as Record<string, unknown>;
      input[single] = [rest];
    }
  }
  for (const [key, path] of Object.entries(readingSections)) input[key] = asRows(at(job, path));
  for (const [key, path] of Object.entries(lineSections)) {
    const found = at(job, path);
    const none = codeSections.has(key) && Array.isArray(found) && found.length === 0;
    input[key] = none ? [{ line: 'none' }] : asRows(found).flatMap((line) => (typeof line === 'string' ? [{ line }] : []));
  }
  return input;
}
