/** A system of units to show results in. */
export interface UnitSystem {
  readonly name: string;
  /** The unit for a quantity: of those offered for it, the most usual first, or of all that measure its kind. */
  unitFor(offered: readonly string[], ofKind: readonly string[]): string;
}

/** Units of the United States beside those that they stand in for; each pair measures one and the same kind of quantity. */
const customary: readonly (readonly [metric: string, customary: string])[] = [
  ['mm', 'in'],
  ['cm', 'in'],
  ['um', 'mil'],
  ['m', 'ft'],
  ['km', 'mi'],
  ['mm2', 'in2'],
  ['cm2', 'in2'],
  ['m2', 'ft2'],
  ['cm3', 'in3'],
  ['mL', 'floz_US'],
  ['L', 'gal_US'],
  ['m3', 'ft3'],
  ['kg', 'lb'],
  ['degC', 'degF'],
  ['K', 'degF'],
  ['K/s', 'degF/s'],
  ['K/min', 'degF/min'],
  ['Pa', 'psi'],
  ['hPa', 'psi'],
  ['mbar', 'psi'],
  ['kPa', 'psi'],
  ['bar', 'psi'],
  ['MPa', 'psi'],
  ['m/s', 'ft/s'],
  ['km/h', 'mph'],
  ['kg/s', 'lb/s'],
  ['kg/min', 'lb/min'],
  ['kg/h', 'lb/h'],
  ['L/s', 'ft3/min'],
  ['m3/h', 'ft3/min'],
  ['m3/min', 'ft3/min'],
  ['L/min', 'gal_US/min'],
  ['kg/m3', 'lb/ft3'],
  ['kg/L', 'lb/gal_US'],
  ['kJ', 'Btu_IT'],
  ['MJ', 'Btu_IT'],
  ['kW', 'hp_mechanical'],
  ['kJ/kg', 'Btu_IT/lb'],
  ['MJ/kg', 'Btu_IT/lb'],
  ['J/(kg.K)', 'Btu_IT/(lb.degF)'],
  ['kJ/(kg.K)', 'Btu_IT/(lb.degF)'],
  ['L/100km', 'mpg_US'],
  ['L/1000km', 'gal_US/100mi'],
  ['mg/km', 'mg/mi'],
  ['g/km', 'g/mi'],
  ['g/kWh', 'g/(hp.h)'],
  ['g/m2', 'g/ft2'],
];

const customaryOf: ReadonlyMap<string, string> = new Map(customary);
const metricOf: ReadonlyMap<string, string> = new Map([
  ...customary.map(([metric, other]) => [other, metric] as const),
  ['in', 'mm'],
  ['in2', 'mm2'],
  ['in3', 'cm3'],
  ['ft3/min', 'm3/h'],
  ['degF', 'degC'],
  ['psi', 'kPa'],
  ['Btu_IT', 'kJ'],
  ['Btu_IT/lb', 'kJ/kg'],
  ['Btu_IT/(lb.degF)', 'kJ/(kg.K)'],
]);

/** The first unit where it belongs to the system, else one that is offered and does, else its counterpart if the kind has it. */
function within(
  own: ReadonlyMap<string, string>,
  counterpart: ReadonlyMap<string, string>,
  offered: readonly string[],
  ofKind: readonly string[],
): string {
  const [first = ofKind[0] ?? ''] = offered;
  const other = counterpart.get(first);
  if (other === undefined || !ofKind.includes(other)) return first;
  return offered.find((unit) => own.has(unit)) ?? other;
}

/**
 * Units as they are usual in the United States: inches, pounds, degrees Fahrenheit, pounds per square inch. What the trade there
 * measures in metric units as well, such as grams of soot and milligrams per cubic metre, stays.
 */
export const usCustomary: UnitSystem = {
  name: 'US customary',
  unitFor: (offered, ofKind) => within(metricOf, customaryOf, offered, ofKind),
};

/** Metric units, the one of the definition where it is metric. */
export const metric: UnitSystem = {
  name: 'metric',
  unitFor: (offered, ofKind) => within(customaryOf, metricOf, offered, ofKind),
};
