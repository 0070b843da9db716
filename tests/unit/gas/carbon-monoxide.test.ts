import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

/** Dry exhaust of CH1.85 at lambda 2 with some carbon monoxide, atom by atom; air with 20.945 % O₂ and 375 ppm CO₂. */
function dryExhaust(carbonMonoxide: number): { oxygen: number; carbonDioxide: number } {
  const demand = 1 + 1.85 / 4;
  const air = (2 * demand) / 0.209445;
  // Each mole of carbon that stops at CO leaves half a mole of oxygen.
  let toMonoxide = 0;
  let all = 0;
  for (let pass = 0; pass < 50; pass += 1) {
    all = air - demand + 1 + toMonoxide / 2;
    toMonoxide = carbonMonoxide * all;
  }
  return { oxygen: (demand + toMonoxide / 2) / all, carbonDioxide: (1 - toMonoxide + 0.000375 * air) / all };
}

function lambda(gas: 'oxygen' | 'carbon-dioxide', share: number): number {
  const result = registry.get('lambda-from-exhaust-gas')!.run({
    ...{ [gas === 'oxygen' ? 'oxygenReading' : 'carbonDioxideReading']: `${100 * share} %` },
    ...{ readingBasis: 'dry', hydrogenToCarbon: '1.85', oxygenToCarbon: '0' },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return (result.outputs as unknown as { lambda: number }).lambda;
}

describe('carbon monoxide that the balance does not know', () => {
  it('moves lambda 0.4 % by oxygen and 1.4 % by carbon dioxide, both upwards, as the assumption says', () => {
    const [without, with1000ppm] = [dryExhaust(0), dryExhaust(0.001)];
    expect(lambda('oxygen', without.oxygen)).toBeCloseTo(2, 4);
    expect(lambda('carbon-dioxide', without.carbonDioxide)).toBeCloseTo(2, 4);
    expect(100 * (lambda('oxygen', with1000ppm.oxygen) / 2 - 1)).toBeCloseTo(0.43, 2);
    expect(100 * (lambda('carbon-dioxide', with1000ppm.carbonDioxide) / 2 - 1)).toBeCloseTo(1.37, 2);
    const said = registry
      .get('lambda-from-exhaust-gas')!
      .spec.assumptions.map(({ text }) => text)
      .join(' ');
    expect(said).toContain('0.4 % too high by oxygen and 1.4 % too high by carbon dioxide');
  });
});
