import type { ReactNode } from 'react';
import type { StepView } from '../../data/types.js';
import { Formula } from './Formula.js';
import { Scroll } from './Scroll.js';
import styles from './working.module.css';

function Line({ label, tex }: { readonly label: string; readonly tex: string | undefined }): ReactNode {
  if (tex === undefined) return null;
  return (
    <Scroll label={label} className={styles.formula} hint={false}>
      <Formula tex={tex} display />
    </Scroll>
  );
}

/** The working, step by step: formula, numbers in SI base units, value. */
export function Working({ steps }: { readonly steps: readonly StepView[] }): ReactNode {
  return (
    <ol className={styles.steps}>
      {steps.map((step, index) => (
        <li key={index} className={styles.step}>
          <h3 className={styles.label}>
            <span className={styles.number}>{index + 1}.</span> {step.label}
          </h3>
          {step.text === undefined ? null : <p className={styles.words}>{step.text}</p>}
          {step.when === undefined ? null : <p className={styles.words}>Case: {step.when}.</p>}
          {step.changesTex?.map((tex) => (
            <Line key={tex} label={`${step.label}: change of unit`} tex={tex} />
          ))}
          <Line label={`${step.label}: formula`} tex={step.tex} />
          {step.numbersTex === step.tex ? null : <Line label={`${step.label}: numbers in SI units`} tex={step.numbersTex} />}
          {step.comparisons?.map(({ verdict, tex, holds }) => (
            <div key={`${verdict} ${tex}`} className={styles.words}>
              <Line label={`${step.label}: comparison`} tex={tex} />
              {holds ? 'holds' : 'does not hold'}
              {verdict === '' ? '' : `: ${verdict}`}
            </div>
          ))}
          {step.columns?.map(({ label, tex, numbersTex }) => (
            <div key={label}>
              <Line label={`${label}: formula`} tex={tex} />
              <Line label={`${label}: numbers in SI units`} tex={numbersTex} />
            </div>
          ))}
          {step.nested === undefined ? null : (
            <details data-nested>
              <summary>{step.nested.title}: working</summary>
              <Working steps={step.nested.steps} />
            </details>
          )}
          <p className={styles.value}>
            <Formula tex={step.symbolTex} /> {step.symbolTex === undefined ? '' : '= '}
            <strong>{step.valueText}</strong>
          </p>
          {step.source === undefined ? null : <p className={styles.source}>{step.source}</p>}
        </li>
      ))}
    </ol>
  );
}
