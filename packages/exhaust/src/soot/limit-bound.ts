import { choice, constant, inconsistentInputs, type Refusal, type Source } from '@wallflow/calculation';
import { massConcentration } from '@wallflow/units';
import { heatBoundLoad } from '../regeneration/permission/kernel-maker-limit.js';
import { heatOfCarbonToDioxide } from '../regeneration/simulation/kernel-adiabatic.js';
import { cordieriteHoneycomb, type SubstrateProperties, siliconCarbideHoneycomb } from '../regeneration/simulation/kernel-substrate.js';
import { molarMassOfCarbon } from './oxidation/kernel.js';

const source: Source = {
  type: 'derivation',
  title: 'Soot load that, burnt at once from 600 °C with three quarters of its heat left in the filter, takes it to 900 °C',
  mark: 'from memory',
  note: 'Heat capacities of the honeycombs are from memory, the share of the heat and the temperature that damages a filter with ash in it are those of the permission for a forced regeneration.',
};

const bound = ({ bulkDensity, specificHeat }: SubstrateProperties) =>
  heatBoundLoad({
    start: 873.15,
    damage: 1173.15,
    keptShare: 0.75,
    bulkDensity,
    specificHeat,
    heatOfCombustion: heatOfCarbonToDioxide / molarMassOfCarbon,
  });

/** No limit above these can be right, whoever states it. */
export const limitBounds = {
  cordieriteBound: constant(massConcentration, bound(cordieriteHoneycomb), {
    symbol: "m'_{o,Co}",
    label: 'Cordierite: highest limit that can be right',
    source,
  }),
  siliconCarbideBound: constant(massConcentration, bound(siliconCarbideHoneycomb), {
    symbol: "m'_{o,SiC}",
    label: 'Silicon carbide: highest limit that can be right',
    source,
  }),
};

/** The material of a filter whose soot limit somebody states. */
export const limitMaterial = choice({
  label: 'Filter material',
  options: { 'silicon-carbide': 'silicon carbide', cordierite: 'cordierite', unknown: 'not known' },
  example: 'cordierite',
  default: ['unknown', 'only the limit depends on it: a load too high even for silicon carbide is refused'],
});

/** Why a soot limit cannot be right for this material; undefined where it can. */
export function limitRefusal(
  limit: number | undefined,
  key: string,
  substrate: string,
  bounds: { readonly cordieriteBound: number; readonly siliconCarbideBound: number },
): Refusal | undefined {
  const cordierite = substrate === 'cordierite';
  const most = cordierite ? bounds.cordieriteBound : bounds.siliconCarbideBound;
  if (limit === undefined || limit <= most) return undefined;
  const grams = massConcentration.in(massConcentration.si(most), 'g/L').toFixed(1);
  const reason = `above ${grams} g/L the soot burnt at once from 600 °C damages ${cordierite ? 'a cordierite filter' : 'silicon carbide too'}`;
  return inconsistentInputs(reason, [key], ['substrate']);
}
