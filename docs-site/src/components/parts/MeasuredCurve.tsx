import Link from '@docusaurus/Link';
import Heading from '@theme/Heading';
import type { ReactNode } from 'react';
import type { CurveView } from '../../data/evidence.js';
import { CurvePoints } from './CurvePoints.js';
import styles from './evidence.module.css';
import { Mark } from './Mark.js';
import { Plot } from './Plot.js';
import { Scroll } from './Scroll.js';
import { SourceText } from './SourceText.js';

function Inputs({ curve }: { readonly curve: CurveView }): ReactNode {
  const several = curve.inputs.some((input) => input.models !== undefined);
  return (
    <Scroll label={`Inputs for ${curve.title}`} keepsFirst>
      <table className={styles.inputs}>
        <thead>
          <tr>
            <th scope="col">Input</th>
            <th scope="col">Value</th>
            <th scope="col">From</th>
            {several ? <th scope="col">Models</th> : null}
          </tr>
        </thead>
        <tbody>
          {curve.inputs.map((input) => (
            <tr key={`${input.label} ${input.text}`}>
              <th scope="row">{input.label}</th>
              <td>{input.text}</td>
              <td>{input.from}</td>
              {several ? <td>{input.models ?? 'all'}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

function Models({ curve }: { readonly curve: CurveView }): ReactNode {
  return (
    <ul>
      {curve.models.map((model) => (
        <li key={model.name}>
          {model.name}: <Link to={`/calculators/${model.calculation}`}>{model.title}</Link>
          <span className="screen-only-inline">
            {' '}
            (
            <Link to={`/calculators/${model.calculation}${model.hash}`} data-noBrokenLinkCheck>
              with the last point filled in
            </Link>
            )
          </span>
          {model.warnings.length === 0 ? null : (
            <ul>
              {model.warnings.map((warning) => (
                <li key={warning}>Warns {warning}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}

/** One measured curve: source, inputs, points, plot, and what it shows. */
export function MeasuredCurve({ curve }: { readonly curve: CurveView }): ReactNode {
  return (
    <section className={styles.curve} aria-labelledby={curve.id}>
      <Heading as="h2" id={curve.id}>
        {curve.title}
      </Heading>
      <p>
        <SourceText text={curve.source} /> <Mark mark={curve.mark} />
      </p>
      <p className={styles.reading}>{curve.reading}</p>
      {curve.notComputable === undefined ? null : (
        <p>
          <strong>Not computable:</strong> {curve.notComputable}
        </p>
      )}
      <h3>What it shows</h3>
      <ul>
        {curve.findings.map((finding) => (
          <li key={finding}>{finding}</li>
        ))}
      </ul>
      {curve.plot === undefined ? null : <Plot table={curve.plot} />}
      <CurvePoints curve={curve} />
      {curve.models.length === 0 ? null : (
        <>
          <h3>Models</h3>
          <Models curve={curve} />
        </>
      )}
      <h3>Inputs</h3>
      <Inputs curve={curve} />
      {curve.checks.length === 0 ? null : (
        <details>
          <summary>What the tests hold the models to</summary>
          <ul>
            {curve.checks.map((check) => (
              <li key={check}>{check}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
