import { useEffect, useRef } from 'react';
import { KEYS_OFF } from '../state/use-keys.ts';

/** What keys do at the bench. A foot switch or a clicker sends one of them. */
export interface BenchKeys {
  /** Space: mark, or one turn. */
  readonly space: () => void;
  readonly enter: () => void;
  readonly undo: () => void;
  readonly letters: Readonly<Record<string, () => void>>;
}

const FOR_THE_FIELD = /^[\d.,<>+\-±]$/;

export function useBenchKeys(keys: BenchKeys): void {
  const now = useRef(keys);
  now.current = keys;
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const act = now.current;
      const target = event.target as HTMLElement;
      const isBig = target.matches('.big');
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z') {
        event.preventDefault();
        act.undo();
        return;
      }
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (!isBig && target.matches('input, select, textarea')) return;
      if (event.key === 'Enter') {
        if (target.matches('button, a, summary')) return; // it presses what has the focus
        event.preventDefault();
        act.enter();
        return;
      }
      if (localStorage.getItem(KEYS_OFF) !== null) return;
      const letter = act.letters[event.key.toLowerCase()];
      if (event.key === ' ') {
        event.preventDefault();
        if (!event.repeat) act.space();
      } else if (letter !== undefined && !isBig) {
        event.preventDefault();
        letter();
      } else if (!isBig && FOR_THE_FIELD.test(event.key)) document.querySelector<HTMLInputElement>('.big:not([readonly])')?.focus();
    };
    // a button that has the focus acts on the release of space: it must not, the foot switch is for marks
    const release = (event: KeyboardEvent): void => {
      const target = event.target as HTMLElement;
      if (event.key === ' ' && localStorage.getItem(KEYS_OFF) === null && target.matches('button')) event.preventDefault();
    };
    document.addEventListener('keydown', press);
    document.addEventListener('keyup', release);
    return () => {
      document.removeEventListener('keydown', press);
      document.removeEventListener('keyup', release);
    };
  }, []);
}
