declare module '@theme-original/SearchPage' {
  import type { ReactNode } from 'react';

  export default function SearchPage(): ReactNode;
}
