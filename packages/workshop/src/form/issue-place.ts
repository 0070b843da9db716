import type { Path } from '@wallflow/calculation';
import { jobSections } from '../job/description.js';
import type { JobIssue } from '../job/job-issue.js';
import type { JobSection, Place } from '../job/section.js';

const starts = (path: Path, place: Place) => place.length <= path.length && place.every((part, index) => part === path[index]);

/** The sections whose place a path leads to, the closest first. */
function sectionAt(path: Path): JobSection | undefined {
  const inside = jobSections.filter(({ as, place }) => as !== 'head' && starts(path, place));
  return [...inside].sort((a, b) => b.place.length - a.place.length)[0];
}

function inSection({ key, place }: JobSection, path: Path): Path {
  const rest = path.slice(place.length);
  if (rest.length === 0) return [key];
  return [key, ...rest];
}

/** A text of the head, by its own place; what stands beside it in the file belongs to the first text there. */
function inHead(path: Path): Path | undefined {
  const texts = jobSections.flatMap(({ key, places }) => Object.entries(places).map(([name, at]) => ({ key, name, at: at as Place })));
  const found = texts.find(({ at }) => starts(path, at)) ?? texts.find(({ at }) => at.length > 1 && at[0] === path[0]);
  return found === undefined ? undefined : [found.key, found.name];
}

/** A group of sections, such as the readings of both sides: its first one. */
function inGroup(path: Path): Path | undefined {
  const found = jobSections.find(({ as, place }) => as !== 'head' && place[0] === path[0] && path.length === 1);
  return found === undefined ? undefined : [found.key];
}

/** Where in the form the input stands that a problem is about; undefined where it belongs to no single one. */
export function placeInForm(problem: JobIssue): Path | undefined {
  if (problem.code !== 'input') return undefined;
  const { where, issue } = problem;
  // The air of the day enters the calculations under its full name.
  if (issue.path[0] === 'ambientPressure') return ['ambient', 'pressure'];
  const path: Path = where === 'job file' ? issue.path : [...where.split('.'), ...issue.path];
  if (path.length === 0) return undefined;
  const section = sectionAt(path);
  return section === undefined ? (inHead(path) ?? inGroup(path)) : inSection(section, path);
}
