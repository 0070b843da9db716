import { textTex } from '../tex.js';
import { say } from '../words/say.js';
import { type Expression, signTightness, tightness } from './expression.js';
import { texOf } from './functions.js';

type Name = Extract<Expression, { type: 'name' }>;
type Pair = Extract<Expression, { type: 'pair' }>;

/** How the names of a formula are written. */
export interface Writing {
  name(name: Name, unit?: string): string;
  /** A unit in the script's own way. */
  unit(unit: string): string;
}

interface Written {
  readonly text: string;
  /** How tightly it holds together. */
  readonly holds: number;
}

const whole = 10;
const fraction = 9;

const relations: Readonly<Record<string, readonly [tex: string, plain: string]>> = {
  '=': ['=', '='],
  '==': ['=', '='],
  '!=': ['\\ne', '≠'],
  '<': ['<', '<'],
  '<=': ['\\le', '≤'],
  '>': ['>', '>'],
  '>=': ['\\ge', '≥'],
};

/** The word between two conditions. */
function joint(sign: string): string | undefined {
  return sign === 'and' ? say`and` : sign === 'or' ? say`or` : undefined;
}

/** A number that a bracket must keep together under a power or after a minus. */
function numberHolds(text: string): number {
  if (text.startsWith('-') || text.startsWith('−')) return tightness['+'];
  return /\\times|×|\\,|\\mathrm/.test(text) ? signTightness['-'] : whole;
}

function bracketTex({ text, holds }: Written, least: number): string {
  return holds < least ? `\\left(${text}\\right)` : text;
}

