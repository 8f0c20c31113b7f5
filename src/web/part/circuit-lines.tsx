import { useEffect, useId, useState } from 'react';
import type { Refusal } from '../../core/quantity/refusal.ts';
import { circuitOf } from '../api/casebook.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { RawHtml } from './raw-html.tsx';

const EXAMPLE = 'mains: L, N\noutput: OUT+, OUT-\nF1 1A: L, L1\nR7 38k3 1%: OUT+, REF\nC5 2.2nF Y1 !: HV-, OUT-\nT1 P 72: HV+, DRAIN';
const KEPT = 'circuit-lines'; // what is typed and not taken yet survives a reload
const ROWS = 18;

/** The traced circuit: one line a part, typed or pasted, and the drawing that follows from it. */
export function CircuitLines() {
  const { store } = useOpenPage();
  const { id, revision, screen } = useSnapshot();
  const entry = useId();
  const [lines, setLines] = useState('');
  const [svg, setSvg] = useState<string | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(true);
  const typed = screen[KEPT];
  // biome-ignore lint/correctness/useExhaustiveDependencies: every revision can change the circuit
  useEffect(() => {
    const stop = new AbortController();
    setBusy(true);
    circuitOf(id, stop.signal)
      .then((circuit) => {
        setLines(circuit.lines);
        setSvg(circuit.svg);
        setBusy(false);
      })
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, revision]);
  const take = async (): Promise<void> => {
    setTrouble('');
    try {
      const left = await store.trace(typed ?? lines, newItemId('trace'));
      setRefusals(left);
      if (left.length === 0) store.setScreen(KEPT, null);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section className="circuitlines" aria-label="Traced circuit">
      {svg === null ? (
        <p className="small">{busy ? 'drawing …' : 'No circuit traced yet: the drawing appears once two parts share a net.'}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing wider than the page is scrolled with the keyboard
        <section className="scroll drawing" aria-label="Schematic" tabIndex={0} aria-busy={busy}>
          <RawHtml html={svg} as="div" />
        </section>
      )}
      <h3>
        <label htmlFor={entry}>Circuit lines</label>
      </h3>
      <p className="small">
        One line a part: reference, value, colon, its nets in order (diodes and Zeners anode first). <b>?</b> was not read, <b>!</b> crosses
        the barrier, a transformer has one line a winding, dot end first. Parts keep what a line has no word for.
      </p>
      <textarea
        id={entry}
        rows={ROWS}
        spellCheck={false}
        placeholder={EXAMPLE}
        value={typed ?? lines}
        onChange={(event) => store.setScreen(KEPT, event.target.value)}
      />
      {refusals.length > 0 && (
        <ul className="remarks" role="status">
          {refusals.map((refusal) => (
            <li key={refusal.place + refusal.got} className="trouble">
              {refusal.place}: “{refusal.got}” is not {refusal.expected}. The line stays here, the others are taken.
            </li>
          ))}
        </ul>
      )}
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      <p className="ways">
        <button type="button" className="btn" disabled={typed === undefined} onClick={() => void take()}>
          Take the lines
        </button>
        {typed !== undefined && (
          <button type="button" className="quiet" onClick={() => store.setScreen(KEPT, null)}>
            back to what the case holds
          </button>
        )}
      </p>
    </section>
  );
}
