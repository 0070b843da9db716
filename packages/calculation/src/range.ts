/** Both ends of a range as texts with units. */
interface Range {
  readonly min: string;
  readonly max: string;
  readonly minInclusive: boolean;
  readonly maxInclusive: boolean;
}

const number = '[-+−]?\\d+(?:\\.\\d+)?(?:e[-+]?\\d+)?';
const pattern = new RegExp(`^\\s*(${number})\\s*([^<]*?)\\s*(<=?)\\s*\\w+\\s*(<=?)\\s*(${number})\\s*(.*?)\\s*$`);

/** Read `0 < x <= 10000 m3/h`; a unit after the first number only where the two differ. */
export function readRange(text: string, label: string): Range {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`${label}: "${text}" is not a range such as "0 < x <= 10000 m3/h"`);
  const [, low = '', ownUnit = '', lowSign, highSign, high = '', unit = ''] = found;
  return {
    min: `${low} ${ownUnit || unit}`.trim(),
    max: `${high} ${unit}`.trim(),
    minInclusive: lowSign === '<=',
    maxInclusive: highSign === '<=',
  };
}
