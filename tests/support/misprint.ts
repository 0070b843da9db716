import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import { sourceSchema } from './reference-case.js';

/** What a source prints, what is used instead, and why; also statements that are right but easily misread. */
const misprintFile = z.strictObject({
  subject: z.string(),
  entries: z
    .array(
      z.strictObject({
        source: sourceSchema,
        printed: z.string(),
        used: z.string(),
        reason: z.string(),
        /** Calculations that it concerns. */
        calculations: z.array(z.string()),
      }),
    )
    .min(1),
});

export type MisprintFile = z.infer<typeof misprintFile>;

const root = fileURLToPath(new URL('../reference/misprints/', import.meta.url));

/** All lists of misprints, checked against the format. */
export function readMisprints(): MisprintFile[] {
  return readdirSync(root)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const parsed = misprintFile.safeParse(JSON.parse(readFileSync(join(root, name), 'utf8')));
      if (!parsed.success) throw new Error(`${name}: ${z.prettifyError(parsed.error)}`);
      return parsed.data;
    });
}
