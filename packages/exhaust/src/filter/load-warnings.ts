import type { ComputeContext, Constants } from '@wallflow/calculation';
import type { LoadedChannels } from './channel-deposits/kernel.js';
import { filtrationArea } from './filter-geometry/kernel.js';

/** End of the deep-bed range, kg per m² of filtration area: Konstandopoulos 2008, p. 45, "0.5 to 2 g/m²". */
export const deepBedRange = 2e-3;

/** Part of the channel width that soot may fill before measurements rise above the closed form: Konstandopoulos 2000, Fig. 4. */
const heavyLoad = 1 / 3;

/** Warn where measurements show that a formula with all soot in an even cake fails. */
export function warnOfLoad(loaded: LoadedChannels, sootMass: number, { warn }: Pick<ComputeContext<Constants>, 'warn'>): void {
  const { channels, widthInCake } = loaded;
  if (sootMass > 0 && sootMass / filtrationArea(channels) < deepBedRange) {
    warn(
      'deep_bed_range',
      'So little soot lies mostly in the wall (deep-bed range, below about 2 g per m² of wall). A filter that was clean before reads more than this formula says, two published heavy-duty filters up to 2.5 times as much.',
      ['sootMass'],
    );
  } else if (sootMass > 0) {
    warn(
      'deep_bed_offset',
      'Soot in the wall is not counted. A filter loaded from clean keeps reading more than this formula says: two published heavy-duty filters 1.4 to 2.5 times as much, one passenger-car filter no more than 1.2 times.',
      ['sootMass'],
    );
  }
  if (widthInCake < (1 - heavyLoad) * channels.inletWidth) {
    warn(
      'heavy_load',
      'Deposits fill more than a third of the channel width. Measured drops are up to a fifth higher than the models there.',
      ['sootMass'],
    );
  }
}
