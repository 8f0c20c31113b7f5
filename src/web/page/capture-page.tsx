import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { CAPTURE_PAGE } from '../../present/words/capture-page-words.ts';
import { sendFile } from '../api/casebook.ts';
import { type Kept, keepPhoto, localTimeOf, type Now } from '../capture/quick-reading.ts';
import { ReadingEntry } from '../capture/reading-entry.tsx';
import { Link } from '../part/link.tsx';
import { listOf } from '../part/new-exhibit.ts';
import { Sign } from '../part/sign.tsx';
import { CaseStore } from '../state/case-store.ts';
import { newItemId } from '../state/place-parts.ts';
import { toCasePath } from '../state/route.ts';
import '../style/capture.css';

const SHOWN = 3;
const PERCENT = 100;

/** One case in the hand: a photo or a reading is kept with one tap and can be taken back. */
export function CapturePage({ id }: { id: string }) {
  const [store, setStore] = useState<CaseStore | null>(null);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    let left = false;
    const opening = CaseStore.open(id);
    opening.then(
      (made) => (left ? made.close() : setStore(made)),
      (error: Error) => setTrouble(error.message),
    );
    return () => {
      left = true;
      opening.then((made) => made.close()).catch(() => undefined);
    };
  }, [id]);
  if (store === null)
    return (
      <main className="alone" aria-busy={trouble === ''}>
        {trouble !== '' && (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        )}
      </main>
    );
  return <OpenCapture store={store} />;
}

function OpenCapture({ store }: { store: CaseStore }) {
  const { id, view, waiting, trouble, conflicts } = useSyncExternalStore(store.subscribe, store.get);
  const [held, setHeld] = useState<readonly (Kept & { readonly key: string })[]>([]);
  const name = String(store.valueAt('/case/product/name') ?? id);
  useEffect(() => {
    document.title = CAPTURE_PAGE.photoOrReading(name);
  }, [name]);
  const now = (kind: string): Now => ({
    id: newItemId(kind),
    day: listOf(store, 'days').at(-1)?.['id'] as string | undefined,
    at: localTimeOf(new Date()),
  });
  const keep = (kept: Kept): void => {
    const key = newItemId('keep');
    store.change(kept.changes, key, { key: 'keep', args: {} });
    setHeld((all) => [{ ...kept, key }, ...all].slice(0, SHOWN));
  };
  const takeBack = (kept: Kept & { readonly key: string }): void => {
    store.change(kept.back, newItemId('undo'), { key: 'removeExhibit', args: {} });
    setHeld((all) => all.filter(({ key }) => key !== kept.key));
  };
  const standing = held.filter(({ at }) => store.valueAt(at) !== undefined);
  return (
    <main className="capture">
      <header>
        <Sign />
        <h1>{name}</h1>
        <Link to={toCasePath(id, 'files')}>{CAPTURE_PAGE.wholeCase}</Link>
      </header>
      <PhotoEntry store={store} now={now} onKeep={keep} />
      <ReadingEntry store={store} now={now} onKeep={keep} />
      <p className="state" role="status">
        {trouble !== null ? (
          <span className="trouble">{trouble.words}</span>
        ) : conflicts.length > 0 ? (
          <span className="trouble">{CAPTURE_PAGE.anotherTabWroteAtSame}</span>
        ) : waiting > 0 ? (
          CAPTURE_PAGE.onItsWayToDisk
        ) : held.length > 0 ? (
          CAPTURE_PAGE.keptOnTheDisk
        ) : (
          ''
        )}
      </p>
      <section aria-label={CAPTURE_PAGE.keptLast}>
        <ol>
          {standing.map((one) => (
            <li key={one.key}>
              <span>{one.words}</span>
              <button type="button" className="btn" aria-label={CAPTURE_PAGE.undoOne(one.words)} onClick={() => takeBack(one)}>
                {CAPTURE_PAGE.undoKey}
              </button>
            </li>
          ))}
        </ol>
      </section>
      <section className="live" aria-label={CAPTURE_PAGE.caution}>
        <b>{CAPTURE_PAGE.beforeLiveWork}</b>
        <p>{view.caution.energy}</p>
        <details>
          <summary>{CAPTURE_PAGE.cautionsForThisWork}</summary>
          <ul>
            {view.caution.sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      </section>
    </main>
  );
}

interface PhotoProps {
  readonly store: CaseStore;
  readonly now: (kind: string) => Now;
  readonly onKeep: (kept: Kept) => void;
}

function PhotoEntry({ store, now, onKeep }: PhotoProps) {
  const [of, setOf] = useState('');
  const [sent, setSent] = useState<number | null>(null);
  const [trouble, setTrouble] = useState('');
  const stop = useRef<AbortController | null>(null);
  const choose = useRef<HTMLInputElement>(null);
  const bring = async (file: File): Promise<void> => {
    const stopping = new AbortController();
    stop.current = stopping;
    setTrouble('');
    setSent(0);
    try {
      const watch = { signal: stopping.signal, progress: (part: number, all: number) => setSent(all === 0 ? 0 : part / all) };
      const taken = await sendFile(store.get().id, file, {}, watch);
      if (!taken.media.startsWith('image/')) setTrouble(CAPTURE_PAGE.thatIsNoPictureOther);
      else {
        const ids = listOf(store, 'files').map((item) => String(item['id']));
        onKeep(keepPhoto(taken, of.trim() === '' ? CAPTURE_PAGE.theUnit : of.trim(), ids, now('photo')));
      }
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
    setSent(null);
  };
  return (
    <section aria-label={CAPTURE_PAGE.photo}>
      <label>
        <span>{CAPTURE_PAGE.whatThePhotoShows}</span>
        <input type="text" value={of} placeholder={CAPTURE_PAGE.theUnit} onChange={(event) => setOf(event.target.value)} />
      </label>
      <button type="button" className="btn solid big" disabled={sent !== null} onClick={() => choose.current?.click()}>
        {CAPTURE_PAGE.takeAPhoto}
      </button>
      <input
        ref={choose}
        type="file"
        accept="image/*"
        capture="environment"
        className="for-ears"
        tabIndex={-1}
        aria-label={CAPTURE_PAGE.takeAPhoto}
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file !== undefined) void bring(file);
          event.target.value = '';
        }}
      />
      {sent !== null && (
        <p className="sending">
          <progress max={1} value={sent} aria-label={CAPTURE_PAGE.sent} /> {Math.floor(sent * PERCENT)} %
          <button type="button" className="btn" onClick={() => stop.current?.abort()}>
            {CAPTURE_PAGE.stop}
          </button>
        </p>
      )}
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </section>
  );
}
