import { jobSections } from '../job/description.js';
import { type JobSection, valueAt } from '../job/section.js';
import { upToDate } from '../job/version-1.js';
import type { FormInput } from './job-from-form.js';

function asRows(value: unknown): unknown[] {
  return Array.isArray(value) ? value : [];
}

/** Names of the lists in a group that are sections of their own. */
function listsIn({ place }: JobSection): ReadonlySet<string> {
  const group = place.join('.');
  const inside = jobSections.filter((one) => one.as === 'rows' && one.place.slice(0, -1).join('.') === group);
  return new Set(inside.map((one) => one.place.at(-1) ?? ''));
}

function partFor(section: JobSection, job: unknown): unknown {
  const { as, place, places, noneIsFinding } = section;
  const found = valueAt(job, place);
  switch (as) {
    case 'head': {
      // Text of the head; anything else that a file may hold there is nothing that a field could show.
      const texts = Object.entries(places).map(([name, at]) => [name, valueAt(job, at)] as const);
      return Object.fromEntries(texts.filter(([, text]) => typeof text === 'string'));
    }
    case 'record': {
      if (typeof found !== 'object' || found === null) return found ?? {};
      const lists = listsIn(section);
      return lists.size === 0 ? found : Object.fromEntries(Object.entries(found).filter(([key]) => !lists.has(key)));
    }
    case 'lines':
      if (noneIsFinding && Array.isArray(found) && found.length === 0) return [{ line: 'none' }];
      return asRows(found).flatMap((line) => (typeof line === 'string' ? [{ line }] : []));
    case 'rows':
      return asRows(found);
  }
}

/** What the form shows of a job file of either version; parts that it has no field for are left out. */
export function formFromJob(raw: unknown): FormInput {
  const job = upToDate(raw);
  return Object.fromEntries(jobSections.map((section) => [section.key, partFor(section, job)]));
}
