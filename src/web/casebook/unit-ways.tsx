import { useState } from 'react';
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
          Open the case
        </Link>
        <button type="button" className="btn" aria-expanded={copying} onClick={() => setCopying(!copying)}>
          Duplicate
        </button>
        <button type="button" className="btn" onClick={() => attempt(archiveCase(id, archived === null), onDone)}>
          {archived === null ? 'Archive' : 'Take out of the archive'}
        </button>
        <a className="btn" href={packOf(id)} download>
          Export
        </a>
        <button type="button" className="btn" onClick={() => attempt(removeCase(id), () => onRemoved(unit))}>
          Delete
        </button>
      </p>
      {copying && <NewUnit key={id} copyOf={id} name={`${nameOf(unit)}, copy`} onClose={() => setCopying(false)} />}
      <p className="trouble" role="alert">
        {trouble}
      </p>
    </div>
  );
}
