/** Under which a rendered formula is kept. */
export function formulaKey(tex: string, display: boolean): string {
  return `${display ? 'display' : 'inline'} ${tex}`;
}
