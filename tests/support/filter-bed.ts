import {
  type AxialRegeneration,
  bai2016,
  bissettShadman1985,
  channelHeatTransfer,
  channelOxygenTransfer,
  type FeedPoint,
  squareCellFiltrationArea,
} from '@wallflow/exhaust';
import fc from 'fast-check';

export interface BedChoice {
  readonly volume: number;
  readonly length: number;
  readonly bulkDensity: number;
  readonly conductivity: number;
  readonly load: number;
  readonly start: number;
  readonly fast: boolean;
  readonly monoxide: number;
  /** Whether oxygen also diffuses to the soot; default no. */
  readonly diffusion?: boolean;
}

/** A filter of 200 cells per square inch and 12 mil as the simulations take it. */
export function regenerationOf(choice: BedChoice, feed: readonly FeedPoint[], duration: number, cells = 20): AxialRegeneration {
  const cellDensity = 200 / 0.0254 ** 2;
  const wall = 0.305e-3;
  const width = 1 / Math.sqrt(cellDensity) - wall;
  return {
    bed: {
      volume: choice.volume,
      length: choice.length,
      bulkDensity: choice.bulkDensity,
      specificHeat: 1100,
      axialConductivity: choice.conductivity,
      filtrationAreaPerVolume: squareCellFiltrationArea(cellDensity, wall),
      heatTransferCoefficient: channelHeatTransfer(0.0596, width),
      ...(choice.diffusion === true ? { oxidantTransferCoefficient: channelOxygenTransfer(width) } : {}),
    },
    combustion: {
      kinetics: choice.fast ? bissettShadman1985 : bai2016,
      heatOfCombustion: ((1 - choice.monoxide) * 393_500 + choice.monoxide * 110_500) / 0.012011,
      carbonMonoxideShare: choice.monoxide,
      gasSpecificHeat: 1110,
      gasMolarMass: 0.02896559,
    },
    soot: new Float64Array(cells).fill(choice.load),
    initialTemperature: new Float64Array(cells).fill(choice.start),
    feed,
    duration,
  };
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

export const bedChoice: fc.Arbitrary<BedChoice> = fc.record({
  volume: number(1e-3, 0.02),
  length: number(0.12, 0.3),
  bulkDensity: number(400, 900),
  conductivity: number(0, 6),
  load: number(0.5, 10),
  start: number(350, 750),
  fast: fc.boolean(),
  monoxide: number(0, 0.8),
  diffusion: fc.boolean(),
});

/** Gas of one moment, scaled to a filter volume in m³. */
export const feedState = fc.record({
  perVolume: number(2, 25),
  temperature: number(500, 930),
  oxygen: number(0.01, 0.18),
  nitrogenDioxide: number(0, 6e-4),
});
