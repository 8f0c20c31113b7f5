import { useEffect, useState } from 'react';
import type { CasePage as Page } from '../../app/casebook/casebook-store.ts';
import { createCase, listCases } from '../api/casebook.ts';
import { Link } from '../part/link.tsx';
import { go, toCasePath } from '../state/route.ts';

/** All cases. */
export function CasebookPage() {
  const [page, setPage] = useState<Page | null>(null);
  const [name, setName] = useState('');
  useEffect(() => {
    listCases(new URLSearchParams({ from: '0', count: '50' })).then(setPage, () => undefined);
  }, []);
  return (
    <main className="alone">
      <ul>
        {page?.rows.map(({ head, summary }) => (
          <li key={head.id}>
            <Link to={toCasePath(head.id, 'load')}>{summary?.name ?? head.id}</Link> {summary?.failure}
          </li>
        ))}
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void createCase(name, 'page').then((head) => go(toCasePath(head.id, 'sample')));
        }}
      >
        <input aria-label="name of the unit" value={name} onChange={(event) => setName(event.target.value)} />
        <button type="submit">Open a new case</button>
      </form>
    </main>
  );
}
