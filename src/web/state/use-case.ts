import { createContext, useContext, useSyncExternalStore } from 'react';
import type { FormNode } from '../../present/workspace/form.ts';
import type { CaseSnapshot, CaseStore } from './case-store.ts';

export interface OpenPage {
  readonly store: CaseStore;
  /** Form of the case and of what goes with a single reading. */
  readonly form: { readonly case: FormNode; readonly reading: FormNode };
  readonly openOrigin: (step: string, from?: HTMLElement | null) => void;
  /** Opens a finding in the verdict column. */
  readonly showFinding: (id: string) => void;
  /** Lead to the field that decides a finding. */
  readonly goToField: (place: string) => void;
}

export const CaseContext = createContext<OpenPage | null>(null);

export function useOpenPage(): OpenPage {
  const page = useContext(CaseContext);
  if (page === null) throw new Error('a part of the case page outside of it');
  return page;
}

export function useSnapshot(): CaseSnapshot {
  const { store } = useOpenPage();
  return useSyncExternalStore(store.subscribe, store.get);
}
