/** How an oracle writes units: the names that differ from our ids, the sign of a power and of a product. */
export interface Notation {
  readonly names: Readonly<Record<string, string>>;
  readonly power: string;
  readonly product: string;
}

function atom(text: string, { names, power, product }: Notation): string {
  if (names[text] !== undefined) return names[text];
  const [, count, name = '', exponent] = /^(\d+)?(.*?)([234])?$/.exec(text) ?? [];
  const unit = `${names[name] ?? name}${exponent === undefined ? '' : `${power}${exponent}`}`;
  return count === undefined ? unit : `(${count}${product}${unit})`;
}

/** One of our unit ids, such as `J/(kg.K)` or `L/100km`, in the notation of an oracle. */
export function expressionFor(id: string, notation: Notation): string {
  return id
    .split(/([/().])/)
    .map((part) => {
      if (part === '' || part === '1' || '/()'.includes(part)) return part;
      return part === '.' ? notation.product : atom(part, notation);
    })
    .join('');
}
