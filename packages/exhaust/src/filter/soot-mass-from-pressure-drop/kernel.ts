import { findRoot } from '@wallflow/numerics';

/** Drop in Pa as a function of the soot mass in kg; undefined where the soot does not fit or the model has no result. */
export type DropOfSoot = (sootMass: number) => number | undefined;

export type SootMassResult =
  | { readonly status: 'found'; readonly sootMass: number; readonly dropWithoutSoot: number }
  /** The filter with its ash alone reads more than was measured. */
  | { readonly status: 'below_clean'; readonly dropWithoutSoot: number }
  /** The ash alone fills the channels. */
  | { readonly status: 'no_room' }
  /** The model does not reach the measured drop. */
  | { readonly status: 'not_found' };

/**
 * Soot mass at which a drop model gives the measured drop. The models rise steadily with soot and grow without bound
 * towards full channels, so that there is one solution or none.
 *
 * @param fullMass - soot that fills the channels, kg
 */
export function sootMassForDrop(pressureDrop: number, dropOf: DropOfSoot, fullMass: number): SootMassResult {
  const dropWithoutSoot = fullMass > 0 ? dropOf(0) : undefined;
  if (dropWithoutSoot === undefined) return { status: 'no_room' };
  if (pressureDrop < dropWithoutSoot) return { status: 'below_clean', dropWithoutSoot };
  // Close in on full channels until the model reads more than was measured.
  let share = 0.5;
  while ((dropOf(share * fullMass) ?? Infinity) < pressureDrop) {
    share = (1 + share) / 2;
    if (1 - share < 1e-12) return { status: 'not_found' };
  }
  const excess = (mass: number) => Math.min(dropOf(mass) ?? Infinity, 100 * pressureDrop) - pressureDrop;
  const { status, root, residual } = findRoot(excess, 0, share * fullMass);
  // A large residual means that the search ended where the model stops having a result.
  if (status !== 'converged' || Math.abs(residual) > 1e-6 * pressureDrop) return { status: 'not_found' };
  return { status: 'found', sootMass: root, dropWithoutSoot };
}
