/** What every calculation with one volume flow takes it to be, and where to get it. */
const flow_in_the_middle =
  'The volume flow belongs to the pressure in the middle of the filter. With it the sum of the parts also holds for a gas that expands on its way; a flow after the filter makes the drop too high, by half the drop over the absolute pressure. The volume flow calculation gives the right one from a mass flow, the back-pressure and the drop.';

/** Assumptions of pressure drops, each written once. */
export const assumed = {
  middle: { flow_in_the_middle },
  evenFlow: { even_wall_flow: 'The gas passes the wall evenly along the channel.' },
  evenCake: { even_cake: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
  oneDensity: { one_density: 'One density, temperature and viscosity in the whole filter.' },
} as const;

/** Limits of pressure drops, each written once. */
export const limit = {
  mach: {
    mach: 'Holds up to 0.3 of the speed of sound in the channels, where gas brought to rest is 4.5 % denser. More gets a warning; the speed of sound itself is refused.',
  },
  unequalCells: {
    unequal_cells:
      'With unequal cells the wall counts as wide as the narrower channel; a two-dimensional solution passes 3 to 6 % more than that, relative to equal cells.',
  },
  threeToOne: {
    three_to_one:
      'With three inlet cells for each outlet cell the inlet cells share the flow evenly and only walls next to an outlet cell filter. By a two-dimensional solution the corner cells take only 3 to 4 % of the gas while clean: friction in the other inlet cells is then up to half as much again.',
  },
  deepBed: {
    deep_bed: 'The first 0.5 to 2 g of soot per m² of wall goes into the wall and raises the drop much more than this formula says.',
  },
  plugs: { plugs: "Friction beside the filter's own plugs is left out, as in the sources: a few per cent of the channel parts." },
  laminar: { laminar: 'Laminar channels (Reynolds number up to about 2000) and a wall Reynolds number below 2.' },
} as const;
