import { useCallback, useEffect, useState } from 'react';
import type { CalculationData, SuccessView } from '../data/types.js';
import { keepDraft, takeDraft } from './draft.js';
import type { Permalink } from './permalink.js';
import type { Form } from './use-form.js';
import type { InputTools } from './use-input-tools.js';

const pauseInTyping = 400;
/** Longer than any form makes one; a longer one would keep the page busy without a use. */
const longestLink = 100_000;

export interface LinkState {
  /** The link that the page was opened with. */
  readonly opened: Permalink | undefined;
  /** The address is too long to be one of ours, and was left alone. */
  readonly tooLong: boolean;
  /** A link for citing: inputs, version of the definition and the results as shown. */
  citation(result: SuccessView | undefined): string;
  /** The address of what stands in the form. */
  address(): string;
}

/** Fill the form from the address, and keep the address up to date with what is typed. */
export function usePermalink(data: CalculationData, form: Form, tools: InputTools | undefined): LinkState {
  const [opened, setOpened] = useState<Permalink>();
  const [tooLong, setTooLong] = useState(false);
  const { edited, fill, units, values } = form;

  useEffect(() => {
    if (tools === undefined) return;
    const read = (hash: string) => {
      setTooLong(hash.length > longestLink);
      const link = hash.length > longestLink ? undefined : tools.fromHash(data.inputs, hash);
      if (link === undefined) return;
      setOpened(link);
      fill(link.values, link.units);
    };
    read(takeDraft() ?? window.location.hash);
    const changed = () => read(window.location.hash);
    window.addEventListener('hashchange', changed);
    return () => window.removeEventListener('hashchange', changed);
  }, [data, tools, fill]);

  useEffect(() => {
    if (!edited || tools === undefined) return;
    const hash = () => tools.toHash(data.inputs, { version: data.version, values, units });
    const write = () => window.history.replaceState(window.history.state, '', hash());
    const timer = setTimeout(() => {
      window.removeEventListener('pagehide', leave);
      write();
    }, pauseInTyping);
    // A reload goes to the address as it was when it began, so that what was typed last needs another way.
    const leave = () => keepDraft(hash());
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      clearTimeout(timer);
    };
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

  return { opened, tooLong, citation, address };
}
