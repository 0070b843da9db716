import type { ReactNode } from 'react';
import type { CheckGroup } from '../../data/evidence.js';
import { CheckGroups } from '../parts/CheckGroups.js';
import { EvidencePage } from '../parts/EvidencePage.js';

/** Published conversion factors beside ours. */
export default function UnitChecksPage({ evidence }: { readonly evidence: readonly CheckGroup[] }): ReactNode {
  return (
    <EvidencePage
      title="Units against published factors"
      purpose="Every quantity is read as it is written, converted, and held against what a standard or a table prints."
    >
      <p>
        “We give” is the result of decimal arithmetic, rounded to twelve digits here; a case agrees only if the double that calculations use
        does too. The tolerance is half a unit of the last printed digit unless a reason is given.
      </p>
      <CheckGroups groups={evidence} />
    </EvidencePage>
  );
}
