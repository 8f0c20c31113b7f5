import { useEffect, useRef, useState } from 'react';
import { FORESEE_WORDS } from '../../present/words/picture-words.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';

const WITHIN = ['0.5', '1', '2', '5'];

/** Works out where the temperatures of a soak are heading, keeps it in the case, and says what is kept. */
export function SoakFit({ id }: { id: string }) {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const [within, setWithin] = useState('1');
  const [progress, setProgress] = useState<{ done: number; of: number } | null>(null);
  const [trouble, setTrouble] = useState('');
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const kept = view.soaks.find(({ exhibit }) => exhibit === id);
  const start = async (): Promise<void> => {
    const own = new AbortController();
    stop.current = own;
    setTrouble('');
    setProgress({ done: 0, of: 1 });
    try {
      await store.foresee(id, Number(within), (done, of) => setProgress({ done, of }), own.signal);
    } catch (error) {
      setTrouble(own.signal.aborted ? FORESEE_WORDS.stopped : error instanceof Error ? error.message : String(error));
    }
    setProgress(null);
  };
  return (
    <section className="soak-fit" aria-label={FORESEE_WORDS.section}>
      <p className="ways">
        <button type="button" className="btn" disabled={progress !== null} onClick={() => void start()}>
          {FORESEE_WORDS.start}
        </button>
        <label>
          {FORESEE_WORDS.within}{' '}
          <select value={within} onChange={(event) => setWithin(event.target.value)}>
            {WITHIN.map((kelvin) => (
              <option key={kelvin} value={kelvin}>
                {kelvin} K
              </option>
            ))}
          </select>
        </label>
        {progress !== null && (
          <>
            <progress value={progress.done} max={progress.of} aria-label={FORESEE_WORDS.done} />
            <button type="button" className="quiet" onClick={() => stop.current?.abort()}>
              {FORESEE_WORDS.stop}
            </button>
          </>
        )}
      </p>
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      {kept !== undefined &&
        (kept.sentences.length === 0 ? (
          <p className="trouble">{FORESEE_WORDS.stale}</p>
        ) : (
          <ul className="dots">
            {kept.sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        ))}
    </section>
  );
}
