/** The pages of the validation beside the reference cases of the calculations. */
export const validationPages = [
  {
    path: '/validation/measured',
    title: 'Measured curves',
    summary: 'Pressure drops that others measured, beside every model, with plots.',
  },
  {
    path: '/validation/misprints',
    title: 'Misprints and known disagreements',
    summary: 'What a source prints, what is used instead, and why.',
  },
  { path: '/validation/units', title: 'Units', summary: 'Published conversion factors and the reference states of gas volumes.' },
  {
    path: '/validation/numerics',
    title: 'Numerical methods',
    summary: 'Certified fits, published differential equations, uncertainty examples of the GUM.',
  },
  {
    path: '/validation/estimate',
    title: 'The estimate on invented vehicles',
    summary: 'How often the hidden cause was found, and how often a stated chance came true, failures included.',
  },
] as const;
