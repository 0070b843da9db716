// Makes src/generated from the exact text in data/: double factors by decimal.js, the unit ids as types. Run
// `node scripts/generate.mjs`; with `--check` it writes nothing and fails when the generated files are stale.
import { readFileSync, writeFileSync } from 'node:fs';
import { Decimal } from 'decimal.js';
import { kinds, sources } from '../data/index.mjs';
import { checkKind, checkKinds } from './check-data.mjs';
import { loadSource } from './load-source.mjs';

const { evaluateFactor } = await loadSource('factor-text.ts');
const { labelFromName, symbolFromId } = await loadSource('derived-text.ts');

const header = '// Generated from data/ by scripts/generate.mjs. Do not edit.\n\n';
const quote = (text) => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

/** Exponents of length, mass, time, temperature, amount and current from text such as `M L-1 T-2`. */
function dimension(text) {
  const powers = new Map(text.split(' ').map((part) => [part[0], Number(part.slice(1) || 1)]));
  return [...'LMTKNI'].map((letter) => powers.get(letter) ?? 0);
}

function unitLine([id, symbol, name, factorText, aliases, source, shift]) {
  const { over, under } = evaluateFactor(factorText);
  const factor = Number(over.dividedBy(under).toString());
  // The shortest decimal of the double is the exact factor more often than not; only otherwise it is written out.
  const readable = !factorText.startsWith('~') && new Decimal(factor).times(under).equals(over);
  const parts = [id, name, aliases, source].map(quote);
  parts.splice(1, 0, symbol === symbolFromId(id) ? 'null' : quote(symbol));
  parts.push(String(factor));
  if (!readable || shift !== undefined) parts.push(quote(readable ? '' : factorText));
  if (shift !== undefined) parts.push(shift === 'reciprocal' ? quote(shift) : String(Number(shift)));
  return `    [${parts.join(', ')}],\n`;
}

function kindText([name, kind]) {
  const ids = kind.units.map(([id]) => id);
  const order = [...kind.prefer, ...ids.filter((id) => !kind.prefer.includes(id))];
  const ambiguous = Object.entries(kind.ambiguous ?? {}).map(([keys, list]) => `    [${quote(keys)}, ${quote(list.join(' '))}],\n`);
  return (
    `/** Kind of quantity: ${kind.label}.${kind.note === undefined ? '' : ` ${kind.note}`} Coherent SI unit \`${ids[0]}\`. */\n` +
    `export const ${name}: Kind<'${name}'> = /* @__PURE__ */ makeKind({\n` +
    `  kind: '${name}',\n${kind.label === labelFromName(name) ? '' : `  label: ${quote(kind.label)},\n`}  dimension: [${dimension(kind.dimension).join(', ')}],\n` +
    `  base: ${quote(ids[0])},\n${kind.floor === true ? '  floor: true,\n' : ''}` +
    `${ambiguous.length === 0 ? '' : `  ambiguous: [\n${ambiguous.join('')}  ],\n`}` +
    `  units: [\n${order.map((id) => unitLine(kind.units[ids.indexOf(id)])).join('')}  ],\n});\n`
  );
}

for (const entry of Object.entries(kinds)) checkKind(entry, sources);
checkKinds(kinds, sources);

const files = {
  'kinds.ts':
    `${header}import { type Kind, makeKind } from '../kind.js';\nimport type { KindName } from '../types.js';\n\n` +
    `${Object.entries(kinds).map(kindText).join('\n')}\n` +
    `/** All kinds by name. */\nexport const kinds: { readonly [K in KindName]: Kind<K> } = {\n` +
    `${Object.keys(kinds)
      .map((name) => `  ${name},\n`)
      .join('')}};\n`,
  'unit-ids.ts':
    `${header}/** Ids of the units of each kind. */\nexport interface UnitIds {\n` +
    `${Object.entries(kinds)
      .map(([name, kind]) => `  ${name}:\n${kind.units.map(([id]) => `    | ${quote(id)}`).join('\n')};\n`)
      .join('')}}\n`,
  'sources.ts':
    `${header}/** Where the factors come from, by key. */\nexport const sources: Readonly<Record<string, string>> = {\n` +
    `${Object.entries(sources)
      .map(([key, text]) => `  ${key}: ${quote(text)},\n`)
      .join('')}};\n`,
};

for (const [name, text] of Object.entries(files)) {
  const file = new URL(`../src/generated/${name}`, import.meta.url);
  if (!process.argv.includes('--check')) writeFileSync(file, text);
  else if (readFileSync(file, 'utf8') !== text) {
    process.exitCode = 1;
    console.error(`src/generated/${name} is stale: run node scripts/generate.mjs`);
  }
}
