/** Functions of numbers that a formula may use, with their names in TeX. */
const plain: Readonly<Record<string, { readonly tex: string; of(...values: number[]): number }>> = {
  sqrt: { tex: '\\sqrt', of: (x = Number.NaN) => Math.sqrt(x) },
  exp: { tex: '\\exp', of: (x = Number.NaN) => Math.exp(x) },
  ln: { tex: '\\ln', of: (x = Number.NaN) => Math.log(x) },
  log: { tex: '\\lg', of: (x = Number.NaN) => Math.log10(x) },
  abs: { tex: '\\left|', of: (x = Number.NaN) => Math.abs(x) },
  sin: { tex: '\\sin', of: (x = Number.NaN) => Math.sin(x) },
  cos: { tex: '\\cos', of: (x = Number.NaN) => Math.cos(x) },
  tan: { tex: '\\tan', of: (x = Number.NaN) => Math.tan(x) },
  asin: { tex: '\\arcsin', of: (x = Number.NaN) => Math.asin(x) },
  acos: { tex: '\\arccos', of: (x = Number.NaN) => Math.acos(x) },
  atan: { tex: '\\arctan', of: (x = Number.NaN) => Math.atan(x) },
  sinh: { tex: '\\sinh', of: (x = Number.NaN) => Math.sinh(x) },
  cosh: { tex: '\\cosh', of: (x = Number.NaN) => Math.cosh(x) },
  tanh: { tex: '\\tanh', of: (x = Number.NaN) => Math.tanh(x) },
  floor: { tex: '\\lfloor', of: (x = Number.NaN) => Math.floor(x) },
  ceil: { tex: '\\lceil', of: (x = Number.NaN) => Math.ceil(x) },
  round: { tex: '\\operatorname{round}', of: (x = Number.NaN) => Math.round(x) },
  cbrt: { tex: '\\sqrt[3]', of: (x = Number.NaN) => Math.cbrt(x) },
};

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
const average = (values: readonly number[]) => total(values) / values.length;

/** Functions of many numbers: of a column, or of several arguments. */
const many: Readonly<Record<string, (values: readonly number[]) => number>> = {
  sum: total,
  mean: average,
  /** Standard deviation of a sample, with n − 1. */
  deviation: (values) => {
    const middle = average(values);
    return Math.sqrt(total(values.map((value) => (value - middle) ** 2)) / (values.length - 1));
  },
  min: (values) => Math.min(...values),
  max: (values) => Math.max(...values),
  count: (values) => values.length,
  first: (values) => values[0] ?? Number.NaN,
  last: (values) => values.at(-1) ?? Number.NaN,
};

/** `where(x, condition)` keeps the rows in which a condition holds, `in(x, 'g/mol')` is the number in a unit, `as(n, 'uPa.s')` the quantity of a number in a unit, `known(x)` whether x is given. */
const special = new Set(['in', 'as', 'known', 'where']);

export function isFunctionName(name: string): boolean {
  return Object.hasOwn(plain, name) || Object.hasOwn(many, name) || special.has(name);
}

export function functionOf(name: string): ((...values: number[]) => number) | undefined {
  return Object.hasOwn(plain, name) ? plain[name]?.of : undefined;
}

export function texOf(name: string): string {
  return plain[name]?.tex ?? `\\operatorname{${name}}`;
}

export function columnFunction(name: string): ((values: readonly number[]) => number) | undefined {
  return Object.hasOwn(many, name) ? many[name] : undefined;
}
