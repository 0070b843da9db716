import { readFileSync } from 'node:fs';

const repository = new URL('../../', import.meta.url);

/** The code blocks of a language in a Markdown file of the repository, in order. */
export function codeBlocks(file: string, language: string): string[] {
  const text = readFileSync(new URL(file, repository), 'utf8');
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'gm'))].map(([, code = '']) => code);
}

/** Files whose TypeScript must compile and run as it stands. */
export const filesWithCode = [
  'README.md',
  'docs-site/docs/embedding.mdx',
  'packages/calculation/README.md',
  'packages/exhaust/README.md',
  'packages/logs/README.md',
  'packages/workshop/README.md',
  'packages/wallflow/README.md',
];
