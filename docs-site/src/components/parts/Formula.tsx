import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import { formulaKey } from '../../calculator/formula-key.js';
import { loadRenderer, type Render, renderWhileBuilding } from '../../calculator/formula-renderer.js';

interface FormulaSetting {
  readonly render: Render;
  /** Load the renderer for formulas that did not exist when the site was built. */
  prepare(): Promise<void>;
}

const Formulas = createContext<FormulaSetting>({ render: () => undefined, prepare: () => Promise.resolve() });

interface ProviderProps {
  /** Formulas rendered when the site was built. */
  readonly formulas: Readonly<Record<string, string>>;
  readonly children: ReactNode;
}

export function FormulaProvider({ formulas, children }: ProviderProps): ReactNode {
  const { baseUrl } = useDocusaurusContext().siteConfig;
  const [loaded, setLoaded] = useState<{ readonly render: Render }>();
  const prepare = useCallback(
    () =>
      loadRenderer(baseUrl).then(
        (render) => setLoaded((before) => before ?? { render }),
        // Without the renderer the numbers stand in the text beside each formula.
        () => undefined,
      ),
    [baseUrl],
  );
  const setting = useMemo(() => {
    const renderNew = loaded?.render ?? renderWhileBuilding();
    // A symbol within a text takes no room until it is known: the built page and the first one in the browser must agree on it.
    const render: Render = (tex, display) => formulas[formulaKey(tex, display)] ?? (display ? renderNew : loaded?.render)?.(tex, display);
    return { render, prepare };
  }, [formulas, loaded, prepare]);
  return <Formulas.Provider value={setting}>{children}</Formulas.Provider>;
}

/** Ask for the renderer, as when a working is opened. */
export function usePrepareFormulas(): () => Promise<void> {
  return useContext(Formulas).prepare;
}

interface FormulaProps {
  readonly tex: string | undefined;
  readonly display?: boolean;
}

/** A formula. One on a line of its own waits empty until it can be rendered; what the built page holds of it stays. */
export function Formula({ tex, display = false }: FormulaProps): ReactNode {
  const html = useContext(Formulas).render(tex ?? '', display);
  if (tex === undefined || tex === '' || (html === undefined && !display)) return null;
  const Tag = display ? 'div' : 'span';
  return <Tag className={display ? 'formula' : undefined} suppressHydrationWarning dangerouslySetInnerHTML={{ __html: html ?? '' }} />;
}
