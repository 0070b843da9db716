import type { Path } from '@wallflow/calculation';
import type { JobIssue } from '../job/job-issue.js';
import { readingSections, rowSections, singleSections } from './job-from-form.js';

const about: Readonly<Record<string, string>> = { description: 'vehicle', odometer: 'odometer' };
const heads = new Set(['title', 'date', 'reference', 'technician', 'complaint']);
const closings = new Set(['rootCause', 'nextCheck']);

function ofJobFile([first, ...rest]: Path): Path | undefined {
  if (first === 'vehicle') return ['about', 0, about[String(rest[0])] ?? 'vehicle'];
  const whole = [first, ...rest].join('.');
  for (const [key, path] of Object.entries(singleSections)) if (path.join('.') === whole) return [key];
  if (first === 'ambient') return ['ambient', 0, ...rest];
  if (first === 'readings') return [rest[0] === 'after' ? 'readingsAfter' : 'readingsBefore'];
  if (heads.has(String(first))) return ['about', 0, String(first)];
  return closings.has(String(first)) ? ['closing', 0, String(first)] : undefined;
}

/** Where in the form the input stands that a problem is about; undefined where it belongs to no single one. */
export function placeInForm(problem: JobIssue): Path | undefined {
  if (problem.code !== 'input') return undefined;
  const { where, issue } = problem;
  if (where === 'job file') return ofJobFile(issue.path);
  // The air of the day enters the calculations under its full name.
  if (issue.path[0] === 'ambientPressure') return ['ambient', 0, 'pressure'];
  for (const [key, path] of Object.entries(readingSections)) if (path.join('.') === where) return [key, ...issue.path];
  for (const [key, path] of Object.entries(rowSections)) {
    if (path.slice(0, -1).join('.') === where && issue.path[0] === path.at(-1)) return [key, ...issue.path.slice(1)];
  }
  for (const [key, path] of Object.entries(singleSections)) if (path.join('.') === where) return [key, 0, ...issue.path];
  return undefined;
}
