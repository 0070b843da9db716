/** A reading with the engine running, as plain SI numbers. */
export interface SpeedReading {
  /** Engine speed, 1/s. */
  readonly engineSpeed: number;
  /** What the sensor shows, Pa. */
  readonly pressureDrop: number;
  /** Its standard uncertainty, rounding included, Pa. */
  readonly uncertainty?: number;
  /** Gas temperature at the filter, K. */
  readonly gasTemperature?: number;
  /** Air mass signal, kg/s. */
  readonly airMassFlow?: number;
}

/** A gauge in the exhaust before the filter, Pa above ambient. */
export interface BackPressureReading {
  readonly engineSpeed: number;
  readonly backPressure: number;
  readonly uncertainty?: number;
  readonly gasTemperature?: number;
  readonly airMassFlow?: number;
}

/** What may be known of the vehicle; whatever is missing is taken from typical values with their spread. */
export interface Vehicle {
  /** Engine displacement, m³. */
  readonly displacement: number;
  /** Light: cars and vans. Taken from the displacement if not given. */
  readonly duty?: 'light' | 'heavy';
  /** Distance on this filter, m. */
  readonly distance?: number;
  readonly ambientPressure?: number;
  readonly filter?: {
    readonly volume?: number;
    /** As long as it is wide, if not given. */
    readonly length?: number;
    readonly cellDensity?: number;
    readonly wallThickness?: number;
  };
  /** Whether the sensor sees the drop of the filter alone or everything behind its one tap. */
  readonly sensor?: 'across-filter' | 'one-tap';
  /** Ash left in the filter by weighing, kg. */
  readonly weighedAsh?: number;
  readonly washedRecently?: boolean;
  /** Whether something is the matter with it: a lamp, a derate, low power, smoke. Default true. */
  readonly complaint?: boolean;
  /** Why it is in the workshop, if that is known more closely. */
  readonly reason?: 'lamp' | 'low-power' | 'smoke';
  /** Distance since the last regeneration that was completed, m. */
  readonly distanceSinceRegeneration?: number;
}

/** What was seen in trials; a trial that was not made is left out. */
export interface Trials {
  readonly hoses?: 'tight' | 'leaking' | 'blocked' | 'swapped';
  readonly tailPipe?: 'clean' | 'sooty';
  /** A gauge beside the sensor, at raised speed. */
  readonly gaugeBeside?: 'agrees' | 'differs';
  /** Where most of the back-pressure is lost, by taps along the exhaust. */
  readonly backPressureLost?: 'across-filter' | 'before-filter' | 'behind-filter' | 'nowhere';
  /** Flow resistance after a completed regeneration over that before it. */
  readonly resistanceRatio?: number;
  /** Rod into inlet channels: most of them short by more than a twentieth. */
  readonly rod?: 'full-length' | 'short';
  /** Particles at idle, 1/m³. */
  readonly particleNumber?: number;
  /** Soot and ash by weighing against the filter's new weight, kg. */
  readonly weighedLoad?: number;
}

export interface EstimateInput {
  readonly vehicle: Vehicle;
  readonly readings: readonly SpeedReading[];
  /** Sensor with the engine off, Pa. */
  readonly zero?: { readonly pressureDrop: number; readonly uncertainty?: number };
  readonly backPressures?: readonly BackPressureReading[];
  readonly trials?: Trials;
  /** The control unit's own figures, kg. */
  readonly controlUnit?: { readonly sootMass?: number; readonly ashMass?: number };
}
