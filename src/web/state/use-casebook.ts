import { useCallback, useEffect, useRef, useState } from 'react';
import type { CasePage, CheckPlaces } from '../../app/casebook/casebook-store.ts';
import { listCases } from '../api/casebook.ts';
import { missingPages } from '../casebook/visible-rows.ts';

export type ListedCase = CasePage['rows'][number];

export interface CaseList {
  /** What was asked for these rows. */
  readonly request: string;
  readonly total: number;
  readonly of: number;
  readonly counts: CasePage['counts'];
  readonly rows: ReadonlyMap<number, ListedCase>;
}

const PAGE = 40; // cases in one answer: more than a window shows

const COUNT_AFTER_MS = 250;

/** The cases a request finds, by page as they come into view. What is shown stays until its successor is there. */
export function useCasebook(request: string): {
  readonly list: CaseList | null;
  readonly trouble: string;
  readonly need: (first: number, end: number) => void;
  /** Asks again, after something was done. */
  readonly renew: () => void;
} {
  const [list, setList] = useState<CaseList | null>(null);
  const [trouble, setTrouble] = useState('');
  const [round, setRound] = useState(0);
  const asked = useRef(new Set<number>());
  const wanted = useRef('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a round asks the same again
  useEffect(() => {
    const stop = new AbortController();
    wanted.current = request;
    let later: ReturnType<typeof setTimeout> | undefined;
    listCases(pageOf(request, 0), stop.signal).then(
      ({ total, of, counts, rows }) => {
        asked.current = new Set([0]);
        // hazards, kinds and claims are counted when the rows stand; until then they keep their last counts
        setList((old) => ({
          request,
          total,
          of,
          counts: { ...old?.counts, ...counts, ...labelsOf(old?.counts ?? counts) },
          rows: new Map(rows.map((row, index) => [index, row])),
        }));
        setTrouble('');
        later = setTimeout(() => {
          const count = new URLSearchParams(request);
          count.set('from', '0');
          count.set('count', '0');
          listCases(count, stop.signal).then(
            (page) => setList((now) => (now === null || now.request !== request ? now : { ...now, counts: page.counts })),
            () => undefined, // the rows say when the server does not answer
          );
        }, COUNT_AFTER_MS);
      },
      (error: Error) => {
        if (!stop.signal.aborted) setTrouble(error.message);
      },
    );
    return () => {
      clearTimeout(later);
      stop.abort();
    };
  }, [request, round]);
  const need = useCallback(
    (first: number, end: number): void => {
      if (list === null || list.request !== wanted.current) return;
      for (const page of missingPages(first, end, PAGE, (index) => list.rows.has(index))) {
        if (asked.current.has(page)) continue;
        asked.current.add(page);
        listCases(pageOf(list.request, page)).then(
          ({ rows }) =>
            setList((now) =>
              now === null || now.request !== list.request
                ? now
                : { ...now, rows: new Map([...now.rows, ...rows.map((row, index) => [page * PAGE + index, row] as const)]) },
            ),
          (error: Error) => {
            asked.current.delete(page);
            setTrouble(error.message);
          },
        );
      }
    },
    [list],
  );
  return { list, trouble, need, renew: useCallback(() => setRound((now) => now + 1), []) };
}

function labelsOf({ hazard, kind, claim }: CasePage['counts']): Pick<CasePage['counts'], 'hazard' | 'kind' | 'claim'> {
  return { hazard, kind, claim };
}

function pageOf(request: string, page: number): URLSearchParams {
  const query = new URLSearchParams(request);
  query.set('from', String(page * PAGE));
  query.set('count', String(PAGE));
  query.set('counted', 'false');
  return query;
}

/** Where every case stands on one check; asked again when `of` says that the casebook has changed. */
export function usePlaces(check: string, archived: boolean, of: unknown): CheckPlaces | null {
  const [places, setPlaces] = useState<CheckPlaces | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `of` says when the answer is old
  useEffect(() => {
    if (check === '') return;
    const stop = new AbortController();
    const query = new URLSearchParams({
      places: check,
      from: '0',
      count: '0',
      counted: 'false',
      ...(archived ? { archived: 'true' } : {}),
    });
    listCases(query, stop.signal).then(
      (page) => setPlaces(page.places ?? null),
      () => undefined, // the list itself says when the server does not answer
    );
    return () => stop.abort();
  }, [check, archived, of]);
  return places?.check === check ? places : null;
}
