/** A point in time as a cell writes it: seconds of the day, and the day where there is one. */
export interface Moment {
  /** Seconds since midnight. */
  readonly clock: number;
  /** Days since 1 January 1970; undefined for a clock alone. */
  readonly day?: number;
  /** Day and month can be read in two ways; this is the day if the month comes first. */
  readonly otherDay?: number;
  /** Hours and minutes, or minutes and seconds. */
  readonly twoParts?: true;
}

const clockShape = /^(\d{1,3}):(\d{2})(?::(\d{2}))?(?:[.,:](\d{1,9}))?\s*([ap]\.?m\.?)?\s*(?:z|utc|uhr|[+-]\d{2}:?\d{2})?$/i;

/** `14:03:22.5`, `2:03:22 PM`; with two parts and a fraction minutes and seconds. */
export function readClock(text: string): Moment | undefined {
  const match = clockShape.exec(text.trim());
  if (match === null) return undefined;
  const [, first = '', second = '', third, fraction, half] = match;
  const a = Number(first);
  const b = Number(second);
  if (b > 59) return undefined;
  const part = fraction === undefined ? 0 : Number(`0.${fraction}`);
  if (third === undefined) {
    if (half !== undefined) return undefined;
    // 75:10 cannot be hours of a day, and hours have no fraction of a second.
    if (a > 23 || fraction !== undefined) return { clock: a * 60 + b + part };
    return { clock: a * 60 + b, twoParts: true };
  }
  const c = Number(third);
  if (c > 60 || (half === undefined ? false : a < 1 || a > 12)) return undefined;
  const hours = half === undefined ? a : (a % 12) + (/^p/i.test(half) ? 12 : 0);
  return { clock: hours * 3600 + b * 60 + c + part };
}

function dayOf(year: number, month: number, day: number): number | undefined {
  const full = year < 100 ? 2000 + year : year;
  const time = Date.UTC(full, month - 1, day);
  const back = new Date(time);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? time / 86_400_000 : undefined;
}

/** `2026-11-30`, `30.11.2026`, `30/11/2026`, `11/30/2026`. */
export function readDay(text: string): { day: number; otherDay?: number } | undefined {
  const plain = text.trim();
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(plain);
  if (iso !== null) {
    const day = dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
    return day === undefined ? undefined : { day };
  }
  const local = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})$/.exec(plain);
  if (local === null) return undefined;
  const [, first = '', sign, second = '', year = ''] = local;
  const dayFirst = dayOf(Number(year), Number(second), Number(first));
  if (sign === '.') return dayFirst === undefined ? undefined : { day: dayFirst };
  const monthFirst = dayOf(Number(year), Number(first), Number(second));
  if (dayFirst === undefined) return monthFirst === undefined ? undefined : { day: monthFirst };
  return monthFirst === undefined || monthFirst === dayFirst ? { day: dayFirst } : { day: dayFirst, otherDay: monthFirst };
}

/** A clock, or a day and a clock. */
export function readMoment(text: string): Moment | undefined {
  const plain = text.trim();
  const parts = /^(\S+?)[T ,;]\s*(\d.*)$/.exec(plain);
  const day = parts?.[1] === undefined ? undefined : readDay(parts[1]);
  if (parts?.[2] === undefined || day === undefined) return readClock(plain);
  const clock = readClock(parts[2]);
  return clock === undefined ? undefined : { ...clock, ...day };
}
