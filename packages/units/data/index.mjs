import { kinds as electricity } from './electricity.mjs';
import { kinds as energy } from './energy.mjs';
import { kinds as flow } from './flow.mjs';
import { kinds as geometry } from './geometry.mjs';
import { kinds as heat } from './heat.mjs';
import { kinds as mechanics } from './mechanics.mjs';
import { kinds as money } from './money.mjs';
import { kinds as pressure } from './pressure.mjs';
import { kinds as specific } from './specific.mjs';
import { kinds as substance } from './substance.mjs';

export { sources } from './sources.mjs';
export const kinds = {
  ...geometry,
  ...mechanics,
  ...pressure,
  ...energy,
  ...heat,
  ...electricity,
  ...flow,
  ...substance,
  ...specific,
  ...money,
};
