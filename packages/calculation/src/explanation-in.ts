import type { AnyCalculation, Explained } from './definition.js';
import { type NumberSigns, numberSigns, texWithSigns, withSigns } from './locale.js';
import type { OutputField, Outputs } from './outputs.js';
import { type PresentOptions, shown } from './present.js';
import type { How, Step } from './step.js';
import { quantityTex, unitTex } from './tex.js';
import type { ColumnWorking, Comparison, ExplainedStep, UnitChange } from './working/explained.js';

type Success = Extract<Explained<Outputs, Outputs>, { ok: true }>;

/** Units, system and language that the values of a working are shown in. */
export type ExplanationOptions = PresentOptions;

/** Digits of a number as it is shown, which say how exact it is. */
function digitsShown(text: string): number {
  const digits = /\d+(?:\.\d+)?/.exec(text)?.[0].replace('.', '').replace(/^0+/, '') ?? '';
  return Math.max(1, digits.length);
}

/** The nested calculation of a step, the one of the way that was taken where there are several. */
function nestedOf(how: How | undefined, id: string): AnyCalculation | undefined {
  if (how?.type === 'nested') {
    const calculation = how.calculation as unknown as AnyCalculation;
    return calculation.id === id ? calculation : undefined;
  }
  if (how?.type !== 'cases') return undefined;
  for (const { step } of how.cases) {
    const found = nestedOf(step.how, id);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Signs of a language in all that is written of a step. */
function signed(step: ExplainedStep, signs: NumberSigns): ExplainedStep {
  const text = (value: string) => withSigns(value, signs);
  const tex = (value: string) => texWithSigns(value, signs);
  const write = <T extends object>(of: T, texts: readonly (keyof T)[], formulas: readonly (keyof T)[]): T => {
    const written = { ...of } as Record<keyof T, unknown>;
    for (const key of texts) if (typeof of[key] === 'string') written[key] = text(of[key] as string);
    for (const key of formulas) if (typeof of[key] === 'string') written[key] = tex(of[key] as string);
    return written as T;
  };
  const own = write(step, ['numbers', 'valueText', 'when', 'text'], ['tex', 'numbersTex', 'valueTex']);
  return {
    ...own,
    changes: step.changes.map((change: UnitChange) => write(change, ['text'], ['tex'])),
    ...(step.comparisons === undefined
      ? {}
      : { comparisons: step.comparisons.map((one: Comparison) => write(one, ['numbers'], ['tex', 'numbersTex'])) }),
    ...(step.columns === undefined
      ? {}
      : { columns: step.columns.map((one: ColumnWorking) => write(one, ['numbers', 'when'], ['tex', 'numbersTex'])) }),
  };
}

interface Shown {
  readonly text: string;
  readonly tex?: string;
  /** What the line with numbers ends with, where its unit is now another than the shown one. */
  readonly ending: string;
}

function valueShown(
  field: Exclude<OutputField, { type: 'table' }>,
  step: ExplainedStep,
  digits: number,
  uncertainty: number | undefined,
  options: PresentOptions,
): Shown {
  const unit = options.units?.[step.gives];
  const value = shown(field, step.value, digits, uncertainty, { unit, system: options.system });
  if (value.type === 'table') return { text: step.valueText, ending: '' };
  if (field.type !== 'quantity' || value.type !== 'quantity') return { text: value.text, ending: '' };
  const { kind } = field;
  const before = field.units[0] ?? kind.baseUnit;
  const hadIt = step.printedUnit === undefined || step.printedUnit !== before || value.unit === before;
  return {
    text: value.text,
    tex: quantityTex(kind, step.value as number, value.unit, 6),
    ending: hadIt || step.printed === undefined ? '' : `=${step.printed}\\,${unitTex(kind.symbol(step.printedUnit as never))}`,
  };
}

function stepsIn(
  calculation: AnyCalculation,
  steps: readonly ExplainedStep[],
  result: Success['result'] | undefined,
  options: PresentOptions,
) {
  const fields: Outputs = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const ways = new Map((calculation.spec.steps as readonly Step[]).map((step) => [step.gives, step.how]));
  const signs = options.locale === undefined ? undefined : numberSigns(options.locale);
  return steps.map((step): ExplainedStep => {
    const field = fields[step.gives];
    const inner = step.nested === undefined ? undefined : nestedOf(ways.get(step.gives), step.nested.definition.id);
    const digits = result?.inputDigits ?? digitsShown(step.valueText);
    const value =
      field === undefined || field.type === 'table'
        ? undefined
        : valueShown(field, step, digits, result?.uncertainty?.values[step.gives], options);
    const changed: ExplainedStep = {
      ...step,
      ...(value === undefined ? {} : { valueText: value.text }),
      ...(value?.tex === undefined ? {} : { valueTex: value.tex }),
      ...(value === undefined || step.numbersTex === undefined ? {} : { numbersTex: `${step.numbersTex}${value.ending}` }),
      ...(step.nested === undefined || inner === undefined
        ? {}
        : { nested: { ...step.nested, steps: stepsIn(inner, step.nested.steps, undefined, { ...options, units: {} }) } }),
    };
    return signs === undefined ? changed : signed(changed, signs);
  });
}

/**
 * A working with its values in other units, another system or another language, nested workings included. The lines with numbers
 * stay in SI, as formulas need them; what follows from them is shown as wanted, and `value` and `printed` stay the same numbers.
 */
export function explanationIn<E extends Explained<Outputs, Outputs>>(
  calculation: AnyCalculation,
  explained: E,
  options: ExplanationOptions,
): E {
  if (!explained.ok) return explained;
  return { ...explained, steps: stepsIn(calculation, explained.steps, explained.result, options) };
}
