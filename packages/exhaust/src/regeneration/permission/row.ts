import { say } from '@wallflow/calculation';
import { differenceInUnit, type Kind, type KindName, unitSymbol } from '@wallflow/units';
import { type ConditionResult, checkAnswer, checkSpan } from './kernel.js';

/** One condition with its answer, ready for the table. */
export interface ConditionRow {
  readonly condition: string;
  readonly result: ConditionResult;
  readonly measured: string | undefined;
  readonly limit: string;
  readonly margin: string | undefined;
  readonly reason: string;
  readonly basis: string;
  readonly action: string | undefined;
}

export const practice = say`common practice, no source`;
export const makersLimit = "vehicle maker's limit";

/** What the technician reads when a condition refuses and when it is not known. */
interface Words {
  readonly condition: string;
  /** Why the condition exists. */
  readonly reason: string;
  /** What to do when it refuses. */
  readonly repair: string;
  /** How to find out. */
  readonly find: string;
  readonly basis?: string;
}

interface Limit {
  readonly usual: number;
  readonly maker: number | undefined;
}

interface SpanWords<K extends KindName> extends Words {
  readonly kind: Kind<K>;
  readonly unit: Parameters<Kind<K>['in']>[1];
  readonly value: number | undefined;
  readonly least?: Limit;
  readonly most?: Limit;
  readonly mostExcluded?: boolean;
  /** When the value is too low, if that calls for something else than `repair`. */
  readonly repairLow?: string;
}

function action(result: ConditionResult, words: Words, repair = words.repair): string | undefined {
  if (result === 'pass') return undefined;
  return result === 'refuse' ? repair : words.find;
}

/** A number in a unit as a printed table writes it, with a minus instead of a hyphen. */
export function amountText<K extends KindName>(kind: Kind<K>, si: number, unit: Parameters<Kind<K>['in']>[1], digits: number): string {
  const number = Number(kind.in(kind.si(si), unit).toPrecision(digits));
  return `${String(number).replace('-', '−')} ${unitSymbol(kind.kind, unit)}`;
}

function differenceText<K extends KindName>(kind: Kind<K>, delta: number, unit: string): string {
  const amount = Number(differenceInUnit(kind.kind, delta, unit).toPrecision(3));
  const symbol = kind.kind === 'temperature' ? unitSymbol(kind.kind, unit).replace('°C', 'K') : unitSymbol(kind.kind, unit);
  return `${amount} ${symbol}`;
}

/** A row for a measured value that must lie in a span. */
export function spanRow<K extends KindName>(words: SpanWords<K>): ConditionRow {
  const { kind, unit, value } = words;
  const least = words.least?.maker ?? words.least?.usual;
  const most = words.most?.maker ?? words.most?.usual;
  const mostExcluded = (words.mostExcluded ?? false) && words.most?.maker === undefined;
  const check = checkSpan(value, { least, most, mostExcluded });
  const show = (si: number) => amountText(kind, si, unit, 4);
  const ends = [
    least === undefined ? undefined : say`at least ${show(least)}`,
    most === undefined ? undefined : mostExcluded ? say`below ${show(most)}` : say`at most ${show(most)}`,
  ];
  const fromMaker = [words.least?.maker === undefined ? undefined : 'least', words.most?.maker === undefined ? undefined : 'most'].filter(
    (end) => end !== undefined,
  );
  const ownBasis = words.basis ?? practice;
  const both = least !== undefined && most !== undefined;
  const basis =
    fromMaker.length === 0
      ? ownBasis
      : both && fromMaker.length === 1
        ? fromMaker[0] === 'least'
          ? say`${makersLimit} (lower), otherwise ${ownBasis}`
          : say`${makersLimit} (upper), otherwise ${ownBasis}`
        : makersLimit;
  const repair = check.side === 'low' ? (words.repairLow ?? words.repair) : words.repair;
  return {
    condition: words.condition,
    result: check.result,
    measured: value === undefined ? undefined : show(value),
    limit: ends.filter((end) => end !== undefined).join(say` and `),
    margin: check.margin === undefined ? undefined : differenceText(kind, check.margin, unit),
    reason: words.reason,
    basis,
    action: action(check.result, words, repair),
  };
}

const yesNo = (answer: boolean) => (answer ? say`yes` : say`no`);

/** A row for a question of yes or no. */
export function answerRow(words: Words & { readonly answer: boolean | undefined; readonly wanted: boolean }): ConditionRow {
  const result = checkAnswer(words.answer, words.wanted);
  return {
    condition: words.condition,
    result,
    measured: words.answer === undefined ? undefined : yesNo(words.answer),
    limit: yesNo(words.wanted),
    margin: undefined,
    reason: words.reason,
    basis: words.basis ?? practice,
    action: action(result, words),
  };
}

/** A row whose result was found elsewhere. */
export function decidedRow(
  words: Words & { readonly result: ConditionResult; readonly measured: string | undefined; readonly limit: string },
): ConditionRow {
  const { condition, result, measured, limit, reason } = words;
  return {
    condition,
    result,
    measured,
    limit,
    margin: undefined,
    reason,
    basis: words.basis ?? practice,
    action: action(result, words),
  };
}

/** Every row with a result, with what was found and what it must be; undefined when there is none. */
export function namedRows(rows: readonly ConditionRow[], result: ConditionResult): string | undefined {
  const named = rows
    .filter((row) => row.result === result)
    .map(({ condition, measured, limit }) =>
      measured === undefined ? say`${condition}: must be ${limit}` : say`${condition}: ${measured}, must be ${limit}`,
    );
  return named.length === 0 ? undefined : `${named.join('; ')}.`;
}
