import { molarMassOfDryAir } from '../../gas/constants.js';
import { molarMassOfWater } from '../constants.js';

export type HumidityEdition = 'un-r49-later' | 'un-r49-2008' | 'directive-1999' | 'cfr-1065' | 'cfr-1066';

export interface HumidityFactorInput {
  readonly edition: HumidityEdition;
  /** Water mass per dry air mass in the intake air. */
  readonly intakeHumidity: number;
  /** Intake air temperature in K; used by the directive alone. */
  readonly intakeTemperature: number;
  /** Fuel mass per dry air mass; used by the directive alone. */
  readonly fuelToAirRatio: number;
}

/** Humidity to which every edition refers, 10.71 g of water per kg of dry air. */
const referenceHumidity = 0.01071;

/** Mole fraction of water in the intake air from its mass ratio. */
export function waterMoleFraction(intakeHumidity: number): number {
  return intakeHumidity / (intakeHumidity + molarMassOfWater / molarMassOfDryAir);
}

/** Factor that brings NOx to standard humidity. The editions give different factors for the same air. */
export function noxHumidityFactor({ edition, intakeHumidity, intakeTemperature, fuelToAirRatio }: HumidityFactorInput): number {
  const gramsAbove = 1000 * (intakeHumidity - referenceHumidity);
  switch (edition) {
    case 'un-r49-later':
      return 15.698 * intakeHumidity + 0.832;
    case 'un-r49-2008':
      return 1 / (1 - 0.0182 * gramsAbove);
    case 'directive-1999': {
      const humiditySlope = 0.309 * fuelToAirRatio - 0.0266;
      const temperatureSlope = -0.209 * fuelToAirRatio + 0.00954;
      return 1 / (1 + humiditySlope * gramsAbove + temperatureSlope * (intakeTemperature - 298));
    }
    case 'cfr-1065':
      return 9.953 * waterMoleFraction(intakeHumidity) + 0.832;
    case 'cfr-1066':
      return 1 / (1 - 0.0329 * gramsAbove);
  }
}
