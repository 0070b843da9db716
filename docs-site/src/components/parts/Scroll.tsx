import { type ReactNode, useEffect, useRef, useState } from 'react';

interface ScrollProps {
  readonly label: string;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}

/** Something wide that scrolls by itself, so that the page never does; reachable by keyboard when it scrolls. */
export function Scroll({ label, className, children }: ScrollProps): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const measure = () => setScrolls(element.scrollWidth > element.clientWidth);
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for forms
    <div
      ref={box}
      className={className === undefined ? 'scroll' : `scroll ${className}`}
      role="group"
      aria-label={label}
      tabIndex={scrolls ? 0 : undefined}
    >
      {children}
    </div>
  );
}
