import { useRef, useState } from 'react';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { createCase, unpackCase } from '../api/casebook.ts';
import { go, toCasePath } from '../state/route.ts';

const BY = 'page'; // who writes the first revision of a case that is opened here

/** A name is all that a new case needs; the rest is asked on its own page. */
export function NewUnit({ copyOf, name = '', onClose }: { copyOf?: string; name?: string; onClose?: () => void }) {
  const [text, setText] = useState(name);
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);
  const create = async (): Promise<void> => {
    if (text.trim() === '') return setTrouble(CASEBOOK_PAGE.caseNeedsNameToBe);
    setBusy(true);
    try {
      const { id } = await createCase(text.trim(), BY, copyOf);
      go(toCasePath(id, 'sample'));
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      setBusy(false);
    }
  };
  return (
    <form
      className="newunit"
      onSubmit={(event) => {
        event.preventDefault();
        void create();
      }}
    >
      <label>
        <span>{copyOf === undefined ? CASEBOOK_PAGE.nameOfTheUnit : CASEBOOK_PAGE.nameOfTheCopy}</span>
        <input
          // biome-ignore lint/a11y/noAutofocus: it appears because a person asked for it
          autoFocus={onClose !== undefined}
          value={text}
          onChange={(event) => {
            setText(event.target.value);
            setTrouble('');
          }}
          onKeyDown={(event) => event.key === 'Escape' && onClose?.()}
          aria-invalid={trouble !== ''}
          aria-describedby="newunit-trouble"
        />
      </label>
      <button type="submit" className="btn solid" disabled={busy}>
        {copyOf === undefined ? CASEBOOK_PAGE.openIt : CASEBOOK_PAGE.duplicate}
      </button>
      {onClose !== undefined && (
        <button type="button" className="quiet" onClick={onClose}>
          {CASEBOOK_PAGE.close}
        </button>
      )}
      <p id="newunit-trouble" className="trouble" role="alert">
        {trouble}
      </p>
    </form>
  );
}

/** A packed case by file dialog; dropping one on the page does the same. */
export function Import({ onFile, className }: { onFile: (file: File) => void; className: string }) {
  const choose = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className={className} onClick={() => choose.current?.click()}>
        {CASEBOOK_PAGE.importAPackedCase}
      </button>
      <input
        ref={choose}
        type="file"
        accept=".zip,application/zip"
        className="for-ears"
        tabIndex={-1}
        aria-label={CASEBOOK_PAGE.importAPackedCase}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file !== undefined) onFile(file);
          event.target.value = '';
        }}
      />
    </>
  );
}

/** Takes a packed case in and opens it; answers a sentence when it is refused. */
export async function takeIn(file: File): Promise<string> {
  try {
    const { id } = await unpackCase(file);
    go(toCasePath(id, 'load'));
    return '';
  } catch (error) {
    return `${file.name}: ${error instanceof Error ? error.message : String(error)}`;
  }
}
