import type { ReactNode } from 'react';
import type { TableView } from '../../data/types.js';
import { axisTitle, Plot } from './Plot.js';
import { Scroll } from './Scroll.js';

const longTable = 12;
const mostBeside = 3;

/** Wider than a phone: there each row becomes a card. */
function asCards(table: TableView): boolean {
  return table.columns.length > mostBeside && table.plot === undefined;
}

function Table({ table }: { readonly table: TableView }): ReactNode {
  return (
    <Scroll label={table.label} keepsFirst>
      <table className={asCards(table) ? 'cards' : undefined}>
        <caption className="visually-hidden">{table.label}</caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column.key} scope="col">
                {column.label}
                {column.unit === undefined ? null : <span className="unit"> {column.unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.texts.map((row, index) => (
            <tr key={index}>
              {table.columns.map((column) => (
                <td key={column.key} data-label={axisTitle(column)}>
                  {row[column.key] || '–'}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** A table of a result: drawn where the definition says how, and folded when it is long. */
export function OutputTable({ table }: { readonly table: TableView }): ReactNode {
  const long = table.rows.length > longTable;
  return (
    <section aria-label={table.label}>
      <h3>{table.label}</h3>
      {table.description === undefined ? null : <p>{table.description}</p>}
      <Plot table={table} />
      {long ? (
        <details>
          <summary>All {table.rows.length} rows</summary>
          <Table table={table} />
        </details>
      ) : (
        <Table table={table} />
      )}
    </section>
  );
}
