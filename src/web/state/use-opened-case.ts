import { useEffect, useState } from 'react';
import type { FormNode } from '../../present/workspace/form.ts';
import { getForm } from '../api/casebook.ts';
import { CaseStore } from './case-store.ts';

export interface OpenedCase {
  readonly store: CaseStore | null;
  readonly form: { readonly case: FormNode; readonly reading: FormNode } | null;
  readonly trouble: string;
}

/** Opens a case with its form for as long as a page shows it. */
export function useOpenedCase(id: string): OpenedCase {
  const [opened, setOpened] = useState<OpenedCase>({ store: null, form: null, trouble: '' });
  useEffect(() => {
    let made: CaseStore | null = null;
    let left = false;
    Promise.all([CaseStore.open(id), getForm()])
      .then(([store, form]) => {
        made = store;
        if (left) store.close();
        else setOpened({ store, form, trouble: '' });
      })
      .catch((error: Error) => setOpened({ store: null, form: null, trouble: error.message }));
    return () => {
      left = true;
      made?.close();
    };
  }, [id]);
  return opened;
}
