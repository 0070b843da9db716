import { type Issue, issueText } from '@wallflow/calculation';
import { getKind } from '@wallflow/units';
import type { QuantityFieldData, UnitOffer } from '../data/types.js';
import { splitNumber, symbolOf } from './unit-text.js';

type UnitIssue = Extract<Issue, { candidates: readonly string[] }> & { readonly code: 'unknown_unit' | 'ambiguous_unit' | 'missing_unit' };

function asksForUnit(issue: Issue): issue is UnitIssue {
  return issue.code === 'unknown_unit' || issue.code === 'ambiguous_unit' || issue.code === 'missing_unit';
}

/** The sentence of an issue with units as the select shows them, not as programs call them. */
export function issueTextFor(field: QuantityFieldData | undefined, issue: Issue): string {
  if (field === undefined || !('candidates' in issue)) return issueText(issue);
  return issueText({ ...issue, candidates: issue.candidates.map((unit) => symbolOf(field.kind, unit)) });
}

function offerOf(field: QuantityFieldData, issue: UnitIssue, unit: string): UnitOffer | undefined {
  const given = String(issue.given);
  // Parts of a mix are offered whole: "1:4" is not a unit.
  if (!getKind(field.kind)?.units.includes(unit as never)) return { label: unit, text: unit, unit: field.unit };
  const split = splitNumber(given);
  if (split === undefined) return undefined;
  const typed = 'unit' in issue ? issue.unit : '';
  if (split.unit !== typed) return { label: given.replace(typed, symbolOf(field.kind, unit)), text: given.replace(typed, unit), unit };
  return { label: `${split.number} ${symbolOf(field.kind, unit)}`, text: split.number, unit };
}

/**
 * What the user may have meant where the unit cannot be told, to be taken at one tap. A unit of another kind gets no
 * offer: the reading then belongs into another field rather than under another unit.
 */
export function unitOffers(field: QuantityFieldData | undefined, issue: Issue): UnitOffer[] {
  if (field === undefined || !asksForUnit(issue) || typeof issue.given !== 'string') return [];
  return issue.candidates.flatMap((unit) => offerOf(field, issue, unit) ?? []);
}
