import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from '@docusaurus/types';
import { withContentPolicy } from './policy.js';

/**
 * Puts a content security policy into every page. All files are read and written before this returns, without waiting:
 * the plugins that come after it in the configuration, and that list the pages with their hashes, see the pages as they
 * are served.
 */
export default function contentPolicyPlugin(): Plugin<void> {
  return {
    name: 'wallflow-content-policy',

    async postBuild({ outDir }) {
      const pages = readdirSync(outDir, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'));
      for (const page of pages) {
        const path = join(outDir, page);
        writeFileSync(path, withContentPolicy(readFileSync(path, 'utf8')));
      }
    },
  };
}
