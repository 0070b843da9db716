import { carbonMassFraction, type FuelFormula, oxygenDemand } from '../../gas/air-fuel-ratio/kernel.js';
import { atomicMass } from '../../gas/species.js';

export interface CarbonReadings {
  /** Mole fractions as measured; hydrocarbons counted per carbon atom. */
  readonly carbonDioxide: number;
  readonly carbonMonoxide: number;
  readonly hydrocarbons: number;
  /** Whether the samples kept their water. */
  readonly basis: 'wet' | 'dry';
}

export interface CarbonBalanceInput extends CarbonReadings {
  readonly fuel: FuelFormula;
  /** Mole fraction in dry intake air. */
  readonly intakeCarbonDioxide: number;
  /** Moles of water per mole of dry intake air. */
  readonly waterPerDryAir: number;
  /** Moles of water per mole of dry exhaust, where it was measured. */
  readonly waterPerDryExhaust?: number | undefined;
}

export interface CarbonBalance {
  /** Moles of carbon from the fuel per mole of dry exhaust. */
  readonly carbonPerDryExhaust: number;
  /** Moles of dry intake air per mole of dry exhaust. */
  readonly airPerDryExhaust: number;
  /** Moles of water per mole of dry exhaust: `fixedWater + waterPerCarbon · carbonPerDryExhaust`. */
  readonly waterPerDryExhaust: number;
  readonly fixedWater: number;
  readonly waterPerCarbon: number;
}

/**
 * Carbon from the fuel in the exhaust, 40 CFR 1065.655(c) for lean exhaust.
 *
 * Dry exhaust per carbon is `1 − s` plus the dry air, so that the balance is linear and needs no iteration.
 */
export function carbonBalance(input: CarbonBalanceInput): CarbonBalance {
  const { fuel, basis, intakeCarbonDioxide, waterPerDryAir } = input;
  const shrink = 1 - oxygenDemand(fuel);
  const measured = input.carbonDioxide + input.carbonMonoxide + input.hydrocarbons;
  const fixedWater = input.waterPerDryExhaust ?? waterPerDryAir;
  const waterPerCarbon = input.waterPerDryExhaust === undefined ? fuel.hydrogenToCarbon / 2 - waterPerDryAir * shrink : 0;
  const wet = basis === 'wet' ? measured : 0;
  const carbonPerDryExhaust =
    (measured + wet * fixedWater - intakeCarbonDioxide) / (1 - intakeCarbonDioxide * shrink - wet * waterPerCarbon);
  return {
    carbonPerDryExhaust,
    airPerDryExhaust: 1 - shrink * carbonPerDryExhaust,
    waterPerDryExhaust: fixedWater + waterPerCarbon * carbonPerDryExhaust,
    fixedWater,
    waterPerCarbon,
  };
}

/** Wet exhaust in mol/s from fuel in kg/s, 40 CFR 1065.655(f)(3). */
export function carbonBalanceMolarFlow(
  fuelMassFlow: number,
  { carbonPerDryExhaust, waterPerDryExhaust }: Pick<CarbonBalance, 'carbonPerDryExhaust' | 'waterPerDryExhaust'>,
  carbonShare: number = carbonMassFraction({ hydrogenToCarbon: 1.8, oxygenToCarbon: 0 }),
  carbonAtomicMass = atomicMass.carbon,
): number {
  return (fuelMassFlow * carbonShare * (1 + waterPerDryExhaust)) / (carbonAtomicMass * carbonPerDryExhaust);
}
