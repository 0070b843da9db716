import { kinds as energy } from './energy.mjs';
import { kinds as flow } from './flow.mjs';
import { kinds as geometry } from './geometry.mjs';
import { kinds as mechanics } from './mechanics.mjs';
import { kinds as substance } from './substance.mjs';

export { sources } from './sources.mjs';
export const kinds = { ...geometry, ...mechanics, ...energy, ...flow, ...substance };
