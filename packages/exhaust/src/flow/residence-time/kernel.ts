/** Mean time in s that gas stays in a part: open volume in m³ over actual volume flow in m³/s. */
export function residenceTime(volume: number, openShare: number, actualVolumeFlow: number): number {
  return (volume * openShare) / actualVolumeFlow;
}
