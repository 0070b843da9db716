import type { ChannelName } from '../channels/channels.js';

/** What the words of a channel's title are, beside others that do not change its meaning. */
interface Form {
  readonly words: string;
  /** Concepts that may stand there too. */
  readonly beside?: string;
}

const engineWords = 'engine';

/**
 * The concepts that name each channel, parted by commas; several forms where people say it in several ways. A title that
 * has all of them and nothing contrary names the channel; one that has only some is a question.
 */
export const forms: Readonly<Record<Exclude<ChannelName, 'time'>, readonly Form[]>> = {
  engineSpeed: [{ words: 'rotation', beside: 'engine,speed' }, { words: 'engine,speed' }],
  vehicleSpeed: [{ words: 'vehicle,speed' }, { words: 'road speed', beside: 'vehicle,speed' }],
  airMassFlow: [
    { words: 'air mass', beside: 'flow,engine,intake,air,mass,before' },
    { words: 'air,mass,flow', beside: 'engine,intake,before' },
    { words: 'air,mass', beside: 'engine,intake,before' },
    { words: 'air,flow', beside: 'engine,intake,before' },
  ],
  airMassPerStroke: [
    { words: 'air mass,stroke', beside: 'flow,engine,intake,air,mass' },
    { words: 'air mass', beside: 'flow,engine,intake,air,mass,before' },
    { words: 'air,mass', beside: 'engine,intake,stroke,flow,before' },
  ],
  exhaustMassFlow: [
    { words: 'exhaust,mass,flow', beside: engineWords },
    { words: 'exhaust,flow', beside: engineWords },
  ],
  exhaustVolumeFlow: [
    { words: 'exhaust,volume,flow', beside: 'engine,filter' },
    { words: 'exhaust,flow', beside: engineWords },
  ],
  fuelFlow: [{ words: 'fuel,flow', beside: 'engine,volume' }],
  fuelMassFlow: [{ words: 'fuel,flow', beside: 'engine,mass' }],
  engineLoad: [{ words: 'engine,load', beside: 'share' }],
  pedalPosition: [{ words: 'pedal', beside: 'valve,share' }],
  engineTorque: [{ words: 'torque', beside: engineWords }],
  pressureDrop: [
    { words: 'filter,difference,pressure', beside: 'exhaust,across' },
    { words: 'difference,pressure', beside: 'exhaust,across' },
    { words: 'filter,difference', beside: 'across,exhaust' },
    { words: 'filter,pressure,across', beside: 'exhaust' },
    { words: 'difference', beside: '' },
  ],
  airFilterDrop: [{ words: 'air,filter,difference', beside: 'pressure,across,intake' }],
  backPressure: [
    { words: 'back-pressure', beside: 'exhaust,engine,gauge,pressure,before,filter' },
    { words: 'back,pressure', beside: 'exhaust,engine,gauge,before,filter' },
    { words: 'exhaust,pressure,gauge', beside: 'before,filter' },
    { words: 'pressure,before,filter', beside: 'exhaust,gauge' },
    { words: 'exhaust,pressure', beside: '' },
  ],
  exhaustPressure: [
    { words: 'exhaust,pressure,absolute', beside: 'before,filter' },
    { words: 'back-pressure,absolute', beside: 'exhaust,engine,pressure' },
    { words: 'pressure,before,filter', beside: 'exhaust,absolute' },
    { words: 'exhaust,pressure', beside: '' },
  ],
  manifoldPressure: [
    { words: 'manifold,pressure', beside: 'intake,absolute,before,boost' },
    { words: 'manifold', beside: 'absolute' },
    { words: 'intake,pressure', beside: 'absolute,air' },
    { words: 'before,pressure,absolute', beside: 'air,manifold' },
    { words: 'boost,pressure', beside: 'absolute' },
    { words: 'boost', beside: 'absolute' },
  ],
  boostPressure: [
    { words: 'boost,pressure', beside: 'gauge' },
    { words: 'boost', beside: 'gauge' },
  ],
  ambientPressure: [
    { words: 'barometric', beside: 'pressure,absolute,ambient,air' },
    { words: 'ambient,pressure', beside: 'air,absolute' },
    { words: 'air,pressure', beside: 'ambient,absolute' },
  ],
  ambientTemperature: [{ words: 'ambient,temperature', beside: 'air' }],
  intakeTemperature: [
    { words: 'intake,temperature', beside: 'air,manifold' },
    { words: 'intake', beside: 'air' },
    { words: 'before,air,temperature', beside: 'manifold' },
    { words: 'manifold,temperature', beside: 'air,before' },
  ],
  coolantTemperature: [
    { words: 'coolant,temperature', beside: engineWords },
    { words: 'engine,temperature', beside: '' },
    { words: 'coolant', beside: engineWords },
  ],
  oilTemperature: [{ words: 'oil,temperature', beside: engineWords }],
  fuelTemperature: [{ words: 'fuel,temperature', beside: engineWords }],
  gasTemperature: [
    { words: 'temperature,before,filter', beside: 'exhaust' },
    { words: 'exhaust temperature,before,filter', beside: 'temperature,exhaust' },
    { words: 'temperature,after,oxidation catalyst', beside: 'exhaust,catalyst' },
    { words: 'exhaust temperature,after,oxidation catalyst', beside: 'exhaust,catalyst,temperature' },
  ],
  gasTemperatureAfterFilter: [
    { words: 'temperature,after,filter', beside: 'exhaust' },
    { words: 'exhaust temperature,after,filter', beside: 'temperature,exhaust' },
  ],
  gasTemperatureBeforeTurbine: [
    { words: 'temperature,before,turbine', beside: 'exhaust' },
    { words: 'exhaust temperature,before,turbine', beside: 'temperature,exhaust' },
    { words: 'exhaust,temperature,manifold', beside: '' },
  ],
  gasTemperatureBeforeOxidationCatalyst: [
    { words: 'temperature,before,oxidation catalyst', beside: 'exhaust,catalyst' },
    { words: 'exhaust temperature,before,oxidation catalyst', beside: 'exhaust,catalyst,temperature' },
    { words: 'temperature,before,catalyst', beside: 'exhaust' },
    { words: 'exhaust temperature,before,catalyst', beside: 'exhaust,temperature' },
  ],
  gasTemperatureBeforeReductionCatalyst: [
    { words: 'temperature,before,reduction catalyst', beside: 'exhaust,catalyst' },
    { words: 'exhaust temperature,before,reduction catalyst', beside: 'exhaust,catalyst,temperature' },
    { words: 'temperature,before,catalyst', beside: 'exhaust' },
    { words: 'exhaust temperature,before,catalyst', beside: 'exhaust,temperature' },
  ],
  gasTemperatureAfterReductionCatalyst: [
    { words: 'temperature,after,reduction catalyst', beside: 'exhaust,catalyst' },
    { words: 'exhaust temperature,after,reduction catalyst', beside: 'exhaust,catalyst,temperature' },
  ],
  sootMass: [
    { words: 'soot,mass', beside: 'filter,load' },
    { words: 'soot', beside: 'filter,load' },
    { words: 'filter,load', beside: '' },
  ],
  sootLoad: [
    { words: 'soot,load', beside: 'filter,mass' },
    { words: 'soot', beside: 'filter' },
    { words: 'filter,load', beside: '' },
  ],
  sootShare: [
    { words: 'soot,load', beside: 'filter,share' },
    { words: 'soot', beside: 'filter,share' },
    { words: 'filter,load', beside: 'share' },
  ],
  ashMass: [
    { words: 'ash,mass', beside: 'filter,load' },
    { words: 'ash', beside: 'filter,load' },
  ],
  ashShare: [{ words: 'ash', beside: 'filter,share,load' }],
  distanceSinceRegeneration: [
    { words: 'distance,since,regeneration', beside: 'filter,load' },
    { words: 'distance,regeneration', beside: 'filter,after,load' },
    { words: 'since,regeneration', beside: 'filter,load' },
  ],
  timeSinceRegeneration: [
    { words: 'time,since,regeneration', beside: 'filter,load' },
    { words: 'since,regeneration', beside: 'filter,load' },
  ],
  odometer: [
    { words: 'odometer', beside: 'vehicle,distance' },
    { words: 'vehicle,distance', beside: '' },
    { words: 'distance,level', beside: 'vehicle' },
    { words: 'distance', beside: '' },
  ],
  regenerationState: [
    { words: 'regeneration,state', beside: 'filter' },
    { words: 'regeneration', beside: 'filter' },
  ],
  noxBefore: [
    { words: 'nox,before', beside: 'catalyst,reduction catalyst,exhaust,number' },
    { words: 'nox,engine,after', beside: 'number' },
    { words: 'nox', beside: 'exhaust,number' },
  ],
  noxAfter: [
    { words: 'nox,after', beside: 'catalyst,reduction catalyst,exhaust,number' },
    { words: 'nox', beside: 'exhaust,number' },
  ],
  oxygen: [{ words: 'oxygen', beside: 'exhaust,number' }],
  opacity: [
    { words: 'opacity', beside: 'exhaust,smoke' },
    { words: 'smoke', beside: '' },
  ],
  absorption: [
    { words: 'absorption', beside: 'opacity,smoke,exhaust,value' },
    { words: 'opacity', beside: 'exhaust,smoke' },
    { words: 'smoke', beside: '' },
  ],
  particleCount: [
    { words: 'filter,number', beside: '' },
    { words: 'number', beside: '' },
  ],
  recirculationValve: [
    { words: 'recirculation,valve', beside: 'exhaust,share' },
    { words: 'recirculation', beside: 'exhaust,share' },
  ],
  reductantLevel: [
    { words: 'reductant,level', beside: 'tank' },
    { words: 'reductant,tank', beside: 'level,load' },
  ],
  reductantTemperature: [{ words: 'reductant,temperature', beside: 'tank' }],
  reductantFlow: [
    { words: 'reductant,dosing', beside: 'flow,mass' },
    { words: 'reductant,flow', beside: 'mass' },
  ],
  supplyVoltage: [{ words: 'battery', beside: 'engine' }],
};
