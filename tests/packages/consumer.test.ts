import { spawnSync } from 'node:child_process';
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

/** Run node in the consumer's folder; what it prints, or its complaint. */
function node(...args: string[]): string {
  const child = spawnSync(process.execPath, args, { cwd: consumer.folder, encoding: 'utf8' });
  expect(child.status, child.stderr).toBe(0);
  return child.stdout;
}

/** Compile files as a strict project on Node does, without trusting the declarations of any library. */
function compile(...files: readonly string[]): void {
  const compilerOptions = {
    target: 'es2022',
    lib: ['es2022', 'dom'],
    module: 'nodenext',
    moduleResolution: 'nodenext',
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: false,
    types: [],
  };
  consumer.write('tsconfig.json', JSON.stringify({ compilerOptions, files }));
  const compiled = spawnSync(join(repository, 'node_modules', '.bin', 'tsc'), ['-p', consumer.folder], { encoding: 'utf8' });
  expect(compiled.stdout).toBe('');
  expect(compiled.status).toBe(0);
}

describe("a project of somebody else's", () => {
  it.each(packedPackages)('imports every entry of $name', ({ name }) => {
    for (const specifier of specifiers(consumer.manifest(name))) {
      const exported = node('--input-type=module', '--eval', `console.log(Object.keys(await import('${specifier}')).length)`);
      expect(Number(exported), specifier).toBeGreaterThan(0);
    }
  });

  it('compiles against the declarations, those of the packages included', () => {
    const all = packedPackages.flatMap(({ name }) => specifiers(consumer.manifest(name)));
    consumer.write(
      'index.ts',
      all.map((specifier, index) => `import * as entry${index} from '${specifier}';\nvoid entry${index};\n`).join(''),
    );
    compile('index.ts');
  });

  it('compiles and runs the code of the readmes and of the guide', () => {
    const examples = filesWithCode.flatMap((file) => {
      const printed = codeBlocks(file, 'text');
      return codeBlocks(file, 'ts').map((code, index) => ({
        name: `${file.replaceAll('/', '-')}-${index}`,
        code,
        printed: printed[index],
      }));
    });
    expect(examples.length).toBeGreaterThanOrEqual(filesWithCode.length);
    // Each a module of its own, compiled in one go.
    for (const { name, code } of examples) consumer.write(`${name}.ts`, `${code}\nexport {};\n`);
    compile(...examples.map(({ name }) => `${name}.ts`));
    for (const { name, printed } of examples) {
      const shown = node(`${name}.js`);
      if (printed === undefined) expect(shown).not.toBe('');
      else expect(shown).toBe(printed);
    }
  });

  it('has the wallflow command, which lists the calculations', () => {
    const { bin } = consumer.manifest('wallflow');
    const command = join(consumer.folder, 'node_modules', 'wallflow', bin?.wallflow ?? 'no bin is declared');
    const listed = JSON.parse(node(command, 'list', '--json')) as { id: string; title: string; subject: string }[];
    expect(listed.length).toBeGreaterThan(0);
    for (const { id, title, subject } of listed) {
      expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(title).not.toBe('');
      expect(subjects).toContain(subject);
    }
  });
});
