import { formula, quantityOutput, rows, tableOutput } from '@wallflow/calculation';
import { length, mass, ratio, reactionRate, time } from '@wallflow/units';
import { sootBalance } from '../balance/kernel.js';
import { wholeFilterBalance } from '../sources.js';
import { type DrivingStretch, drivePattern, patternMap } from './kernel.js';

const grams = (symbol: string, label: string) => quantityOutput(mass, { symbol, label, digits: 4, units: ['g'] });

/** How one pass of a pattern changes the soot: a share of it stays, and what comes in on the way is added. */
export const passWorking = {
  intermediates: {
    stretches: tableOutput({
      label: 'Stretches of the pattern',
      columns: {
        burnRate: quantityOutput(reactionRate, { symbol: 'k', label: 'Rate of burning', digits: 4, units: ['1/h', '1/s'] }),
        kept: quantityOutput(ratio, { symbol: 'q', label: 'Share of the soot that stays', digits: 5 }),
        added: grams('a', 'Soot added and not burnt'),
        fromEmpty: grams('m_e', 'Soot at its end, from an empty filter'),
      },
    }),
    patternDuration: quantityOutput(time, { symbol: 't_p', label: 'Duration of one pattern', digits: 4, units: ['min', 'h'] }),
    patternDistance: quantityOutput(length, { symbol: 'd_p', label: 'Distance of one pattern', digits: 4, units: ['km', 'mi'] }),
    patternKept: quantityOutput(ratio, { symbol: 'Q', label: 'Share of the soot that one pattern leaves', digits: 5 }),
    patternGain: grams('G', 'Soot that one pattern leaves in an empty filter'),
  },
  steps: [
    rows(
      'stretches',
      {
        kept: 'exp(-burnRate * pattern.duration)',
        added: {
          'burnRate * pattern.duration < 0.0001':
            'pattern.sootFlow * pattern.duration * (1 - burnRate * pattern.duration / 2 + (burnRate * pattern.duration) ^ 2 / 6)',
          otherwise: 'pattern.sootFlow * (1 - exp(-burnRate * pattern.duration)) / burnRate',
        },
        fromEmpty: { 'row == 1': 'added', otherwise: 'previous.fromEmpty * kept + added' },
      },
      wholeFilterBalance,
      undefined,
      'The rate of burning is that of the chosen law at the temperature and gas of the stretch.',
    ),
    formula('patternDuration', 'sum(pattern.duration)'),
    formula('patternDistance', 'sum(pattern.duration * pattern.speed)'),
    formula('patternKept', 'exp(-sum(stretches.burnRate * pattern.duration))', wholeFilterBalance),
    formula('patternGain', 'last(stretches.fromEmpty)', wholeFilterBalance),
  ],
} as const;

/** The same in numbers. */
export function passValues(pattern: readonly DrivingStretch[]) {
  const { keep, add, duration, distance } = patternMap(pattern);
  const states = drivePattern(pattern, { time: 0, distance: 0, mass: 0 });
  return {
    stretches: pattern.map((stretch, index) => ({
      burnRate: stretch.rate,
      kept: Math.exp(-stretch.rate * stretch.duration),
      added: sootBalance({ initialMass: 0, ...stretch }).finalMass,
      fromEmpty: states[index + 1]?.mass ?? 0,
    })),
    patternDuration: duration,
    patternDistance: distance,
    patternKept: keep,
    patternGain: add,
  };
}
