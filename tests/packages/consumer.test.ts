import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { subjects } from '@wallflow/calculation';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { codeBlocks, filesWithCode } from '../support/code-blocks.js';
import { type Consumer, createConsumer, specifiers } from './support/consumer.js';
import { packedPackages, repository } from './support/packed.js';

let consumer: Consumer;
beforeAll(() => {
  consumer = createConsumer();
});
afterAll(() => consumer.remove());

/** Run node in a project; what it prints, or its complaint. */
function node(project: Consumer, ...args: string[]): string {
  const child = spawnSync(process.execPath, args, { cwd: project.folder, encoding: 'utf8' });
  expect(child.status, child.stderr).toBe(0);
  return child.stdout;
}

/** Compile files as a strict project on Node does, without trusting the declarations of any library unless told to. */
function compile(project: Consumer, files: readonly string[], { skipLibCheck = false } = {}): void {
  const compilerOptions = {
    target: 'es2022',
    lib: ['es2022', 'dom'],
    module: 'nodenext',
    moduleResolution: 'nodenext',
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck,
    types: [],
  };
  project.write('tsconfig.json', JSON.stringify({ compilerOptions, files }));
  const compiled = spawnSync(join(repository, 'node_modules', '.bin', 'tsc'), ['-p', project.folder], { encoding: 'utf8' });
  expect(compiled.stdout).toBe('');
  expect(compiled.status).toBe(0);
}

describe("a project of somebody else's", () => {
  it.each(packedPackages)('imports every entry of $name', ({ name }) => {
    const entries = specifiers(consumer.manifest(name));
    const count = `for (const entry of ${JSON.stringify(entries)}) console.log(Object.keys(await import(entry)).length)`;
    const exported = node(consumer, '--input-type=module', '--eval', count).trim().split('\n').map(Number);
    expect(exported).toHaveLength(entries.length);
    for (const [index, names] of exported.entries()) expect(names, entries[index]).toBeGreaterThan(0);
  });

  it('compiles against the declarations, those of the packages included, and runs the code of the readmes and of the guide', () => {
    const all = packedPackages.flatMap(({ name }) => specifiers(consumer.manifest(name)));
    consumer.write(
      'index.ts',
      all.map((specifier, index) => `import * as entry${index} from '${specifier}';\nvoid entry${index};\n`).join(''),
    );
    const examples = filesWithCode.flatMap((file) => {
      const printed = codeBlocks(file, 'text');
      return codeBlocks(file, 'ts').map((code, index) => ({
        name: `${file.replaceAll('/', '-')}-${index}`,
        code,
        printed: printed[index],
      }));
    });
    expect(examples.length).toBeGreaterThanOrEqual(filesWithCode.length);
    // Each a module of its own, compiled in one go with all entries.
    for (const { name, code } of examples) consumer.write(`${name}.ts`, `${code}\nexport {};\n`);
    compile(consumer, ['index.ts', ...examples.map(({ name }) => `${name}.ts`)]);
    for (const { name, printed } of examples) {
      const shown = node(consumer, `${name}.js`);
      if (printed === undefined) expect(shown).not.toBe('');
      else expect(shown).toBe(printed);
    }
  });

  it('has the wallflow command, which lists the calculations', () => {
    const { bin } = consumer.manifest('wallflow');
    const command = join(consumer.folder, 'node_modules', 'wallflow', bin?.wallflow ?? 'no bin is declared');
    const listed = JSON.parse(node(consumer, command, 'list', '--json')) as { id: string; title: string; subject: string }[];
    expect(listed.length).toBeGreaterThan(0);
    for (const { id, title, subject } of listed) {
      expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(title).not.toBe('');
      expect(subjects).toContain(subject);
    }
  });
});

// Two copies of zod in one project, each with types of its own, once kept the compiler busy until its memory was full.
describe.each(['zod-4-1', 'zod-4-4'])('a project whose only zod is an older one, %s', (alias) => {
  let project: Consumer;
  beforeAll(() => {
    project = createConsumer({ zod: join(repository, 'node_modules', alias) });
  });
  afterAll(() => project.remove());

  it('is within the range that every package asks for', () => {
    const { version } = JSON.parse(readFileSync(join(repository, 'node_modules', alias, 'package.json'), 'utf8')) as { version: string };
    const [major, minor] = version.split('.').map(Number);
    for (const { name } of packedPackages) {
      const { dependencies, peerDependencies } = project.manifest(name);
      expect(dependencies).not.toHaveProperty('zod');
      const [, leastMajor, leastMinor] = /^\^(\d+)\.(\d+)\.0$/.exec(peerDependencies?.zod ?? '^4.0.0') ?? [];
      expect(major).toBe(Number(leastMajor));
      expect(minor).toBeGreaterThanOrEqual(Number(leastMinor));
    }
  });

  it('compiles and runs what the readmes of calculation and exhaust and the first readme show', () => {
    const files = filesWithCode.filter((file) => /^(README|packages\/(calculation|exhaust))/.test(file));
    const examples = files.flatMap((file) =>
      codeBlocks(file, 'ts').map((code, index) => ({ name: `${file.replaceAll('/', '-')}-${index}`, code })),
    );
    expect(examples.length).toBeGreaterThanOrEqual(3);
    for (const { name, code } of examples) project.write(`${name}.ts`, `${code}\nexport {};\n`);
    compile(
      project,
      examples.map(({ name }) => `${name}.ts`),
      { skipLibCheck: true },
    );
    for (const { name } of examples) expect(node(project, `${name}.js`)).not.toBe('');
  });
});
