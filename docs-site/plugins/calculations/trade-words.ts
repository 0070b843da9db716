/** What a calculation says of itself, as far as a search should find it. */
interface Described {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly keywords: readonly string[];
}

/** Where the words on the left stand in title, purpose or keywords, people also search by those on the right. */
const spoken: readonly (readonly [RegExp, readonly string[]])[] = [
  [/back[- ]?pressure|pressure drop|differential pressure/i, ['backpressure', 'back pressure', 'delta p', 'restriction']],
  [/\bair[- ]mass|mass of air|intake air/i, ['MAF', 'airflow']],
  [/manifold/i, ['MAP']],
  [/recirculat/i, ['EGR']],
  [/oxidation catalyst/i, ['DOC']],
  [/\bSCR\b|selective/i, ['SCR']],
  [/reductant|reagent|\burea\b/i, ['DEF', 'AUS 32', 'SCR']],
  [/\bregenerat/i, ['regen', 'burn-off']],
  [/smoke|opacity/i, ['smoke meter', 'opacimeter']],
];

const filterWords = /particulate filter|\bfilter\b|\bsoot (load|mass)|\bregenerat/i;
const sensorTests = /^(sensor-|hose-swap)/;

/** Abbreviations and other spellings of the trade by which a calculation should be found. */
export function tradeWords(described: Described): string[] {
  const text = [described.title, described.purpose, ...described.keywords].join('\n');
  const words = spoken.flatMap(([said, others]) => (said.test(text) ? others : []));
  if (filterWords.test(described.title)) words.unshift('DPF');
  if (sensorTests.test(described.id)) words.push('sensor stuck', 'sensor dead', 'DPF sensor', 'dP sensor');
  const known = new Set(described.keywords.map((keyword) => keyword.toLowerCase()));
  return [...new Set(words)].filter((word) => !known.has(word.toLowerCase()));
}
