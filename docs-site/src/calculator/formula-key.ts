/** Under which a rendered formula is kept. */
export function formulaKey(tex: string, display: boolean): string {
  return `${display ? 'display' : 'inline'} ${tex}`;
}

/**
 * A formula on a line of its own is set large, but still as part of the text: it then breaks at its signs where the
 * screen or the sheet is narrow, which a display formula cannot.
 */
export function styledTex(tex: string, display: boolean): string {
  return display ? `\\displaystyle ${tex}` : tex;
}
