import { type ReactNode, useEffect, useRef } from 'react';
import type { ScalarFieldData, UnitOffer } from '../../data/types.js';
import { Formula } from '../parts/Formula.js';
import styles from './fields.module.css';
import { useLabels } from './labels.js';

/** What the single inputs need to know of the form around them. */
export interface FieldProps<F> {
  readonly field: F;
  /** Unique on the page. */
  readonly id: string;
  readonly error: string | undefined;
  /** Readings that may have been meant by what was refused. */
  readonly offers?: readonly UnitOffer[] | undefined;
  readonly warning: string | undefined;
  /** `row 2` for an input of a list. */
  readonly row?: string | undefined;
}

export function describedBy(id: string, error: string | undefined): string {
  return error === undefined ? `${id}-hint` : `${id}-error ${id}-hint`;
}

function rangeLine(field: ScalarFieldData): string {
  if (!('range' in field)) return '';
  const usual = field.type === 'quantity' && field.usual !== undefined ? `; usual ${field.usual}` : '';
  return `${field.range.charAt(0).toUpperCase()}${field.range.slice(1)}${usual}.`;
}

function emptyLine(field: ScalarFieldData, others: readonly string[]): string | undefined {
  if (others.length > 0) return `Enter either this or ${others.join(' or ')}.`;
  if (field.default !== undefined) {
    return `If blank: ${field.default} is assumed${field.defaultReason === undefined ? '' : `, ${field.defaultReason}`}.`;
  }
  return field.optional ? 'Optional. Leave blank if unknown.' : undefined;
}

interface FieldNotesProps extends FieldProps<ScalarFieldData> {
  onOffer?(offer: UnitOffer): void;
}

/** Readings that may have been meant, each a button that takes it. */
function Offers({
  id,
  offers,
  onOffer,
}: Required<Pick<FieldNotesProps, 'onOffer' | 'id'>> & { readonly offers: readonly UnitOffer[] }): ReactNode {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for inputs
    <div role="group" aria-label="What was meant" className={styles.offers}>
      {offers.map((offer) => (
        <button
          key={offer.label}
          type="button"
          className={styles.small}
          onClick={() => {
            onOffer(offer);
            document.getElementById(id)?.focus();
          }}
        >
          {offer.label}
        </button>
      ))}
    </div>
  );
}

/** Hint, error and warning below an input. */
export function FieldNotes({ field, id, error, offers = [], onOffer, warning }: FieldNotesProps): ReactNode {
  // An error that appears while one types is brought out from under the bar with the result.
  const said = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (error !== undefined && document.activeElement?.id === id) said.current?.scrollIntoView({ block: 'nearest' });
  }, [error, id]);
  const range = rangeLine(field);
  const others = useLabels()(field.insteadOf ?? []);
  const empty = emptyLine(field, others);
  return (
    <>
      {error === undefined ? null : (
        <p ref={said} id={`${id}-error`} className={styles.error}>
          {error}
        </p>
      )}
      {offers.length === 0 || onOffer === undefined ? null : <Offers id={id} offers={offers} onOffer={onOffer} />}
      {warning === undefined ? null : <p className={styles.warning}>{warning}</p>}
      <p id={`${id}-hint`} className={styles.hint}>
        {field.description === undefined ? null : <>{field.description} </>}
        {range === '' ? null : <span className={styles.range}>{range}</span>}
        {empty === undefined ? null : <span className={styles.range}> {empty}</span>}
      </p>
    </>
  );
}

interface LabelTextProps {
  readonly field: ScalarFieldData;
  readonly row: string | undefined;
  /** What stands in the field is a value of the example. */
  readonly example: true | undefined;
}

export function LabelText({ field, row, example }: LabelTextProps): ReactNode {
  return (
    <>
      {field.label}
      {row === undefined ? null : <span className="visually-hidden">, {row}</span>}{' '}
      {'symbolTex' in field ? (
        <span className={styles.symbol}>
          <Formula tex={field.symbolTex} />
        </span>
      ) : null}
      {(field.optional && field.insteadOf === undefined) || field.default !== undefined ? (
        <span className={styles.optional}> optional</span>
      ) : null}
      {example ? <span className={styles.example}>example value</span> : null}
    </>
  );
}
