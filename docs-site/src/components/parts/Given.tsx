import type { ReactNode } from 'react';
import { countingFields } from '../../calculator/counting.js';
import { isRows } from '../../calculator/form-values.js';
import type { Entry, FieldData, FormValues, GroupFieldData, ListFieldData, ScalarFieldData } from '../../data/types.js';
import { Formula } from './Formula.js';
import { Scroll } from './Scroll.js';

function unitSymbol(field: ScalarFieldData, entry: Entry): string {
  if (field.type !== 'quantity') return '';
  const symbol = field.units.find((unit) => unit.id === entry.unit)?.symbol ?? entry.unit;
  return symbol === '1' || /[^\d\s.,+\-−±'eE]/.test(entry.text) ? '' : symbol;
}

/** One entry as a person reads it. */
export function entryText(field: ScalarFieldData, entry: Entry | undefined): string {
  if (entry === undefined || entry.text.trim() === '')
    return field.default === undefined ? 'not given' : `not given; ${field.default} assumed`;
  if (field.type === 'choice') return field.options.find((option) => option.key === entry.text)?.label ?? entry.text;
  const unit = unitSymbol(field, entry);
  return unit === '' ? entry.text : `${entry.text} ${unit}`;
}

function GivenList({ field, rows }: { readonly field: ListFieldData | GroupFieldData; readonly rows: readonly FormValues[] }): ReactNode {
  const columns = field.item.filter((column) => column.type !== 'list' && column.type !== 'group');
  return (
    <Scroll label={field.label}>
      <table>
        <caption>{field.label}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col">
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {columns.map((column) => (
                <td key={column.key}>{entryText(column, row[column.key] as Entry | undefined)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

interface GivenProps {
  readonly fields: readonly FieldData[];
  readonly values: FormValues;
  /** Leave out what stayed empty and may; the result says what was assumed for it. */
  readonly onlyGiven?: boolean;
}

function mayBeLeftOut(field: FieldData, values: FormValues): boolean {
  const entry = values[field.key];
  const empty = entry === undefined || (isRows(entry) ? entry.rows.length === 0 : entry.text.trim() === '');
  return empty && (field.optional || field.default !== undefined);
}

/** What goes into a calculation, for reading and printing. */
export function Given({ fields: all, values, onlyGiven = false }: GivenProps): ReactNode {
  const place = { fields: all, path: [] };
  const fields = countingFields(all, place, place, values);
  const left = onlyGiven ? fields.filter((field) => mayBeLeftOut(field, values)) : [];
  const told = fields.filter((field) => !left.includes(field));
  const scalars = told.filter((field) => field.type !== 'list' && field.type !== 'group');
  const lists = told.filter((field) => field.type === 'list' || field.type === 'group');
  return (
    <>
      {scalars.length === 0 ? null : (
        <table className="given">
          <thead className="visually-hidden">
            <tr>
              <th scope="col">Input</th>
              <th scope="col">Symbol</th>
              <th scope="col">Value</th>
            </tr>
          </thead>
          <tbody>
            {scalars.map((field) => (
              <tr key={field.key}>
                <th scope="row">{field.label}</th>
                <td>{'symbolTex' in field ? <Formula tex={field.symbolTex} /> : null}</td>
                <td>{entryText(field, values[field.key] as Entry | undefined)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {lists.map((field) => {
        const list = values[field.key];
        if (!isRows(list)) return null;
        if (list.rows.length === 0) return <p key={field.key}>{field.label}: not given</p>;
        return <GivenList key={field.key} field={field} rows={list.rows} />;
      })}
      {left.length === 0 ? null : (
        <p>
          Not given: {left.length === 1 ? 'one optional input' : `${left.length} optional inputs`} left blank. What was assumed is shown
          with the result.
        </p>
      )}
    </>
  );
}
