import { regenerationAxialCalculation } from '@wallflow/exhaust/calculations/regeneration';

/** The filter that is heated. */
export interface HeatedFilter {
  /** m³ */
  readonly volume: number;
  /** m */
  readonly length: number;
  readonly light: boolean;
}

/** Where a filter is damaged: the limits of the map of peak temperatures, °C. */
const damageFrom = { 'silicon-carbide': 1100, cordierite: 900 } as const;

/**
 * Whether a forced regeneration of this soot would damage the filter, in the worst moment: the engine drops to idle shortly after
 * the gas is hot, by the axial model. Light filters are taken as silicon carbide, heavy ones as cordierite.
 */
export function burningDamages(sootLoad: number, { volume, length, light }: HeatedFilter): boolean {
  const substrate = light ? 'silicon-carbide' : 'cordierite';
  const { outputs } = regenerationAxialCalculation.calculate({
    kinetics: 'bai-2016',
    substrate,
    filterVolume: { value: volume * 1000, unit: 'L' },
    filterLength: { value: length * 1000, unit: 'mm' },
    cellDensity: '200 cpsi',
    wallThickness: '0.305 mm',
    sootLoad: { value: sootLoad, unit: 'g/L' },
    startTemperature: '300 °C',
    scenario: 'drop-to-idle',
    gasTemperature: '600 °C',
    oxygen: '8 %',
    exhaustMassFlow: { value: volume * 1000 * 35, unit: 'kg/h' },
    idleMassFlow: { value: volume * 1000 * 14, unit: 'kg/h' },
    duration: '15 min',
  });
  return outputs.peakTemperature >= damageFrom[substrate] + 273.15;
}
