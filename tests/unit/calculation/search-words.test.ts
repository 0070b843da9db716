import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

function wordsOf(id: string): string {
  const found = allCalculations.find((calculation) => calculation.id === id);
  if (found === undefined) throw new Error(`${id} is not published`);
  return (found.spec.keywords ?? []).join(', ');
}

describe('the words by which a calculator is found', () => {
  it.each([
    ['exhaust-drop-shares', 'backpressure'],
    ['flow-resistance', 'backpressure'],
    ['filter-condition', 'DPF'],
    ['hose-swap-test', 'sensor stuck'],
    ['sensor-zero-check', 'sensor stuck'],
    ['regeneration-permission', 'regen'],
    ['reductant-demand', 'AUS 32'],
  ])('%s is found by "%s"', (id, word) => {
    expect(wordsOf(id)).toContain(word);
  });

  it('are said once each', () => {
    for (const { id } of allCalculations) {
      const words = wordsOf(id).toLowerCase().split(', ');
      expect(new Set(words).size, id).toBe(words.length);
    }
  });

  it('claim no filter where there is none', () => {
    expect(wordsOf('gas-density')).not.toContain('DPF');
  });
});
