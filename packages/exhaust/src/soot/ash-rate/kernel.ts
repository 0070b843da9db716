export interface AshRateInput {
  /** Oil used per distance in m³/m. */
  readonly oilConsumption: number;
  /** Density of the oil in kg/m³. */
  readonly oilDensity: number;
  /** Sulphated ash of the oil as a mass fraction. */
  readonly sulphatedAsh: number;
  /** Share of the oil's ash that reaches the filter and stays, 0 to 1. */
  readonly ashCapture: number;
}

/** Ash from oil per distance in kg/m. */
export function ashFromOil({ oilConsumption, oilDensity, sulphatedAsh, ashCapture }: AshRateInput): number {
  return oilConsumption * oilDensity * sulphatedAsh * ashCapture;
}

/** Ash from a metal additive in the fuel per distance in kg/m: fuel per distance in m³/m, metal per fuel volume in kg/m³, oxide per metal by mass. */
export function ashFromAdditive(fuelConsumption: number, metalContent: number, oxidePerMetal: number): number {
  return fuelConsumption * metalContent * oxidePerMetal;
}

/** Distance in m until the ash reaches a limit in kg; undefined when none comes in. */
export function distanceToAshLimit(ash: number, limit: number, rate: number): number | undefined {
  if (ash >= limit) return 0;
  return rate > 0 && Number.isFinite((limit - ash) / rate) ? (limit - ash) / rate : undefined;
}

/** Share of ash in the deposit when the filter holds an amount of soot as well; zero when it is empty. */
export function ashShare(ash: number, soot: number): number {
  return ash + soot > 0 ? ash / (ash + soot) : 0;
}
