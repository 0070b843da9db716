import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fieldOf, itemSchema, type OutputField, shapeOf } from '@wallflow/calculation';
import { jobForm } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';
import { recording } from '../../support/record.js';

const file = fileURLToPath(new URL('../../../packages/exhaust/src/vocabulary/vocabulary.json', import.meta.url));

/**
 * Names that several calculations share. `keys`: a key, its kind of value, and its label. A key with further labels says in `why`
 * what a reader could not do with one: a place is no reason, it stands in the description. `labels`: a label that several keys have, as
 * a reading and its result do.
 */
interface Vocabulary {
  readonly keys: Readonly<Record<string, { readonly kind: string; readonly labels: readonly string[]; readonly why?: string }>>;
  readonly labels: Readonly<Record<string, readonly string[]>>;
}

interface Named {
  readonly id: string;
  readonly key: string;
  readonly kind: string;
  readonly label: string;
}

function kindOf(field: { readonly type: string; readonly kind?: { readonly kind: string } }): string {
  return field.kind?.kind ?? field.type;
}

const named: Named[] = [
  ...allCalculations.map(({ id, spec }) => ({ id, spec })),
  // The job asks for the calculations' own inputs, section by section.
  ...shapeOf(jobForm).flatMap(([section, child]) => {
    // A list that may be empty holds rows of texts or of a calculation's own list, which is looked at there.
    const item = child._zod.def.type === 'prefault' ? undefined : itemSchema(child);
    return item === undefined ? [] : [{ id: `job ${section}`, spec: { inputs: item, intermediates: {}, outputs: {}, constants: {} } }];
  }),
].flatMap(({ id, spec }) => [
  ...shapeOf(spec.inputs).flatMap(([key, child]) => {
    const field = fieldOf(child);
    return field === undefined ? [] : [{ id, key, kind: kindOf(field), label: field.label }];
  }),
  ...Object.entries({ ...spec.intermediates, ...spec.outputs } as Record<string, OutputField>).map(([key, field]) => ({
    id,
    key,
    kind: kindOf(field),
    label: field.label,
  })),
  ...Object.entries(spec.constants as Record<string, { kind: { kind: string }; label: string }>).map(([key, one]) => ({
    id,
    key,
    kind: one.kind.kind,
    label: one.label,
  })),
]);

function grouped(of: (one: Named) => string): Map<string, Named[]> {
  const groups = new Map<string, Named[]>();
  for (const one of named) groups.set(of(one), [...(groups.get(of(one)) ?? []), one]);
  return groups;
}

/** Values, the most frequent first. */
function byUse(values: readonly string[]): string[] {
  const count = (value: string) => values.filter((other) => other === value).length;
  return [...new Set(values)].sort((one, other) => count(other) - count(one) || (one < other ? -1 : 1));
}

const inOrder = <T>(entries: readonly (readonly [string, T])[]) =>
  Object.fromEntries([...entries].sort(([one], [other]) => (one < other ? -1 : 1)));
const shared = [...grouped(({ key }) => key)].filter(([, all]) => new Set(all.map(({ id }) => id)).size > 1);
const sameLabel = [...grouped(({ label }) => label)].filter(([, all]) => new Set(all.map(({ key }) => key)).size > 1);

if (recording.includes('vocabulary')) {
  const before: Vocabulary | undefined = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
  // A reason is written by hand, and goes when there is nothing left to explain.
  const reason = (key: string, labels: readonly string[]) =>
    labels.length < 2 ? {} : { why: before?.keys[key]?.why ?? 'TODO: one label, another key, or why not' };
  const written: Vocabulary = {
    keys: inOrder(
      shared.map(([key, all]) => {
        const labels = byUse(all.map(({ label }) => label));
        return [key, { kind: byUse(all.map(({ kind }) => kind))[0] ?? '', labels, ...reason(key, labels) }];
      }),
    ),
    labels: inOrder(sameLabel.map(([label, all]) => [label, byUse(all.map(({ key }) => key))])),
  };
  writeFileSync(file, `${JSON.stringify(written, undefined, 2)}\n`);
}
const vocabulary: Vocabulary = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : { keys: {}, labels: {} };

describe('the vocabulary of all calculations and the job', () => {
  it('has one kind of value for a key', () => {
    const other = shared.flatMap(([key, all]) =>
      all.filter(({ kind }) => kind !== vocabulary.keys[key]?.kind).map(({ id, kind }) => `${key} is a ${kind} in ${id}`),
    );
    expect(other).toEqual([]);
  });

  it('has one label for a key, or says which others it may have', () => {
    const other = shared.flatMap(([key, all]) =>
      all
        .filter(({ label }) => !(vocabulary.keys[key]?.labels ?? []).includes(label))
        .map(({ id, label }) => `${key} is called "${label}" in ${id}`),
    );
    expect(other).toEqual([]);
  });

  it('says why a key has more than one label', () => {
    const unexplained = Object.entries(vocabulary.keys).filter(
      ([, { labels, why = '' }]) => labels.length > 1 && !/^[A-Z].{20,}\.$/.test(why),
    );
    expect(unexplained.map(([key]) => key)).toEqual([]);
  });

  it('has one key for a label, or says which others share it', () => {
    const other = sameLabel.flatMap(([label, all]) =>
      all
        .filter(({ key }) => !(vocabulary.labels[label] ?? []).includes(key))
        .map(({ id, key }) => `"${label}" has the key ${key} in ${id}`),
    );
    expect(other).toEqual([]);
  });

  it('holds nothing that no calculation says any more', () => {
    const keys = new Map(shared);
    const labels = new Map(sameLabel);
    const stale = [
      ...Object.entries(vocabulary.keys).flatMap(([key, { labels: said }]) =>
        said.filter((label) => !(keys.get(key) ?? []).some((one) => one.label === label)).map((label) => `${key}: ${label}`),
      ),
      ...Object.entries(vocabulary.labels).flatMap(([label, said]) =>
        said.filter((key) => !(labels.get(label) ?? []).some((one) => one.key === key)).map((key) => `${label}: ${key}`),
      ),
      ...Object.entries(vocabulary.keys).flatMap(([key, { labels: said, why }]) => (why !== undefined && said.length < 2 ? [key] : [])),
    ];
    expect(stale).toEqual([]);
  });
});
