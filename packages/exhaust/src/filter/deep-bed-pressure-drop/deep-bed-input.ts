import type { ComputeContext, Constants } from '@wallflow/calculation';
import type { FilterMaterial } from '../loaded-pressure-drop/kernel.js';
import type { DeepBedMaterial } from './kernel.js';

interface DeepBedValues extends FilterMaterial {
  readonly wallPorosity: number;
  readonly wallSootDensity: number;
  readonly percolationFactor: number;
}

/** The material as the kernel takes it. */
export function deepBedMaterial(input: DeepBedValues, constants: { readonly coveringThickness: number }): DeepBedMaterial {
  return { ...input, porosity: input.wallPorosity, coveringThickness: constants.coveringThickness };
}

/** Warn where the fit has nothing to stand on. */
export function warnOfDeepBed({ wallPorosity, percolationFactor }: DeepBedValues, { warn }: Pick<ComputeContext<Constants>, 'warn'>): void {
  if (percolationFactor <= Math.cbrt(1 - wallPorosity)) {
    warn('closed_wall', 'With this percolation factor no soot enters a wall of this porosity: all of it is taken as cake.', [
      'percolationFactor',
    ]);
  }
  warn(
    'fitted_model',
    'The share of soot in the wall is fitted to two heavy-duty filters. For another wall take the result as an estimate.',
  );
}
