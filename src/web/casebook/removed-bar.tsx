import { useEffect, useState } from 'react';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { restoreCase } from '../api/casebook.ts';
import type { ListedCase } from '../state/use-casebook.ts';
import { nameOf } from './unit-text.ts';

const STAYS_MS = 10_000;

/** A deletion is done at once and can be taken back for ten seconds, longer while the button is looked at. */
export function RemovedBar({ unit, onBack, onOver }: { unit: ListedCase; onBack: () => void; onOver: () => void }) {
  const [held, setHeld] = useState(false);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    if (held) return;
    const later = setTimeout(onOver, STAYS_MS);
    return () => clearTimeout(later);
  }, [held, onOver]);
  return (
    <div className="removed" role="status" onPointerEnter={() => setHeld(true)} onPointerLeave={() => setHeld(false)}>
      <span>{trouble === '' ? CASEBOOK_PAGE.isDeleted(nameOf(unit)) : trouble}</span>
      <button
        type="button"
        className="btn"
        onFocus={() => setHeld(true)}
        onBlur={() => setHeld(false)}
        onClick={() => restoreCase(unit.head.id).then(onBack, (error: Error) => setTrouble(error.message))}
      >
        {CASEBOOK_PAGE.undoTheDeletion}
      </button>
    </div>
  );
}
