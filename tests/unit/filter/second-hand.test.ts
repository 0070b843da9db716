import { citation } from '@wallflow/calculation';
import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const cited = (id: string) => Object.values(registry.get(id)?.spec.sources ?? {}).map(citation);

describe('what nobody has read where it was published', () => {
  it.each([
    ['compressible-pressure-drop', /Compaction of soot cakes.*\(second-hand\)/],
    ['regeneration-permission', /Triana.*\(second-hand\)/],
    ['soot-oxidation-rate', /Bissett, Shadman.*\(from memory\)/],
  ])('says so in the sources of %s', (id, source) => {
    expect(cited(id).join('\n')).toMatch(source);
  });
});
