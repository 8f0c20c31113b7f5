import { useState } from 'react';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { archiveCase, packOf, removeCase } from '../api/casebook.ts';
import { Link } from '../part/link.tsx';
import { toCasePath } from '../state/route.ts';
import type { ListedCase } from '../state/use-casebook.ts';
import { NewUnit } from './new-unit.tsx';
import { nameOf } from './unit-text.ts';

/** What can be done with one case of the list. */
export function UnitWays({ unit, onDone, onRemoved }: { unit: ListedCase; onDone: () => void; onRemoved: (unit: ListedCase) => void }) {
  const [copying, setCopying] = useState(false);
  const [trouble, setTrouble] = useState('');
  const { id, archived } = unit.head;
  const attempt = (work: Promise<unknown>, done: () => void): void => {
    setTrouble('');
    work.then(done, (error: Error) => setTrouble(error.message));
  };
  return (
    <div className="unitways">
      <p>
        <Link className="btn solid" to={toCasePath(id, 'load')}>
          {CASEBOOK_PAGE.openTheCase}
        </Link>
        <button type="button" className="btn" aria-expanded={copying} onClick={() => setCopying(!copying)}>
          {CASEBOOK_PAGE.duplicate}
        </button>
        <button type="button" className="btn" onClick={() => attempt(archiveCase(id, archived === null), onDone)}>
          {archived === null ? CASEBOOK_PAGE.archive : CASEBOOK_PAGE.takeOutOfTheArchive}
        </button>
        <a className="btn" href={packOf(id)} download>
          {CASEBOOK_PAGE.toExport}
        </a>
        <button type="button" className="btn" onClick={() => attempt(removeCase(id), () => onRemoved(unit))}>
          {CASEBOOK_PAGE.toDelete}
        </button>
      </p>
      {copying && <NewUnit key={id} copyOf={id} name={CASEBOOK_PAGE.copy(nameOf(unit))} onClose={() => setCopying(false)} />}
      <p className="trouble" role="alert">
        {trouble}
      </p>
    </div>
  );
}
