/** How a language writes numbers: sign of decimals, mark of thousands. */
export interface NumberSigns {
  readonly decimal: string;
  readonly group: string;
}

/**
 * The signs that a language writes numbers with, by its tag, such as `de` or `en-GB`.
 *
 * @throws `RangeError` for what is no tag of a language
 */
export function numberSigns(locale: string): NumberSigns {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn', useGrouping: true }).formatToParts(1234567.5);
  const sign = (type: 'decimal' | 'group') => parts.find((part) => part.type === type)?.value ?? '';
  return { decimal: sign('decimal') || '.', group: sign('group') };
}

/** Fewer digits need no mark: 1234 is read at one look, and `1.234` could be a decimal number. */
const fewestToGroup = 5;

/** Numbers of a text of ours, which have a point and no marks, as another language writes them. */
export function withSigns(text: string, { decimal, group }: NumberSigns): string {
  return text.replace(/(?<![\w.])(\d+)(?:\.(\d+))?(e[-+]?\d+)?(?!\w|\.\d)/g, (_, whole: string, fraction?: string, power = '') => {
    const marked = whole.length < fewestToGroup ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, group);
    return `${marked}${fraction === undefined ? '' : `${decimal}${fraction}`}${power}`;
  });
}

/** The same within a formula in TeX, where a bare comma would part a list. */
export function texWithSigns(tex: string, { decimal }: NumberSigns): string {
  return decimal === '.' ? tex : tex.replace(/(\d)\.(\d)/g, `$1{${decimal}}$2`);
}
