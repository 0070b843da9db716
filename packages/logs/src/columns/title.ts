/** A column's title cut into a name and the text of a unit, and where the unit stood. */
export interface TitleParts {
  readonly name: string;
  readonly unit?: string;
  readonly where?: 'square brackets' | 'round brackets' | 'after a comma' | 'after a slash' | 'last word';
}

const longestTitle = 300;
const brackets = /^(.*?)\s*([[({<])\s*([^[\](){}<>]*)\s*[\])}>]\s*(.*)$/s;

/**
 * All ways in which a title can be cut, the likeliest first. Whether what stands in the brackets is a unit is not known here:
 * `Temperature (before filter) [°C]` has two pairs.
 */
export function titleCuts(title: string): readonly TitleParts[] {
  const plain = title.slice(0, longestTitle).replace(/\s+/g, ' ').trim();
  const cuts: TitleParts[] = [];
  const pairs = [...plain.matchAll(/[[({<]\s*((?:[^[\](){}<>]|\([^()]*\))*)\s*[\])}>]/g)].reverse();
  for (const pair of pairs) {
    const name = `${plain.slice(0, pair.index)} ${plain.slice(pair.index + pair[0].length)}`.trim();
    if (name !== '')
      cuts.push({ name, unit: (pair[1] ?? '').trim(), where: pair[0].startsWith('(') ? 'round brackets' : 'square brackets' });
  }
  const comma = /^(.+),\s*([^,]{1,20})$/.exec(plain);
  if (comma?.[1] !== undefined && comma[2] !== undefined) cuts.push({ name: comma[1], unit: comma[2], where: 'after a comma' });
  const slash = /^(.+?)\s+(?:\/|in)\s+(\S{1,20})$/.exec(plain);
  if (slash?.[1] !== undefined && slash[2] !== undefined) cuts.push({ name: slash[1], unit: slash[2], where: 'after a slash' });
  const last = /^(.+)[\s_]+(\S{1,12})$/.exec(plain);
  if (last?.[1] !== undefined && last[2] !== undefined)
    cuts.push({ name: last[1].replace(/[_-]$/, ''), unit: last[2], where: 'last word' });
  cuts.push({ name: plain });
  return cuts;
}

/** Whether a title has a unit in brackets at all, so that one that is not understood is asked for by name. */
export function bracketUnit(title: string): string | undefined {
  return brackets.exec(title.slice(0, longestTitle))?.[3]?.trim();
}
