import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Consumer, createConsumer, specifiers } from './support/consumer.js';
import { packedPackages } from './support/packed.js';

let consumer: Consumer;
beforeAll(() => {
  consumer = createConsumer();
});
afterAll(() => consumer.remove());

// Reading a log brings a library that is no ES module.
const plain = packedPackages.filter(({ name }) => name !== '@wallflow/workshop' && name !== 'wallflow');

// Files and threads are Node's.
const forNode = ['@wallflow/logs/files', '@wallflow/logs/file-worker'];

describe('in a browser without a bundler, which knows ES modules only', () => {
  it.each(plain)('every entry of $name and all that it imports can be loaded', async ({ name }) => {
    const entries = specifiers(consumer.manifest(name)).filter((specifier) => !forNode.includes(specifier));
    const { metafile } = await build({
      stdin: {
        contents: entries.map((specifier) => `import '${specifier}';`).join(''),
        resolveDir: consumer.folder,
      },
      bundle: true,
      write: false,
      metafile: true,
      ignoreAnnotations: true,
      // As an import map would be written from the manifests, without what only bundlers read.
      platform: 'neutral',
      mainFields: [],
      logLevel: 'silent',
    });
    const inputs = Object.entries(metafile.inputs).filter(([path]) => path !== '<stdin>');
    expect(inputs.length).toBeGreaterThan(entries.length);
    expect(inputs.filter(([, { format }]) => format !== 'esm').map(([path]) => path)).toEqual([]);
  });
});
