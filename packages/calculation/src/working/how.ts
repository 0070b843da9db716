import { evaluate } from '../formula/evaluate.js';
import { type Expression, namesIn } from '../formula/expression.js';
import { formulaTex, formulaText } from '../formula/render.js';
import { withNumbers } from '../formula/substitute.js';
import type { OutputField } from '../outputs.js';
import { expressionsOf, type How, type Step } from '../step.js';
import { say } from '../words/say.js';
import { mostDigits } from '../written.js';
import { unitChanges } from './changes.js';
import { columnsWorked } from './columns.js';
import type { Comparison, ExplainedStep } from './explained.js';
import { asNumbers, printedResult, printName } from './line.js';
import { nestedWorking } from './nested.js';
import { fewestDigits } from './print.js';
import { type Run, symbols, words } from './run.js';
import { scopeInWords, scopeOf, symbolTex, withWords } from './scope.js';

interface Worked {
  readonly how: ExplainedStep['how'];
  readonly parts: Partial<ExplainedStep>;
  readonly text?: string;
  /** Source of the way that was taken, where it has its own. */
  readonly origin?: Pick<Step, 'source' | 'locator'>;
}

export function howWorked(step: Step, field: OutputField, value: unknown, run: Run): Worked {
  const how = step.how;
  if (how === undefined) return { how: step.tex === undefined ? 'words' : 'formula', parts: {} };
  switch (how.type) {
    case 'formula':
      return { how: 'formula', parts: formulaWorked(how.formula, step.gives, field, value, run) };
    case 'cases':
      return casesWorked(how, field, value, run);
    case 'nested':
      return { how: 'nested', parts: nestedWorking(how, field, run) };
    case 'solved':
      return { how: 'solved', parts: solvedWorked(how, field, run) };
    case 'verdict':
      return { how: 'verdict', parts: verdictWorked(how, field, run) };
    case 'found':
      return { how: 'found', parts: foundWorked(how.conditions, field, run) };
    case 'table':
      return { how: 'table', parts: tableWorked(how.at, field, run) };
    case 'rows':
      return {
        how: 'rows',
        parts: {
          columns: columnsWorked(how.columns, step.gives, field, value, run),
          changes: unitChanges(expressionsOf(how.columns), run),
        },
      };
  }
}

function formulaWorked(formula: Expression, gives: string, field: OutputField, value: unknown, run: Run): Partial<ExplainedStep> {
  const scope = scopeOf(run.names, field);
  const symbol = `{${symbolTex(field, gives)}}`;
  const parts: Partial<ExplainedStep> = {
    changes: unitChanges([formula], run),
    tex: `${symbol}=${formulaTex(withWords(formula, run.names), symbols(run.names))}`,
    recomputed: evaluate(formula, scope),
  };
  if (typeof value !== 'number') return parts;
  const line = printedResult(formula, gives, field, value, run, scope);
  return line === undefined ? parts : { ...parts, ...line, numbersTex: `${symbol}=${line.numbersTex}` };
}

function casesWorked(how: Extract<How, { type: 'cases' }>, field: OutputField, value: unknown, run: Run): Worked {
  const scope = scopeOf(run.names, field);
  const taken = how.cases.find(({ when }) => when === undefined || evaluate(when, scope) === true);
  // The test of all workings finds a run in which no way is open.
  if (taken === undefined) return { how: 'formula', parts: { recomputed: undefined } };
  const { step: inner, when } = taken;
  const worked = howWorked(inner, field, value, run);
  const said = when === undefined ? say`otherwise` : formulaText(withWords(when, run.names), words(run.names));
  return {
    ...worked,
    parts: { ...worked.parts, when: said },
    ...(inner.text === undefined ? {} : { text: inner.text }),
    ...(inner.source === undefined
      ? {}
      : { origin: { source: inner.source, ...(inner.locator === undefined ? {} : { locator: inner.locator }) } }),
  };
}

function solvedWorked(how: Extract<How, { type: 'solved' }>, field: OutputField, run: Run): Partial<ExplainedStep> {
  const { equation } = how;
  if (equation.type !== 'pair') return {};
  const scope = scopeOf(run.names, field);
  const [left, right] = [evaluate(equation.left, scope), evaluate(equation.right, scope)].map(Number) as [number, number];
  const size = Math.max(Math.abs(left), Math.abs(right));
  const numbers = asNumbers(equation, scope, run.names, 8);
  return {
    changes: unitChanges([equation], run),
    tex: formulaTex(equation, symbols(run.names)),
    ...(numbers === undefined
      ? {}
      : { numbersTex: formulaTex(numbers, symbols(run.names)), numbers: formulaText(numbers, words(run.names)) }),
    residual: size === 0 ? 0 : Math.abs(left - right) / size,
    within: how.within,
  };
}

function verdictWorked(how: Extract<How, { type: 'verdict' }>, field: OutputField, run: Run): Partial<ExplainedStep> {
  const scope = scopeOf(run.names, field);
  const comparisons: Comparison[] = [];
  const shown: Expression[] = [];
  let recomputed: string | undefined;
  for (const { option, when } of how.conditions) {
    if (when === undefined) {
      recomputed = option;
      break;
    }
    const holds = evaluate(when, scope) === true;
    const missing = namesIn(when).some(({ key, column }) => scope.value(key, column) === undefined);
    if (holds || !missing) {
      comparisons.push(comparison(when, option, holds, field, run));
      shown.push(when);
    }
    if (!holds) continue;
    recomputed = option;
    break;
  }
  return { changes: unitChanges(shown, run), comparisons, recomputed };
}

function foundWorked(conditions: readonly Expression[], field: OutputField, run: Run): Partial<ExplainedStep> {
  const scope = scopeOf(run.names, field);
  const comparisons = conditions.map((when) => comparison(when, '', evaluate(when, scope) === true, field, run));
  return { changes: unitChanges(conditions, run), comparisons };
}

function comparison(when: Expression, option: string, holds: boolean, field: OutputField, run: Run): Comparison {
  const { names } = run;
  const said = withWords(when, names);
  const verdict = field.type === 'choice' ? (field.options[option] ?? option) : option;
  // As many digits as the comparison needs to come out the same way.
  for (let digits = fewestDigits; digits <= mostDigits; digits += 1) {
    const numbers = withNumbers(said, scopeInWords(names), printName(names, digits));
    if (numbers === undefined) break;
    if (digits < mostDigits && (evaluate(numbers, scopeOf(names, field)) === true) !== holds) continue;
    return {
      verdict,
      tex: formulaTex(said, symbols(names)),
      numbersTex: formulaTex(numbers, symbols(names)),
      numbers: formulaText(numbers, words(names)),
      holds,
    };
  }
  const tex = formulaTex(said, symbols(names));
  return { verdict, tex, numbersTex: tex, numbers: formulaText(said, words(names)), holds };
}

function tableWorked(at: readonly Expression[], field: OutputField, run: Run): Partial<ExplainedStep> {
  const scope = scopeOf(run.names, field);
  const each = at.map((one) => ({ one, numbers: asNumbers(one, scope, run.names, fewestDigits) }));
  return {
    changes: unitChanges(at, run),
    tex: at.map((one) => formulaTex(one, symbols(run.names))).join(',\\;'),
    numbersTex: each.map(({ one, numbers }) => formulaTex(numbers ?? one, symbols(run.names))).join(',\\;'),
  };
}
