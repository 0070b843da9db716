import { type FormInput, lineSections, readingSections, singleSections } from './job-from-form.js';

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

/** What the form shows of a job file; parts that it has no field for are left out. */
export function formFromJob(job: unknown): FormInput {
  const input: Record<string, unknown> = {
    about: [
      defined({
        vehicle: at(job, ['vehicle', 'description']),
        odometer: at(job, ['vehicle', 'odometer']),
        date: at(job, ['date']),
        reference: at(job, ['reference']),
        technician: at(job, ['technician']),
        complaint: at(job, ['complaint']),
      }),
    ],
    closing: [defined({ rootCause: at(job, ['rootCause']), nextCheck: at(job, ['nextCheck']) })],
  };
  for (const [key, path] of Object.entries(singleSections)) input[key] = [at(job, path) ?? {}];
  for (const [key, path] of Object.entries(readingSections)) input[key] = asRows(at(job, path));
  for (const [key, path] of Object.entries(lineSections)) input[key] = asRows(at(job, path)).map((line) => ({ line }));
  return input;
}
