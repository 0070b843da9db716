import type { KindName } from '@wallflow/units';

/** What a column of a log can hold: a name, the kind of its unit, and the range in which a reading makes sense. */
export interface Channel {
  /** As a person says it: `engine speed`. */
  readonly label: string;
  readonly kind: KindName;
  /** Units that tools write, the most usual first; their spelling is any that the kind reads. */
  readonly units: readonly string[];
  /**
   * The least and the greatest value that a working sensor on a working engine shows, in the first of `units`. A value
   * outside is left out of every mean.
   */
  readonly limits: readonly [least: number, greatest: number];
  /**
   * Readings, in the first of `units`, that mean an open circuit or a signal that is not there although they lie within
   * the limits, such as -40 °C.
   */
  readonly endStops?: readonly number[];
  /** The value is per working stroke, so that the unit reads `mg/stroke`. */
  readonly perStroke?: true;
  /** A count or a state that stands still for good reasons, so that a value that never moves is no fault. */
  readonly mayStand?: true;
}
