import type { Source } from '@wallflow/calculation';

export const scrDynamics2000: Source = {
  type: 'paper',
  by: 'Lietti, Nova, Tronconi, Forzatti',
  title: 'Dynamics of SCR reaction over a TiO2-supported vanadia-tungsta commercial catalyst, Catalysis Today 60, 73–82',
  year: 2000,
  mark: 'read',
  note: 'Abstract: Eley–Rideal reaction with adsorbed ammonia, non-activated adsorption, desorption energy that depends on coverage. Authors from memory.',
};

export const teachingModelSource: Source = {
  type: 'derivation',
  title: 'Teaching model of this project: structure from the literature, numbers chosen for a plausible shape, fitted to no catalyst',
  mark: 'common practice, no source',
};
