import { readUnitCases } from '../../../tests/reference/units/support/unit-case.js';
import { registry } from '../../../tests/support/calculations.js';
import { readMeasuredCurves } from '../../../tests/support/measured-curve.js';
import { readMisprints } from '../../../tests/support/misprint.js';
import { readCaseFiles } from '../../../tests/support/reference-case.js';
import type { Evidence } from '../../src/data/evidence.js';
import { curveView } from './measured-data.js';
import { caseDisagreements, misprintViews, valueDisagreements } from './misprint-data.js';
import { numericsGroups } from './numerics-data.js';
import { unitGroups } from './unit-data.js';

/** The published validation beside the reference cases of the calculations, computed anew. */
export function evidence(): Evidence {
  const [units, numerics] = [unitGroups(readUnitCases()), numericsGroups()];
  return {
    measured: readMeasuredCurves().map((curve) => curveView(curve, registry)),
    misprints: misprintViews(readMisprints(), registry),
    disagreements: [...caseDisagreements(readCaseFiles(), registry), ...valueDisagreements([...units, ...numerics])],
    units,
    numerics,
  };
}
