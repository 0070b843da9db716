/** Gas and flow that a drop belongs to, SI. */
export interface FlowStateOfDrop {
  /** Actual, m³/s. */
  readonly volumeFlow: number;
  /** Pa·s. */
  readonly viscosity: number;
  /** kg/m³. */
  readonly density: number;
}

/**
 * A drop measured at one state as it would be at another, Pa: μQ scales the viscous part and ρQ² the rest.
 *
 * @param inertialShare - part of the measured drop that grows with ρQ², 0 to 1
 */
export function dropAtState(pressureDrop: number, measured: FlowStateOfDrop, wanted: FlowStateOfDrop, inertialShare = 0): number {
  const viscous = (wanted.viscosity * wanted.volumeFlow) / (measured.viscosity * measured.volumeFlow);
  const inertial = (wanted.density * wanted.volumeFlow ** 2) / (measured.density * measured.volumeFlow ** 2);
  return pressureDrop * ((1 - inertialShare) * viscous + inertialShare * inertial);
}
