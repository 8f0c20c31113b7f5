import { createContext, useContext, useRef, useSyncExternalStore } from 'react';
import type { FormNode } from '../../present/workspace/form.ts';
import type { CaseSnapshot, CaseStore } from './case-store.ts';
import { sameList } from './same-list.ts';

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

/** A part of the snapshot; drawn again when it is another one, and not at every key. Lists are the same when all their items are. */
export function useChosen<T>(choose: (snapshot: CaseSnapshot) => T): T {
  const { store } = useOpenPage();
  const last = useRef<{ readonly of: CaseSnapshot; readonly chosen: T } | null>(null);
  const choosing = useRef(choose);
  if (choosing.current !== choose) {
    choosing.current = choose;
    last.current = last.current === null ? null : { of: NEVER, chosen: last.current.chosen };
  }
  return useSyncExternalStore(store.subscribe, () => {
    const now = store.get();
    if (last.current === null || last.current.of !== now) {
      const chosen = choosing.current(now);
      last.current = { of: now, chosen: last.current !== null && sameList(last.current.chosen, chosen) ? last.current.chosen : chosen };
    }
    return last.current.chosen;
  });
}

const NEVER = {} as CaseSnapshot;

/** What stands in the case, for one part of the page. */
export type Standing = Pick<CaseStore, 'valueAt' | 'draftAt' | 'set' | 'change'>;

/**
 * What stands in the case; the part that asks is drawn again when something that it asked for while it was drawn is another, and not at
 * every key.
 */
export function useStanding(): Standing {
  const { store } = useOpenPage();
  const asked = useRef<{ values: Map<string, unknown>; drafts: Map<string, unknown> }>({ values: new Map(), drafts: new Map() });
  const last = useRef<CaseSnapshot | null>(null);
  const compared = useRef<CaseSnapshot | null>(null); // looked through once for each snapshot
  useSyncExternalStore(store.subscribe, () => {
    const { values, drafts } = asked.current;
    const now = store.get();
    const same =
      last.current !== null &&
      (compared.current === now ||
        ([...values].every(([place, value]) => sameList(store.valueAt(place), value)) &&
          [...drafts].every(([place, draft]) => store.draftAt(place) === draft)));
    if (!same) last.current = now;
    compared.current = now;
    return last.current;
  });
  const values = new Map<string, unknown>();
  const drafts = new Map<string, unknown>();
  asked.current = { values, drafts };
  return {
    valueAt: (place) => {
      const value = store.valueAt(place);
      values.set(place, value);
      return value;
    },
    draftAt: (place) => {
      const draft = store.draftAt(place);
      drafts.set(place, draft);
      return draft;
    },
    set: (...entry) => store.set(...entry),
    change: (...entry) => store.change(...entry),
  };
}
