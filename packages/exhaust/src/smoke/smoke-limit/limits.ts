import type { Source } from '@wallflow/calculation';
import { californiaSmoke, directive2014, ukTestLimits } from '../sources.js';

export type SmokeRegime = 'eu' | 'uk' | 'california';

/** What the papers say of the emission class, as far as the European limits tell classes apart; Roman numerals are heavy engines. */
export const emissionClasses = {
  older: 'Euro 3 or III, or older',
  'four-or-five': 'Euro 4 or 5, IV or V, or EEV',
  six: 'Euro 6 or VI',
  unknown: 'not known',
} as const;

export type EmissionClass = keyof typeof emissionClasses;

/** One row of a table of smoke limits. A month counts from year 0: 12 · year + month − 1. */
export interface SmokeLimitRow {
  readonly regime: SmokeRegime;
  /** First month of first use (or model year) for which it holds. */
  readonly from: number;
  readonly turbocharged?: boolean;
  /** Emission classes for which it holds; left out, for any. */
  readonly classes?: readonly EmissionClass[];
  /** With a filter of the best class fitted later, whatever the year. */
  readonly retrofit?: boolean;
  /** Absorption coefficient in 1/m, or opacity as a fraction at the stack. */
  readonly absorption?: number;
  readonly opacity?: number;
  readonly text: string;
  readonly source: Source;
}

export const monthIndex = (year: number, month: number): number => 12 * year + month - 1;

/** Later rows of a regime replace earlier ones. */
export const smokeLimits: readonly SmokeLimitRow[] = [
  {
    regime: 'eu',
    from: 0,
    classes: ['older', 'unknown'],
    turbocharged: false,
    absorption: 2.5,
    text: 'without turbocharger, first used before July 2008, Euro 3 or older',
    source: directive2014,
  },
  {
    regime: 'eu',
    from: 0,
    classes: ['older', 'unknown'],
    turbocharged: true,
    absorption: 3,
    text: 'turbocharged, first used before July 2008, Euro 3 or older',
    source: directive2014,
  },
  {
    regime: 'eu',
    from: monthIndex(2005, 1),
    classes: ['unknown'],
    absorption: 1.5,
    text: 'first used from January 2005, class not known: taken as Euro 4',
    source: directive2014,
  },
  {
    regime: 'eu',
    from: monthIndex(2008, 7),
    classes: ['older', 'unknown'],
    absorption: 1.5,
    text: 'first used from July 2008',
    source: directive2014,
  },
  {
    regime: 'eu',
    from: monthIndex(2013, 1),
    classes: ['unknown'],
    absorption: 0.7,
    text: 'first used from January 2013, class not known: taken as Euro 6',
    source: directive2014,
  },
  { regime: 'eu', from: 0, classes: ['four-or-five'], absorption: 1.5, text: 'Euro 4 or 5, IV or V, or EEV', source: directive2014 },
  { regime: 'eu', from: 0, classes: ['six'], absorption: 0.7, text: 'Euro 6 or VI', source: directive2014 },
  {
    regime: 'uk',
    from: 0,
    turbocharged: false,
    absorption: 2.5,
    text: 'without turbocharger, first used before 1 July 2008',
    source: ukTestLimits,
  },
  { regime: 'uk', from: 0, turbocharged: true, absorption: 3, text: 'turbocharged, first used before 1 July 2008', source: ukTestLimits },
  { regime: 'uk', from: monthIndex(2008, 7), absorption: 1.5, text: 'first used from 1 July 2008', source: ukTestLimits },
  { regime: 'uk', from: monthIndex(2014, 1), absorption: 0.7, text: 'first used from 1 January 2014', source: ukTestLimits },
  { regime: 'california', from: 0, opacity: 0.4, text: 'model year 1990 and older', source: californiaSmoke },
  { regime: 'california', from: monthIndex(1991, 1), opacity: 0.3, text: 'model years 1991 to 1996', source: californiaSmoke },
  { regime: 'california', from: monthIndex(1997, 1), opacity: 0.2, text: 'model years 1997 to 2006', source: californiaSmoke },
  { regime: 'california', from: monthIndex(2007, 1), opacity: 0.05, text: 'model year 2007 and newer', source: californiaSmoke },
  { regime: 'california', from: 0, retrofit: true, opacity: 0.05, text: 'any year with a level 3 retrofit', source: californiaSmoke },
];

export interface SmokeLimitQuery {
  readonly regime: SmokeRegime;
  readonly month: number;
  /** Unknown counts as not turbocharged, which has the lower limit. */
  readonly turbocharged: boolean | undefined;
  readonly retrofit: boolean;
  readonly emissionClass: EmissionClass;
}

/** The row that holds for a vehicle. */
export function smokeLimitFor(
  { regime, month, turbocharged, retrofit, emissionClass }: SmokeLimitQuery,
  rows = smokeLimits,
): SmokeLimitRow | undefined {
  const fitting = rows.filter(
    (row) =>
      row.regime === regime &&
      row.from <= month &&
      (row.classes?.includes(emissionClass) ?? true) &&
      (row.turbocharged ?? turbocharged ?? false) === (turbocharged ?? false) &&
      (row.retrofit !== true || retrofit),
  );
  return retrofit ? (fitting.find((row) => row.retrofit) ?? fitting.at(-1)) : fitting.at(-1);
}
