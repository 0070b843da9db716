import type { ReactNode } from 'react';
import { goTo } from '../../calculator/go-to.js';
import type { CalculationData, FailureView, IssueView, ResultView, SuccessView } from '../../data/types.js';
import { inputId } from '../fields/fields-props.js';
import { AdviceList, Budget, Results, Warnings } from '../parts/Results.js';
import styles from './calculator.module.css';

interface ResultPanelProps {
  readonly data: CalculationData;
  /** Undefined while it is on its way: what stood there before does not belong to these inputs. */
  readonly result: ResultView | undefined;
  readonly pending: boolean;
  readonly isExample: boolean;
  /** Inputs that still hold the example beside others that do not. */
  readonly borrowed: readonly string[];
  readonly blank: boolean;
  onExample(): void;
  readonly onUnit: ((key: string, unit: string) => void) | undefined;
}

/** One sentence for those who hear the page: what changed, without the rest being read again. */
function spoken(result: ResultView | undefined): string {
  if (result === undefined) return '';
  if (!result.ok)
    return result.issues.length === 1
      ? 'No result: one input needs attention.'
      : `No result: ${result.issues.length} inputs need attention.`;
  const first = result.values[0];
  const minds = result.warnings.length === 0 ? '' : result.warnings.length === 1 ? ' 1 warning.' : ` ${result.warnings.length} warnings.`;
  return first === undefined ? '' : `${first.label}: ${first.text}.${minds}`;
}

function Success({
  data,
  result,
  onUnit,
}: {
  readonly data: CalculationData;
  readonly result: SuccessView;
  readonly onUnit: ResultPanelProps['onUnit'];
}): ReactNode {
  return (
    <>
      <Results values={result.values} drawing={result.drawing} limited={data.limits.length > 0} onUnit={onUnit} />
      <Warnings warnings={result.warnings} />
      <AdviceList advice={result.advice} />
      <Budget budget={result.budget} />
      <Assumed texts={result.assumptions.filter((text) => !data.assumptions.includes(text))} />
      <p className={styles.method}>
        By {result.method}. {data.title}, version {data.version}.
      </p>
    </>
  );
}

const fewAssumed = 3;

/** What this very result takes for granted, beside the assumptions that every result makes. */
function Assumed({ texts }: { readonly texts: readonly string[] }): ReactNode {
  if (texts.length === 0) return null;
  return (
    <details className={styles.assumed} open={texts.length <= fewAssumed}>
      <summary>Assumed, because not entered: {texts.length}</summary>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}

/** What is wrong, as a button that leads to the input. */
function IssueText({ issue }: { readonly issue: IssueView }): ReactNode {
  const [field] = issue.fields;
  if (field === undefined) return issue.text;
  return (
    <button type="button" className={styles.issue} onClick={() => goTo(inputId(field))}>
      {issue.text}
    </button>
  );
}

const fewMissing = 4;

function MissingList({ issues }: { readonly issues: readonly IssueView[] }): ReactNode {
  return (
    <ul>
      {issues.map((issue) => (
        <li key={issue.fields.join()}>
          <IssueText issue={issue} />
        </li>
      ))}
    </ul>
  );
}

function Missing({ result }: { readonly result: FailureView }): ReactNode {
  const missing = result.issues.filter((issue) => issue.code === 'missing_input');
  const wrong = result.issues.filter((issue) => issue.code !== 'missing_input');
  return (
    <>
      {wrong.length === 0 ? null : (
        <>
          <p className={styles.refused}>No result with these inputs</p>
          <ul>
            {wrong.map((issue) => (
              <li key={`${issue.fields.join()}${issue.code}`}>
                <IssueText issue={issue} />
              </li>
            ))}
          </ul>
        </>
      )}
      {missing.length === 0 ? null : missing.length <= fewMissing ? (
        <>
          <p className={styles.refused}>Still needed</p>
          <MissingList issues={missing} />
        </>
      ) : (
        <details className={styles.assumed}>
          <summary>Still needed: {missing.length} inputs</summary>
          <MissingList issues={missing} />
        </details>
      )}
    </>
  );
}

/** The result beside the form, as it changes. */
export function ResultPanel({ data, result, pending, isExample, borrowed, blank, onExample, onUnit }: ResultPanelProps): ReactNode {
  return (
    <section id="result-panel" className={styles.result} aria-labelledby="result" aria-busy={pending} tabIndex={-1}>
      <h2 id="result">{pending ? 'Calculating…' : isExample ? 'Result of the example' : 'Result'}</h2>
      <p className="visually-hidden" aria-live="polite" data-testid="spoken-result">
        {blank ? '' : spoken(result)}
      </p>
      {blank ? (
        <div className={styles.blank}>
          <p>Nothing is entered yet.</p>
          <button type="button" onClick={onExample}>
            Fill in the example
          </button>
        </div>
      ) : null}
      {borrowed.length > 0 && result?.ok ? <p className={styles.borrowed}>Still the example’s, not yours: {borrowed.join(', ')}.</p> : null}
      {result === undefined ? (
        <p className={styles.waiting}>{pending ? '' : 'No result: the calculation could not be loaded.'}</p>
      ) : result.ok ? (
        <Success data={data} result={result} onUnit={onUnit} />
      ) : (
        <Missing result={result} />
      )}
    </section>
  );
}
