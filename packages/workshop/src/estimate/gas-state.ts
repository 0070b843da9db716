import { sutherlandViscosity } from '@wallflow/exhaust';
import type { BackPressureReading, SpeedReading, Vehicle } from './evidence-input.js';
import { idleBelow } from './idle.js';
import { share } from './latent.js';
import { dutyOf } from './priors.js';
import { at } from './unknowns.js';

/** The exhaust at one reading. */
export interface GasState {
  /** Viscosity times volume flow, Pa·m³. */
  readonly muQ: number;
  /** Density times volume flow squared, N·m². */
  readonly rhoQQ: number;
}

const gasConstant = 287.1;
const fuelShare = 0.015;
const intakeTemperature = 308;
/**
 * Volumetric efficiency of a diesel by speed and manifold pressure, from an open model of a 12.7 L engine (Wahlström and
 * Eriksson 2010); other engines are within some 5 %.
 */
function volumetricEfficiency(pressure: number, speed: number): number {
  return -2.0817e-4 * Math.sqrt(pressure) - 3.4465e-3 * Math.sqrt(speed * 60) + 1.1497;
}

/** What the gas is like at a reading, for the unknowns of a point. */
export type GasModel = (point: Float64Array) => GasState;

/** Prepare one reading: only the unknowns that it leaves open are asked of a point. */
export function gasModel(reading: SpeedReading | BackPressureReading, pressureInFilter: number, vehicle: Vehicle): GasModel {
  const { displacement, ambientPressure = 101_325 } = vehicle;
  const light = dutyOf(vehicle) === 'light';
  const { engineSpeed, gasTemperature, airMassFlow } = reading;
  const idle = engineSpeed < idleBelow;
  const manifold = ambientPressure * (idle ? 0.97 : 1.05);
  const charge =
    (((displacement * engineSpeed) / 2) * manifold * volumetricEfficiency(manifold, engineSpeed)) / (gasConstant * intakeTemperature);
  const usual = idle ? (light ? 413 : 393) : 463;
  const recirculation = idle ? at.recirculationAtIdle : at.recirculationRaised;
  const usualShare = idle ? (light ? 0.38 : 0.15) : light ? 0.12 : 0.06;
  const drift = idle ? at.temperatureAtIdle : at.temperatureRaised;
  return (point) => {
    const temperature = gasTemperature ?? usual + 30 * point[drift]!;
    // Fresh air and fuel leave through the filter; what is led back does not.
    const air =
      airMassFlow === undefined
        ? charge * (1 - share(point[recirculation]!, usualShare, 1)) * Math.exp(0.05 * point[at.flow]!)
        : airMassFlow * Math.exp(0.05 * point[at.flow]!);
    const massFlow = air * (1 + fuelShare);
    const density = pressureInFilter / (gasConstant * temperature);
    const volumeFlow = massFlow / density;
    return { muQ: sutherlandViscosity(temperature) * volumeFlow, rhoQQ: density * volumeFlow * volumeFlow };
  };
}
