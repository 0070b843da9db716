import { type Expression, namesIn } from './formula/expression.js';
import { parseFormula } from './formula/parse.js';
import type { Source } from './source.js';
import { expressionsOf, type NestedCalculation, type Step, type Way } from './step.js';

/** What a step may stand on: a source, and where in it. */
type Rest = readonly [source?: Source | undefined, locator?: string | undefined, text?: string | undefined];

function step<Key extends string>(gives: Key, how: Step['how'], [source, locator, text]: Rest): Step<Key> {
  return {
    gives,
    ...(how === undefined ? {} : { how }),
    ...(source === undefined ? {} : { source }),
    ...(locator === undefined ? {} : { locator }),
    ...(text === undefined ? {} : { text }),
  };
}

/**
 * A step that works a number out. The formula is one expression whose names are inputs, constants, or what earlier steps give:
 * `formula('density', 'pressure * molarMass / (gasConstant * temperature)', siBrochure)`. From it come the line in symbols, the
 * line with numbers and the recomputed value. Numbers are in SI; `in(x, 'g/mol')` is a number in a unit, and a formula that as
 * a whole gives one is `as(…, 'uPa.s')`.
 */
export function formula<const Key extends string>(gives: Key, text: string, ...rest: Rest): Step<Key> {
  return step(gives, { type: 'formula', formula: parseFormula(text) }, rest);
}

/**
 * A step that is worked out in one of several ways: the first whose condition holds, or `otherwise`. Each way is a formula or
 * another step for the same key: `cases('viscosity', { 'known(gasViscosity)': 'gasViscosity', otherwise: nested(…) })`.
 */
export function cases<const Key extends string>(gives: Key, ways: Readonly<Record<string, string | Step>>, ...rest: Rest): Step<Key> {
  const list = Object.entries(ways).map(([when, way]) => {
    const own: Step = typeof way === 'string' ? formula(gives, way) : way;
    return { step: { ...own, gives }, ...(when === 'otherwise' ? {} : { when: parseFormula(when) }) };
  });
  return step(gives, { type: 'cases', cases: list }, rest);
}

/** An input of a nested calculation: a formula, or `{ is: … }` for what is typed as it stands. */
type NestedInput = string | { readonly is: unknown };

/**
 * A value that another calculation makes, with its working to unfold: `nested('viscosity', dynamicViscosityCalculation,
 * { gasTemperature: 'gasTemperature', model: { is: 'sutherland' } })`. Its inputs are formulas of this definition's names; one that
 * comes to nothing is left out. `output` is the other calculation's key where it differs.
 */
export function nested<const Key extends string>(
  gives: Key,
  calculation: NestedCalculation,
  inputs: Readonly<Record<string, NestedInput>>,
  output: string = gives,
  text?: string,
): Step<Key> {
  const parsed = Object.fromEntries(
    Object.entries(inputs).map(([key, input]) => [key, typeof input === 'string' ? parseFormula(input) : input]),
  );
  return step(gives, { type: 'nested', calculation, inputs: parsed, output }, [undefined, undefined, text]);
}

/**
 * A value that an iteration or a search has found: the equation that it solves, whose two sides the working compares. It may
 * name results of later steps, which then show how the sides come about. `within` is how far the sides may differ, relative.
 */
export function solved<const Key extends string>(
  gives: Key,
  equation: string,
  options: { readonly within?: number } = {},
  ...rest: Rest
): Step<Key> {
  const parsed = parseFormula(equation);
  if (parsed.type !== 'pair' || parsed.sign !== '=') throw new Error(`"${equation}" is not an equation`);
  return step(gives, { type: 'solved', equation: parsed, within: options.within ?? 1e-6 }, rest);
}

/**
 * A verdict: the key of each possibility with the condition under which it is given, looked at in this order; the last may be
 * `'otherwise'`. The working shows each comparison with its numbers as far as it was needed.
 */
export function verdict<const Key extends string>(gives: Key, conditions: Readonly<Record<string, string>>, ...rest: Rest): Step<Key> {
  const list = Object.entries(conditions).map(([option, when]) =>
    when === 'otherwise' ? { option } : { option, when: parseFormula(when) },
  );
  return step(gives, { type: 'verdict', conditions: list }, rest);
}

/**
 * A number that a search among many has found, as the best of all plans: the conditions that it meets, with their numbers. They
 * may name results of later steps. What makes it the best is said in words, `text`.
 */
export function found<const Key extends string>(gives: Key, conditions: readonly string[], ...rest: Rest): Step<Key> {
  return step(gives, { type: 'found', conditions: conditions.map(parseFormula) }, rest);
}

/** A value that a table of the source or a distribution gives for these arguments, such as Student's t for `runsCounted - 1`. */
export function fromTable<const Key extends string>(gives: Key, at: readonly string[], ...rest: Rest): Step<Key> {
  return step(gives, { type: 'table', at: at.map(parseFormula) }, rest);
}

/**
 * The formulas of a table's columns, for each row: a bare name is a column of the same row or, failing that, anything else in
 * the definition; `runs.mass` is the same row of another list or table, or all its rows where it is summed, `sum(runs.mass)`;
 * `previous.mass` the row before, `row` its number from 1.
 * A column with several ways is written as in `cases`; where none holds it has no value.
 */
export function rows<const Key extends string>(
  gives: Key,
  columns: Readonly<Record<string, string | Readonly<Record<string, string>>>>,
  ...rest: Rest
): Step<Key> {
  const waysOf = (column: string | Readonly<Record<string, string>>): Way[] =>
    typeof column === 'string'
      ? [{ formula: parseFormula(column) }]
      : Object.entries(column).map(([when, text]) => ({
          formula: parseFormula(text),
          ...(when === 'otherwise' ? {} : { when: parseFormula(when) }),
        }));
  const parsed = Object.fromEntries(Object.entries(columns).map(([key, column]) => [key, waysOf(column)]));
  return step(gives, { type: 'rows', columns: parsed }, rest);
}

/** A step that is one sentence: a decision, a name or a choice. `[[key]]` is replaced by the value. Not for numbers. */
export function statement<const Key extends string>(gives: Key, text: string, source?: Source, locator?: string): Step<Key> {
  return step(gives, undefined, [source, locator, text]);
}

/** The names a step rests on, and whether they may come later in the working. */
export function namesOfStep({ how }: Step): { readonly key: string; readonly column?: string; readonly later: boolean }[] {
  const of = (expressions: readonly Expression[], later = false) =>
    expressions.flatMap(namesIn).map(({ key, column }) => ({ key, ...(column === undefined ? {} : { column }), later }));
  switch (how?.type) {
    case 'formula':
      return of([how.formula]);
    case 'cases':
      return how.cases.flatMap(({ when, step: inner }) => [...of(when === undefined ? [] : [when]), ...namesOfStep(inner)]);
    case 'nested':
      return of(Object.values(how.inputs).filter((input): input is Expression => !('is' in input)));
    case 'solved':
      return of([how.equation], true);
    case 'found':
      return of(how.conditions, true);
    case 'verdict':
      return of(how.conditions.flatMap(({ when }) => (when === undefined ? [] : [when])));
    case 'table':
      return of(how.at);
    case 'rows':
      return of(expressionsOf(how.columns));
    default:
      return [];
  }
}
