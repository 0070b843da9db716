import definitions from '@generated/wallflow-calculations/default/definitions.js';
import type { AnyCalculation } from '@wallflow/calculation';
import { useEffect, useState } from 'react';

type Tools = typeof import('./engine.js');

export interface Engine extends Tools {
  readonly calculation: AnyCalculation;
}

export type Loading = { readonly state: 'loading' | 'failed' } | { readonly state: 'ready'; readonly engine: Engine };

/** Load the definition of one calculation and what runs it, after the page is shown. */
export function useEngine(id: string): Loading {
  const [loading, setLoading] = useState<Loading>({ state: 'loading' });
  useEffect(() => {
    let wanted = true;
    const load = definitions[id];
    if (load === undefined) return setLoading({ state: 'failed' });
    Promise.all([load(), import('./engine.js')])
      .then(([calculation, tools]) => wanted && setLoading({ state: 'ready', engine: { ...tools, calculation } }))
      .catch(() => wanted && setLoading({ state: 'failed' }));
    return () => {
      wanted = false;
    };
  }, [id]);
  return loading;
}
