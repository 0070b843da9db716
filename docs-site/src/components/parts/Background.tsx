import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import { changeText } from '../../calculator/changes-since.js';
import type { CalculationData } from '../../data/types.js';
import styles from './background.module.css';
import { checkedText, FoldedCases } from './CaseList.js';
import { Formula } from './Formula.js';
import { Sources } from './Sources.js';

interface PartProps {
  readonly title: string;
  /** Folded to its heading, as under a calculator. */
  readonly folded: boolean;
  readonly children: ReactNode;
}

function Part({ title, folded, children }: PartProps): ReactNode {
  const id = title.toLowerCase().replaceAll(' ', '-');
  const heading = (
    <h2 id={id} tabIndex={-1}>
      {title}
    </h2>
  );
  if (!folded) {
    return (
      <section aria-labelledby={id}>
        {heading}
        {children}
      </section>
    );
  }
  return (
    <details className={styles.part}>
      <summary>{heading}</summary>
      {children}
    </details>
  );
}

function Texts({ title, texts, folded }: Omit<PartProps, 'children'> & { readonly texts: readonly string[] }): ReactNode {
  if (texts.length === 0) return null;
  return (
    <Part title={title} folded={folded}>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </Part>
  );
}

/** Constants that follow each other and have one source, which is then said once. */
function bySource(constants: CalculationData['constants']): CalculationData['constants'][number][][] {
  const groups: CalculationData['constants'][number][][] = [];
  for (const constant of constants) {
    const last = groups.at(-1);
    if (last !== undefined && last[0]?.source === constant.source) last.push(constant);
    else groups.push([constant]);
  }
  return groups;
}

function Constants({ constants, folded }: Pick<CalculationData, 'constants'> & Pick<PartProps, 'folded'>): ReactNode {
  if (constants.length === 0) return null;
  return (
    <Part title="Constants" folded={folded}>
      <ul>
        {bySource(constants).map((group) => (
          <li key={group[0]?.label}>
            {group.map(({ label, tex }) => (
              <div key={label}>
                {label}: <Formula tex={tex} />
              </div>
            ))}
            <small>{group[0]?.source}</small>
          </li>
        ))}
      </ul>
    </Part>
  );
}

function Checks({ cases }: Pick<CalculationData, 'cases'>): ReactNode {
  if (cases.length === 0) return <p>No reference case of its own yet: rely on it only as far as the sources above carry it.</p>;
  return (
    <>
      <p className="print-only">{checkedText(cases)}.</p>
      <div className="screen-only">
        <FoldedCases cases={cases} />
      </div>
    </>
  );
}

interface BackgroundProps {
  readonly data: CalculationData;
  readonly assumptions: readonly string[];
  readonly folded?: boolean;
}

/** What stands behind a calculation: limits, assumptions, constants, sources, and what it was checked against. */
export function Background({ data, assumptions, folded = false }: BackgroundProps): ReactNode {
  return (
    <>
      <Texts title="Limits of use" texts={data.limits} folded={folded} />
      <Texts title="Assumptions" texts={assumptions} folded={folded} />
      <Constants constants={data.constants} folded={folded} />
      <Texts title="Changes" texts={data.history.map(changeText)} folded={folded} />
      <Part title="Sources" folded={folded}>
        <Sources sources={data.sources} />
      </Part>
      <Part title="Checked against" folded={folded}>
        <Checks cases={data.cases} />
        <p className="foot-links screen-only">
          <Link to="/validation">How checks are made</Link>
          <Link to={`/validation/${data.subject}`}>All cases of this subject</Link>
        </p>
      </Part>
    </>
  );
}
