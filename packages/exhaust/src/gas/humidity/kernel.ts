import { molarMassOfDryAir } from '../constants.js';
import { molarMassOf } from '../species.js';

/** Vapour pressure of water in Pa over liquid or super-cooled water, Goff 1957 as 40 CFR 1065.645 Eq. 1; −50 °C to 100 °C. */
export function vapourPressureGoff(temperature: number): number {
  const ratio = 273.16 / temperature;
  const logarithm =
    10.79574 * (1 - ratio) -
    5.028 * Math.log10(temperature / 273.16) +
    1.50475e-4 * (1 - 10 ** (-8.2969 * (temperature / 273.16 - 1))) +
    0.42873e-3 * (10 ** (4.76955 * (1 - ratio)) - 1) -
    0.2138602;
  return 1000 * 10 ** logarithm;
}

/** Vapour pressure of water in Pa over liquid water, Buck 1996; short, within 0.1 % of Goff from 0 °C to 50 °C. */
export function vapourPressureBuck(temperature: number): number {
  const celsius = temperature - 273.15;
  return 611.21 * Math.exp(((18.678 - celsius / 234.5) * celsius) / (257.14 + celsius));
}

/** Temperatures in K between which 40 CFR 1065.645 has its equations hold. */
export const dewPointRange = [223.15, 373.15] as const;

/** Dew point in K over liquid water from a vapour pressure in Pa, Hardy 1998 as 40 CFR 1065.645(d). */
export function dewPointHardy(vapourPressure: number): number {
  const x = Math.log(vapourPressure);
  const above = 207.98233 - 20.156028 * x + 0.46778925 * x ** 2 - 9.2288067e-6 * x ** 3;
  const below = 1 - 0.13319669 * x + 5.6577518e-3 * x ** 2 - 7.5172865e-5 * x ** 3;
  return above / below;
}

/** Mass of water per mass of dry air from vapour and total pressure in Pa. */
export function humidityRatio(
  vapourPressure: number,
  pressure: number,
  airMolarMass = molarMassOfDryAir,
  waterMolarMass = molarMassOf.water,
): number {
  return ((waterMolarMass / airMolarMass) * vapourPressure) / (pressure - vapourPressure);
}

/** Molar mass of moist air in kg/mol, 40 CFR 1065.640(c)(5)(iv). */
export function molarMassOfMoistAir(
  waterMoleFraction: number,
  airMolarMass = molarMassOfDryAir,
  waterMolarMass = molarMassOf.water,
): number {
  return airMolarMass * (1 - waterMoleFraction) + waterMolarMass * waterMoleFraction;
}
