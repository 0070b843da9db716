/** The parts of the field in the order of the job, as pages group them. */
export interface SubjectText {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
}

export const subjects: readonly SubjectText[] = [
  { id: 'gas', title: 'Exhaust gas', summary: 'Density, viscosity and composition of the gas that flows through everything else.' },
  { id: 'flow', title: 'Flow', summary: 'How much exhaust the engine makes, and how fast it moves.' },
  { id: 'filter', title: 'Particulate filter', summary: 'Geometry, pressure drop and resistance: is the filter really blocked?' },
  { id: 'soot', title: 'Soot and ash', summary: 'How much is in the filter, and which of it burns.' },
  { id: 'regeneration', title: 'Regeneration', summary: 'Burning soot off: when it may be done, how fast it goes, how hot it gets.' },
  { id: 'reductant', title: 'Reductant and NOx', summary: 'Dosing, conversion and what the sensors should read.' },
  { id: 'smoke', title: 'Smoke and particles', summary: 'Opacity, absorption and particle number before and after.' },
  { id: 'cleaning', title: 'Cleaning', summary: 'Mixes, volumes, dwell and drying.' },
  { id: 'workshop', title: 'Workshop', summary: 'Readings, comparison at equal flow, verdict and proof.' },
];

/** Words for a subject; the id itself for one that has none yet. */
export function subjectTitle(id: string): string {
  return subjects.find((subject) => subject.id === id)?.title ?? id;
}