function startsWithNumber(text: string): boolean {
  return /^(\\left\()?[\d-]/.test(text);
}

function pairTex(pair: Pair, writing: Writing): Written {
  const { sign } = pair;
  const [left, right] = [writeTex(pair.left, writing), writeTex(pair.right, writing)];
  const holds = tightness[sign];
  if (sign === '/') return { text: `\\frac{${left.text}}{${right.text}}`, holds: fraction };
  if (sign === '^') return { text: `${bracketTex(left, whole)}^{${right.text}}`, holds };
  const [a, b] = [bracketTex(left, holds), bracketTex(right, sign === '-' || sign === '*' ? holds + (sign === '-' ? 1 : 0) : holds)];
  if (sign === '*') return { text: startsWithNumber(b) ? `${a}\\cdot ${b}` : `${a}\\,${b}`, holds };
  if (sign === '+' || sign === '-')
    return { text: `${a}${sign}${startsWithNumber(b) && b.startsWith('-') ? `\\left(${b}\\right)` : b}`, holds };
  return { text: `${a}${joint(sign) === undefined ? (relations[sign]?.[0] ?? sign) : `\\text{ ${joint(sign)} }`} ${b}`, holds };
}

function callTex({ name, of }: Extract<Expression, { type: 'call' }>, writing: Writing): Written {
  const [first, second] = of;
  if (first === undefined) return { text: '', holds: whole };
  if (name === 'in' && first.type === 'name' && second?.type === 'text') {
    return { text: `\\left\\{${writing.name(first)}\\right\\}_{${writing.unit(second.value)}}`, holds: whole };
  }
  const inner = writeTex(first, writing);
  if (name === 'as' && second?.type === 'text') {
    return { text: `${bracketTex(inner, tightness['*'])}\\,${writing.unit(second.value)}`, holds: tightness['*'] };
  }
  if (name === 'known') return { text: `${inner.text}\\text{ ${say`is given`}}`, holds: tightness['<'] };
  if (name === 'where' && second !== undefined) {
    const kept = bracketTex(inner, whole);
    // TeX takes no second index on a first.
    const base = first.type === 'call' && first.name === 'where' ? `{${kept}}` : kept;
    return { text: `${base}_{${writeTex(second, writing).text}}`, holds: whole };
  }
  if (of.length === 1) {
    if (name === 'sqrt' || name === 'cbrt') return { text: `${texOf(name)}{${inner.text}}`, holds: whole };
    if (name === 'abs') return { text: `\\left|${inner.text}\\right|`, holds: whole };
    if (name === 'floor' || name === 'ceil') {
      const [open, close] = name === 'floor' ? ['\\lfloor', '\\rfloor'] : ['\\lceil', '\\rceil'];
      return { text: `\\left${open} ${inner.text}\\right${close}`, holds: whole };
    }
    if (name === 'exp') return { text: `e^{${inner.text}}`, holds: tightness['^'] };
    if (name === 'sum') return { text: `\\sum ${bracketTex(inner, tightness['*'])}`, holds: tightness['*'] };
    if (name === 'deviation') {
      const off = `\\left(${inner.text}-\\overline{${inner.text}}\\right)^{2}`;
      return { text: `\\sqrt{\\frac{\\sum ${off}}{n-1}}`, holds: whole };
    }
    if (name === 'mean') return { text: `\\overline{${inner.text}}`, holds: whole };
  }
  const head = name === 'min' || name === 'max' ? `\\${name}` : texOf(name);
  const parts = of.map((one) => writeTex(one, writing).text).join(',\\,');
  return { text: `${head}\\left(${parts}\\right)`, holds: whole };
}

function writeTex(expression: Expression, writing: Writing): Written {
  switch (expression.type) {
    case 'number': {
      const text = expression.tex ?? expression.text;
      return { text, holds: numberHolds(text) };
    }
    case 'text':
      return { text: textTex(expression.value), holds: whole };
    case 'name':
      return { text: expression.key === 'pi' ? '\\pi ' : `{${writing.name(expression)}}`, holds: whole };
    case 'sign': {
      const inner = writeTex(expression.of, writing);
      if (expression.sign === 'not') return { text: `\\text{not }${bracketTex(inner, tightness['+'])}`, holds: signTightness.not };
      return { text: `-${bracketTex(inner, tightness['*'])}`, holds: tightness['+'] };
    }
    case 'pair':
      return pairTex(expression, writing);
    case 'call':
      return callTex(expression, writing);
  }
}

/** A formula in TeX. */
export function formulaTex(expression: Expression, writing: Writing): string {
  return writeTex(expression, writing).text;
}

function bracket({ text, holds }: Written, least: number): string {
  return holds < least ? `(${text})` : text;
}

function writePlain(expression: Expression, name: (name: Name) => string): Written {
  switch (expression.type) {
    case 'number':
      // Behind a division, a power of ten is no longer one number.
      return { text: expression.text, holds: expression.text.includes('×') ? tightness['*'] : numberHolds(expression.text) };
    case 'text':
      return { text: expression.value, holds: whole };
    case 'name':
      return { text: expression.key === 'pi' ? 'π' : name(expression), holds: whole };
    case 'sign': {
      const inner = writePlain(expression.of, name);
      if (expression.sign === 'not') return { text: `${say`not`} ${bracket(inner, tightness['+'])}`, holds: signTightness.not };
      return { text: `−${bracket(inner, tightness['*'])}`, holds: tightness['+'] };
    }
    case 'pair': {
      const { sign } = expression;
      const holds = tightness[sign];
      const strict = sign === '-' || sign === '/' || sign === '^';
      const left = bracket(writePlain(expression.left, name), sign === '^' ? whole : sign === '/' ? tightness['*'] : holds);
      const right = bracket(writePlain(expression.right, name), strict ? (sign === '/' ? signTightness['-'] : holds + 1) : holds);
      const shown = sign === '*' ? '×' : sign === '-' ? '−' : (joint(sign) ?? relations[sign]?.[1] ?? sign);
      return { text: sign === '^' ? `${left}^${right}` : `${left} ${shown} ${right}`, holds };
    }
    case 'call': {
      const { name: called, of } = expression;
      const first = of[0];
      if (called === 'known' && first !== undefined)
        return { text: `${writePlain(first, name).text} ${say`is given`}`, holds: tightness['<'] };
      if ((called === 'in' || called === 'as') && first !== undefined) return writePlain(first, name);
      const parts = of.map((one) => writePlain(one, name).text).join(', ');
      return { text: `${called}(${parts})`, holds: whole };
    }
  }
}

/** A formula as one types it into a calculator: `101300 × 0.02897 / (8.314 × 523.15)`. */
export function formulaText(expression: Expression, name: (name: Name) => string): string {
  return writePlain(expression, name).text;
}
