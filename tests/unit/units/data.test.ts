import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../packages/units/', import.meta.url));

function node(...args: string[]) {
  return spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
}

/** Run the check of the data files on a kind made of these units. */
function checkUnits(units: readonly (readonly string[])[], more: Record<string, unknown> = {}): string {
  const kind = JSON.stringify({ label: 'length', dimension: 'L', prefer: ['m'], units, ...more });
  const { status, stderr } = node(
    '--input-type=module',
    '--eval',
    `import { checkKind } from './scripts/check-data.mjs'; checkKind(['length', ${kind}], { SI: 'SI' });`,
  );
  return status === 0 ? 'accepted' : (/Error: (.*)/.exec(stderr)?.[1] ?? stderr);
}

const metre = ['m', 'm', 'metre', '1', '', 'SI'];

describe('the generated files', () => {
  it('are what the generator writes from the data', () => {
    const { status, stderr } = node('scripts/generate.mjs', '--check');
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });
});

describe('the data files', () => {
  it('are refused when two units of a kind share a spelling', () => {
    expect(checkUnits([metre, ['mm', 'mm', 'millimetre', '0.001', '', 'SI']])).toBe('accepted');
    expect(checkUnits([metre, ['mm', 'mm', 'millimetre', '0.001', 'METRE', 'SI']])).toBe(
      'length: "METRE" of mm is already a spelling of m',
    );
    expect(checkUnits([metre, ['k.m', 'km', 'kilometre', '1000', '', 'SI'], ['km', 'km', 'other', '1', '', 'SI']])).toMatch(
      'already a spelling of k.m',
    );
    expect(checkUnits([metre, ['mm', 'mm', 'millimetre', '0.001', 'mm', 'SI']])).toMatch('already a spelling of mm');
  });

  it('may tell milli and mega, nano and newton apart by their case', () => {
    expect(checkUnits([metre, ['mPa', 'mPa', 'millipascal', '1', '', 'SI'], ['MPa', 'MPa', 'megapascal', '1', '', 'SI']])).toBe('accepted');
    expect(checkUnits([metre, ['kPa', 'kPa', 'kilopascal', '1', '', 'SI'], ['KPa', 'KPa', 'other', '1', '', 'SI']])).toMatch('already');
  });

  it('are refused when an ambiguous spelling leads nowhere or is sure as well', () => {
    const inch = ['in', 'in', 'inch', '0.0254', '', 'SI'];
    expect(checkUnits([metre, inch], { ambiguous: { unit: ['m', 'in'] } })).toBe('accepted');
    expect(checkUnits([metre, inch], { ambiguous: { unit: ['m', 'ft'] } })).toMatch('candidate ft of unit does not exist');
    expect(checkUnits([metre, inch], { ambiguous: { unit: ['m'] } })).toMatch('is not ambiguous');
    expect(checkUnits([metre, inch], { ambiguous: { inch: ['m', 'in'] } })).toMatch('already a spelling of in');
  });

  it('are refused without a coherent base unit, a source, or a factor', () => {
    expect(checkUnits([['mm', 'mm', 'millimetre', '0.001', '', 'SI']], { prefer: [] })).toMatch('not the coherent one');
    expect(checkUnits([metre, ['mm', 'mm', 'millimetre', '0.001', '', 'HEARSAY']])).toMatch('unknown source HEARSAY');
    expect(checkUnits([metre, ['mm', 'mm', 'millimetre', '0', '', 'SI']])).toMatch('has the factor 0');
    expect(checkUnits([metre, ['µm', 'µm', 'micrometre', '0.000001', '', 'SI']])).toMatch('not plain ASCII');
    expect(checkUnits([metre], { prefer: ['km'] })).toMatch('preferred unit km does not exist');
  });
});
