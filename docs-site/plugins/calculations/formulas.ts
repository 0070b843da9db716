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

function allOf(texts: readonly string[], display: boolean): Record<string, string> {
  return Object.fromEntries(
    [...new Set(texts)].filter((tex) => tex !== '').map((tex) => [formulaKey(tex, display), formulaHtml(tex, display)]),
  );
}

/** Symbols that stand within the text of the pages of a calculation, as HTML by their TeX. */
export function symbolsOf(data: Omit<CalculationData, 'formulas'>): Record<string, string> {
  const values = [...data.example.values, ...data.example.intermediates];
  return allOf(
    [
      ...inputSymbols(data.inputs),
      ...values.map((value) => value.symbolTex ?? ''),
      ...data.example.steps.flatMap(stepSymbols),
      ...data.constants.map((constant) => constant.tex),
    ],
    false,
  );
}

/** Formulas on lines of their own: those of the example, and in symbols those that it does not reach. */
export function formulasOf(data: Pick<CalculationData, 'example'>, otherSteps: readonly string[]): Record<string, string> {
  return allOf([...data.example.steps.flatMap(stepFormulas), ...otherSteps], true);
}
