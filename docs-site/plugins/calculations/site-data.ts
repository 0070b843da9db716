import { readFileSync } from 'node:fs';
import type { AnyCalculation } from '@wallflow/calculation';
import { formFromJob, jobForm } from '@wallflow/workshop';
import { readCaseFiles } from '../../../tests/support/reference-case.js';
import { fromInput } from '../../src/calculator/form-input.js';
import type { CalculationData, CatalogueEntry, JobFormData, SubjectValidationData, ValidationData } from '../../src/data/types.js';
import { calculationData } from './calculation-data.js';
import { caseViews, subjectValidation, validationData } from './case-data.js';
import { fieldsData } from './field-data.js';

export interface SiteData {
  readonly calculations: readonly CalculationData[];
  readonly catalogue: readonly CatalogueEntry[];
  readonly validation: ValidationData;
  readonly subjects: readonly SubjectValidationData[];
  readonly job: JobFormData;
}

/** The form of the job sheet, with the demo job to fill it with. */
function jobFormData(): JobFormData {
  const inputs = fieldsData(jobForm);
  const demo = new URL('../../examples/demo-job/by-hand.json', import.meta.url);
  return { inputs, exampleValues: fromInput(inputs, formFromJob(JSON.parse(readFileSync(demo, 'utf8')))) };
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
  const catalogue = calculations.map(({ id, subject, title, purpose, keywords, cases: own }) => ({
    id,
    subject,
    title,
    purpose,
    keywords,
    cases: own.length,
  }));
  return {
    calculations,
    catalogue,
    validation: validationData(published, cases),
    subjects: subjectValidation(published, cases),
    job: jobFormData(),
  };
}
