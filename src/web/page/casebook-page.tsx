import { useCallback, useDeferredValue, useEffect, useRef, useState } from 'react';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { countText } from '../../present/words/casebook-words.ts';
import { EmptyCasebook } from '../casebook/empty-casebook.tsx';
import { FilterBar } from '../casebook/filter-bar.tsx';
import { Import, NewUnit, takeIn } from '../casebook/new-unit.tsx';
import { NothingFound } from '../casebook/nothing-found.tsx';
import { RemovedBar } from '../casebook/removed-bar.tsx';
import { UnitColumns } from '../casebook/unit-columns.tsx';
import { FewPanel, ManyPanel } from '../casebook/unit-panel.tsx';
import { UnitRows } from '../casebook/unit-rows.tsx';
import { UnitWays } from '../casebook/unit-ways.tsx';
import { useColumnRoom } from '../casebook/use-column-room.ts';
import { Sign } from '../part/sign.tsx';
import { BY_MARGIN, isFiltered, type ListQuery, parseListQuery, toAddress, toRequest } from '../state/casebook-query.ts';
import { go, goQuery, toCasePath, useQueryText } from '../state/route.ts';
import { type CaseList, type ListedCase, useCasebook } from '../state/use-casebook.ts';
import { KEYS_OFF } from '../state/use-keys.ts';

/** All cases: few as columns of margin lines, many as rows of one axis each. What is asked for stands in the address. */
export function CasebookPage() {
  const query = parseListQuery(useQueryText());
  const { list, trouble, need, renew } = useCasebook(toRequest(query));
  const [opening, setOpening] = useState(false);
  const [refused, setRefused] = useState('');
  const [removed, setRemoved] = useState<ListedCase | null>(null);
  const entry = useRef<HTMLInputElement>(null);
  useFindKey(entry);
  useEffect(() => {
    document.title = 'Casebook, Mainsworthy';
  }, []);
  const ask = (next: ListQuery, replace = false): void => goQuery(toAddress(next), replace);
  const bring = (file: File): void => {
    setRefused('');
    void takeIn(file).then(setRefused);
  };
  const isOver = useCallback(() => setRemoved(null), []);
  const empty = list !== null && list.of === 0 && !query.archived && !isFiltered(query);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping has a button beside it that does the same
    <div
      className="casebook"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        const [file] = event.dataTransfer.files;
        if (file !== undefined) bring(file);
      }}
    >
      <a className="skip" href="#cases">
        {CASEBOOK_PAGE.toTheCases}
      </a>
      <header className="top">
        <div className="crumb">
          <Sign />
          <h1>{CASEBOOK_PAGE.casebook}</h1>
          <span className="u" role="status">
            {list === null
              ? ''
              : list.total === list.of
                ? countText(list.of, 'case')
                : CASEBOOK_PAGE.foundOf(list.total.toLocaleString('en'), countText(list.of, 'case'))}
            {query.archived ? CASEBOOK_PAGE.archived : ''}
          </span>
        </div>
        <div className="r">
          {!empty && (
            <>
              <input
                ref={entry}
                type="search"
                className="search"
                aria-label={CASEBOOK_PAGE.searchNameProductSampleClaim}
                placeholder={CASEBOOK_PAGE.nameSampleClaim}
                value={query.search}
                onChange={({ target }) => ask({ ...query, search: target.value }, true)}
              />
              <Import className="btn" onFile={bring} />
              <button type="button" className="btn solid" aria-expanded={opening} onClick={() => setOpening(!opening)}>
                {CASEBOOK_PAGE.openANewCase}
              </button>
            </>
          )}
        </div>
      </header>
      {opening && !empty && <NewUnit onClose={() => setOpening(false)} />}
      <p className="trouble page-trouble" role="alert">
        {refused === '' ? trouble : refused}
      </p>
      {empty && <EmptyCasebook onFile={bring} />}
      {list !== null && !empty && <Filled query={query} list={list} ask={ask} need={need} renew={renew} onRemoved={setRemoved} />}
      {list === null && trouble === '' && <main aria-busy="true" />}
      {removed !== null && (
        <RemovedBar
          key={removed.head.id}
          unit={removed}
          onOver={isOver}
          onBack={() => {
            setRemoved(null);
            renew();
          }}
        />
      )}
    </div>
  );
}

/** Where the list was left, so that going back to it finds it there. */
let left = { request: '', at: 0, scroll: 0 };

