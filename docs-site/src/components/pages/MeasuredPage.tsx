import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import type { CurveView } from '../../data/evidence.js';
import { EvidencePage } from '../parts/EvidencePage.js';
import styles from '../parts/evidence.module.css';
import { MeasuredCurve } from '../parts/MeasuredCurve.js';

function Overview({ curves }: { readonly curves: readonly CurveView[] }): ReactNode {
  return (
    <ul className={styles.overview}>
      {curves.map((curve) => (
        <li key={curve.id}>
          <a href={`#${curve.id}`}>{curve.title}</a>, {curve.points.length} points
          {curve.models.length === 0 ? (
            <p>cannot be computed</p>
          ) : (
            curve.models.map((model) => (
              <p key={model.name}>
                {model.name}: {model.differences}
              </p>
            ))
          )}
        </li>
      ))}
    </ul>
  );
}

/** Every published curve beside what the models give at each of its points. */
export default function MeasuredPage({ evidence }: { readonly evidence: readonly CurveView[] }): ReactNode {
  return (
    <EvidencePage
      title="Measured curves"
      purpose="Pressure drops that others measured on filters and the soot weighed in them, at every published point beside what our models give, with all inputs, and with where the models fail."
    >
      <p>
        A difference is model over measurement, less one. The models were run when this page was built. See also{' '}
        <Link to="/validation/misprints">misprints in these sources</Link> and the guide to the{' '}
        <Link to="/guide/filter">particulate filter</Link>.
      </p>
      <h2>Smallest and largest difference of each model</h2>
      <Overview curves={evidence} />
      {evidence.map((curve) => (
        <MeasuredCurve key={curve.id} curve={curve} />
      ))}
    </EvidencePage>
  );
}
