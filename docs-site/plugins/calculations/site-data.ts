import type { AnyCalculation } from '@wallflow/calculation';
import { readCaseFiles } from '../../../tests/support/reference-case.js';
import type { CalculationData, CatalogueEntry, SubjectValidationData, ValidationData } from '../../src/data/types.js';
import { calculationData } from './calculation-data.js';
import { caseViews, subjectValidation, validationData } from './case-data.js';

export interface SiteData {
  readonly calculations: readonly CalculationData[];
  readonly catalogue: readonly CatalogueEntry[];
  readonly validation: ValidationData;
  readonly subjects: readonly SubjectValidationData[];
}

/** All data of the site, made from the published definitions and the reference cases. */
export function siteData(published: readonly AnyCalculation[]): SiteData {
  const cases = caseViews(published, readCaseFiles());
  const calculations = published.map((calculation) =>
    calculationData(
      calculation,
      cases.filter((view) => view.calculation === calculation.id),
    ),
  );
  const catalogue = calculations.map(({ id, subject, title, purpose, usedBy, keywords, cases: own }) => ({
    id,
    subject,
    title,
    purpose,
    usedBy,
    keywords,
    cases: own.length,
  }));
  return { calculations, catalogue, validation: validationData(published, cases), subjects: subjectValidation(published, cases) };
}
