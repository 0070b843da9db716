import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';

// `self` is not an origin on purpose: an expected value never comes from our own code.
export const origins = [
  'standard-example',
  'published-table',
  'textbook-example',
  'measurement',
  'certified-value',
  'closed-form',
  'independent-code',
  'common-practice',
] as const;

export const sourceSchema = z.strictObject({
  type: z.enum(['standard', 'regulation', 'paper', 'book', 'report', 'thesis', 'dataset', 'practice', 'derivation']),
  by: z.string().optional(),
  title: z.string(),
  year: z.number().int().optional(),
  locator: z.string().optional(),
  doi: z.string().optional(),
  mark: z.enum(['read', 'second-hand', 'from memory', 'common practice, no source']),
  note: z.string().optional(),
});

const tolerance = z.strictObject({
  relative: z.number().positive().optional(),
  absolute: z.string().optional(),
});

const referenceCase = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  title: z.string(),
  source: sourceSchema,
  origin: z.enum(origins),
  /** As the source prints them. */
  inputs: z.record(z.string(), z.unknown()),
  /** Output or intermediate by key: a quantity as printed, a choice, a count; `key[row].column` reaches into a table. */
  expected: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  /** For cases that must be refused: the issue's code and, if it matters, its path. */
  expectedIssue: z.strictObject({ code: z.string(), path: z.string().optional() }).optional(),
  /** Half a unit of the last printed digit unless given. */
  tolerance: z.record(z.string(), tolerance).optional(),
  toleranceReason: z.string().optional(),
  /** The source states something else than we give, and we know why. Then the case must fail to agree. */
  disagreement: z.string().optional(),
  notes: z.string().optional(),
});

const caseFile = z.strictObject({
  calculation: z.string(),
  cases: z.array(referenceCase).min(1),
});

export type ReferenceCase = z.infer<typeof referenceCase>;
export type CaseFile = z.infer<typeof caseFile>;

const root = fileURLToPath(new URL('../reference/cases/', import.meta.url));

/** All case files below tests/reference/cases, checked against the format. */
export function readCaseFiles(): CaseFile[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const parsed = caseFile.safeParse(JSON.parse(readFileSync(join(root, name), 'utf8')));
      if (!parsed.success) throw new Error(`${name}: ${z.prettifyError(parsed.error)}`);
      return parsed.data;
    });
}
