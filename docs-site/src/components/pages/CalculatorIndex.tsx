import Layout from '@theme/Layout';
import { type ReactNode, useState } from 'react';
import type { CatalogueEntry } from '../../data/types.js';
import { BySubject, SubjectLinks } from '../parts/CalculationList.js';
import styles from '../parts/list.module.css';

function matches(entry: CatalogueEntry, words: readonly string[]): boolean {
  const text = [entry.title, entry.purpose, entry.id, ...entry.keywords].join(' ').toLowerCase();
  return words.every((word) => text.includes(word));
}

/** All calculators by subject, with a filter that works on the page itself. */
export default function CalculatorIndex({ catalogue }: { readonly catalogue: readonly CatalogueEntry[] }): ReactNode {
  const [filter, setFilter] = useState('');
  const words = filter
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const shown = catalogue.filter((entry) => matches(entry, words));
  return (
    <Layout title="Calculators" description="Every calculation, by subject">
      <main className="page page--text container">
        <h1>Calculators</h1>
        <p className="purpose">Each takes units as you have them, shows its working, and says how far to trust it.</p>
        <label className={styles.filter}>
          <span>Narrow the list</span>
          <input
            type="search"
            value={filter}
            onChange={(event) => setFilter(event.target.value)}
            placeholder="pressure drop"
            autoComplete="off"
          />
        </label>
        <p role="status" className={styles.count}>
          {shown.length === 0 ? 'None fits; try one word of the trade.' : `${shown.length} of ${catalogue.length}`}
        </p>
        <SubjectLinks entries={shown} />
        <BySubject entries={shown} base="calculators" />
      </main>
    </Layout>
  );
}
