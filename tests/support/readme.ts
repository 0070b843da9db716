import { readFileSync } from 'node:fs';

export const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The first code block of a language in README.md. */
export function readmeBlock(language: string): string {
  const found = new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'm').exec(readme);
  if (found?.[1] === undefined) throw new Error(`README.md has no ${language} block`);
  return found[1];
}
