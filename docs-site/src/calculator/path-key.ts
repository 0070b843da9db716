type Path = readonly (string | number)[];

/**
 * A path as issues write it: `points[2].flow`. The same as `pathText` of the calculation package, which the form
 * must not load before the calculation itself.
 */
export function pathKey(path: Path): string {
  let text = '';
  for (const part of path) text += typeof part === 'number' ? `[${part}]` : text === '' ? part : `.${part}`;
  return text;
}
