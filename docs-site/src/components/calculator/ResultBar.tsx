import type { ReactNode } from 'react';
import { goTo } from '../../calculator/go-to.js';
import type { IssueView, ResultView } from '../../data/types.js';
import { inputId } from '../fields/fields-props.js';
import styles from './calculator.module.css';

interface ResultBarProps {
  /** Undefined while it is on its way. */
  readonly result: ResultView | undefined;
  readonly example: boolean;
  /** How many inputs still hold the example. */
  readonly borrowed: number;
}

function named(issues: readonly IssueView[]): string {
  const names = [...new Set(issues.map((issue) => issue.name ?? issue.text))];
  const first = names[0] ?? '';
  return names.length === 1 ? first : `${first} and ${names.length - 1} more`;
}

/** What is wrong, or else what is missing, and the field where to begin. */
function lacking(issues: readonly IssueView[]): { readonly label: string; readonly text: string; readonly at: string } {
  const wrong = issues.filter((issue) => issue.code !== 'missing_input');
  const shown = wrong.length > 0 ? wrong : issues;
  const field = shown[0]?.fields[0];
  if (shown.length === 0) return { label: '', text: 'Nothing entered yet', at: 'result-panel' };
  return {
    label: wrong.length > 0 ? 'Check: ' : 'Still needed: ',
    text: named(shown),
    at: field === undefined ? 'result-panel' : inputId(field),
  };
}

/** On a narrow screen the answer, or what it still needs, stays in sight below the inputs; a tap leads there. */
export function ResultBar({ result, example, borrowed }: ResultBarProps): ReactNode {
  const first = result?.ok ? result.values[0] : undefined;
  const needs = result?.ok === false ? lacking(result.issues) : undefined;
  const label = needs?.label ?? (first === undefined ? '' : `${example ? 'Example. ' : ''}${first.label}: `);
  const text = needs?.text ?? (result === undefined ? 'Calculating…' : first === undefined ? 'Result' : first.text);
  const mixed = first !== undefined && !example && borrowed > 0;
  return (
    <button type="button" className={styles.bar} onClick={() => goTo(needs?.at ?? 'result-panel')}>
      <span>
        {label}
        <strong>{text}</strong>
        {mixed ? ' (partly example values)' : ''}
      </span>
      <span aria-hidden="true">{needs === undefined ? '↓' : '↑'}</span>
    </button>
  );
}
