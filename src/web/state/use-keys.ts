import { useEffect, useRef } from 'react';

/** What single keys do on the page of a case. They can be turned off; in an entry they are letters. */
export interface Keys {
  readonly chapter: (chapter: string) => void;
  readonly find: () => void;
  readonly verdict: () => void;
  readonly next: () => void;
  readonly bench: () => void;
  readonly step: (by: number) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

export const KEYS_OFF = 'mainsworthy-keys-off';

/** After "g": the first letter of a chapter that is not taken by one before it. */
export const CHAPTER_KEYS: Readonly<Record<string, string>> = {
  s: 'sample',
  l: 'label',
  c: 'touch',
  o: 'load',
  h: 'heat',
  b: 'board',
  t: 'transformer',
  i: 'circuit',
  m: 'faults',
  p: 'files',
  j: 'judgement',
  u: 'publish',
};

const AFTER_G_MS = 1500;

export function useKeys(keys: Keys): void {
  const now = useRef(keys);
  now.current = keys;
  useEffect(() => {
    let goAt = 0;
    const press = (event: KeyboardEvent): void => {
      const act = now.current;
      const target = event.target as HTMLElement;
      const typing = target.matches('input, select, textarea, [contenteditable]');
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z') {
        event.preventDefault();
        if (event.shiftKey) act.redo();
        else act.undo();
        return;
      }
      if (typing || event.ctrlKey || event.metaKey || event.altKey || localStorage.getItem(KEYS_OFF) !== null) return;
      const chapter = CHAPTER_KEYS[event.key];
      if (Date.now() - goAt < AFTER_G_MS && chapter !== undefined) {
        goAt = 0;
        act.chapter(chapter);
      } else if (event.key === 'g') goAt = Date.now();
      else if (event.key === '/') act.find();
      else if (event.key === 'v') act.verdict();
      else if (event.key === 'n') act.next();
      else if (event.key === 'b') act.bench();
      else if (event.key === ']') act.step(1);
      else if (event.key === '[') act.step(-1);
      else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
}
