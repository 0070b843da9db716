/** One row of ISO 22241-3: up to a constant temperature in K the fluid keeps for a time in s. */
export interface StorageRow {
  readonly upTo: number;
  readonly life: number;
}

/** A month as the mean twelfth of a Gregorian year, in s. */
export const month = (365.2425 * 86400) / 12;

/** ISO 22241-3, from memory. Above the last row the standard asks for a test before use. */
export const storageLife: readonly StorageRow[] = [
  { upTo: 283.15, life: 36 * month },
  { upTo: 298.15, life: 18 * month },
  { upTo: 303.15, life: 12 * month },
  { upTo: 308.15, life: 6 * month },
];

/** Life in s at a constant temperature in K, or undefined above the table. */
export function storageLifeAt(temperature: number, table = storageLife): number | undefined {
  return table.find((row) => temperature <= row.upTo + 1e-9)?.life;
}

export interface StoragePeriod {
  /** K */
  readonly temperature: number;
  /** s */
  readonly duration: number;
}

/** Share of its life that the fluid has used, adding the share of each period; undefined if any was above the table. */
export function usedStorageLife(periods: readonly StoragePeriod[], table = storageLife): number | undefined {
  let used = 0;
  for (const { temperature, duration } of periods) {
    const life = storageLifeAt(temperature, table);
    if (life === undefined) return undefined;
    used += duration / life;
  }
  return used;
}
