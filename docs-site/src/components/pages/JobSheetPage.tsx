import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import type { JobFormData } from '../../data/types.js';
import { JobSheet } from '../job/JobSheet.js';
import { Cautions } from '../parts/Cautions.js';

const cautions = [
  'The sheet informs; it does not replace the vehicle maker’s procedure, local codes or licensed practice.',
  'A regeneration makes the exhaust hot enough to burn skin and to start a fire. What is not known never counts as safe.',
  'Emission control stays fitted and working, and no counter is reset that the work has not made true.',
];

/** The whole job in one form, and the sheet that the customer gets. */
export default function JobSheetPage({ data }: { readonly data: JobFormData }): ReactNode {
  return (
    <Layout title="Job sheet" description="The whole job in one form: readings before and after, verdicts, and one sheet for the customer">
      <main className="page container">
        <h1>Job sheet</h1>
        <p className="purpose">
          The whole job in one form. From the readings before and after it works out condition, permission, cleaning and proof, and puts
          them on one sheet that the customer can read. Nothing leaves this device. The steps one by one stand in{' '}
          <Link to="/guide/the-job">the job in order</Link>.
        </p>
        <Cautions cautions={cautions} />
        <JobSheet data={data} />
      </main>
    </Layout>
  );
}
