import type { ReactNode } from 'react';
import type { CheckGroup } from '../../data/evidence.js';
import { CheckGroups } from '../parts/CheckGroups.js';
import { EvidencePage } from '../parts/EvidencePage.js';

/** The numerical methods beside certified, published and independently computed values. */
export default function NumericsChecksPage({ evidence }: { readonly evidence: readonly CheckGroup[] }): ReactNode {
  return (
    <EvidencePage
      title="Numerical methods against published values"
      purpose="Roots, fits, differential equations, interpolation and uncertainty, held against certified datasets, published problems and other code."
    >
      <p>
        The values are those of the source as printed; ours were computed when this page was built. The tolerance is half a unit of the last
        printed digit unless a reason is given.
      </p>
      <CheckGroups groups={evidence} />
    </EvidencePage>
  );
}
