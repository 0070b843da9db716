import type { Props } from '@theme/Layout';
import OriginalLayout from '@theme-original/Layout';
import { createContext, type ReactNode, useContext } from 'react';

/** Set by pages of plugins that bring no main landmark of their own. */
export const MainWanted = createContext(false);

/** The frame of every page; where a page lacks a main landmark it is put around its content. */
export default function Layout({ children, ...props }: Props): ReactNode {
  const wanted = useContext(MainWanted);
  return <OriginalLayout {...props}>{wanted ? <main>{children}</main> : children}</OriginalLayout>;
}
