import OriginalSearchBar, { type Props } from '@theme-original/SearchBar';
import { type ReactNode, useEffect, useRef } from 'react';

/**
 * The search of the plugin asks for the focus when its index has arrived, which may be after the user went on to a
 * field: the digits typed there would go into the search. Once left, it gets the focus from the user alone.
 */
function keepFromTakingFocus(input: HTMLInputElement): () => void {
  let left = false;
  let leaving: ReturnType<typeof setTimeout> | undefined;
  input.focus = (options) => {
    if (!left) return HTMLElement.prototype.focus.call(input, options);
    // The plugin has opened its list before it asks for the focus; without the focus nothing else would close it.
    input.dispatchEvent(new FocusEvent('blur'));
  };
  const onFocus = () => {
    clearTimeout(leaving);
    left = false;
  };
  // The plugin moves the input when its index has arrived, and gives the focus back at once: that is no leaving.
  const onBlur = () => {
    leaving = setTimeout(() => {
      left = true;
    });
  };
  // The shortcut of the search is the user's own wish.
  const onKey = (event: KeyboardEvent) => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') left = false;
  };
  input.addEventListener('focus', onFocus);
  input.addEventListener('blur', onBlur);
  document.addEventListener('keydown', onKey, true);
  return () => {
    input.removeEventListener('focus', onFocus);
    input.removeEventListener('blur', onBlur);
    document.removeEventListener('keydown', onKey, true);
    Reflect.deleteProperty(input, 'focus');
  };
}

/** The search in the bar above every page. */
export default function SearchBar(props: Props): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const input = box.current?.querySelector('input');
    return input == null ? undefined : keepFromTakingFocus(input);
  }, []);
  return (
    <div ref={box} className="search-box">
      <OriginalSearchBar {...props} />
    </div>
  );
}
