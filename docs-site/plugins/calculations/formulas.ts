import katex from 'katex';
import { formulaKey, styledTex } from '../../src/calculator/formula-key.js';
import type { CalculationData, FieldData, StepView } from '../../src/data/types.js';

/** A formula as HTML with MathML beside it. One that KaTeX does not accept without doubt fails the build. */
function formulaHtml(tex: string, display: boolean): string {
  try {
    return katex.renderToString(styledTex(tex, display), { throwOnError: true, strict: 'error', output: 'htmlAndMathml' });
  } catch (error) {
    throw new Error(`formula "${tex}": ${error instanceof Error ? error.message : String(error)}`);
  }
}

function stepFormulas(step: StepView): string[] {
  const own = [
    step.tex,
    step.numbersTex,
    ...(step.changesTex ?? []),
    ...(step.comparisons ?? []).map(({ tex }) => tex),
    ...(step.columns ?? []).flatMap(({ tex, numbersTex }) => [tex, numbersTex]),
  ];
  return [...own.filter((tex) => tex !== undefined), ...(step.nested?.steps ?? []).flatMap(stepFormulas)];
}

function stepSymbols(step: StepView): string[] {
  return [step.symbolTex ?? '', ...(step.nested?.steps ?? []).flatMap(stepSymbols)];
}

function inputSymbols(fields: readonly FieldData[]): string[] {
  return fields.flatMap((field) => (field.type === 'list' ? inputSymbols(field.item) : 'symbolTex' in field ? [field.symbolTex] : []));
}

/** Every formula that the pages of a calculation show, as HTML by its TeX. */
export function formulasOf(data: Omit<CalculationData, 'formulas'>, otherSteps: readonly string[]): Record<string, string> {
  const values = [...data.example.values, ...data.example.intermediates];
  const inline = [
    ...inputSymbols(data.inputs),
    ...values.map((value) => value.symbolTex ?? ''),
    ...data.example.steps.flatMap(stepSymbols),
    ...data.constants.map((constant) => constant.tex),
  ];
  const display = [...data.example.steps.flatMap(stepFormulas), ...otherSteps];
  const formulas = new Map<string, string>();
  for (const tex of inline) if (tex !== '') formulas.set(formulaKey(tex, false), formulaHtml(tex, false));
  for (const tex of display) if (tex !== '') formulas.set(formulaKey(tex, true), formulaHtml(tex, true));
  return Object.fromEntries(formulas);
}
