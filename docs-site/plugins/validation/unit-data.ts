import { readable } from '@wallflow/calculation';
import { getKind, unitSymbol } from '@wallflow/units';
import { compareUnitCase } from '../../../tests/reference/units/support/compare-unit-case.js';
import type { UnitCase, UnitCaseFile } from '../../../tests/reference/units/support/unit-case.js';
import type { CheckGroup, CheckRow } from '../../src/data/evidence.js';
import { sourceText } from './texts.js';

function row(reference: UnitCase): CheckRow {
  const comparison = compareUnitCase(reference);
  const kind = getKind(reference.kind);
  const parsed = kind?.parse(reference.given);
  const symbol = (unit: string) => unitSymbol(reference.kind, unit) || unit;
  const number = /^[-\d.]+/.exec(reference.given)?.[0];
  const given = parsed?.ok === true && number !== undefined ? `${number} ${symbol(parsed.unit)}` : reference.given;
  return {
    label: given,
    locator: reference.locator,
    expected: `${reference.expected} ${symbol(reference.unit)}`,
    ours: readable(comparison.exact.toSignificantDigits(12).toString()),
    difference: readable(comparison.exact.minus(reference.expected).toSignificantDigits(3).toString()),
    tolerance: readable(comparison.tolerance.toSignificantDigits(3).toString()),
    agrees: comparison.agrees,
    ...(reference.disagreement === undefined ? {} : { disagreement: reference.disagreement }),
  };
}

/** Units by source: what is printed, and what reading and converting gives in decimal arithmetic and in doubles alike. */
export function unitGroups(files: readonly UnitCaseFile[]): CheckGroup[] {
  return files.map(({ name, source, origin, cases }) => {
    const kinds = [...new Set(cases.map(({ kind }) => getKind(kind)?.label ?? kind))];
    const reasons = [...new Set(cases.flatMap(({ toleranceReason }) => toleranceReason ?? []))];
    const notes = [source.note, reasons.length === 0 ? undefined : `Tolerances: ${reasons.join('; ')}.`].filter(
      (note) => note !== undefined,
    );
    return {
      id: name.replace('.json', ''),
      title: kinds.length === 1 ? `${source.title}: ${kinds[0]}` : source.title,
      source: sourceText(source),
      mark: source.mark,
      origin,
      rows: cases.map(row),
      ...(notes.length === 0 ? {} : { note: notes.join(' ') }),
    };
  });
}
