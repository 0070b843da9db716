/** A part of a mix: how much of it, and its share of the active substance. */
export interface BlendPart {
  /** Volume in m³ or mass in kg; all parts in the same. */
  readonly amount: number;
  /** Share of the active substance on the same basis. */
  readonly strength: number;
}

/** Amount and strength of several parts together: what is in them adds up. */
export function blendedLiquid(parts: readonly BlendPart[]): BlendPart {
  const amount = parts.reduce((sum, part) => sum + part.amount, 0);
  const active = parts.reduce((sum, part) => sum + part.amount * part.strength, 0);
  return { amount, strength: amount === 0 ? 0 : active / amount };
}

/**
 * Amounts of a weaker and a stronger stock that make an amount of a strength between them (alligation): crosswise
 * differences of the strengths. Undefined when the strength does not lie between.
 */
export function alligation(
  amount: number,
  strength: number,
  weaker: number,
  stronger: number,
): { readonly weakerAmount: number; readonly strongerAmount: number } | undefined {
  if (!(weaker <= strength && strength <= stronger && weaker < stronger)) return undefined;
  const strongerAmount = (amount * (strength - weaker)) / (stronger - weaker);
  return { weakerAmount: amount - strongerAmount, strongerAmount };
}

/** Amount of stock to add to `have` so that the mix reaches a strength; undefined when that stock cannot do it. */
export function amountToAdd(have: BlendPart, stock: number, target: number): number | undefined {
  if (target === have.strength) return 0;
  const added = (have.amount * (target - have.strength)) / (stock - target);
  return added >= 0 && Number.isFinite(added) ? added : undefined;
}
