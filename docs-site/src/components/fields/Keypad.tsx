import { createContext, type ReactNode, useContext, useState } from 'react';
import styles from './fields.module.css';

type InputMode = 'decimal' | 'text';

interface Keypad {
  readonly inputMode: InputMode;
  choose(mode: InputMode): void;
}

const KeypadContext = createContext<Keypad>({ inputMode: 'decimal', choose: () => undefined });

export function useKeypad(): Keypad {
  return useContext(KeypadContext);
}

export function KeypadProvider({ children }: { readonly children: ReactNode }): ReactNode {
  const [inputMode, choose] = useState<InputMode>('decimal');
  return <KeypadContext.Provider value={{ inputMode, choose }}>{children}</KeypadContext.Provider>;
}

/** On a touch screen: digits come up first; letters, signs and ± one tap away. */
export function KeypadSwitch(): ReactNode {
  const { inputMode, choose } = useKeypad();
  const letters = inputMode === 'text';
  return (
    <button type="button" className={styles.keypad} aria-pressed={letters} onClick={() => choose(letters ? 'decimal' : 'text')}>
      Full keyboard (for units or ±)
    </button>
  );
}
