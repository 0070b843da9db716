/**
 * Coefficients of the Rosenbrock–Wanner method Rodas4P2: six stages, order 4 with an embedded
 * result of order 3, stiffly accurate and L-stable, of second order even with an inexact Jacobian.
 *
 * Source: G. Steinebach, Improvement of Rosenbrock–Wanner method RODASP, in: Progress in
 * Differential-Algebraic Equations II, Springer 2020, 165–184. The form is that of Hairer and
 * Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.7 (equation 7.25), where each
 * stage needs no product with the Jacobian.
 */
export const rodas4p2 = {
  gamma: 0.25,

  /** Stage i starts from `y + Σ stateWeights[i][j] u_j`; the last row also gives the result, less `u_6`. */
  stateWeights: [
    [],
    [3],
    [0.906377755268814, -0.189707390391685],
    [3.758617027739064, 1.161741776019525, -0.849258085312803],
    [7.089566927282776, 4.573591406461604, -8.423496976860259, -0.959280113459775],
    [7.089566927282776, 4.573591406461604, -8.423496976860259, -0.959280113459775, 1],
  ],

  /** Stage i has `Σ slopeWeights[i][j] u_j / h` on its right-hand side. */
  slopeWeights: [
    [],
    [-12],
    [-6.354581592719008, 0.338972550544623],
    [-8.575016317114033, -7.606483992117508, 12.22499765012482],
    [-5.888975457523102, -8.157396617841821, 24.805546872612922, 12.790401512796979],
    [-4.408651676063871, -6.692003137674639, 24.625568527593117, 16.627521966636085, -5.714285714285718],
  ],

  /** Stage i evaluates the derivative at `t + stageTimes[i] h`. */
  stageTimes: [0, 0.75, 0.321448134013046, 0.519745732277726, 1, 1],

  /** Stage i has `timeSlopeWeights[i] h ∂f/∂t` on its right-hand side. */
  timeSlopeWeights: [0.25, -0.5, -0.189532918363016, 0.085612108792769, 0, 0],

  /** The two inner coefficients of the dense output from the first five stages. */
  denseWeights: [
    [-5.323528268423303, -10.042123754867493, 17.175254928256965, -5.079931171878093, -0.016185991706112],
    [6.984505741529879, 6.914061169603662, -0.849178943070653, 18.104410789349338, -3.516963011559032],
  ],
} as const;
