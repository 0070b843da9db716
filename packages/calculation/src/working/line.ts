import { evaluate, type Scope } from '../formula/evaluate.js';
import type { Expression } from '../formula/expression.js';
import { formulaTex, formulaText } from '../formula/render.js';
import { type Print, withNumbers } from '../formula/substitute.js';
import type { OutputField } from '../outputs.js';
import { presentValue } from '../present.js';
import { unitTex } from '../tex.js';
import { mostDigits } from '../written.js';
import type { ExplainedStep } from './explained.js';
import { fewestDigits, printNumber, printQuantity } from './print.js';
import { type Run, symbols, words } from './run.js';
import type { Names } from './scope.js';

/** How the numbers of a line are printed: quantities with their SI unit, all else bare. */
export function printName(names: Names, digits: number): Print {
  return ({ key, column }, value, unit) => {
    const field = column === undefined ? names.get(key)?.field : names.column(key, column);
    return unit === undefined && field !== undefined && 'kind' in field
      ? printQuantity(field.kind, value, digits)
      : printNumber(value, digits);
  };
}

export function asNumbers(expression: Expression, scope: Scope, names: Names, digits: number): Expression | undefined {
  return withNumbers(expression, scope, printName(names, digits));
}

/** A formula that as a whole gives a number in a unit, and that unit. */
function ownUnit(formula: Expression): string | undefined {
  const unit = formula.type === 'call' && formula.name === 'as' ? formula.of[1] : undefined;
  return unit?.type === 'text' ? unit.value : undefined;
}

/** Half of the last place of a number with so many digits. */
export function halfPlace(value: number, digits: number): number {
  return value === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);
}

/**
 * The line with numbers, each with as many digits as it takes for the result to come out as it is printed; and the result in SI,
 * or in the unit that the formula is tied to, with as many digits as it takes to be shown as it is.
 */
export function printedResult(
  formula: Expression,
  gives: string,
  field: OutputField,
  value: number,
  run: Run,
  scope: Scope,
): (Pick<ExplainedStep, 'numbers' | 'printed' | 'printedDigits' | 'printedUnit'> & { readonly numbersTex: string }) | undefined {
  const { inputDigits, uncertainty } = run.result;
  const shownAs = (si: number): string => {
    const shown = presentValue(field, field.type === 'count' ? Number(si.toPrecision(12)) : si, inputDigits, uncertainty[gives]);
    return shown.type === 'table' ? '' : shown.text;
  };
  const wanted = shownAs(value);
  const unit = ownUnit(formula);
  const toSI = (number: number) => (unit === undefined ? number : scope.quantity(number, unit));
  const inOwn = unit === undefined || field.type !== 'quantity' ? value : field.kind.in(field.kind.si(value), unit as never);
  let digits = 3;
  while (digits < mostDigits && shownAs(toSI(Number(inOwn.toPrecision(digits)))) !== wanted) digits += 1;
  const printed = Number(inOwn.toPrecision(digits));
  const fits = (result: unknown) =>
    typeof result === 'number' && Math.abs(result - printed) <= halfPlace(printed, digits) * (1 + 1e-9) && shownAs(toSI(result)) === wanted;
  for (let each = fewestDigits; each <= mostDigits; each += 1) {
    const numbers = withNumbers(formula, scope, printName(run.names, each));
    if (numbers === undefined) return undefined;
    if (each < mostDigits && !fits(evaluate(numbers, scope))) continue;
    const result = resultTex(field, printed, digits, unit);
    return {
      numbers: formulaText(numbers, words(run.names)),
      numbersTex: `${formulaTex(numbers, symbols(run.names))}${result}`,
      printed,
      printedDigits: digits,
      ...(field.type === 'quantity' ? { printedUnit: unit ?? field.kind.baseUnit } : {}),
    };
  }
  return undefined;
}

/** The result in SI, where it is shown in another unit. */
function resultTex(field: OutputField, printed: number, digits: number, unit: string | undefined): string {
  if (field.type !== 'quantity') return '';
  const own = unit ?? field.kind.baseUnit;
  if (own === (field.units[0] ?? field.kind.baseUnit)) return '';
  if (unit !== undefined) return `=${printNumber(printed, digits).tex}\\,${unitTex(field.kind.symbol(unit as never))}`;
  return `=${printQuantity(field.kind, printed, digits).tex}`;
}
