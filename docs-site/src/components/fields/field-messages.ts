import type { IssueView, NoteView, UnitOffer } from '../../data/types.js';
import type { FieldMessages } from './fields-props.js';

/** Messages by field. That a field is empty is said only after the user has left it. */
export function fieldMessages(issues: readonly IssueView[], notes: readonly NoteView[], touched: ReadonlySet<string>): FieldMessages {
  const errors = new Map<string, string>();
  const offers = new Map<string, readonly UnitOffer[]>();
  const warnings = new Map<string, string>();
  for (const issue of issues) {
    for (const field of issue.fields) {
      if (issue.code === 'missing_input' && !touched.has(field)) continue;
      errors.set(field, issue.text);
      offers.set(field, issue.offers);
    }
  }
  for (const note of notes) if (note.field !== undefined) warnings.set(note.field, note.text);
  return { errors, offers, warnings };
}
