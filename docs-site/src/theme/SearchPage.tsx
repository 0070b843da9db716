import OriginalSearchPage from '@theme-original/SearchPage';
import { type ReactNode, useEffect } from 'react';
import { MainWanted } from './Layout.js';

/** The search page of the search plugin, with the landmark and the name of a list that it lacks. */
export default function SearchPage(): ReactNode {
  useEffect(() => document.getElementById('context-selector')?.setAttribute('aria-label', 'Where to search'), []);
  return (
    <MainWanted.Provider value={true}>
      <OriginalSearchPage />
    </MainWanted.Provider>
  );
}
