import { type ReactNode, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

interface PrintedFromProps {
  readonly title: string;
  readonly id: string;
  readonly version: string;
  /** The address that brings this very sheet back. */
  address(): string;
}

/** On paper: where the sheet comes from, when it was printed, and by which version of the definition. */
export function PrintedFrom({ title, id, version, address }: PrintedFromProps): ReactNode {
  const [printed, setPrinted] = useState<{ readonly from: string; readonly on: string }>();
  useEffect(() => {
    const note = () =>
      flushSync(() => setPrinted({ from: address(), on: new Date().toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' }) }));
    const paper = window.matchMedia('print');
    const change = () => paper.matches && note();
    window.addEventListener('beforeprint', note);
    paper.addEventListener('change', change);
    return () => {
      window.removeEventListener('beforeprint', note);
      paper.removeEventListener('change', change);
    };
  }, [address]);
  return (
    <p className="printed-from print-only">
      {title}, definition {id}, version {version}.
      {printed === undefined ? null : (
        <>
          {' '}
          Printed on {printed.on} from <span className="address">{printed.from}</span>
        </>
      )}
    </p>
  );
}
