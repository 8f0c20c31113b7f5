import { useSyncExternalStore } from 'react';

/** Where in the workspace: the casebook, a chapter of a case, or a case at the bench. */
export type Route =
  | { readonly page: 'casebook' }
  | { readonly page: 'case'; readonly id: string; readonly chapter: string }
  | { readonly page: 'bench'; readonly id: string };

const FIRST_CHAPTER = 'label';
const listeners = new Set<() => void>();

export function toCasePath(id: string, chapter: string): string {
  return `/case/${encodeURIComponent(id)}/${chapter}`;
}

export function toBenchPath(id: string): string {
  return `/bench/${encodeURIComponent(id)}`;
}

export function parseRoute(path: string): Route {
  const [, page, id, chapter] = path.split('/').map(decodeURIComponent);
  if (page === 'case' && id !== undefined && id !== '') return { page, id, chapter: chapter ?? FIRST_CHAPTER };
  if (page === 'bench' && id !== undefined && id !== '') return { page, id };
  return { page: 'casebook' };
}

export function go(path: string): void {
  history.pushState(null, '', path);
  for (const heard of listeners) heard();
  window.scrollTo(0, 0);
}

export function usePath(): string {
  return useSyncExternalStore(
    (heard) => {
      listeners.add(heard);
      window.addEventListener('popstate', heard);
      return () => {
        listeners.delete(heard);
        window.removeEventListener('popstate', heard);
      };
    },
    () => location.pathname,
  );
}
