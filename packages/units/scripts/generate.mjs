// Makes the double factors of src/generated from the exact text in data/. Run `node scripts/generate.mjs`;
// with `--check` it writes nothing and fails when the generated files are stale.
import { readFileSync, writeFileSync } from 'node:fs';
import { Decimal } from 'decimal.js';
import { kinds, sources } from '../data/index.mjs';

Decimal.set({ precision: 60 });

/** Evaluate `a*b/c…`, decimal text, from left to right. */
export function evaluate(expression) {
  return expression
    .replace(/^~/, '')
    .split(/(?=[*/])/)
    .reduce((value, part) => {
      const operand = new Decimal(part.replace(/^[*/]/, ''));
      if (part.startsWith('*')) return value.times(operand);
      return part.startsWith('/') ? value.dividedBy(operand) : operand;
    }, new Decimal(1));
}

const baseSymbols = { L: 'length', M: 'mass', T: 'time', K: 'temperature', N: 'amount', I: 'current' };

function dimension(text) {
  const powers = { length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0 };
  for (const part of text.split(' ').filter(Boolean)) powers[baseSymbols[part[0]]] = Number(part.slice(1) || 1);
  return powers;
}

const quote = (text) => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
const header = '// Generated from data/ by scripts/generate.mjs. Do not edit.\n\n';

function unitLine([id, symbol, , factor, aliases, , extra]) {
  const parts = [`symbol: ${quote(symbol)}`, `factor: ${Number(evaluate(factor).toString())}`];
  if (extra === 'reciprocal') parts.push('reciprocal: true');
  else if (extra !== undefined) parts.push(`offset: ${Number(extra)}`);
  parts.push(`aliases: ${quote(aliases)}`);
  return `    ${quote(id)}: { ${parts.join(', ')} },\n`;
}

function kindText([name, kind]) {
  const ids = kind.units.map(([id]) => id);
  for (const id of kind.prefer) if (!ids.includes(id)) throw new Error(`${name}: preferred unit ${id} does not exist`);
  const order = [...kind.prefer, ...ids.filter((id) => !kind.prefer.includes(id))];
  const ambiguous = Object.entries(kind.ambiguous ?? {}).map(([key, list]) => `${quote(key)}: [${list.map(quote).join(', ')}]`);
  for (const list of Object.values(kind.ambiguous ?? {})) {
    for (const id of list) if (!ids.includes(id)) throw new Error(`${name}: candidate ${id} does not exist`);
  }
  return (
    `export const ${name}Data = {\n  kind: '${name}',\n  label: ${quote(kind.label)},\n  dimension: ${JSON.stringify(dimension(kind.dimension)).replaceAll('"', '').replaceAll(':', ': ').replaceAll(',', ', ')},\n` +
    `  base: ${quote(ids[0])},\n  floor: ${kind.floor === true},\n  order: [${order.map(quote).join(', ')}],\n  ambiguous: { ${ambiguous.join(', ')} },\n  units: {\n` +
    `${kind.units.map(unitLine).join('')}  },\n} as const;\n`
  );
}

function infoLine([id, , name, factor, , source, extra]) {
  if (sources[source] === undefined) throw new Error(`${id}: unknown source ${source}`);
  const exact = !factor.startsWith('~');
  const parts = [quote(name), quote(factor.replace(/^~/, '')), String(exact), quote(source)];
  if (extra !== undefined) parts.push(quote(extra));
  return `    ${quote(id)}: [${parts.join(', ')}],\n`;
}

const units = `${header}${Object.entries(kinds).map(kindText).join('\n')}`;
const info =
  `${header}type Row = readonly [name: string, factor: string, exact: boolean, source: string, extra?: string];\n\n` +
  `export const sources: Readonly<Record<string, string>> = {\n${Object.entries(sources)
    .map(([key, text]) => `  ${key}: ${quote(text)},\n`)
    .join('')}};\n\n` +
  `export const rows: Readonly<Record<string, Readonly<Record<string, Row>>>> = {\n` +
  `${Object.entries(kinds)
    .map(([name, kind]) => `  ${name}: {\n${kind.units.map(infoLine).join('')}  },\n`)
    .join('')}};\n`;

const list = Object.keys(kinds);
const table =
  `${header}import { type Kind, makeKind } from '../kind.js';\nimport * as data from './units.js';\n\n` +
  `${list.map((name) => `export const ${name}: Kind<'${name}'> = makeKind(data.${name}Data);\n`).join('')}`;

let stale = false;
for (const [name, text] of [
  ['units.ts', units],
  ['info.ts', info],
  ['kinds.ts', table],
]) {
  const file = new URL(`../src/generated/${name}`, import.meta.url);
  if (!process.argv.includes('--check')) writeFileSync(file, text);
  else if (readFileSync(file, 'utf8') !== text) {
    stale = true;
    console.error(`src/generated/${name} is stale: run node scripts/generate.mjs`);
  }
}
if (stale) process.exitCode = 1;
