import type { PassFit, PassReading } from './fit.js';

/** What a fit of p∞ + a exp(−n/τ) was not made without. */
export const noTerms = {
  fitTerms: undefined,
  decaySum: undefined,
  slopeSum: undefined,
  decaySquares: undefined,
  mixedSquares: undefined,
  slopeSquares: undefined,
  determinant: undefined,
  levelVariance: undefined,
  decayVariance: undefined,
  slopeVariance: undefined,
  levelDecay: undefined,
  levelSlope: undefined,
  decaySlope: undefined,
  decayNow: undefined,
  decayNext: undefined,
  leftByNext: undefined,
  decayWeight: undefined,
  slopeWeight: undefined,
};

/**
 * How the uncertainty of a fit comes about: the normal matrix of its slopes 1, e and n e with e = exp(−n/τ), and its inverse by
 * cofactors. The scale a/τ² of the third slope cancels where a covariance meets the slopes again.
 */
export function fitTerms(readings: readonly PassReading[], { at, decayPasses }: PassFit, last: number) {
  const decayAt = (pass: number) => Math.exp(-pass / decayPasses);
  const terms = readings.map(({ pass }) => ({ done: pass, decay: decayAt(pass), slope: pass * decayAt(pass) }));
  const sum = (of: (term: (typeof terms)[number]) => number) => terms.reduce((total, term) => total + of(term), 0);
  const count = terms.length;
  const decaySum = sum(({ decay }) => decay);
  const slopeSum = sum(({ slope }) => slope);
  const decaySquares = sum(({ decay }) => decay ** 2);
  const mixedSquares = sum(({ decay, slope }) => decay * slope);
  const slopeSquares = sum(({ slope }) => slope ** 2);
  const determinant =
    count * (decaySquares * slopeSquares - mixedSquares ** 2) -
    decaySum * (decaySum * slopeSquares - mixedSquares * slopeSum) +
    slopeSum * (decaySum * mixedSquares - decaySquares * slopeSum);
  const decayNow = decayAt(last);
  const decayNext = decayAt(last + 1);
  const leftByNext = at(last + 1).drop / at(last).drop;
  return {
    fitTerms: terms,
    decaySum,
    slopeSum,
    decaySquares,
    mixedSquares,
    slopeSquares,
    determinant,
    levelVariance: (decaySquares * slopeSquares - mixedSquares ** 2) / determinant,
    decayVariance: (count * slopeSquares - slopeSum ** 2) / determinant,
    slopeVariance: (count * decaySquares - decaySum ** 2) / determinant,
    levelDecay: (slopeSum * mixedSquares - decaySum * slopeSquares) / determinant,
    levelSlope: (decaySum * mixedSquares - slopeSum * decaySquares) / determinant,
    decaySlope: (decaySum * slopeSum - count * mixedSquares) / determinant,
    decayNow,
    decayNext,
    leftByNext,
    decayWeight: decayNext - leftByNext * decayNow,
    slopeWeight: (last + 1) * decayNext - leftByNext * last * decayNow,
  };
}
