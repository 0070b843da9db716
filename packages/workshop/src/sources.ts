import { commonPractice, type Source } from '@wallflow/calculation';

export const readingBands = commonPractice(
  'Bands of filter pressure readings at idle and at raised engine speed, light vehicles',
  'Given in the trade as raw millibar at an engine speed; written here as multiples of the clean filter at the same flow.',
);

export const backPressureCeiling: Source = {
  type: 'report',
  title: 'Recommended exhaust back-pressure limits: 20 kPa for engines of 50 to 500 kW',
  mark: 'from memory',
  note: 'Read in a secondary source only.',
};

export const equalConditions = commonPractice(
  'Before and after are compared at the same flow and temperature, or as resistance Δp/(μQ)',
  'Flow resistance free of flow and temperature follows from Darcy’s law for a laminar filter.',
);

export const acceptance = commonPractice('A clean counts when the resistance falls to 0.4 of what it was, or to 1.3 of a clean filter');

export const resetPractice = commonPractice(
  'What is reset or relearned after service, and what a wrong reset hides',
  'New filter: all counters of the filter. Cleaned off the vehicle: the measured ash, not zero. Cleaned on the vehicle: soot only after a verified regeneration, ash never. No published rule was found; the vehicle maker’s procedure comes first.',
);

export const savedBeforeClearing = commonPractice('Codes, freeze frames, counters and learned values are saved before anything is cleared');

export const safeSideOfAsh = commonPractice(
  'A cleaned filter gets its measured ash, never zero',
  'Ash set too low makes the vehicle overestimate the room for soot. A weighing shows no less than its uncertainty.',
);

export const batteryForResets = commonPractice(
  'Battery charger connected while anything is written: 12.4 V at rest, 13.5 V charging',
  'Low voltage corrupts resets.',
);

export const stayingCountdown = commonPractice(
  'A countdown ends by the vehicle’s own confirming test, not by clearing codes alone',
  'One public trade text: some systems keep it, or raise it again, after a plain clear.',
);

export const zeroPractice = commonPractice(
  'A differential pressure sensor reads zero without flow: accepted to 2 mbar, subtracted to five times that, a fault beyond',
);

export const oneResistance: Source = {
  type: 'derivation',
  title: 'Δp/(μQ) of one filter at two flows: a + bρQ/μ grows with the flow; slip lowers a at most as the mean free path grows',
  mark: 'read',
  note: 'Darcy and Forchheimer for the growth, the limit of free molecular flow for the slip.',
};
