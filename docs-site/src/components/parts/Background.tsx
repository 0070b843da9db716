import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import { changeText } from '../../calculator/changes-since.js';
import type { CalculationData } from '../../data/types.js';
import { checkedText, FoldedCases } from './CaseList.js';
import { Formula } from './Formula.js';
import { Sources } from './Sources.js';

function Texts({ title, texts }: { readonly title: string; readonly texts: readonly string[] }): ReactNode {
  if (texts.length === 0) return null;
  const id = title.toLowerCase().replaceAll(' ', '-');
  return (
    <section aria-labelledby={id}>
      <h2 id={id} tabIndex={-1}>
        {title}
      </h2>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
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

function Constants({ constants }: Pick<CalculationData, 'constants'>): ReactNode {
  if (constants.length === 0) return null;
  return (
    <section aria-labelledby="constants">
      <h2 id="constants">Constants</h2>
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
    </section>
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
}

/** What stands behind a calculation: limits, assumptions, constants, sources, and what it was checked against. */
export function Background({ data, assumptions }: BackgroundProps): ReactNode {
  return (
    <>
      <Texts title="Limits of use" texts={data.limits} />
      <Texts title="Assumptions" texts={assumptions} />
      <Constants constants={data.constants} />
      <Texts title="Changes" texts={data.history.map(changeText)} />
      <section aria-labelledby="sources">
        <h2 id="sources">Sources</h2>
        <Sources sources={data.sources} />
      </section>
      <section aria-labelledby="checked-against">
        <h2 id="checked-against">Checked against</h2>
        <Checks cases={data.cases} />
        <p className="foot-links screen-only">
          <Link to="/validation">How checks are made</Link>
          <Link to={`/validation/${data.subject}`}>All cases of this subject</Link>
        </p>
      </section>
    </>
  );
}
