import { useEffect, useRef, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { PUBLISH_WORDS } from '../../present/words/publish-words.ts';
import { go, toBenchPath, toCasePath } from '../state/route.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { CHAPTER_KEYS, KEYS_OFF } from '../state/use-keys.ts';

interface Target {
  readonly words: string;
  readonly kind: string;
  readonly key?: string;
  readonly act: () => void;
}

const MOST = 14;

/** Find anything of this case: a finding, a chapter, a field, an action with its key. */
export function FindList({ onClose, onFinding }: { onClose: () => void; onFinding: (id: string) => void }) {
  const { store, goToField } = useOpenPage();
  const { view, id } = useSnapshot();
  const [text, setText] = useState('');
  const [at, setAt] = useState(0);
  const entry = useRef<HTMLInputElement>(null);
  const before = useRef(document.activeElement as HTMLElement | null);
  useEffect(() => {
    entry.current?.focus();
    return () => before.current?.focus();
  }, []);
  const keyOf = (chapter: string): string => `g ${Object.entries(CHAPTER_KEYS).find(([, value]) => value === chapter)?.[0] ?? ''}`;
  const keysOff = localStorage.getItem(KEYS_OFF) !== null;
  const targets: Target[] = [
    ...view.chapters.map(({ id: chapter, title }) => ({
      words: title,
      kind: 'chapter',
      key: keyOf(chapter),
      act: () => go(toCasePath(id, chapter)),
    })),
    { words: CASE_PAGE.sampleAndBench, kind: 'chapter', key: keyOf('sample'), act: () => go(toCasePath(id, 'sample')) },
    { words: CASE_PAGE.photosAndFiles, kind: 'chapter', key: keyOf('files'), act: () => go(toCasePath(id, 'files')) },
    { words: CASE_PAGE.whatToMeasureNext, kind: 'chapter', key: 'n', act: () => go(toCasePath(id, 'judgement')) },
    { words: PUBLISH_WORDS.title, kind: 'chapter', key: keyOf('publish'), act: () => go(toCasePath(id, 'publish')) },
    { words: CASE_PAGE.atTheBench, kind: 'action', key: 'b', act: () => go(toBenchPath(id)) },
    { words: CASE_PAGE.undo, kind: 'action', key: 'Ctrl Z', act: () => void store.undo() },
    { words: CASE_PAGE.redo, kind: 'action', key: 'Ctrl Shift Z', act: () => void store.redo() },
    { words: CASE_PAGE.toTheCasebook, kind: 'action', act: () => go('/') },
    {
      words: keysOff ? CASE_PAGE.singleKeysTurnOn : CASE_PAGE.singleKeysTurnOff,
      kind: 'action',
      act: () => (keysOff ? localStorage.removeItem(KEYS_OFF) : localStorage.setItem(KEYS_OFF, 'off')),
    },
    ...view.rows.map((row) => ({
      words: [row.title, row.about].filter((part) => part !== '').join(', '),
      kind: row.word,
      act: () => {
        onFinding(row.id);
        if (row.fields[0] !== undefined) goToField(row.fields[0]);
      },
    })),
  ];
  const wanted = text.toLowerCase().split(/\s+/).filter(Boolean);
  const found = targets.filter(({ words, kind }) => wanted.every((word) => `${words} ${kind}`.toLowerCase().includes(word))).slice(0, MOST);
  const take = (target: Target | undefined): void => {
    if (target === undefined) return;
    onClose();
    target.act();
  };
  return (
    <div className="find" role="dialog" aria-modal="true" aria-label={CASE_PAGE.find}>
      <input
        ref={entry}
        role="combobox"
        aria-expanded="true"
        aria-controls="found"
        aria-activedescendant={`found-${at}`}
        aria-label={CASE_PAGE.findAnythingInThisCase}
        placeholder={CASE_PAGE.findingChapterAction}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setAt(0);
        }}
        onBlur={onClose}
        onKeyDown={(event) => {
          if (event.key === 'Escape') onClose();
          else if (event.key === 'Enter') take(found[at]);
          else if (event.key === 'ArrowDown') setAt(Math.min(found.length - 1, at + 1));
          else if (event.key === 'ArrowUp') setAt(Math.max(0, at - 1));
          else return;
          event.preventDefault();
        }}
      />
      <div id="found" role="listbox" aria-label={CASE_PAGE.found}>
        {found.map((target, index) => (
          <div
            key={target.words + target.kind}
            id={`found-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            onMouseDown={(event) => {
              event.preventDefault();
              take(target);
            }}
          >
            <span>{target.words}</span>
            <small>{target.kind}</small>
            {target.key !== undefined && <kbd>{target.key}</kbd>}
          </div>
        ))}
        {found.length === 0 && <p>{CASE_PAGE.nothingThatNameInThis}</p>}
      </div>
    </div>
  );
}
