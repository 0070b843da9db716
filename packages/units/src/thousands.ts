/**
 * Units that are read in whole thousands and hardly ever to a thousandth: distances on the road and engine speeds. Elsewhere three
 * decimals are as likely, as in 0.500 L, 1.206 kg/m³ or 101.325 kPa, and the point is a decimal point.
 */
const readInThousands: ReadonlySet<string> = new Set(['km', 'mi', 'rpm']);

const groupOfThree = /^[+-]? ?[1-9]\d{0,2}\.\d{3}$/;

/**
 * Whether a point before exactly three digits could part thousands, so that "184.000 km" is 184 to one reader and 184 000 to
 * another. A comma there is ambiguous with any unit; a point only with one that is read in thousands.
 */
export function couldBeThousands(text: string, rest: string, unit: string): boolean {
  const number = rest === '' ? text : text.slice(0, text.length - rest.length).trim();
  return readInThousands.has(unit) && groupOfThree.test(number);
}

/** A number as it can be typed with a unit: with one more zero where its point could part thousands. */
export function typeableNumber(number: string, unit: string): string {
  return couldBeThousands(number, '', unit) ? `${number}0` : number;
}
