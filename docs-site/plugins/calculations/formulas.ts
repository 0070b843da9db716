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
  return [step.tex, step.numbersTex].filter((tex) => tex !== undefined);
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
    ...data.example.steps.map((step) => step.symbolTex ?? ''),
    ...data.constants.map((constant) => constant.tex),
  ];
  const display = [...data.example.steps.flatMap(stepFormulas), ...otherSteps];
  const formulas = new Map<string, string>();
  for (const tex of inline) if (tex !== '') formulas.set(formulaKey(tex, false), formulaHtml(tex, false));
  for (const tex of display) if (tex !== '') formulas.set(formulaKey(tex, true), formulaHtml(tex, true));
  return Object.fromEntries(formulas);
}
