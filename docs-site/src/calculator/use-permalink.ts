import { useCallback, useEffect, useState } from 'react';
import type { CalculationData, SuccessView } from '../data/types.js';
import type { Permalink } from './permalink.js';
import type { Form } from './use-form.js';
import type { InputTools } from './use-input-tools.js';

const pauseInTyping = 400;

export interface LinkState {
  /** The link that the page was opened with. */
  readonly opened: Permalink | undefined;
  /** A link for citing: inputs, version of the definition and the results as shown. */
  citation(result: SuccessView | undefined): string;
  /** The address of what stands in the form. */
  address(): string;
}

/** Fill the form from the address, and keep the address up to date with what is typed. */
export function usePermalink(data: CalculationData, form: Form, tools: InputTools | undefined): LinkState {
  const [opened, setOpened] = useState<Permalink>();
  const { edited, fill, units, values } = form;

  useEffect(() => {
    if (tools === undefined) return;
    const read = () => {
      const link = tools.fromHash(data.inputs, window.location.hash);
      if (link === undefined) return;
      setOpened(link);
      fill(link.values, link.units);
    };
    read();
    window.addEventListener('hashchange', read);
    return () => window.removeEventListener('hashchange', read);
  }, [data, tools, fill]);

  useEffect(() => {
    if (!edited || tools === undefined) return;
    const timer = setTimeout(() => {
      const hash = tools.toHash(data.inputs, { version: data.version, values, units });
      window.history.replaceState(window.history.state, '', hash);
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [data, edited, tools, units, values]);

  const citation = useCallback(
    (result: SuccessView | undefined) => {
      if (tools === undefined) return window.location.href;
      const stated = Object.fromEntries((result?.values ?? []).map((value) => [value.key, value.text]));
      const hash = tools.toHash(data.inputs, { version: data.version, values, units, stated });
      return `${window.location.origin}${window.location.pathname}${hash}`;
    },
    [data, tools, units, values],
  );

  const address = useCallback(() => {
    const hash = tools === undefined ? window.location.hash : tools.toHash(data.inputs, { version: data.version, values, units });
    return `${window.location.origin}${window.location.pathname}${hash}`;
  }, [data, tools, units, values]);

  return { opened, citation, address };
}
