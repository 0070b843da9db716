/**
 * Bring a part of the page into view and give it the focus. Not a link: a link to a place would replace the inputs in
 * the address.
 */
export function goTo(id: string): void {
  const target = document.getElementById(id);
  if (target === null) return;
  for (let folded = target.closest('details'); folded !== null; folded = folded.parentElement?.closest('details') ?? null) {
    folded.open = true;
  }
  target.scrollIntoView({ block: 'center' });
  const focusable = target.matches('input, select, textarea') ? target : target.querySelector<HTMLElement>('input, select, textarea');
  (focusable ?? target).focus({ preventScroll: true });
}
