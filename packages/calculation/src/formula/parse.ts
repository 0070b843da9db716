import { numberTex } from '../tex.js';
import { mostDigits, numberText } from '../written.js';
import { type Expression, type PairSign, signTightness, tightness } from './expression.js';
import { isFunctionName } from './functions.js';

interface Token {
  readonly type: 'number' | 'text' | 'name' | 'sign' | 'end';
  readonly text: string;
  readonly at: number;
}

const pattern = /\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?)|'([^']*)'|([A-Za-z_]\w*)|(<=|>=|==|!=|[-+*/^<>=(),.]))/y;

/** A number as it stands, but for a power of ten, which nobody reads as `1.5e-5`. */
function written(value: number, text: string): Expression {
  if (!text.includes('e')) return { type: 'number', value, text };
  return { type: 'number', value, text: numberText(value, mostDigits), tex: numberTex(value, mostDigits) };
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  pattern.lastIndex = 0;
  const end = text.trimEnd().length;
  while (pattern.lastIndex < end) {
    const at = pattern.lastIndex;
    const found = pattern.exec(text);
    if (found === null) throw new Error(`the formula "${text}" cannot be read from "${text.slice(at).trim()}"`);
    const [, number, words, name, sign] = found;
    if (number !== undefined) tokens.push({ type: 'number', text: number, at });
    else if (words !== undefined) tokens.push({ type: 'text', text: words, at });
    else if (name === 'and' || name === 'or' || name === 'not') tokens.push({ type: 'sign', text: name, at });
    else if (name !== undefined) tokens.push({ type: 'name', text: name, at });
    else tokens.push({ type: 'sign', text: sign ?? '', at });
  }
  tokens.push({ type: 'end', text: '', at: text.length });
  return tokens;
}

/**
 * Read a formula such as `pressure * molarMass / (gasConstant * temperature)`. Names are keys of a definition, `rows.mass` is a
 * column of a list or table, a text in single quotes is a key of a choice. A mistake is a programmer's and throws.
 */
export function parseFormula(text: string): Expression {
  const tokens = tokensOf(text);
  let position = 0;
  const peek = (): Token => tokens[position] as Token;
  const next = (): Token => tokens[position++] as Token;
  const fail = (token: Token): never => {
    const place = token.type === 'end' ? 'ends too early' : `cannot have "${token.text}" at position ${token.at + 1}`;
    throw new Error(`the formula "${text}" ${place}`);
  };
  const isSign = (sign: string) => peek().type === 'sign' && peek().text === sign;
  const expect = (sign: string) => {
    if (!isSign(sign)) fail(peek());
    next();
  };

  function first(): Expression {
    const token = next();
    if (token.type === 'number') return written(Number(token.text), token.text);
    if (token.type === 'text') return { type: 'text', value: token.text };
    if (token.type === 'name') return named(token);
    if (token.text === '-' || token.text === 'not') {
      return { type: 'sign', sign: token.text, of: expression(signTightness[token.text]) };
    }
    if (token.text !== '(') fail(token);
    const inner = expression(0);
    expect(')');
    return inner;
  }

  function named(token: Token): Expression {
    if (isSign('(')) {
      if (!isFunctionName(token.text)) throw new Error(`the formula "${text}" has no function ${token.text}`);
      next();
      const of = [expression(0)];
      while (isSign(',')) {
        next();
        of.push(expression(0));
      }
      expect(')');
      return { type: 'call', name: token.text, of };
    }
    if (!isSign('.')) return { type: 'name', key: token.text };
    next();
    const column = next();
    if (column.type !== 'name') fail(column);
    return { type: 'name', key: token.text, column: column.text };
  }

  function expression(least: number): Expression {
    let left = first();
    for (;;) {
      const token = peek();
      const binds = token.type === 'sign' ? tightness[token.text as PairSign] : undefined;
      if (binds === undefined || binds < least) return left;
      next();
      const sign = token.text as PairSign;
      left = { type: 'pair', sign, left, right: expression(sign === '^' ? binds - 1 : binds + 1) };
    }
  }

  const whole = expression(0);
  if (peek().type !== 'end') fail(peek());
  return whole;
}
