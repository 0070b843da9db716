import { ammoniaCoverage, type ScrModel, teachingScrModel } from '../scr-model/teaching-model.js';

export interface StorageInput {
  /** m³ */
  readonly catalystVolume: number;
  /** Ammonia on a full surface in kg per m³ of catalyst. */
  readonly capacity: number;
  /** K */
  readonly temperature: number;
  /** Mole fraction of ammonia in the gas. */
  readonly ammonia: number;
}

/** Ammonia in kg that the catalyst holds in balance with the gas. */
export function storedAmmonia(
  { catalystVolume, capacity, temperature, ammonia }: StorageInput,
  model: ScrModel = teachingScrModel,
): number {
  return catalystVolume * capacity * ammoniaCoverage(temperature, ammonia, model);
}
