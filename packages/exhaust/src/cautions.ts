import type { CodedText } from '@wallflow/calculation';

/**
 * Cautions that calculations carry, so that no face of a result can be without them. They repeat no maker's
 * procedure: that procedure, local codes and licensed practice come first.
 */
export const cautions = {
  makerFirst: {
    code: 'maker_procedure_first',
    text: "The vehicle maker's procedure and limits come first; where they differ from this result, follow them.",
  },
  hotExhaust: {
    code: 'hot_exhaust',
    text: 'Exhaust parts and gas can exceed 600 °C during a regeneration: burns, and fire in grass, oil, plastics and lines nearby.',
  },
  fumes: {
    code: 'exhaust_fumes',
    text: 'Diesel exhaust is toxic and carcinogenic: work outdoors or with extraction rated for hot exhaust, with a carbon monoxide alarm.',
  },
  neverUnattended: {
    code: 'never_unattended',
    text: 'Never leave a regeneration unattended; keep a suitable extinguisher and a way to stop the engine within reach.',
  },
  runaway: {
    code: 'runaway',
    text: 'A loaded filter can burn out of control. When the bed overheats do not drop to idle: keep flow through it, unless there is fire.',
  },
  ovenFire: {
    code: 'oven_fire',
    text: "Air feeds a fire in an oven: heat off, door shut, no fresh air, let it burn out and cool slowly, extinguisher ready. The oven maker's and local fire rules come first.",
  },
  caustic: {
    code: 'caustic_fluid',
    text: 'Cleaning fluid can be caustic: goggles and face shield, gloves, apron; the safety data sheet comes first.',
  },
  pressureAndSteam: {
    code: 'pressure_and_steam',
    text: 'Liquid on hot parts flashes to steam, and pressurised fluid injects through skin: let the filter cool, keep pressures low.',
  },
  coatedFilter: {
    code: 'coated_filter',
    text: "A filter's catalyst or SCR coating can be ruined by strong alkali, acid, chloride, sodium or sulphate: ask its maker before any liquid.",
  },
  ashDust: {
    code: 'ash_dust',
    text: 'Filter ash is fine, alkaline and contains metals: particle mask of the highest class, no open blow-off, collect it as waste by local law.',
  },
  waste: {
    code: 'waste_water',
    text: 'Wash liquid is trade waste: capture it, keep it out of drains, and dispose of it by local law.',
  },
  flammableLiquid: {
    code: 'flammable_liquid',
    text: 'Alcohol mixes burn, and their vapour explodes: no flame, no spark, nothing hot; never into a warm exhaust.',
  },
  sensorFirst: {
    code: 'sensor_first',
    text: 'A wrong pressure, temperature or flow signal makes this number wrong: check zero, hoses and plausibility before acting on it.',
  },
  noDefeat: {
    code: 'no_defeat',
    text: 'Emission control must stay fitted and working; nothing here helps to remove, bypass or deceive it.',
  },
} as const satisfies Record<string, CodedText>;
