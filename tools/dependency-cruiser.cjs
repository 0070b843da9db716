// The layers of the packages and who may import what. Imports run downwards only.
const { readdirSync, readFileSync } = require('node:fs');
const { join } = require('node:path');

/** What each package may import of ours. */
const layers = {
  units: [],
  numerics: [],
  logs: ['units', 'numerics'],
  calculation: ['units'],
  exhaust: ['units', 'numerics', 'calculation'],
  workshop: ['units', 'numerics', 'logs', 'calculation', 'exhaust'],
  wallflow: ['units', 'numerics', 'logs', 'calculation', 'exhaust', 'workshop'],
};

const packages = join(__dirname, '..', 'packages');
const names = readdirSync(packages, { withFileTypes: true }).filter((entry) => entry.isDirectory());
for (const { name } of names) if (!(name in layers)) throw new Error(`packages/${name} has no place among the layers`);

/** @type {(name: string) => { exports: Record<string, Record<string, string>>, bin?: Record<string, string>, dependencies?: Record<string, string> }} */
const manifest = (name) => JSON.parse(readFileSync(join(packages, name, 'package.json'), 'utf8'));

/** Source files that the packages export or run as commands. */
const entries = Object.keys(layers).flatMap((name) => {
  const { exports, bin = {} } = manifest(name);
  const exported = Object.values(exports).flatMap((target) => target['@wallflow/source'] ?? []);
  const commands = Object.values(bin).map((file) => file.replace('dist/', 'src/').replace('.js', '.ts'));
  return [...exported, ...commands].map((file) => join('packages', name, file));
});
const anyEntry = `^(${entries.join('|').replaceAll('.', '\\.')})$`;

const layerRules = Object.entries(layers).map(([name, below]) => {
  const allowed = below.filter((other) => `@wallflow/${other}` in (manifest(name).dependencies ?? {}));
  return {
    name: `layers: ${name}`,
    comment: `packages/${name} may import ${allowed.join(', ') || 'none of our packages'}, as its package.json declares`,
    severity: 'error',
    from: { path: `^packages/${name}/` },
    to: { path: '^packages/', pathNot: `^packages/(${[name, ...allowed].join('|')})/` },
  };
});

const kernels = '^packages/exhaust/src/.*/kernels?[^/]*\\.ts$';

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...layerRules,
    {
      name: 'packages stand alone',
      comment: 'a package imports nothing of the site, the examples, the tests or the tools',
      severity: 'error',
      from: { path: '^packages/' },
      to: { path: '^(docs-site|examples|tests|tools)/' },
    },
    {
      name: 'by the front door',
      comment: 'another package is imported by its entries; only tests may look inside',
      severity: 'error',
      from: { path: '^(?:packages/([^/]+)|docs-site|examples)/' },
      to: { path: '^packages/[^/]+/', pathNot: [anyEntry, '^packages/$1/'] },
    },
    {
      name: 'by name',
      comment: 'another package is imported by its name, not by a relative path',
      severity: 'error',
      from: { path: '^(?:packages/([^/]+)|docs-site|examples)/' },
      to: { path: '^packages/', pathNot: '^packages/$1/', dependencyTypes: ['local'] },
    },
    {
      name: 'no zod below calculation',
      severity: 'error',
      from: { path: '^packages/(units|numerics)/' },
      to: { path: 'node_modules/zod/' },
    },
    {
      name: 'kernels are plain',
      comment: 'a kernel knows neither zod nor the definition language',
      severity: 'error',
      from: { path: kernels },
      to: { path: ['node_modules/zod/', '^packages/calculation/', '/definitions?\\.ts$'] },
    },
    {
      name: 'kernels know no unit names',
      comment: 'a kernel computes with SI numbers; it may import types of @wallflow/units, nothing that parses or converts',
      severity: 'error',
      from: { path: kernels },
      to: { path: '^packages/units/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no circles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing unused',
      comment: 'every module of a package is reachable from one of its entries',
      severity: 'error',
      from: { path: anyEntry },
      to: { path: '^packages/[^/]+/src/', pathNot: anyEntry, reachable: false },
    },
    {
      name: 'declared dependencies',
      comment: 'a package lists in its own package.json what it imports',
      severity: 'error',
      from: { path: '^packages/[^/]+/src/' },
      // What users bring along themselves, a peer, is developed with as well.
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown', 'npm-dev'], dependencyTypesNot: ['npm-peer'] },
    },
    {
      name: 'resolvable',
      comment: 'the site generator and its theme resolve some names themselves',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^@(docusaurus|theme|theme-original|theme-init|generated|site)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|build|\\.docusaurus|out)/' },
    tsPreCompilationDeps: true,
    combinedDependencies: false,
    tsConfig: { fileName: join(__dirname, '..', 'tests', 'tsconfig.json') },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['@wallflow/source', 'types', 'import', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mts', '.js', '.mjs', '.cjs', '.json', '.d.ts'],
    },
  },
};
