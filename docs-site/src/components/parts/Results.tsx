import type { ReactNode } from 'react';
import { goTo } from '../../calculator/go-to.js';
import type { SuccessView, ValueView } from '../../data/types.js';
import { Formula } from './Formula.js';
import { Picture } from './Picture.js';
import styles from './results.module.css';

interface ResultsProps {
  readonly values: readonly ValueView[];
  /** The answer as a picture. */
  readonly drawing?: SuccessView['drawing'];
  /** Whether the page states limits of use. */
  readonly limited?: boolean;
  /** Called when another unit is chosen for a value; without it the units are fixed. */
  readonly onUnit?: ((key: string, unit: string) => void) | undefined;
}

function UnitSelect({ value, onUnit }: { readonly value: ValueView; readonly onUnit: NonNullable<ResultsProps['onUnit']> }): ReactNode {
  return (
    <select
      className={styles.unit}
      aria-label={`Unit of ${value.label}`}
      value={value.unit}
      onChange={(event) => onUnit(value.key, event.target.value)}
    >
      {value.units.map((unit) => (
        <option key={unit.id} value={unit.id}>
          {unit.symbol}
        </option>
      ))}
    </select>
  );
}

/** That a ± says nothing about the model, once, at the first figure that has one. */
function Spread({ limited }: { readonly limited: boolean }): ReactNode {
  return (
    <p className={styles.spread}>
      The ± comes from the ± of your inputs alone. How far the model itself is off is not in it
      {limited ? (
        <>
          :{' '}
          <button type="button" className={styles.inline} onClick={() => goTo('limits-of-use')}>
            limits of use
          </button>
        </>
      ) : (
        '.'
      )}
    </p>
  );
}

/** The values of a result, the first one large. */
export function Results({ values, drawing, limited = false, onUnit }: ResultsProps): ReactNode {
  const spread = values.find((value) => value.text.includes('±'));
  return (
    <dl className={styles.values}>
      {values.map((value) => (
        <div key={value.key} className={styles.value} data-output={value.key}>
          <dt>
            {value.label} <Formula tex={value.symbolTex} />
          </dt>
          <dd>
            <span className={value.words === true ? styles.words : styles.number}>{value.text}</span>
            {onUnit === undefined || value.units.length < 2 ? null : <UnitSelect value={value} onUnit={onUnit} />}
            {value === spread ? <Spread limited={limited} /> : null}
            {value === values[0] && drawing !== undefined ? <Picture drawing={drawing} /> : null}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** What to do and not to do with the result. */
export function AdviceList({ advice }: Pick<SuccessView, 'advice'>): ReactNode {
  if (advice.length === 0) return null;
  return (
    <ul className={styles.advice}>
      {advice.map((one) => (
        <li key={one.text} data-tone={one.tone}>
          <span>{one.text}</span>
        </li>
      ))}
    </ul>
  );
}

/** What must be known before acting on the result. */
export function Warnings({ warnings }: Pick<SuccessView, 'warnings'>): ReactNode {
  if (warnings.length === 0) return null;
  return (
    <ul className={styles.warnings}>
      {warnings.map((warning) => (
        <li key={warning.text}>
          <strong>Warning:</strong> {warning.text}
        </li>
      ))}
    </ul>
  );
}

/** Which input makes the result uncertain. */
export function Budget({ budget }: Pick<SuccessView, 'budget'>): ReactNode {
  return budget.map((one) => (
    <table key={one.output} className={styles.budget}>
      <caption>
        Uncertainty of {one.output}, {one.text}
      </caption>
      <thead>
        <tr>
          <th scope="col">Input</th>
          <th scope="col">adds ±</th>
          <th scope="col">share</th>
        </tr>
      </thead>
      <tbody>
        {one.entries.map((entry) => (
          <tr key={entry.label}>
            <th scope="row">{entry.label}</th>
            <td>{entry.contribution}</td>
            <td>{Math.round(entry.share * 100)} %</td>
          </tr>
        ))}
      </tbody>
    </table>
  ));
}
