import { mutualInformation, weightsFromLogs } from '@wallflow/numerics/sampling';
import { describe, expect, it } from 'vitest';

// Explanations are whole states of a network; their chance before is the product of the tables of what is not observed, and what
// is observed multiplies it: this is how the estimate puts starting chances, readings and trials together.

/** Chances of the states after all that was seen, by the logarithms as the estimate adds them. */
function after<State>(states: readonly State[], ...chances: ReadonlyArray<(state: State) => number>) {
  const weights = weightsFromLogs(states.map((state) => chances.reduce((sum, chance) => sum + Math.log(chance(state)), 0)));
  return (where: (state: State) => boolean) => states.reduce((sum, state, k) => sum + (where(state) ? weights[k]! : 0), 0);
}

const bools = [true, false] as const;
const odds = (probability: number, holds: boolean) => (holds ? probability : 1 - probability);

describe('evidence is put together as in published networks', () => {
  // S. L. Lauritzen and D. J. Spiegelhalter, J. R. Stat. Soc. B 50 (1988) 157–224; tables and results second-hand, as another
  // program prints them (gRain, in two tutorials that were read).
  const clinic = bools.flatMap((smoke) =>
    bools.flatMap((tub) => bools.flatMap((lung) => bools.map((bronc) => ({ smoke, tub, lung, bronc })))),
  );
  type Clinic = (typeof clinic)[number];
  const before =
    (asia: boolean) =>
    ({ smoke, tub, lung, bronc }: Clinic) =>
      0.5 * odds(asia ? 0.05 : 0.01, tub) * odds(smoke ? 0.1 : 0.01, lung) * odds(smoke ? 0.6 : 0.3, bronc);
  const dyspnoea = ({ tub, lung, bronc }: Clinic) => (tub || lung ? (bronc ? 0.9 : 0.7) : bronc ? 0.8 : 0.1);

  it('gives the printed chances of the chest clinic after a visit to Asia and dyspnoea', () => {
    const chance = after(clinic, before(true), dyspnoea);
    expect(chance(({ lung }) => lung)).toBeCloseTo(0.09952515, 8);
    expect(chance(({ bronc }) => bronc)).toBeCloseTo(0.8114021, 7);
  });

  // S. Russell and P. Norvig, Artificial Intelligence, 3rd ed., p. 523; second-hand, as tests of two programs cite it.
  it('gives the printed chance of a burglary after two calls', () => {
    const states = bools.flatMap((burglary) => bools.flatMap((earthquake) => bools.map((alarm) => ({ burglary, earthquake, alarm }))));
    const chance = after(
      states,
      ({ burglary, earthquake, alarm }) =>
        odds(0.001, burglary) * odds(0.002, earthquake) * odds(burglary ? (earthquake ? 0.95 : 0.94) : earthquake ? 0.29 : 0.001, alarm),
      ({ alarm }) => (alarm ? 0.9 : 0.05),
      ({ alarm }) => (alarm ? 0.7 : 0.01),
    );
    expect(chance(({ burglary }) => burglary)).toBeCloseTo(0.284, 3);
  });
});

describe('what a test tells is valued as published', () => {
  // J. R. Quinlan, Machine Learning 1 (1986) 81–106: 14 Saturdays, 9 of them fit for play. Counts of (fit, not fit) by outcome;
  // gains second-hand, as a page prints them to four digits.
  const tests = {
    outlook: [
      [2, 3],
      [4, 0],
      [3, 2],
    ],
    humidity: [
      [3, 4],
      [6, 1],
    ],
    wind: [
      [6, 2],
      [3, 3],
    ],
    temperature: [
      [2, 2],
      [4, 2],
      [3, 1],
    ],
  };
  const bits = (counts: readonly (readonly number[])[]) =>
    mutualInformation(
      [9 / 14, 5 / 14],
      counts.map((row) => row.map((count) => count / 14)),
    );

  it.each([
    ['outlook', 0.2467],
    ['humidity', 0.1518],
    ['wind', 0.0481],
    ['temperature', 0.0292],
  ] as const)('gives %s its printed gain', (name, gain) => {
    expect(Math.abs(bits(tests[name]) - gain)).toBeLessThan(1e-4);
  });

  it('asks in the printed order', () => {
    const order = Object.entries(tests).sort((a, b) => bits(b[1]) - bits(a[1]));
    expect(order.map(([name]) => name)).toEqual(['outlook', 'humidity', 'wind', 'temperature']);
  });

  it('is nothing for an outcome that is as likely either way, and all there is to know for a sure test', () => {
    expect(mutualInformation([0.2, 0.8], [[0.1, 0.4], [0.1, 0.4]])).toBe(0); // biome-ignore format: one outcome a row
    expect(mutualInformation([0.5, 0.5], [[0.5, 0], [0, 0.5]])).toBe(1); // biome-ignore format: one outcome a row
  });
});
