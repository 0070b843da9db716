import type { AnyCalculation, Registry } from '@wallflow/calculation';
import type { MisprintFile } from '../../../tests/support/misprint.js';
import type { CaseFile } from '../../../tests/support/reference-case.js';
import type { CheckGroup, DisagreementView, MisprintView } from '../../src/data/evidence.js';
import { caseView } from '../calculations/case-data.js';
import { sourceText } from './texts.js';

function named(registry: Registry, id: string): AnyCalculation {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`a misprint concerns ${id}, which is not published`);
  return calculation;
}

export function misprintViews(files: readonly MisprintFile[], registry: Registry): MisprintView[] {
  return files.flatMap(({ subject, entries }) =>
    entries.map(({ source, printed, used, reason, calculations }) => ({
      subject,
      source: sourceText(source),
      mark: source.mark,
      printed,
      used,
      reason,
      calculations: calculations.map((id) => ({ id, title: named(registry, id).title })),
    })),
  );
}

/** Reference cases whose source says something else than we give, with the reason. */
export function caseDisagreements(files: readonly CaseFile[], registry: Registry): DisagreementView[] {
  return files.flatMap((file) => {
    const calculation = named(registry, file.calculation);
    return file.cases.flatMap((reference) => {
      if (reference.disagreement === undefined) return [];
      const { title, source, mark, comparisons } = caseView(calculation, reference);
      const values = comparisons.filter(({ agrees }) => !agrees).map(({ label, expected, ours }) => ({ label, expected, ours }));
      const { id } = calculation;
      return [{ title, source, mark, reason: reference.disagreement, values, calculation: { id, title: calculation.title } }];
    });
  });
}

/** The same for values that belong to no calculation. */
export function valueDisagreements(groups: readonly CheckGroup[]): DisagreementView[] {
  return groups.flatMap(({ title, source, mark, rows }) =>
    rows.flatMap(({ label, expected, ours, disagreement }) =>
      disagreement === undefined ? [] : [{ title, source, mark, reason: disagreement, values: [{ label, expected, ours }] }],
    ),
  );
}
