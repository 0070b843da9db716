import { boilingPoint, vapourPressureGoff } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const pressure = fc.double({ min: 6e4, max: 2e5, noNaN: true });

it('water boils where its vapour pressure is that of the place, the hotter the higher the pressure', () => {
  fc.assert(
    fc.property(pressure, pressure, (one, other) => {
      expect(vapourPressureGoff(boilingPoint(one)) / one).toBeCloseTo(1, 9);
      if (one < other) expect(boilingPoint(one)).toBeLessThanOrEqual(boilingPoint(other));
    }),
  );
});

it('a filter dries no slower at a lower pressure, since gas can leave cooler', () => {
  const drying = registry.get('drying');
  const time = (pascal: number) => {
    const result = drying?.run({
      heldWater: '1 L',
      exhaustMassFlow: '172 kg/h',
      gasTemperature: '220 °C',
      gasPressure: { value: pascal, unit: 'Pa' },
    });
    if (result?.ok !== true) throw new Error('refused');
    return (result.outputs as { idealTime: number }).idealTime;
  };
  fc.assert(
    fc.property(pressure, pressure, (one, other) => {
      if (one < other) expect(time(one)).toBeLessThanOrEqual(time(other) * (1 + 1e-12));
    }),
  );
});
