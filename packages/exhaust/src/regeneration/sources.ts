import { commonPractice, type Source } from '@wallflow/calculation';

export const permissionPractice: Source = commonPractice(
  'Conditions for a forced regeneration with the vehicle standing',
  'Defaults that a technician may tighten; the limits of the vehicle maker replace them.',
);

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
