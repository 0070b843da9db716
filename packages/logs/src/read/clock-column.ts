import { type Moment, readDay, readMoment } from '../text/moment.js';

const secondsOfDay = 86_400;

/**
 * Seconds since the first row from a column of clocks. A clock without a day that jumps back by more than half a day has
 * passed midnight. Where day and month can be read in two ways, the reading that goes on from the last day counts.
 */
export class ClockColumn {
  readonly #minutes: boolean;
  #base: number | undefined;
  #last = Number.NaN;
  #days = 0;
  #lastDay: number | undefined;
  /** The first moment as it stood there. */
  begins: string | undefined;

  constructor(minutes: boolean) {
    this.#minutes = minutes;
  }

  /** Seconds since the first row; NaN where the text is no moment. */
  read(text: string, dayText: string | undefined): number {
    const moment = readMoment(text);
    if (moment === undefined) return Number.NaN;
    const clock = moment.twoParts === true && !this.#minutes ? moment.clock * 60 : moment.clock;
    const day = dayText === undefined ? moment : readDay(dayText);
    const whole =
      day?.day === undefined
        ? this.#withoutDay(clock)
        : this.#day(day as Pick<Moment, 'otherDay'> & { day: number }) * secondsOfDay + clock;
    if (this.#base === undefined) {
      this.#base = whole;
      this.begins = dayText === undefined ? text : `${dayText} ${text}`;
    }
    // Kept to a microsecond: the difference of two large numbers has digits that nobody wrote.
    return Math.round((whole - this.#base) * 1e6) / 1e6;
  }

  #withoutDay(clock: number): number {
    const passedMidnight = clock + this.#days * secondsOfDay < this.#last - secondsOfDay / 2;
    if (passedMidnight) this.#days += 1;
    const whole = clock + this.#days * secondsOfDay;
    this.#last = whole;
    return whole;
  }

  #day({ day, otherDay }: { day: number; otherDay?: number }): number {
    const last = this.#lastDay;
    const goesOn = (candidate: number) => (last === undefined || candidate < last ? Number.POSITIVE_INFINITY : candidate - last);
    const chosen = otherDay !== undefined && goesOn(otherDay) < goesOn(day) ? otherDay : day;
    this.#lastDay = chosen;
    return chosen;
  }
}
