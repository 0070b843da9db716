import fc from 'fast-check';

/** A number between the limits; no NaN, no negative zero. */
export const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);

/** A power of ten with an exponent between the limits: each size is as likely. */
export const logUniform = (from: number, to: number) => finite(from, to).map((exponent) => 10 ** exponent);
