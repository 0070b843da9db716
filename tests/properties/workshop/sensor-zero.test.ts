import fc from 'fast-check';
import { expect, it } from 'vitest';
import { registry } from '../../support/calculations.js';

function outputs(id: string, change: Record<string, unknown>): Record<string, unknown> {
  const calculation = registry.get(id);
  const result = calculation?.run({ ...(calculation.example as object), ...change });
  if (!result?.ok) throw new Error(`${id} refuses its input`);
  return { ...result.outputs };
}

it('judges one zero error alike in the zero check, the condition of the filter and the permission', () => {
  fc.assert(
    fc.property(fc.double({ min: -15, max: 15, noNaN: true }), (mbar) => {
      const zero = { value: mbar, unit: 'mbar' };
      const check = outputs('sensor-zero-check', { zeroReading: zero }).verdict;
      const condition = outputs('filter-condition', { zeroReading: zero }).verdict;
      expect(condition === 'zero-fault').toBe(check === 'repair');
      const rows = outputs('regeneration-permission', { pressureSensorZero: zero }).conditions as { condition: string; result: string }[];
      expect(rows.find((row) => row.condition.startsWith('Filter pressure sensor reads zero'))?.result === 'pass').toBe(
        check === 'accepted',
      );
    }),
  );
});
