import catalogue from '@generated/wallflow-calculations/default/catalogue.json';
import type { ReactNode } from 'react';
import { Entries } from './CalculationList.js';

/** The calculators of a subject, for pages of the guide: always those that exist. */
export function SubjectCalculations({ subject }: { readonly subject: string }): ReactNode {
  return <Entries entries={catalogue.filter((entry) => entry.subject === subject)} base="calculators" />;
}
