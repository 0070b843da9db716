import { readable } from '@wallflow/calculation';
import { type NumericsRun, numericsRuns } from '../../../tests/reference/numerics/all-cases.js';
import { compareNumerics } from '../../../tests/reference/numerics/numerics-case.js';
import type { CheckGroup } from '../../src/data/evidence.js';
import { sourceText } from './texts.js';

/** As many digits as the source prints, and two more to show where the values part. */
function likePrinted(value: number, printed: string): string {
  const digits = printed
    .replace(/e.*$/i, '')
    .replace(/^[-0.]+/, '')
    .replace('.', '').length;
  return readable(String(Number(value.toPrecision(Math.min(17, Math.max(4, digits + 2))))));
}

/** `meanVoltage` as `mean voltage`, `correlationVI` as `correlation VI`. */
function words(key: string): string {
  return key.replace(/(?<=[a-z])(?=[A-Z])|(?<=[a-z]{2})(?=\d)/g, ' ').replace(/(?<= )[A-Z][a-z]+/g, (word) => word.toLowerCase());
}

function group({ reference, ours }: NumericsRun): CheckGroup {
  const { id, title, source, origin, disagreement, toleranceReason } = reference;
  return {
    id,
    title,
    source: sourceText(source),
    mark: source.mark,
    origin,
    rows: compareNumerics(reference, ours()).map(({ key, printed, ours: value, tolerance, agrees }) => ({
      label: words(key),
      expected: printed,
      ours: likePrinted(value, printed),
      difference: readable(String(Number((value - Number(printed)).toPrecision(3)))),
      tolerance: readable(String(Number(tolerance.toPrecision(3)))),
      agrees,
      ...(disagreement?.keys.includes(key) ? { disagreement: disagreement.reason } : {}),
    })),
    ...(toleranceReason === undefined ? {} : { note: `Tolerance: ${toleranceReason}.` }),
  };
}

/** Published and independently computed values that the numerical methods are held against. */
export function numericsGroups(): CheckGroup[] {
  return numericsRuns.map(group);
}
