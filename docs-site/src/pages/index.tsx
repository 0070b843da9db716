import Link from '@docusaurus/Link';
import catalogue from '@generated/wallflow-calculations/default/catalogue.json';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import styles from '../components/home/home.module.css';
import { JobSteps } from '../components/home/JobSteps.js';
import { WallFlowFigure } from '../components/home/WallFlowFigure.js';
import { Cautions } from '../components/parts/Cautions.js';
import { KeepPanel } from '../components/parts/KeepPanel.js';

const cautions = [
  'A regeneration makes the exhaust hot enough to burn skin and to start a fire. Never leave one unattended.',
  'Exhaust fumes kill in closed rooms. Cleaning fluids can burn eyes and skin.',
  'The vehicle maker’s procedure, local codes and licensed practice come first. Nothing here serves to remove or deceive emission control.',
];

function Door({
  title,
  children,
  to,
  action,
}: {
  readonly title: string;
  readonly children: ReactNode;
  readonly to: string;
  readonly action: string;
}): ReactNode {
  return (
    <section className={styles.door}>
      <h3>{title}</h3>
      <p>{children}</p>
      <Link to={to}>{action}</Link>
    </section>
  );
}

export default function Home(): ReactNode {
  const cases = catalogue.reduce((sum, entry) => sum + entry.cases, 0);
  return (
    <Layout
      title="Diesel aftertreatment, calculated with units"
      description="Pressure drop, soot, regeneration, cleaning and reductant, with working and sources"
    >
      <header className={styles.hero}>
        <div className="container">
          <div className={styles.heroText}>
            <h1>Is the filter really blocked?</h1>
            <p>
              Wallflow calculates diesel exhaust aftertreatment: flow, pressure drop, soot and ash, regeneration, cleaning, reductant. Type{' '}
              <kbd>95 mbar</kbd> as you read it. It answers with the working, the source, what to do and what not to do.
            </p>
            <p className={styles.heroActions}>
              <Link className={`${styles.primary}`} to="/calculators/filter-condition">
                Judge a reading
              </Link>
              <Link className={`${styles.secondary}`} to="/job-sheet">
                Make the job sheet
              </Link>
              <Link className={`${styles.secondary}`} to="/guide/the-job">
                The whole job, step by step
              </Link>
            </p>
          </div>
          <WallFlowFigure />
        </div>
      </header>
      <main className="page container">
        <Cautions cautions={cautions} />
        <h2>The job in order</h2>
        <JobSteps catalogue={catalogue} />
        <h2>Where to begin</h2>
        <div className={styles.doors}>
          <Door title="At the vehicle" to="/calculators" action={`All ${catalogue.length} calculators`}>
            Type what the gauge or the tester shows, in its own unit. Leave open what you do not know; it counts as unknown, never as
            passed.
          </Door>
          <Door title="In the classroom" to="/examples" action="Worked examples">
            Every calculation as a sheet: given, formula, numbers, result, sources. Links keep inputs, units and version, so that they can
            be cited.
          </Door>
          <Door title="In your own program" to="/guide/embedding" action="Embedding">
            Typed functions for JavaScript and TypeScript, plain data in and out, coded errors, JSON Schema, a command line.
          </Door>
        </div>
        <h2>Checked in the open</h2>
        <p className={styles.checked}>
          {cases} reference cases from standards, published tables, measurements and independent code stand beside what the calculations
          give, with the difference. Where a source and the calculation disagree, the reason is given.{' '}
          <Link to="/validation">See all of them</Link>.
        </p>
        <h2>Where there is no signal</h2>
        <KeepPanel />
      </main>
    </Layout>
  );
}
