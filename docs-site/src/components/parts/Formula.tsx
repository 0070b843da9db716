import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';
import { formulaKey, styledTex } from '../../calculator/formula-key.js';

type Render = (tex: string, display: boolean) => string | undefined;

const Formulas = createContext<Render>(() => undefined);

interface ProviderProps {
  /** Formulas rendered when the site was built. */
  readonly formulas: Readonly<Record<string, string>>;
  /** Load the renderer for formulas that did not exist then. */
  readonly live?: boolean;
  readonly children: ReactNode;
}

export function FormulaProvider({ formulas, live = false, children }: ProviderProps): ReactNode {
  const [renderNew, setRenderNew] = useState<{ readonly render: Render }>();
  useEffect(() => {
    if (!live || renderNew !== undefined) return;
    let wanted = true;
    import('katex')
      .then(({ default: katex }) => {
        const render: Render = (tex, display) => katex.renderToString(styledTex(tex, display), { throwOnError: false });
        if (wanted) setRenderNew({ render });
      })
      // Without the renderer the numbers stand in the text beside each formula.
      .catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [live, renderNew]);
  const render: Render = (tex, display) => formulas[formulaKey(tex, display)] ?? renderNew?.render(tex, display);
  return <Formulas.Provider value={render}>{children}</Formulas.Provider>;
}

interface FormulaProps {
  readonly tex: string | undefined;
  readonly display?: boolean;
}

/** A formula; nothing where it cannot be rendered. */
export function Formula({ tex, display = false }: FormulaProps): ReactNode {
  const html = useContext(Formulas)(tex ?? '', display);
  if (tex === undefined || tex === '' || html === undefined) return null;
  const Tag = display ? 'div' : 'span';
  return <Tag className={display ? 'formula' : undefined} dangerouslySetInnerHTML={{ __html: html }} />;
}
