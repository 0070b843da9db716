declare module '@theme-original/SearchPage' {
  import type { ReactNode } from 'react';

  export default function SearchPage(): ReactNode;
}

declare module '@theme-original/SearchBar' {
  import type { ReactNode } from 'react';

  export interface Props {
    readonly handleSearchBarToggle?: (expanded: boolean) => void;
  }

  export default function SearchBar(props: Props): ReactNode;
}
