// Generated from data/ by scripts/generate.mjs. Do not edit.

/** Ids of the units of each kind. */
export interface UnitIds {
  length:
    | 'm'
    | 'km'
    | 'dm'
    | 'cm'
    | 'mm'
    | 'um'
    | 'nm'
    | 'in'
    | 'ft'
    | 'yd'
    | 'mi'
    | 'mil';
  area:
    | 'm2'
    | 'cm2'
    | 'mm2'
    | 'in2'
    | 'ft2';
  volume:
    | 'm3'
    | 'L'
    | 'dL'
    | 'cL'
    | 'mL'
    | 'uL'
    | 'cm3'
    | 'mm3'
    | 'in3'
    | 'ft3'
    | 'gal_US'
    | 'qt_US'
    | 'pt_US'
    | 'floz_US'
    | 'gal_imp'
    | 'qt_imp'
    | 'pt_imp'
    | 'floz_imp';
  cellDensity:
    | '1/m2'
    | '1/cm2'
    | 'cpsi';
  permeability:
    | 'm2'
    | 'cm2'
    | 'um2'
    | 'darcy'
    | 'mD';
  inertialCoefficient:
    | '1/m';
  absorptionCoefficient:
    | '1/m'
    | '1/ft';
  mass:
    | 'kg'
    | 'g'
    | 'mg'
    | 'ug'
    | 't'
    | 'lb'
    | 'oz'
    | 'gr'
    | 'ton_short'
    | 'ton_long';
  time:
    | 's'
    | 'ms'
    | 'min'
    | 'h'
    | 'd'
    | 'week'
    | 'month'
    | 'year';
  density:
    | 'kg/m3'
    | 'kg/L'
    | 'g/cm3'
    | 'g/mL'
    | 'g/L'
    | 'lb/ft3'
    | 'lb/gal_US'
    | 'lb/gal_imp';
  dynamicViscosity:
    | 'Pa.s'
    | 'mPa.s'
    | 'uPa.s'
    | 'cP'
    | 'P';
  kinematicViscosity:
    | 'm2/s'
    | 'mm2/s'
    | 'cSt';
  diffusivity:
    | 'm2/s'
    | 'cm2/s'
    | 'mm2/s';
  velocity:
    | 'm/s'
    | 'km/h'
    | 'cm/s'
    | 'mm/s'
    | 'mph'
    | 'ft/s'
    | 'ft/min';
  acceleration:
    | 'm/s2'
    | 'g_n';
  rotationalSpeed:
    | 'r/s'
    | 'rpm';
  frequency:
    | 'Hz'
    | 'kHz'
    | '1/min'
    | '1/h';
  force:
    | 'N'
    | 'kN'
    | 'lbf'
    | 'kgf';
  torque:
    | 'N.m'
    | 'N.cm'
    | 'lbf.ft'
    | 'lbf.in'
    | 'kgf.m';
  absolutePressure:
    | 'Pa'
    | 'hPa'
    | 'kPa'
    | 'MPa'
    | 'mbar'
    | 'bar'
    | 'psi'
    | 'inH2O_4C'
    | 'inH2O_60F'
    | 'inH2O_conventional'
    | 'ftH2O_4C'
    | 'ftH2O_conventional'
    | 'mmH2O_conventional'
    | 'cmH2O_conventional'
    | 'mmHg_conventional'
    | 'Torr'
    | 'inHg_32F'
    | 'inHg_60F'
    | 'inHg_conventional'
    | 'atm'
    | 'at'
    | 'psia'
    | 'bara';
  gaugePressure:
    | 'Pa'
    | 'hPa'
    | 'kPa'
    | 'MPa'
    | 'mbar'
    | 'bar'
    | 'psi'
    | 'inH2O_4C'
    | 'inH2O_60F'
    | 'inH2O_conventional'
    | 'ftH2O_4C'
    | 'ftH2O_conventional'
    | 'mmH2O_conventional'
    | 'cmH2O_conventional'
    | 'mmHg_conventional'
    | 'Torr'
    | 'inHg_32F'
    | 'inHg_60F'
    | 'inHg_conventional'
    | 'atm'
    | 'at'
    | 'psig'
    | 'barg';
  differentialPressure:
    | 'Pa'
    | 'hPa'
    | 'kPa'
    | 'MPa'
    | 'mbar'
    | 'bar'
    | 'psi'
    | 'inH2O_4C'
    | 'inH2O_60F'
    | 'inH2O_conventional'
    | 'ftH2O_4C'
    | 'ftH2O_conventional'
    | 'mmH2O_conventional'
    | 'cmH2O_conventional'
    | 'mmHg_conventional'
    | 'Torr'
    | 'inHg_32F'
    | 'inHg_60F'
    | 'inHg_conventional'
    | 'atm'
    | 'at'
    | 'psid'
    | 'bard';
  pressureRate:
    | 'Pa/s'
    | 'kPa/s'
    | 'kPa/min'
    | 'mbar/s'
    | 'mbar/min'
    | 'mbar/h'
    | 'psi/min';
  pressurePerVolumeFlow:
    | 'Pa.s/m3'
    | 'Pa/(m3/h)'
    | 'mbar/(m3/h)';
  power:
    | 'W'
    | 'kW'
    | 'MW'
    | 'hp_mechanical'
    | 'hp_metric'
    | 'Btu_IT/h'
    | 'Btu_th/h';
  energy:
    | 'J'
    | 'kJ'
    | 'MJ'
    | 'GJ'
    | 'Wh'
    | 'kWh'
    | 'MWh'
    | 'hp.h'
    | 'ft.lbf'
    | 'cal_th'
    | 'cal_IT'
    | 'kcal_th'
    | 'kcal_IT'
    | 'Btu_IT'
    | 'Btu_th';
  specificEnergy:
    | 'J/kg'
    | 'J/g'
    | 'kJ/kg'
    | 'MJ/kg'
    | 'kWh/kg'
    | 'kcal_th/kg'
    | 'kcal_IT/kg'
    | 'Btu_IT/lb'
    | 'Btu_th/lb';
  molarEnergy:
    | 'J/mol'
    | 'kJ/mol'
    | 'kcal_th/mol';
  temperature:
    | 'K'
    | 'degC'
    | 'degF'
    | 'degR';
  temperatureDifference:
    | 'K'
    | 'degC'
    | 'degF';
  temperatureRate:
    | 'K/s'
    | 'K/min'
    | 'K/h'
    | 'degF/s'
    | 'degF/min';
  specificHeatCapacity:
    | 'J/(kg.K)'
    | 'kJ/(kg.K)'
    | 'Btu_IT/(lb.degF)'
    | 'Btu_th/(lb.degF)';
  molarHeatCapacity:
    | 'J/(mol.K)'
    | 'kJ/(mol.K)';
  volumetricHeatCapacity:
    | 'J/(m3.K)'
    | 'kJ/(m3.K)'
    | 'kJ/(L.K)';
  heatCapacity:
    | 'J/K'
    | 'kJ/K';
  thermalConductivity:
    | 'W/(m.K)'
    | 'mW/(m.K)';
  heatTransferCoefficient:
    | 'W/(m2.K)'
    | 'kW/(m2.K)';
  heatFlux:
    | 'W/m2'
    | 'kW/m2';
  temperatureCoefficient:
    | '1/K'
    | '%/K';
  voltage:
    | 'V'
    | 'mV';
  electricCurrent:
    | 'A'
    | 'mA';
  electricResistance:
    | 'ohm'
    | 'mohm'
    | 'kohm'
    | 'Mohm';
  volumeFlow:
    | 'm3/s'
    | 'm3/min'
    | 'm3/h'
    | 'L/s'
    | 'L/min'
    | 'L/h'
    | 'mL/s'
    | 'mL/min'
    | 'mL/h'
    | 'ft3/min'
    | 'ft3/h'
    | 'gal_US/min'
    | 'gal_imp/min';
  standardVolumeFlow:
    | 'm3/s_0C'
    | 'm3/min_0C'
    | 'm3/h_0C'
    | 'L/s_0C'
    | 'L/min_0C'
    | 'ft3/min_0C'
    | 'm3/s_15C'
    | 'm3/min_15C'
    | 'm3/h_15C'
    | 'L/s_15C'
    | 'L/min_15C'
    | 'ft3/min_15C'
    | 'm3/s_20C'
    | 'm3/min_20C'
    | 'm3/h_20C'
    | 'L/s_20C'
    | 'L/min_20C'
    | 'ft3/min_20C'
    | 'm3/s_25C'
    | 'm3/min_25C'
    | 'm3/h_25C'
    | 'L/s_25C'
    | 'L/min_25C'
    | 'ft3/min_25C'
    | 'm3/s_60F'
    | 'm3/min_60F'
    | 'm3/h_60F'
    | 'L/s_60F'
    | 'L/min_60F'
    | 'ft3/min_60F';
  massFlow:
    | 'kg/s'
    | 'kg/min'
    | 'kg/h'
    | 't/h'
    | 'g/s'
    | 'g/min'
    | 'g/h'
    | 'mg/s'
    | 'mg/min'
    | 'mg/h'
    | 'lb/s'
    | 'lb/min'
    | 'lb/h';
  molarFlow:
    | 'mol/s'
    | 'mmol/s'
    | 'mol/min'
    | 'mol/h'
    | 'kmol/h';
  spaceVelocity:
    | '1/s'
    | '1/h';
  reactionRate:
    | '1/s'
    | '1/min'
    | '1/h'
    | '%/s'
    | '%/min'
    | '%/h';
  flowResistance:
    | '1/m3'
    | '1/mm3';
  inertialFlowResistance:
    | '1/m4'
    | '1/cm4';
  massFlux:
    | 'kg/(m2.s)'
    | 'g/(m2.s)';
  amount:
    | 'mol'
    | 'mmol'
    | 'umol'
    | 'kmol';
  molarMass:
    | 'kg/mol'
    | 'g/mol';
  molarVolume:
    | 'm3/mol'
    | 'L/mol';
  molarConcentration:
    | 'mol/m3'
    | 'mol/L'
    | 'mmol/L';
  molality:
    | 'mol/kg'
    | 'mmol/kg';
  moleFraction:
    | '1'
    | '%'
    | 'permille'
    | 'ppm'
    | 'ppb'
    | 'umol/mol'
    | 'mol/mol'
    | '%vol';
  massFraction:
    | '1'
    | '%'
    | 'permille'
    | 'ppm'
    | 'g/kg'
    | 'mg/kg'
    | '%m';
  volumeFraction:
    | '1'
    | '%'
    | 'permille'
    | 'ppm'
    | 'mL/L'
    | '%vol';
  fraction:
    | '1'
    | '%'
    | 'permille'
    | 'ppm';
  ratio:
    | '1';
  refractiveIndex:
    | '1';
  dilutionRatio:
    | '1';
  massRatio:
    | '1'
    | 'g/kg'
    | 'gr/lb'
    | '%';
  massConcentration:
    | 'kg/m3'
    | 'g/L'
    | 'g/m3'
    | 'mg/m3'
    | 'ug/m3'
    | 'mg/L'
    | 'g/ft3'
    | 'g/in3';
  surfaceLoad:
    | 'kg/m2'
    | 'g/m2'
    | 'mg/cm2'
    | 'g/ft2';
  massPerDistance:
    | 'kg/m'
    | 'kg/km'
    | 'g/km'
    | 'mg/km'
    | 'g/100km'
    | 'g/1000km'
    | 'g/mi'
    | 'mg/mi';
  massPerEnergy:
    | 'kg/J'
    | 'g/MJ'
    | 'g/kWh'
    | 'mg/kWh'
    | 'g/(hp.h)'
    | 'lb/(hp.h)';
  volumePerDistance:
    | 'm3/m'
    | 'L/km'
    | 'mL/km'
    | 'L/100km'
    | 'L/1000km'
    | 'gal_US/100mi'
    | 'gal_imp/100mi'
    | 'mpg_US'
    | 'mpg_imp'
    | 'km/L';
  volumePerEnergy:
    | 'm3/J'
    | 'L/kWh'
    | 'mL/kWh';
  particleNumberConcentration:
    | '1/m3'
    | '1/cm3'
    | '1/L';
  particleNumberFlow:
    | '1/s'
    | '1/h';
  particleNumberPerDistance:
    | '1/m'
    | '1/km'
    | '1/mi';
  particleNumberPerEnergy:
    | '1/J'
    | '1/kWh';
  money:
    | '1';
}
