import OriginalSearchPage from '@theme-original/SearchPage';
import type { ReactNode } from 'react';
import { MainWanted } from './Layout.js';

/** The search page of the search plugin, with the landmark that it lacks. */
export default function SearchPage(): ReactNode {
  return (
    <MainWanted.Provider value={true}>
      <OriginalSearchPage />
    </MainWanted.Provider>
  );
}
