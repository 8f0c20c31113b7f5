import { useEffect, useRef, useState } from 'react';
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
      setTrouble(own.signal.aborted ? 'Stopped; nothing was kept.' : error instanceof Error ? error.message : String(error));
    }
    setProgress(null);
  };
  return (
    <section className="soak-fit" aria-label="where it is heading">
      <p className="ways">
        <button type="button" className="btn" disabled={progress !== null} onClick={() => void start()}>
          Work out where it is heading
        </button>
        <label>
          its end to ±{' '}
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
            <progress value={progress.done} max={progress.of} aria-label="temperatures worked out" />
            <button type="button" className="quiet" onClick={() => stop.current?.abort()}>
              Stop
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
          <p className="trouble">The log has changed since this was worked out; it is not used until it is worked out again.</p>
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
