import { readdirSync, readFileSync } from 'node:fs';
import type { KindName } from '@wallflow/units';
import * as z from 'zod';

const source = z.strictObject({
  type: z.enum(['standard', 'regulation', 'derivation']),
  by: z.string().optional(),
  title: z.string(),
  year: z.number().int().optional(),
  locator: z.string().optional(),
  mark: z.enum(['read', 'from memory']),
  note: z.string().optional(),
});

const unitCase = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  kind: z.string(),
  /** A quantity as it is written. */
  given: z.string(),
  /** The unit, by its id, in which the source states it. */
  unit: z.string(),
  /** As the source prints it. */
  expected: z.string().regex(/^-?\d+(?:\.\d+)?(?:E[+-]\d+)?$/),
  locator: z.string(),
  /** Half a unit of the last printed digit unless given. */
  tolerance: z.strictObject({ relative: z.number().positive() }).optional(),
  toleranceReason: z.string().optional(),
  /** The source prints something else than we give, and we know why. Then the case must fail to agree. */
  disagreement: z.string().optional(),
});

const caseFile = z.strictObject({
  source,
  origin: z.enum(['standard-example', 'published-table', 'certified-value', 'closed-form']),
  cases: z.array(unitCase).min(1),
});

export type UnitCase = Omit<z.infer<typeof unitCase>, 'kind'> & { readonly kind: KindName };

export interface UnitCaseFile {
  readonly name: string;
  readonly source: z.infer<typeof source>;
  readonly origin: z.infer<typeof caseFile>['origin'];
  readonly cases: readonly UnitCase[];
}

const folder = new URL('../cases/', import.meta.url);

/** The reference cases of the units, one file per source. */
export function readUnitCases(): readonly UnitCaseFile[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => {
      const parsed = caseFile.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));
      return { name, ...parsed, cases: parsed.cases as readonly UnitCase[] };
    });
}
