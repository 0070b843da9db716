/** Space velocity in 1/s: volume flow at a reference state in m³/s over the outer volume of the catalyst in m³. */
export function spaceVelocity(referenceVolumeFlow: number, catalystVolume: number): number {
  return referenceVolumeFlow / catalystVolume;
}
