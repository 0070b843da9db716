import { comparedWith, type UncertainLife, usefulFilterLives } from './useful-life.js';

export interface Chances {
  readonly cleanCheaper: number;
  readonly replaceCheaper: number;
}

/**
 * Chances that the cleaned life is longer and shorter than a multiple of the new one, both as far as they are used. A multiple
 * above one can lie beyond what is driven: from there on the cleaned life is the shorter for sure, and the integral ends.
 */
export function chancesOf(cleaned: UncertainLife, fresh: UncertainLife, multiple: number): Chances {
  // A clean for nothing that gains nothing: both cost the same.
  if (Number.isNaN(multiple)) return { cleanCheaper: 0, replaceCheaper: 0 };
  if (multiple === Number.POSITIVE_INFINITY) return { cleanCheaper: 0, replaceCheaper: 1 };
  const beyond = multiple > 1 ? fresh.cap / multiple : undefined;
  let [cleanCheaper, replaceCheaper] = [0, 0];
  for (const { distance, weight } of usefulFilterLives({ ...fresh, cap: beyond ?? fresh.cap })) {
    const { longer, shorter } = distance === beyond ? { longer: 0, shorter: 1 } : comparedWith(cleaned, multiple * distance);
    cleanCheaper += weight * longer;
    replaceCheaper += weight * shorter;
  }
  return { cleanCheaper: Math.min(1, cleanCheaper), replaceCheaper: Math.min(1, replaceCheaper) };
}
