import { type ReactNode, useEffect, useState } from 'react';

/** Print the page; absent where no script runs, as the browser's own menu then serves. */
export function PrintButton(): ReactNode {
  const [ready, setReady] = useState(false);
  useEffect(() => setReady(true), []);
  if (!ready) return null;
  return (
    <button type="button" onClick={() => window.print()}>
      Print this sheet
    </button>
  );
}
