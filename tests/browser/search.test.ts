import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

interface IndexPart {
  readonly documents?: readonly { readonly u?: string }[];
}

// The plugin leaves out pages that it takes for documents of no docs plugin, and says nothing.
it('finds calculators as well as the guide and the reference', () => {
  const index = new URL('../../docs-site/build/search-index.json', import.meta.url);
  const parts = JSON.parse(readFileSync(index, 'utf8')) as readonly IndexPart[];
  const found = new Set(parts.flatMap(({ documents = [] }) => documents.map(({ u }) => u)));
  for (const page of ['/calculators/filter-condition', '/calculators/oil-dilution', '/guide/the-job', '/validation']) {
    expect(found).toContain(page);
  }
});
