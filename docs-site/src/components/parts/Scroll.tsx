import { type ReactNode, useEffect, useRef, useState } from 'react';

interface ScrollProps {
  readonly label: string;
  readonly className?: string | undefined;
  /** For tables: the first column stays in sight. */
  readonly keepsFirst?: boolean;
  /** Say in words that there is more; for a formula the shadow is enough. */
  readonly hint?: boolean;
  readonly children: ReactNode;
}

interface Hidden {
  readonly left: boolean;
  readonly right: boolean;
}

function hiddenOf({ scrollLeft, scrollWidth, clientWidth }: HTMLElement): Hidden {
  return { left: scrollLeft > 1, right: scrollLeft + clientWidth < scrollWidth - 1 };
}

/** Something wide that scrolls by itself, so that the page never does; reachable by keyboard, and seen to go on. */
export function Scroll({ label, className, keepsFirst = false, hint = true, children }: ScrollProps): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  const [hidden, setHidden] = useState<Hidden>({ left: false, right: false });
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const measure = () => {
      const next = hiddenOf(element);
      setHidden((before) => (before.left === next.left && before.right === next.right ? before : next));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    element.addEventListener('scroll', measure, { passive: true });
    measure();
    return () => {
      observer.disconnect();
      element.removeEventListener('scroll', measure);
    };
  }, []);
  const wide = hidden.left || hidden.right;
  return (
    <div
      className={className === undefined ? 'scroll-frame' : `scroll-frame ${className}`}
      data-wide={wide || undefined}
      data-more-left={hidden.left || undefined}
      data-more-right={hidden.right || undefined}
    >
      {wide && hint ? (
        <p className="scroll-hint screen-only" aria-hidden="true">
          {hidden.right ? 'More to the right: swipe →' : '← More to the left'}
        </p>
      ) : null}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for forms */}
      <div
        ref={box}
        className={keepsFirst ? 'scroll keeps-first' : 'scroll'}
        role="group"
        aria-label={label}
        tabIndex={wide ? 0 : undefined}
      >
        {children}
      </div>
    </div>
  );
}
