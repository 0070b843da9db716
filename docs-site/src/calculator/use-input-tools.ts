import { useEffect, useState } from 'react';

export type InputTools = typeof import('./input-tools.js');

/** The tools of the form once they are loaded. */
export function useInputTools(onFailure: () => void): InputTools | undefined {
  const [tools, setTools] = useState<InputTools>();
  useEffect(() => {
    let wanted = true;
    import('./input-tools.js').then((loaded) => wanted && setTools(loaded)).catch(() => wanted && onFailure());
    return () => {
      wanted = false;
    };
  }, [onFailure]);
  return tools;
}
