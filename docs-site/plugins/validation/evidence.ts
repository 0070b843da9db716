import { readUnitCases } from '../../../tests/reference/units/support/unit-case.js';
import { registry } from '../../../tests/support/calculations.js';
import { type MeasuredCurve, readMeasuredCurves } from '../../../tests/support/measured-curve.js';
import { readMisprints } from '../../../tests/support/misprint.js';
import { readCaseFiles } from '../../../tests/support/reference-case.js';
import type { Evidence } from '../../src/data/evidence.js';
import { estimateView } from './estimate-data.js';
import { curveView } from './measured-data.js';
import { caseDisagreements, misprintViews, valueDisagreements } from './misprint-data.js';
import { numericsGroups } from './numerics-data.js';
import { unitGroups } from './unit-data.js';

/** Full comparisons first, then ratios, then what cannot be computed. */
function rank(curve: MeasuredCurve): number {
  if (curve.notComputable !== undefined) return 2;
  return curve.relativeToFirst === true ? 1 : 0;
}

/** The published validation beside the reference cases of the calculations, computed anew. */
export function evidence(): Evidence {
  const [units, numerics] = [unitGroups(readUnitCases()), numericsGroups()];
  return {
    measured: readMeasuredCurves()
      .sort((one, other) => rank(one) - rank(other))
      .map((curve) => curveView(curve, registry)),
    misprints: misprintViews(readMisprints(), registry),
    disagreements: [...caseDisagreements(readCaseFiles(), registry), ...valueDisagreements([...units, ...numerics])],
    units,
    numerics,
    estimate: estimateView(),
  };
}
