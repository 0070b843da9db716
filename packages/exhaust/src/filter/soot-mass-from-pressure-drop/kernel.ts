import { findRoot } from '@wallflow/numerics';

/** Drop in Pa as a function of the soot mass in kg; undefined where the soot does not fit or the model has no result. */
export type DropOfSoot = (sootMass: number) => number | undefined;

export type SootMassResult =
  | {
      readonly status: 'found';
      readonly sootMass: number;
      readonly dropWithoutSoot: number;
      /** The drop that was looked for, and what the model gives with this mass, Pa. */
      readonly wantedDrop: number;
      readonly modelDrop: number;
    }
  /** The filter with its ash alone reads more than was measured. */
  | { readonly status: 'below_clean'; readonly dropWithoutSoot: number }
  /** More than one soot mass gives the measured drop. */
  | { readonly status: 'several'; readonly dropWithoutSoot: number }
  /** The ash alone fills the channels. */
  | { readonly status: 'no_room' }
  /** The model does not reach the measured drop. */
  | { readonly status: 'not_found' };

/** Places between no soot and the bracket's end where a model is looked at for more than one solution. */
const looks = 16;

/** How often the drop passes the measured one between no soot and a mass above it. */
function crossings(excess: (mass: number) => number, end: number): number {
  let count = 0;
  let last = excess(0);
  for (let i = 1; i <= looks; i += 1) {
    const next = excess((end * i) / looks);
    if (last > 0 !== next > 0) count += 1;
    last = next;
  }
  return count;
}

/**
 * Soot mass at which a drop model gives the measured drop. The closed forms rise with soot and without bound towards full
 * channels. With inertia a drop can fall again at velocities far above laminar flow: the bracket is looked over for further
 * solutions, and a drop that several masses give is not assigned to one of them.
 *
 * @param measuredDrop - Pa
 * @param fullMass - soot that fills the channels, kg
 * @param sootPart - what the model has to give of the measured rise over the drop without soot: less than 1 where the true rise
 *   may be larger than the model's, more where it may be smaller
 * @param fullest - part of `fullMass` up to which the model is asked
 */
export function sootMassForDrop(
  measuredDrop: number,
  dropOf: DropOfSoot,
  fullMass: number,
  sootPart = 1,
  fullest = 1 - 1e-12,
): SootMassResult {
  const dropWithoutSoot = fullMass > 0 ? dropOf(0) : undefined;
  if (dropWithoutSoot === undefined) return { status: 'no_room' };
  const rise = measuredDrop - dropWithoutSoot;
  const pressureDrop = rise > 0 && sootPart !== 1 ? dropWithoutSoot + sootPart * rise : measuredDrop;
  // Close in on full channels until the model reads more than was measured.
  let share = 0.5;
  while ((dropOf(share * fullMass) ?? Infinity) < pressureDrop) {
    if (share === fullest) return { status: 'not_found' };
    share = Math.min(fullest, (1 + share) / 2);
  }
  const excess = (mass: number) => Math.min(dropOf(mass) ?? Infinity, 100 * pressureDrop) - pressureDrop;
  const count = crossings(excess, share * fullMass);
  if (count > 1) return { status: 'several', dropWithoutSoot };
  if (pressureDrop < dropWithoutSoot) return { status: 'below_clean', dropWithoutSoot };
  const { status, root, residual } = findRoot(excess, 0, share * fullMass);
  // A large residual means that the search ended where the model stops having a result.
  if (status !== 'converged' || Math.abs(residual) > 1e-6 * pressureDrop) return { status: 'not_found' };
  return { status: 'found', sootMass: root, dropWithoutSoot, wantedDrop: pressureDrop, modelDrop: pressureDrop + residual };
}
