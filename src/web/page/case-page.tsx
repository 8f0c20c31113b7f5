import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { reportOf } from '../api/casebook.ts';
import { FindList } from '../part/find-list.tsx';
import { Link } from '../part/link.tsx';
import { Phone } from '../part/phone.tsx';
import { SavedState } from '../part/saved-state.tsx';
import { Sign } from '../part/sign.tsx';
import { Spine } from '../part/spine.tsx';
import { VerdictColumn } from '../part/verdict-column.tsx';
import { layerOfPlace, selectedKey } from '../stack/selected-layer.ts';
import type { CaseStore } from '../state/case-store.ts';
import { idFromAnchor } from '../state/place-parts.ts';
import { go, toBenchPath, toCasePath } from '../state/route.ts';
import { CaseContext, type OpenPage, useStanding } from '../state/use-case.ts';
import { useKeys } from '../state/use-keys.ts';
import { useOpenedCase } from '../state/use-opened-case.ts';
import { ChapterPage } from './chapter-page.tsx';
import { FilesPage } from './files-page.tsx';
import { chapterOfPlace, findField } from './find-field.ts';
import { JudgementPage } from './judgement-page.tsx';
import { PublishPage } from './publish-page.tsx';
import { SamplePage } from './sample-page.tsx';

type Forms = { readonly case: FormNode; readonly reading: FormNode };

/** One case: chapters on the left, evidence and picture in the middle, the verdict on the right. */
export function CasePage({ id, chapter }: { id: string; chapter: string }) {
  const { store, form, trouble } = useOpenedCase(id);
  if (trouble !== '')
    return (
      <main className="alone">
        <p className="trouble" role="alert">
          {trouble}
        </p>
        <Link to="/">{CASE_PAGE.toTheCasebook}</Link>
      </main>
    );
  if (store === null || form === null) return <main className="alone" aria-busy="true" />;
  return <OpenCasePage store={store} form={form} chapter={chapter} />;
}

function OpenCasePage({ store, form, chapter }: { store: CaseStore; form: Forms; chapter: string }) {
  const view = useSyncExternalStore(store.subscribe, () => store.get().view);
  const { id } = store.get();
  const [origin, setOrigin] = useState<string | null>(null);
  const [selected, setSelected] = useState<string | null>(null);
  const [finding, setFinding] = useState(false);
  const [cameFrom, setCameFrom] = useState<HTMLElement | null>(null);
  const rows = view.groups.flatMap(({ checks }) => checks.map(({ lead }) => lead));
  const openOrigin = useCallback((step: string, from?: HTMLElement | null): void => {
    setOrigin((open) => {
      // on the way further down the focus still returns to where the first number stood
      if (open === null) setCameFrom(from ?? (document.activeElement as HTMLElement | null));
      return step;
    });
  }, []);
  const closeOrigin = (): void => {
    setOrigin(null);
    cameFrom?.focus();
  };
  const goToField = useCallback(
    (place: string): void => {
      const target = chapterOfPlace(place, store);
      if (target !== null && target !== chapter) go(toCasePath(id, target));
      const layer = layerOfPlace(place);
      if (layer !== null && target === 'transformer') {
        store.setScreen('open-stack', layer.stack);
        store.setScreen(selectedKey(layer.stack), layer.layer);
      }
      requestAnimationFrame(() => requestAnimationFrame(() => findField(place, store)?.focus()));
    },
    [chapter, id, store],
  );
  const page = useMemo<OpenPage>(
    () => ({ store, form, openOrigin, goToField, showFinding: setSelected }),
    [store, form, openOrigin, goToField],
  );
  useKeys({
    chapter: (target) => go(toCasePath(id, target)),
    find: () => setFinding(true),
    verdict: () => document.getElementById('verdict')?.focus(),
    next: () => go(toCasePath(id, 'judgement')),
    bench: () => go(toBenchPath(id)),
    step: (by) => {
      const at = rows.indexOf(selected ?? '');
      setSelected(rows[Math.min(rows.length - 1, Math.max(0, at + by))] ?? null);
    },
    undo: () => void store.undo(),
    redo: () => void store.redo(),
  });
  // links inside finished markup lead to findings and steps of this page
  const follow = (event: React.MouseEvent): void => {
    const link = (event.target as HTMLElement).closest('a[href^="#"]');
    if (link === null) return;
    const anchor = link.getAttribute('href') ?? '';
    event.preventDefault();
    if (anchor === '#verdict') document.getElementById('verdict')?.focus();
    if (anchor.startsWith('#step-')) openOrigin(idFromAnchor(anchor), link as HTMLElement);
    if (anchor.startsWith('#finding-')) setSelected(idFromAnchor(anchor));
  };
  const current = view.chapters.find((one) => one.id === chapter);
  const name = String((store.valueAt('/case/product/name') as string | undefined) ?? id);
  const [seen, setSeen] = useState(chapter);
  if (seen !== chapter) {
    setSeen(chapter);
    setOrigin(null);
  }
  useEffect(() => {
    document.title = `${name}: ${view.verdict.failure}, ${view.verdict.coverage}`;
  }, [name, view.verdict.failure, view.verdict.coverage]);
  return (
    <CaseContext.Provider value={page}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: links inside are real links; this only keeps them in the page */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: Enter on a link is a click */}
      <div className="case" onClick={follow}>
        <a className="skip" href="#verdict">
          {CASE_PAGE.toTheVerdict}
        </a>
        <header className="top">
          <Crumb id={id} />
          <div className="r">
            <SavedState />
            <button type="button" className="btn" onClick={() => setFinding(true)}>
              {CASE_PAGE.find} <kbd>/</kbd>
            </button>
            <a className="btn wide-only" href={reportOf(id)} target="_blank" rel="noreferrer">
              {CASE_PAGE.report}
            </a>
            <Phone id={id} />
            <Link className="btn" to={toBenchPath(id)}>
              {CASE_PAGE.atTheBench}
            </Link>
          </div>
        </header>
        <Spine id={id} view={view} current={chapter} />
        <main id="evidence" tabIndex={-1}>
          {current !== undefined && (
            <ChapterPage
              key={chapter}
              chapter={current}
              origin={origin}
              setOrigin={setOriginFrom(openOrigin, closeOrigin)}
              selected={selected}
            />
          )}
          {chapter === 'sample' && <SamplePage />}
          {chapter === 'files' && <FilesPage />}
          {chapter === 'judgement' && <JudgementPage origin={origin} setOrigin={setOriginFrom(openOrigin, closeOrigin)} />}
          {chapter === 'publish' && <PublishPage />}
        </main>
        <VerdictColumn selected={selected} onSelect={setSelected} />
        {finding && <FindList onClose={() => setFinding(false)} onFinding={setSelected} />}
      </div>
    </CaseContext.Provider>
  );
}

/** Which case this is, as it is being typed. */
function Crumb({ id }: { id: string }) {
  const store = useStanding();
  return (
    <div className="crumb">
      <Sign />
      <Link to="/">{CASE_PAGE.casebook}</Link> <span className="u">/</span>{' '}
      <h1>{String((store.valueAt('/case/product/name') as string | undefined) ?? id)}</h1>
      <span className="u">
        {CASE_PAGE.sample} {String((store.valueAt('/case/sample') as string | undefined) ?? '')}
      </span>
      {store.valueAt('/case/invented') === true && <span className="invented">{CASE_PAGE.inventedData}</span>}
    </div>
  );
}

function setOriginFrom(set: (step: string) => void, close: () => void): (step: string | null) => void {
  return (step) => (step === null ? close() : set(step));
}
