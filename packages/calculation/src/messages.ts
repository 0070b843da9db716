import { kindLabel } from '@wallflow/units';
import { givenText, shortName } from './given-data.js';
import { type Issue, type Path, pathText, type RecordPart } from './issue.js';
import { perStrokeText } from './per-stroke.js';

function listed(candidates: readonly string[], most = 6): string {
  return candidates.length > most ? `${candidates.slice(0, most).join(', ')}, …` : candidates.join(', ');
}

function where(path: Path): string {
  return path.length === 0 ? 'the input' : pathText(path.map((part) => (typeof part === 'string' ? shortName(part) : part)));
}

/** Labels of the inputs in question where they are known, otherwise their places as they were written. */
function names({ labels }: Issue, paths: readonly Path[]): readonly string[] {
  return labels ?? paths.map(where);
}

/** `a`, `a and b`, `a, b and c`. */
function together(all: readonly string[]): string {
  const last = all.at(-1) ?? '';
  return all.length < 2 ? last : `${all.slice(0, -1).join(', ')} and ${last}`;
}

/** A reason that someone else wrote, closed with one stop whether or not it brought its own. */
function closed(reason: string): string {
  return /[.!?]$/.test(reason) ? reason : `${reason}.`;
}

const numberReasons: Readonly<Record<string, string>> = {
  empty: 'nothing was typed',
  too_long: 'it is too long',
  control_character: 'it contains a control character',
  ambiguous_separator:
    'its comma or point before three digits may separate thousands or decimals; write it without thousands separators, or with one more decimal',
  not_finite: 'it is too large or not a finite number',
  too_small: 'it is too close to zero to be kept',
  negative_uncertainty: 'an uncertainty is never negative',
};

/** The part of a record that an issue is about, or all of what was given. */
function partOf(given: unknown, part: RecordPart | undefined): unknown {
  return part === undefined || typeof given !== 'object' || given === null ? given : (given as Partial<Record<RecordPart, unknown>>)[part];
}

/** One English sentence for an issue: the field, what was given, what would be right. */
export function issueText(issue: Issue): string {
  const name = issue.label ?? where(issue.path);
  switch (issue.code) {
    case 'missing_input':
      if (issue.paths !== undefined) return `Enter either ${names(issue, issue.paths).join(' or ')}.`;
      return `${name} is missing${issue.example === undefined ? '' : `; for example ${issue.example}`}.`;
    case 'unknown_input':
      return `"${name}" is not an input here${issue.candidates.length === 0 ? '.' : `; did you mean ${issue.candidates.map((one) => `"${one}"`).join(' or ')}?`}`;
    case 'wrong_type':
      return `${name}: ${givenText(issue.given)} is not ${issue.expected}${issue.example === undefined ? '' : `; for example ${issue.example}`}.`;
    case 'not_a_number': {
      const reason = issue.reason === undefined ? undefined : numberReasons[issue.reason];
      const example = issue.example === undefined ? '' : `; for example ${issue.example}`;
      const what = issue.part === undefined ? 'a number with a unit' : 'a number';
      return `${name}: ${givenText(partOf(issue.given, issue.part))} is not ${what}${reason === undefined ? '' : ` (${reason})`}${example}.`;
    }
    case 'missing_unit':
      return `${name}: ${givenText(issue.part === undefined ? issue.given : partOf(issue.given, 'value'))} has no unit; use one of ${listed(issue.candidates)}.`;
    case 'unknown_unit': {
      const perStroke = perStrokeText(issue.unit);
      if (perStroke !== undefined) return `${name}: "${shortName(issue.unit)}" ${perStroke}`;
      return `${name}: the unit "${shortName(issue.unit)}" is not known${issue.candidates.length === 0 ? '' : `; did you mean ${listed(issue.candidates)}?`}`;
    }
    case 'ambiguous_unit':
      return `${name}: "${shortName(issue.unit)}" can mean more than one unit; write one of ${listed(issue.candidates)}.`;
    case 'wrong_kind':
      return `${name}: "${shortName(issue.unit)}" is not a unit of ${kindLabel(issue.expected)}; use one of ${listed(issue.candidates)}.`;
    case 'out_of_range': {
      const relation =
        issue.bound === 'min' ? (issue.limit.inclusive ? 'at least' : 'more than') : issue.limit.inclusive ? 'at most' : 'less than';
      return `${name}: ${givenText(issue.given)} is out of range; it must be ${relation} ${issue.limit.text}.`;
    }
    case 'not_a_choice':
      return `${name}: ${givenText(issue.given)} is not a choice; use one of ${listed(issue.candidates, 20)}.`;
    case 'list_length':
      return `${name} has ${issue.given} entries; it needs at ${issue.bound === 'min' ? 'least' : 'most'} ${issue.limit}.`;
    case 'inconsistent_inputs':
      if (issue.paths.length < 2) return `${together(names(issue, issue.paths))}: ${closed(issue.reason)}`;
      return `${together(names(issue, issue.paths))} contradict each other: ${closed(issue.reason)}`;
    case 'no_solution':
      return `No result: ${closed(issue.reason)}`;
  }
}
