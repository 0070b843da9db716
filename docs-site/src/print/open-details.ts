// Paper has nothing to click: folded parts are opened for printing and folded again afterwards.

if (typeof window !== 'undefined') {
  let opened: HTMLDetailsElement[] = [];
  window.addEventListener('beforeprint', () => {
    opened = [...document.querySelectorAll<HTMLDetailsElement>('main details:not([open]):not([data-nested])')];
    for (const element of opened) element.open = true;
  });
  window.addEventListener('afterprint', () => {
    for (const element of opened) element.open = false;
  });
}

export {};
