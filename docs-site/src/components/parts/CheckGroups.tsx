import Heading from '@theme/Heading';
import type { ReactNode } from 'react';
import type { CheckGroup, CheckRow } from '../../data/evidence.js';
import { originNames } from './CaseList.js';
import styles from './evidence.module.css';
import { Mark } from './Mark.js';
import { Scroll } from './Scroll.js';
import { SourceText } from './SourceText.js';

/** A table of so many rows is not worth folding. */
const shortTable = 4;

function state(row: CheckRow): string {
  if (row.disagreement !== undefined) return 'known disagreement';
  return row.agrees ? 'agrees' : 'differs';
}

function GroupTable({ group }: { readonly group: CheckGroup }): ReactNode {
  const located = group.rows.some((row) => row.locator !== undefined);
  return (
    <Scroll label={`Comparison for ${group.title}`}>
      <table className={styles.checks}>
        <thead>
          <tr>
            <th scope="col">Value</th>
            <th scope="col">Source says</th>
            <th scope="col">We give</th>
            <th scope="col">Difference</th>
            <th scope="col">Tolerance</th>
            <th scope="col">Outcome</th>
            {located ? <th scope="col">In the source</th> : null}
          </tr>
        </thead>
        <tbody>
          {group.rows.map((row, index) => (
            <tr key={index}>
              <th scope="row">{row.label}</th>
              <td>{row.expected}</td>
              <td>{row.ours}</td>
              <td>{row.difference}</td>
              <td>± {row.tolerance}</td>
              <td>{state(row)}</td>
              {located ? <td>{row.locator}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** How a group came out, in one line. */
function outcome(group: CheckGroup): string {
  const known = group.rows.filter((row) => row.disagreement !== undefined).length;
  const agree = group.rows.filter((row) => row.agrees).length;
  const differ = group.rows.length - agree - known;
  return [
    `${group.rows.length} values: ${agree} agree`,
    ...(known === 0 ? [] : [`${known} known ${known === 1 ? 'disagreement' : 'disagreements'}`]),
    ...(differ === 0 ? [] : [`${differ} differ`]),
  ].join(', ');
}

/** Published values beside ours, by source or case; long tables are folded under the line that says how they came out. */
export function CheckGroups({ groups }: { readonly groups: readonly CheckGroup[] }): ReactNode {
  return groups.map((group) => (
    <section key={group.id} aria-labelledby={group.id} className={styles.group}>
      <Heading as="h2" id={group.id}>
        {group.title}
      </Heading>
      <p>
        {originNames[group.origin] ?? group.origin}: <SourceText text={group.source} /> <Mark mark={group.mark} />
      </p>
      {group.rows.length <= shortTable ? (
        <GroupTable group={group} />
      ) : (
        <details>
          <summary>{outcome(group)}</summary>
          <GroupTable group={group} />
        </details>
      )}
      {group.rows
        .filter((row) => row.disagreement !== undefined)
        .map((row) => (
          <p key={row.label}>
            <strong>{row.label} differs:</strong> {row.disagreement}
          </p>
        ))}
      {group.note === undefined ? null : <p className={styles.note}>{group.note}</p>}
    </section>
  ));
}
