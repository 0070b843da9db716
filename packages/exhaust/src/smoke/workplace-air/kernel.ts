export interface RoomAirInput {
  /** Exhaust that enters the room, m³/s at the temperature of the room. */
  readonly exhaustFlow: number;
  /** Mole fraction of the gas in that exhaust. */
  readonly exhaustFraction: number;
  /** Fresh air that replaces the air of the room, m³/s. */
  readonly freshAirFlow: number;
}

/** Mole fraction in a well-mixed room after a long time; that of the exhaust where no fresh air comes in, none where nothing does. */
export function steadyRoomFraction({ exhaustFlow, exhaustFraction, freshAirFlow }: RoomAirInput): number {
  return exhaustFlow === 0 ? 0 : (exhaustFlow * exhaustFraction) / (freshAirFlow + exhaustFlow);
}

/** Mole fraction after a time in s in a room of a volume in m³ that was clean at the start: c∞ (1 − exp(−Q t/V)). */
export function roomFractionAfter(input: RoomAirInput, roomVolume: number, time: number): number {
  return steadyRoomFraction(input) * -Math.expm1((-(input.freshAirFlow + input.exhaustFlow) * time) / roomVolume);
}

/** Fresh air in m³/s that keeps a well-mixed room at a mole fraction. */
export function freshAirFor(exhaustFlow: number, exhaustFraction: number, allowed: number): number {
  return Math.max(0, exhaustFlow * (exhaustFraction / allowed - 1));
}
