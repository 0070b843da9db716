import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import type { CaseView } from '../../data/types.js';
import styles from './cases.module.css';
import { Mark } from './Mark.js';
import { Scroll } from './Scroll.js';
import { SourceText } from './SourceText.js';

/** Words for where an expected value comes from. */
export const originNames: Readonly<Record<string, string>> = {
  'standard-example': 'example in a standard',
  'published-table': 'published table',
  'textbook-example': 'textbook example',
  measurement: 'measurement',
  'certified-value': 'certified value',
  'closed-form': 'closed form',
  'independent-code': 'independent code',
  'common-practice': 'common practice',
};

function verdict(view: CaseView): { readonly state: string; readonly text: string } {
  if (view.disagreement !== undefined) return { state: 'known', text: 'known disagreement' };
  return view.agrees ? { state: 'agrees', text: 'agrees' } : { state: 'differs', text: 'differs' };
}

function Comparisons({ view }: { readonly view: CaseView }): ReactNode {
  return (
    <Scroll label={`Comparison for ${view.title}`}>
      <table className={styles.comparison}>
        <thead>
          <tr>
            <th scope="col">Value</th>
            <th scope="col">Source says</th>
            <th scope="col">We give</th>
            <th scope="col">Difference</th>
            <th scope="col">Tolerance</th>
          </tr>
        </thead>
        <tbody>
          {view.comparisons.map((comparison) => (
            <tr key={comparison.label} data-agrees={comparison.agrees}>
              <th scope="row">{comparison.label}</th>
              <td>{comparison.expected}</td>
              <td>{comparison.ours}</td>
              <td>{comparison.difference}</td>
              <td>{comparison.tolerance === '' ? '' : `± ${comparison.tolerance}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** How the cases came out, in one line. */
export function checkedText(cases: readonly CaseView[]): string {
  const known = cases.filter((view) => view.disagreement !== undefined).length;
  const agree = cases.filter((view) => view.agrees).length;
  const rest = known === 0 ? '' : `, ${known} known ${known === 1 ? 'disagreement' : 'disagreements'} with the reason`;
  return `${cases.length} reference ${cases.length === 1 ? 'case' : 'cases'}: ${agree} agree${rest}`;
}

/** Reference cases folded under the line that says how they came out. */
export function FoldedCases({ cases }: { readonly cases: readonly CaseView[] }): ReactNode {
  return (
    <details>
      <summary>{checkedText(cases)}</summary>
      <CaseList cases={cases} />
    </details>
  );
}

/** Reference cases: what the source says, what we give, the difference, the tolerance. */
function CaseList({ cases }: { readonly cases: readonly CaseView[] }): ReactNode {
  return cases.map((view) => {
    const { state, text } = verdict(view);
    return (
      <article key={view.id} className={styles.case} id={`case-${view.id}`}>
        <div className={styles.head}>
          <h3 className={styles.title}>{view.title}</h3>
          <span className={styles.verdict} data-state={state}>
            {text}
          </span>
        </div>
        <p className={styles.source}>
          {originNames[view.origin] ?? view.origin}: <SourceText text={view.source} /> <Mark mark={view.mark} />
        </p>
        <p className={styles.inputs}>
          <strong>Given</strong> {view.inputs.map((input) => `${input.label}: ${input.text}`).join('; ')}.{' '}
          <Link to={`/calculators/${view.calculation}${view.hash}`} className="screen-only-inline" data-noBrokenLinkCheck>
            Open in the calculator
          </Link>
        </p>
        <Comparisons view={view} />
        {view.disagreement === undefined ? null : (
          <p>
            <strong>Why it differs:</strong> {view.disagreement}
          </p>
        )}
        {view.toleranceReason === undefined ? null : (
          <p className={styles.note}>
            Tolerance: <SourceText text={view.toleranceReason} />
          </p>
        )}
        {view.notes === undefined ? null : (
          <p className={styles.note}>
            <SourceText text={view.notes} />
          </p>
        )}
      </article>
    );
  });
}
