import { useSyncExternalStore } from 'react';

/** Where in the workspace: the casebook, a chapter of a case, or a case at the bench or in the hand. */
export type Route =
  | { readonly page: 'casebook' }
  | { readonly page: 'case'; readonly id: string; readonly chapter: string }
  | { readonly page: 'bench'; readonly id: string }
  | { readonly page: 'capture'; readonly id: string };

const FIRST_CHAPTER = 'label';
const listeners = new Set<() => void>();

export function toCasePath(id: string, chapter: string): string {
  return `/case/${encodeURIComponent(id)}/${chapter}`;
}

export function toBenchPath(id: string): string {
  return `/bench/${encodeURIComponent(id)}`;
}

export function toCapturePath(id: string): string {
  return `/capture/${encodeURIComponent(id)}`;
}

export function parseRoute(path: string): Route {
  const [, page, id, chapter] = path.split('/').map(decodeURIComponent);
  if (page === 'case' && id !== undefined && id !== '') return { page, id, chapter: chapter ?? FIRST_CHAPTER };
  if (page === 'capture' && id !== undefined && id !== '') return { page, id };
  if (page === 'bench' && id !== undefined && id !== '') return { page, id };
  return { page: 'casebook' };
}

export function go(path: string): void {
  history.pushState(null, '', path);
  for (const heard of listeners) heard();
  window.scrollTo(0, 0);
}

function listen(heard: () => void): () => void {
  listeners.add(heard);
  window.addEventListener('popstate', heard);
  return () => {
    listeners.delete(heard);
    window.removeEventListener('popstate', heard);
  };
}

export function usePath(): string {
  return useSyncExternalStore(listen, () => location.pathname);
}

/** The query of the address: the filters of the casebook. */
export function useQueryText(): string {
  return useSyncExternalStore(listen, () => location.search);
}

/** Another query of the same page; `replace` where going back should not lead through every letter typed. */
export function goQuery(query: string, replace: boolean): void {
  const address = `${location.pathname}${query === '' ? '' : `?${query}`}`;
  if (replace) history.replaceState(history.state, '', address);
  else history.pushState(null, '', address);
  for (const heard of listeners) heard();
}
