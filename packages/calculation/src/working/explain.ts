import type { Given } from '../given.js';
import type { Outputs } from '../outputs.js';
import { presentValue } from '../present.js';
import { citation, type Source } from '../source.js';
import type { Step } from '../step.js';
import { quantityTex } from '../tex.js';
import { say } from '../words/say.js';
import type { ExplainedStep } from './explained.js';
import { howWorked } from './how.js';
import type { Run, WorkedResult } from './run.js';
import { namesOf } from './scope.js';
import type { AnySpec } from './spec.js';
import { fill, templateNames, texWithNumbers } from './templates.js';

type Values = Readonly<Record<string, unknown>>;

function sourceText(spec: AnySpec, { source, locator }: Step): string | undefined {
  const own: Source | undefined = typeof source === 'string' ? spec.sources[source] : source;
  if (own === undefined) return undefined;
  return citation(locator === undefined ? own : { ...own, locator });
}

/** The working of a result, with numbers from the same evaluation that gave it. */
export function explainResult(spec: AnySpec, input: Values, given: Given, result: WorkedResult): ExplainedStep[] {
  const fields: Outputs = { ...spec.intermediates, ...spec.outputs };
  const templates = templateNames(spec, input, result.values, result.inputDigits);
  const run: Run = { names: namesOf(spec, input, result.values), given, result, changed: new Set() };
  const steps = spec.steps.flatMap((step: Step): ExplainedStep[] => {
    const field = fields[step.gives];
    const value = result.values[step.gives];
    if (field === undefined || value === undefined) return [];
    const uncertainty = result.uncertainty[step.gives];
    const shown = presentValue(field, value, result.inputDigits, uncertainty);
    const worked = howWorked(step, field, value, run);
    const source = sourceText(spec, { ...step, ...worked.origin });
    const text = worked.text ?? step.text;
    return [
      {
        gives: step.gives,
        label: field.label,
        answer: step.gives === spec.answer,
        changes: [],
        ...('symbol' in field ? { symbol: field.symbol } : {}),
        ...(step.tex === undefined ? {} : { tex: fill(step.tex, templates, 'symbol'), numbersTex: texWithNumbers(step.tex, templates) }),
        ...worked.parts,
        ...(text === undefined ? {} : { text: fill(text, templates, 'words') }),
        value,
        valueText: shown.type === 'table' ? say`${shown.rows.length} rows` : shown.text,
        ...(field.type === 'quantity' ? { valueTex: quantityTex(field.kind, value as number, field.units[0], 6) } : {}),
        ...(source === undefined ? {} : { source }),
        how: worked.how,
      },
    ];
  });
  if (steps.some((step) => step.answer)) return steps;
  // Where what is asked for does not exist for these inputs, the last output that does is the answer.
  const last = steps.findLastIndex((step) => step.gives in spec.outputs);
  return steps.map((step, index) => (index === last ? { ...step, answer: true } : step));
}
