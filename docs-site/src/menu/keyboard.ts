// The menu of a narrow screen lies over the page: the focus goes into it, stays in it, and Escape closes it.

const reachable = 'a[href], button:not(:disabled), input:not(:disabled), [tabindex="0"]';

function openMenu(): HTMLElement | undefined {
  return document.querySelector<HTMLElement>('.navbar-sidebar--show .navbar-sidebar') ?? undefined;
}

function stops(menu: HTMLElement): HTMLElement[] {
  return [...menu.querySelectorAll<HTMLElement>(reachable)].filter(
    (element) => element.closest('[inert]') === null && element.getClientRects().length > 0,
  );
}

function keepInside(menu: HTMLElement, event: KeyboardEvent): void {
  const inside = stops(menu);
  const at = inside.indexOf(document.activeElement as HTMLElement);
  const next = event.shiftKey ? at - 1 : at + 1;
  if (at >= 0 && next >= 0 && next < inside.length) return;
  event.preventDefault();
  (event.shiftKey ? inside.at(-1) : inside[0])?.focus();
}

if (typeof document !== 'undefined') {
  document.addEventListener('keydown', (event) => {
    const menu = openMenu();
    if (menu === undefined) return;
    if (event.key === 'Tab') keepInside(menu, event);
    if (event.key !== 'Escape') return;
    menu.querySelector<HTMLElement>('.navbar-sidebar__close')?.click();
    document.querySelector<HTMLElement>('.navbar__toggle')?.focus();
  });
}

export {};
