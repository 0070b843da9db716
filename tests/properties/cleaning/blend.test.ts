import { alligation, amountToAdd, type BlendPart, blendedLiquid } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const amount = fc.double({ min: 1e-6, max: 10, noNaN: true });
const part: fc.Arbitrary<BlendPart> = fc.record({ amount, strength: share });
const parts = fc.array(part, { minLength: 1, maxLength: 6 });
const active = (list: readonly BlendPart[]) => list.reduce((sum, { amount: size, strength }) => sum + size * strength, 0);

it('keeps what goes in, whatever the order', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const once = blendedLiquid(list);
      expect(active([once])).toBeCloseTo(active(list), 10);
      const oneByOne = list
        .slice()
        .reverse()
        .reduce((whole, next) => blendedLiquid([whole, next]), { amount: 0, strength: 0 });
      expect(oneByOne.amount).toBeCloseTo(once.amount, 10);
      expect(oneByOne.strength).toBeCloseTo(once.strength, 9);
    }),
  );
});

it('lies between its parts', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const strengths = list.map(({ strength }) => strength);
      const { strength } = blendedLiquid(list);
      expect(strength).toBeGreaterThanOrEqual(Math.min(...strengths) - 1e-12);
      expect(strength).toBeLessThanOrEqual(Math.max(...strengths) + 1e-12);
    }),
  );
});

it('alligation undoes a blend', () => {
  fc.assert(
    fc.property(amount, amount, share, share, (first, second, one, two) => {
      const [weaker, stronger] = one < two ? [one, two] : [two, one];
      fc.pre(stronger - weaker > 1e-3);
      const whole = blendedLiquid([
        { amount: first, strength: weaker },
        { amount: second, strength: stronger },
      ]);
      const back = alligation(whole.amount, Math.min(stronger, Math.max(weaker, whole.strength)), weaker, stronger);
      expect(back?.weakerAmount).toBeCloseTo(first, 8);
      expect(back?.strongerAmount).toBeCloseTo(second, 8);
    }),
  );
});

it('a stronger stock never needs more of it', () => {
  fc.assert(
    fc.property(
      amount,
      fc.double({ min: 0, max: 0.4, noNaN: true }),
      fc.double({ min: 0.6, max: 0.99, noNaN: true }),
      (size, strength, stock) => {
        const less = amountToAdd({ amount: size, strength }, stock, 0.5);
        const more = amountToAdd({ amount: size, strength }, Math.min(1, stock + 0.01), 0.5);
        expect(more).toBeLessThanOrEqual(less as number);
      },
    ),
  );
});

it('by mass gives weights that make up the mix, and volumes only from densities', () => {
  const calculation = registry.get('blend-two-strengths');
  const density = fc.option(fc.double({ min: 600, max: 1900, noNaN: true }), { nil: undefined });
  const text = (value: number | undefined, unit: string) => (value === undefined ? undefined : { value, unit });
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), density, density, (wantedMass, weak, strong) => {
      const result = calculation?.run({
        strengthBasis: 'mass',
        wantedMass: text(wantedMass, 'kg'),
        wantedStrength: '25 %',
        weakerStrength: '10 %',
        strongerStrength: '50 %',
        weakerDensity: text(weak, 'kg/m3'),
        strongerDensity: text(strong, 'kg/m3'),
      });
      if (result?.ok !== true) throw new Error('refused');
      const { weakerMass, strongerMass, weakerVolume, strongerVolume } = result.outputs as Record<string, number | undefined>;
      expect((weakerMass ?? 0) + (strongerMass ?? 0)).toBeCloseTo(wantedMass, 9);
      expect(weakerVolume === undefined).toBe(weak === undefined);
      expect(strongerVolume === undefined).toBe(strong === undefined);
      if (strong !== undefined) expect((strongerVolume ?? 0) * strong).toBeCloseTo(strongerMass ?? 0, 9);
    }),
  );
});