function Filled(props: {
  query: ListQuery;
  list: CaseList;
  ask: (query: ListQuery, replace?: boolean) => void;
  need: (first: number, end: number) => void;
  renew: () => void;
  onRemoved: (unit: ListedCase) => void;
}) {
  const { query, list, ask, need, renew, onRemoved } = props;
  const request = toRequest(query);
  const [place, setPlace] = useState(() => (left.request === request ? { request, at: left.at } : { request: '', at: 0 }));
  const fits = useColumnRoom();
  const inColumns = list.of <= fits && [...list.rows.values()].every(({ summary }) => summary !== null);
  const rows = [...list.rows.values()];
  // another answer: the case of the address if it is on its first page, else the first
  if (place.request !== list.request) {
    const found = [...list.rows].find(([, row]) => row.head.id === query.unit)?.[0];
    setPlace({ request: list.request, at: found ?? 0 });
  }
  const at = Math.min(place.at, Math.max(0, list.total - 1));
  const unit = list.rows.get(at) ?? null;
  const shown = useDeferredValue(unit);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only on coming back to the page
  useEffect(() => {
    if (left.request === request) window.scrollTo(0, left.scroll);
  }, []);
  useEffect(() => {
    const remember = (): void => {
      left = { request: list.request, at, scroll: window.scrollY };
    };
    remember();
    window.addEventListener('scroll', remember, { passive: true });
    return () => window.removeEventListener('scroll', remember);
  }, [list.request, at]);
  const select = (index: number): void => setPlace({ request: list.request, at: index });
  const id = unit?.head.id;
  const isFirst = place.at === 0 && query.unit === '';
  // the address follows the selection, also when its row comes later than the key; the first case needs no address
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new selection writes
  useEffect(() => {
    if (id !== undefined && id !== query.unit && !isFirst && list.request === request) ask({ ...query, unit: id }, true);
  }, [id, list.request]);
  const open = (index: number): void => {
    const row = list.rows.get(index);
    if (row !== undefined) go(toCasePath(row.head.id, 'load'));
  };
  const byMargin = query.sort.startsWith(BY_MARGIN) ? query.sort.slice(BY_MARGIN.length) : null;
  const check = query.check !== '' ? query.check : (byMargin ?? firstCheck(shown));
  const onCheck = (next: string): void => ask({ ...query, check: next }, true);
  const ways =
    shown === null ? null : <UnitWays key={shown.head.id} unit={shown} onDone={renew} onRemoved={removedThen(onRemoved, renew)} />;
  return (
    <div className={inColumns ? 'filled few' : 'filled many'}>
      <FilterBar query={query} list={list} onQuery={ask} />
      <main id="cases" tabIndex={-1}>
        {list.total === 0 ? (
          <NothingFound query={query} list={list} onQuery={ask} />
        ) : inColumns ? (
          <UnitColumns cases={rows} at={at} check={check} onUnit={select} onCheck={onCheck} />
        ) : (
          <UnitRows list={list} at={at} byMargin={byMargin} onStep={select} onOpen={open} need={need} />
        )}
      </main>
      <aside className="side" aria-label={CASEBOOK_PAGE.theSelectedCaseAmongAll}>
        {inColumns ? (
          <>
            {shown !== null && (
              <section className="about">
                <h2>{shown.summary?.name ?? shown.head.id}</h2>
                {ways}
              </section>
            )}
            <FewPanel cases={rows} unit={shown} check={check} />
          </>
        ) : (
          shown !== null && <ManyPanel unit={shown} check={check} of={list.of} archived={query.archived} onCheck={onCheck} ways={ways} />
        )}
      </aside>
    </div>
  );
}

function removedThen(onRemoved: (unit: ListedCase) => void, renew: () => void): (unit: ListedCase) => void {
  return (unit) => {
    onRemoved(unit);
    renew();
  };
}

/** The check that the panel begins with: the worst that was judged, else the first line. */
function firstCheck(unit: ListedCase | null): string {
  const marks = unit?.summary?.marks ?? [];
  return (marks.find(({ outcome }) => outcome === 'fail') ?? marks.find(({ margin }) => margin !== null) ?? marks[0])?.check ?? '';
}

/** "/" leads to the search, unless single keys are turned off or something is being typed. */
function useFindKey(entry: React.RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const typing = (event.target as HTMLElement).matches('input, select, textarea');
      if (event.key !== '/' || typing || localStorage.getItem(KEYS_OFF) !== null) return;
      event.preventDefault();
      entry.current?.focus();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [entry]);
}
