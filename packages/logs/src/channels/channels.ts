import type { Channel } from './channel.js';

// The limits are common practice, no source, as far as they are no physical bounds; they bracket what working sensors show
// on road and work engines and are wide on purpose: their use is to catch lost signals and wrong columns, not faults.
const celsius = (label: string, least: number, greatest: number): Channel => ({
  label,
  kind: 'temperature',
  units: ['degC', 'degF', 'K'],
  limits: [least, greatest],
  endStops: [-40],
});
const share = (label: string, greatest: number): Channel => ({
  label,
  kind: 'fraction',
  units: ['%'],
  limits: [0, greatest],
  mayStand: true,
});
const pressureUnits = ['mbar', 'hPa', 'kPa', 'bar', 'psi', 'inH2O_conventional'] as const;

/** Every channel that a column of a log can be, by its key. */
export const channels = {
  time: { label: 'time', kind: 'time', units: ['s', 'ms', 'min', 'h'], limits: [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] },
  engineSpeed: { label: 'engine speed', kind: 'rotationalSpeed', units: ['rpm'], limits: [0, 6000], mayStand: true },
  vehicleSpeed: { label: 'vehicle speed', kind: 'velocity', units: ['km/h', 'mph'], limits: [0, 300], mayStand: true },
  airMassFlow: { label: 'air mass flow', kind: 'massFlow', units: ['kg/h', 'g/s', 'lb/min'], limits: [0, 5000] },
  airMassPerStroke: { label: 'air mass per stroke', kind: 'mass', units: ['mg', 'g'], limits: [0, 10_000], perStroke: true },
  exhaustMassFlow: { label: 'exhaust mass flow', kind: 'massFlow', units: ['kg/h', 'g/s'], limits: [0, 6000] },
  exhaustVolumeFlow: { label: 'exhaust volume flow', kind: 'volumeFlow', units: ['m3/h', 'L/s'], limits: [0, 30_000] },
  fuelFlow: { label: 'fuel flow by volume', kind: 'volumeFlow', units: ['L/h'], limits: [0, 500] },
  fuelMassFlow: { label: 'fuel flow by mass', kind: 'massFlow', units: ['kg/h', 'g/s'], limits: [0, 500] },
  engineLoad: share('engine load', 150),
  pedalPosition: share('accelerator pedal', 100),
  engineTorque: { label: 'engine torque', kind: 'torque', units: ['N.m'], limits: [-2000, 6000], mayStand: true },
  pressureDrop: {
    label: 'pressure drop across the filter',
    kind: 'differentialPressure',
    units: pressureUnits,
    limits: [-200, 2000],
  },
  airFilterDrop: {
    label: 'pressure drop across the air filter',
    kind: 'differentialPressure',
    units: pressureUnits,
    limits: [-200, 200],
    mayStand: true,
  },
  backPressure: {
    label: 'exhaust back-pressure above ambient',
    kind: 'gaugePressure',
    units: pressureUnits,
    limits: [-200, 5000],
  },
  exhaustPressure: {
    label: 'exhaust pressure, absolute',
    kind: 'absolutePressure',
    units: pressureUnits,
    limits: [400, 6000],
  },
  manifoldPressure: {
    label: 'intake manifold pressure, absolute',
    kind: 'absolutePressure',
    units: ['hPa', 'kPa', 'mbar', 'bar', 'psi'],
    limits: [100, 6000],
  },
  boostPressure: {
    label: 'boost above ambient',
    kind: 'gaugePressure',
    units: ['hPa', 'kPa', 'mbar', 'bar', 'psi'],
    limits: [-900, 5000],
  },
  ambientPressure: {
    label: 'ambient pressure',
    kind: 'absolutePressure',
    units: ['hPa', 'kPa', 'mbar', 'bar', 'psi'],
    limits: [450, 1100],
    mayStand: true,
  },
  ambientTemperature: { ...celsius('ambient temperature', -50, 70), mayStand: true },
  intakeTemperature: { ...celsius('intake air temperature', -40, 250), mayStand: true },
  coolantTemperature: { ...celsius('coolant temperature', -40, 150), mayStand: true },
  oilTemperature: { ...celsius('oil temperature', -40, 200), mayStand: true },
  fuelTemperature: { ...celsius('fuel temperature', -40, 150), mayStand: true },
  gasTemperature: celsius('gas temperature before the filter', -40, 1000),
  gasTemperatureAfterFilter: celsius('gas temperature after the filter', -40, 1000),
  gasTemperatureBeforeTurbine: celsius('gas temperature before the turbine', -40, 1100),
  gasTemperatureBeforeOxidationCatalyst: celsius('gas temperature before the oxidation catalyst', -40, 1000),
  gasTemperatureBeforeReductionCatalyst: celsius('gas temperature before the NOx catalyst', -40, 1000),
  gasTemperatureAfterReductionCatalyst: celsius('gas temperature after the NOx catalyst', -40, 1000),
  sootMass: { label: 'soot mass of the control unit', kind: 'mass', units: ['g'], limits: [0, 1000], mayStand: true },
  sootLoad: { label: 'soot load of the control unit', kind: 'massConcentration', units: ['g/L'], limits: [0, 50], mayStand: true },
  sootShare: share('soot load of the control unit in percent', 250),
  ashMass: { label: 'ash mass of the control unit', kind: 'mass', units: ['g'], limits: [0, 2000], mayStand: true },
  ashShare: share('ash load of the control unit in percent', 250),
  distanceSinceRegeneration: {
    label: 'distance since the last regeneration',
    kind: 'length',
    units: ['km', 'mi', 'm'],
    limits: [0, 50_000],
    mayStand: true,
  },
  timeSinceRegeneration: {
    label: 'time since the last regeneration',
    kind: 'time',
    units: ['s', 'min', 'h'],
    limits: [0, 4.3e9],
    mayStand: true,
  },
  odometer: { label: 'odometer', kind: 'length', units: ['km', 'mi', 'm'], limits: [0, 5e6], mayStand: true },
  regenerationState: { label: 'regeneration running', kind: 'ratio', units: ['1'], limits: [0, 100], mayStand: true },
  noxBefore: { label: 'NOx before the catalyst', kind: 'moleFraction', units: ['ppm'], limits: [-200, 5000] },
  noxAfter: { label: 'NOx after the catalyst', kind: 'moleFraction', units: ['ppm'], limits: [-200, 5000] },
  oxygen: { label: 'oxygen in the exhaust', kind: 'moleFraction', units: ['%', 'ppm'], limits: [-1, 25] },
  opacity: { label: 'opacity', kind: 'fraction', units: ['%'], limits: [0, 100], mayStand: true },
  absorption: {
    label: 'absorption coefficient of the smoke',
    kind: 'absorptionCoefficient',
    units: ['1/m'],
    limits: [0, 20],
    mayStand: true,
  },
  particleCount: {
    label: 'particle count',
    kind: 'particleNumberConcentration',
    units: ['1/cm3'],
    limits: [0, 1e9],
    mayStand: true,
  },
  recirculationValve: share('recirculation valve', 100),
  reductantLevel: share('reductant level', 100),
  reductantTemperature: { ...celsius('reductant temperature', -40, 120), mayStand: true },
  reductantFlow: { label: 'reductant flow', kind: 'massFlow', units: ['g/h', 'mg/s', 'g/s', 'kg/h'], limits: [0, 50_000], mayStand: true },
  supplyVoltage: { label: 'supply voltage', kind: 'voltage', units: ['V', 'mV'], limits: [0, 36], mayStand: true },
} as const satisfies Record<string, Channel>;

/** Key of a channel. */
export type ChannelName = keyof typeof channels;

/** The keys of all channels. */
export const channelNames = Object.keys(channels) as ChannelName[];

/** Whether a text is the key of a channel. */
export function isChannelName(text: string): text is ChannelName {
  return Object.hasOwn(channels, text);
}

/** A channel by its key. */
export function channelOf(name: ChannelName): Channel {
  return channels[name];
}
