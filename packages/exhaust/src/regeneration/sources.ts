import { commonPractice, type Source } from '@wallflow/calculation';

export const permissionPractice: Source = commonPractice(
  'Conditions for a forced regeneration with the vehicle stationary',
  'Defaults that a technician may tighten; the limits of the vehicle maker replace them.',
);

export const outerBoundPractice: Source = commonPractice(
  "Outer bounds of a maker's limits",
  'What no maker goes beyond: thermostat opens near 80 °C, water boils at 120 °C under 1 bar of the cap, oil is changed at 7 % of fuel, a full 12 V battery rests at 12.7 V (all from memory).',
);

export const freeJet: Source = {
  type: 'derivation',
  title: 'Axis of a round hot free jet: excess temperature over that at the pipe = 5 · (pipe diameter · √density ratio) / distance',
  mark: 'from memory',
  note: '600 °C from a 100 mm pipe into 20 °C: nearly 190 °C at 1 m, 100 °C at 2 m.',
};

export const triana2005: Source = {
  type: 'report',
  by: 'Triana',
  title: 'Dissertation, Michigan Technological University: wall temperatures of a silicon carbide filter, as plotted by Zhong et al. 2022',
  year: 2005,
  mark: 'second-hand',
  note: '844 °C at 10 g/L with gas of 600 °C: 24 K per g/L, 60 % of what all heat would give. Three quarters are taken as the upper end of 60 ± 15 %.',
};

export const loadBandPractice: Source = commonPractice(
  'Soot load bands by substrate',
  'Silicon carbide holds about twice the heat of cordierite per litre and conducts it better, so it tolerates more soot.',
);

export const workSafeBC: Source = {
  type: 'report',
  by: 'WorkSafeBC',
  title: 'Risk advisory: explosion or fire from diesel particulate filter systems',
  mark: 'read',
};

export const estimateError2019: Source = {
  type: 'paper',
  title: 'Uncertainties in model-based DPF diagnostics using a soot sensor, Sensors 19, 3141',
  year: 2019,
  doi: '10.3390/s19143141',
  mark: 'read',
  note: 'Total error of a pressure-based on-board chain: 28 %.',
};

export const massBalanceEstimate: Source = {
  type: 'paper',
  title: 'Mass-balance soot load model validated to ±1 g/L on the engine bench and on the road',
  mark: 'read',
  note: 'Abstract only; the full bibliographic detail could not be recovered.',
};

export const inhibitReasons: Source = {
  type: 'standard',
  by: 'SAE',
  title: 'J1939-71, reasons why a regeneration is inhibited: clutch, brake, accelerator, neutral, power take-off',
  mark: 'from memory',
};

export const bissett1984: Source = {
  type: 'paper',
  by: 'Bissett',
  title: 'Mathematical model of the thermal regeneration of a wall-flow monolith diesel particulate filter, Chem. Eng. Sci. 39, 1233–1244',
  year: 1984,
  mark: 'from memory',
  note: 'Two-channel model; here with equal wall flow along the length and gas that follows at once.',
};

export const squareDuctHeat: Source = {
  type: 'book',
  by: 'Shah, London',
  title: 'Laminar Flow Forced Convection in Ducts',
  year: 1978,
  locator: 'square duct, uniform wall temperature: Nu = 2.976',
  mark: 'from memory',
};

export const airTable: Source = {
  type: 'book',
  by: 'Incropera, DeWitt',
  title: 'Fundamentals of Heat and Mass Transfer',
  locator: 'Table A.4, air at 850 K: 1110 J/(kg·K), 0.0596 W/(m·K)',
  mark: 'from memory',
};

export const carbonHeats: Source = {
  type: 'standard',
  by: 'CODATA',
  title: 'Key values for thermodynamics: enthalpies of formation of CO₂ and CO, rounded to 393.5 kJ/mol and 110.5 kJ/mol',
  year: 1989,
  mark: 'from memory',
};

export const honeycombData: Source = {
  type: 'practice',
  title: 'Thermal data of honeycombs by material',
  mark: 'from memory',
  note: 'Enter your own filter’s data where you have them.',
};

export const wrongWay2009: Source = {
  type: 'paper',
  by: 'Chen, Martirosyan, Luss',
  title: 'Wrong-Way Behavior of Soot Combustion in a Planar Diesel Particulate Filter, Ind. Eng. Chem. Res. 48, 8451–8456',
  year: 2009,
  locator: 'abstract',
  mark: 'read',
};

export const adiabaticBalance: Source = {
  type: 'derivation',
  title: 'Heat balance of bed and soot without gas: rise = load · heat of burning / (bulk density · specific heat)',
  mark: 'read',
};

export const dieselFuel: Source = {
  type: 'standard',
  by: 'CEN',
  title: 'EN 590 diesel fuel: usual lower heating value, density and carbon content within its limits',
  mark: 'from memory',
};

export const gasHeatBalance: Source = {
  type: 'derivation',
  title: 'Heat balance of a gas stream: heat = mass flow · specific heat · temperature difference · time',
  mark: 'read',
};

export const fuelPerDistance: Source = {
  type: 'derivation',
  title: 'Fuel of one regeneration spread over the distance between two',
  mark: 'read',
};

export const dilutionBalance: Source = {
  type: 'derivation',
  title: 'Mass balance of fuel in the oil: a share of every injection comes in, a share evaporates over the distance between',
  mark: 'read',
};

export const dilutionPractice: Source = commonPractice(
  'Fuel in engine oil',
  'Below 2 % without effect; the oil is changed at 4 % to 7 %, mostly 5 %; 4 % is used here as the safe end.',
);

export const catalystPractice: Source = commonPractice(
  'Oxidation catalyst in a regeneration',
  'Usual rise 100 K to 250 K; a low one points to an aged or fouled catalyst, or to fuel that does not arrive.',
);

export const watchPractice: Source = commonPractice(
  'Limits while a regeneration runs',
  'Inlet 700 °C for 10 s, 750 °C anywhere, outlet 100 K above inlet and rising, 10 K/s, drop rising for 3 min, coolant 105 °C: the safe ends of what is in use.',
);

export const qualityPractice: Source = commonPractice(
  'A finished regeneration',
  'Normal: catalyst lights off within 2 to 5 min, 550 °C to 650 °C before the filter for 10 to 20 min, drop falling, 5 min of cooling.',
);

export const semenov1928: Source = {
  type: 'paper',
  by: 'Semenov',
  title: 'Zur Theorie des Verbrennungsprozesses, Zeitschrift für Physik 48, 571–582',
  year: 1928,
  mark: 'from memory',
  note: 'A well mixed reacting body loses its steady state where the curves of heat released and removed touch. The exact form is used, not that for high energies, which is 7 % lower here.',
};

export const tripChance: Source = {
  type: 'derivation',
  title: 'Independent trials with one chance of success p: mean number until success 1/p, chance of none in n trials (1 − p)^n',
  mark: 'read',
};
