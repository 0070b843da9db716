import type { AnyCalculation, ColumnWorking, ExplainedStep, OutputField } from '@wallflow/calculation';
import { evaluate } from 'mathjs';

const superscripts = new Map([...'⁰¹²³⁴⁵⁶⁷⁸⁹⁻'].map((sign, index) => [sign, '0123456789-'[index] ?? '']));

/** A printed line as another program's calculator reads it. */
function asTyped(numbers: string): string {
  return numbers
    .replace(/ × 10([⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)/g, (_, power: string) => `e${[...power].map((sign) => superscripts.get(sign) ?? '').join('')}`)
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('π', 'pi')
    .replaceAll('log(', 'log10(')
    .replaceAll('ln(', 'log(');
}

function typedIn(numbers: string): number {
  return Number(evaluate(asTyped(numbers)));
}

/** Whether a number, rounded where the printed one ends, is the printed one; a tie may go either way. */
function isPrintedAs(value: number, printed: number, digits: number): boolean {
  if (value === printed) return true;
  const place = printed === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(printed))) - digits + 1);
  return Math.abs(value - printed) <= 0.5001 * place;
}

function isClose(one: unknown, other: unknown, relative: number, size = 0): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  const scale = Math.max(Math.abs(one), Math.abs(other), size);
  return Math.abs(one - other) <= relative * scale + 1e-300;
}

/** The numbers that stand in a line. */
function numbersIn(line: string | undefined): number[] {
  return (asTyped(line ?? '').match(/(?<![\w.])\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []).map(Number);
}

/** Size of the largest part of a sum in a line: what is left of near-equal numbers is as exact as these are. */
function largestIn(line: string | undefined): number {
  return Math.max(0, ...numbersIn(line));
}

/**
 * How far the sum of a line in doubles may be from the sum of its decimals: each of n numbers is rounded as it is read, and each of
 * n − 1 additions as it is done, by at most 2⁻⁵³ of the sum of the sizes. Lines with products or powers get nothing.
 */
function roundingOfSum(line: string): number {
  if (/[×/^]/.test(line)) return 0;
  const numbers = numbersIn(line);
  return (2 * numbers.length - 1) * 2 ** -53 * numbers.reduce((sum, number) => sum + number, 0);
}

function lineFaults(line: Pick<ExplainedStep | ColumnWorking, 'numbers' | 'printed' | 'printedDigits'>, name: string): string[] {
  if (line.numbers === undefined || line.printed === undefined) return [];
  const typed = typedIn(line.numbers);
  return isPrintedAs(typed, line.printed, line.printedDigits ?? 15) || Math.abs(typed - line.printed) <= roundingOfSum(line.numbers)
    ? []
    : [`${name}: ${line.numbers} gives ${typed}, printed ${line.printed}`];
}

function columnFaults(step: ExplainedStep, field: OutputField | undefined, relative: number): string[] {
  if (field?.type !== 'table' || !Array.isArray(step.value)) return [];
  const rows = step.value as readonly Readonly<Record<string, unknown>>[];
  return (step.columns ?? []).flatMap((column) => [
    ...lineFaults(column, `${step.gives}.${column.column}`),
    ...rows.flatMap((row, index) => {
      const [given, again] = [row[column.column], column.recomputed[index]];
      if (given === undefined) return [];
      return isClose(given, again, relative, 1e-6 * largestIn(column.numbers))
        ? []
        : [`${step.gives}[${index}].${column.column}: formula ${String(again)}, result ${String(given)}`];
    }),
  ]);
}

function stepFaults(calculation: AnyCalculation, step: ExplainedStep): string[] {
  const { spec } = calculation;
  const field = ({ ...spec.intermediates, ...spec.outputs } as Record<string, OutputField>)[step.gives];
  const relative = Math.max(1e-9, 10 * (spec.precision ?? 0));
  const faults = [...lineFaults(step, step.gives), ...columnFaults(step, field, relative)];
  const number = field?.type === 'quantity' || field?.type === 'count';
  if ('recomputed' in step || step.how === 'formula') {
    if (!isClose(step.value, step.recomputed, relative, 1e-6 * largestIn(step.numbers))) {
      faults.push(`${step.gives}: formula ${String(step.recomputed)}, result ${String(step.value)}`);
    }
  }
  if (step.how === 'nested' && step.nested === undefined) faults.push(`${step.gives}: the calculation nested here refuses these values`);
  if (step.how === 'words' && number) faults.push(`${step.gives}: a number without a formula`);
  if (step.how === 'found') {
    for (const { holds, numbers } of step.comparisons ?? []) if (!holds) faults.push(`${step.gives}: ${numbers} does not hold`);
  }
  if (step.residual !== undefined && step.residual > (step.within ?? 0))
    faults.push(`${step.gives}: the sides of the equation differ by ${step.residual}`);
  return faults;
}

/**
 * Work every printed line out again: the numbers as they stand must give the result as it stands, and the formula, with values
 * that were not rounded, what the kernel gave. Says what does not.
 */
export function recompute(calculation: AnyCalculation, input: unknown): string[] | 'refused' {
  const explained = calculation.explain(input);
  if (!explained.ok) return 'refused';
  return explained.steps.flatMap((step: ExplainedStep) => stepFaults(calculation, step));
}
