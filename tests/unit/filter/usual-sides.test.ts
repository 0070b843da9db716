import { registry } from '@wallflow/exhaust/calculations';
import { expect, it } from 'vitest';

const filter = { cellDensity: '200 cpsi', wallThickness: '12 mil', filterDiameter: '144 mm', filterLength: '152 mm' };

function warningOf(input: Record<string, unknown>): string {
  const result = registry.get('clean-pressure-drop')!.run({ ...filter, exhaustVolumeFlow: '180 m3/h', ...input });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.warnings.map(({ text }) => text).join(' ');
}

it('gives cold gas no reason that is one against hot gas', () => {
  expect(warningOf({ gasTemperature: '-20 °C' })).not.toContain('dilute-gas');
  expect(warningOf({ gasTemperature: '900 °C' })).toContain('dilute-gas');
  expect(warningOf({ gasTemperature: '200 °C', exhaustVolumeFlow: '2 m3/h' })).toContain('idles gives more');
  expect(warningOf({ gasTemperature: '200 °C', exhaustVolumeFlow: '2 m3/h' })).not.toContain('full load');
});
