import { useEffect, useMemo, useRef, useState } from 'react';
import type { CircuitAtDesk, LiveDrawing } from '../../app/casebook/desk.ts';
import { HAND_MOVES_KEY, parseHandMoves, toHandMovesText } from '../../present/schematic/hand-moves.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { circuitOf, drawingOf, liveDrawingOf, pdfOf, sheetOf } from '../api/casebook.ts';
import type { At } from '../stage/stage-view.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { PhotoTrace } from '../trace/photo-trace.tsx';
import { LineEditor, lineOf, selectLine } from './line-editor.tsx';
import { ChosenCard } from './part-card.tsx';
import { type Chosen, Schematic } from './schematic.tsx';

const NOTHING: CircuitAtDesk = { lines: '', view: { said: '', parts: [], nets: [] } };

/** The circuit of a case: its drawing, what is known of the chosen part, and its lines. */
export function CircuitDesk() {
  const { store } = useOpenPage();
  const { id, revision, screen } = useSnapshot();
  const [circuit, setCircuit] = useState<CircuitAtDesk>(NOTHING);
  const [drawing, setDrawing] = useState<LiveDrawing | null>(null);
  const [chosen, setChosen] = useState<Chosen>(null);
  const [lit, setLit] = useState<string | null>(null);
  const [moving, setMoving] = useState(false);
  const [drawn, setDrawn] = useState(0);
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(true);
  const entry = useRef<HTMLTextAreaElement>(null);
  const kept = screen[HAND_MOVES_KEY];
  const moves = useMemo(() => parseHandMoves(kept), [kept]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every revision can change the circuit
  useEffect(() => {
    const stop = new AbortController();
    circuitOf(id, stop.signal)
      .then((read) => {
        setCircuit(read);
        setTrouble('');
      })
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, revision]);
  // the lines do not wait for the drawing, which takes longer
  // biome-ignore lint/correctness/useExhaustiveDependencies: a hand can change the drawing too
  useEffect(() => {
    const stop = new AbortController();
    setBusy(true);
    liveDrawingOf(id, stop.signal)
      .then((read) => {
        setDrawing(read.drawing);
        setBusy(false);
      })
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, revision, drawn]);
  const { lines, view } = circuit;
  const keep = async (next: ReadonlyMap<string, At>): Promise<void> => {
    await store.keepScreen(HAND_MOVES_KEY, next.size === 0 ? null : toHandMovesText(next));
    setDrawn((count) => count + 1);
  };
  const move = (part: string, at: At): void => {
    const place = drawing?.places.find((one) => one.part === part);
    if (place === undefined) return;
    // on the output side a place counts from the barrier, so that it stays when the mains side grows
    const from = place.zone === 'output' ? (drawing?.barrier ?? 0) : 0;
    void keep(new Map([...moves, [part, { x: at.x - from, y: at.y }]]));
  };
  const toLine = (ref: string): void => {
    const line = lineOf(entry.current?.value ?? '', ref);
    if (line !== null) selectLine(entry.current, line);
  };
  const part = chosen !== null && 'part' in chosen ? chosen.part : '';
  const net = chosen !== null && 'net' in chosen ? chosen.net : '';
  return (
    <div className="circuitdesk">
      {view.said !== '' && <p className="said">{view.said}</p>}
      {drawing === null ? (
        <p className="small">{busy ? CASE_PAGE.drawing : CASE_PAGE.noCircuitTracedYetDrawing}</p>
      ) : (
        <>
          <div className="drawn">
            <Schematic drawing={drawing} chosen={chosen} lit={lit} moving={moving} busy={busy} onChoose={setChosen} onMove={move} />
            <ChosenCard view={view} chosen={chosen} onChoose={setChosen} onLight={setLit} onLine={toLine} />
          </div>
          <div className="drawn-tools">
            <label>
              {CASE_PAGE.part}{' '}
              <select
                aria-label={CASE_PAGE.part}
                value={part}
                onChange={(event) => setChosen(event.target.value === '' ? null : { part: event.target.value })}
              >
                <option value="">{CASE_PAGE.none}</option>
                {view.parts.map((one) => (
                  <option key={one.id} value={one.id}>
                    {one.ref}
                  </option>
                ))}
              </select>
            </label>
            <label>
              {CASE_PAGE.net}{' '}
              <select
                aria-label={CASE_PAGE.net}
                value={net}
                onChange={(event) => setChosen(event.target.value === '' ? null : { net: event.target.value })}
              >
                <option value="">{CASE_PAGE.none}</option>
                {view.nets.map((one) => (
                  <option key={one.id} value={one.id}>
                    {one.name}
                  </option>
                ))}
              </select>
            </label>
            <button type="button" className="btn" aria-pressed={moving} onClick={() => setMoving(!moving)}>
              {CASE_PAGE.moveParts}
            </button>
            {moves.has(part) && (
              <button type="button" className="quiet" onClick={() => void keep(new Map([...moves].filter(([one]) => one !== part)))}>
                {CASE_PAGE.putBack(view.parts.find((one) => one.id === part)?.ref)}
              </button>
            )}
            {moves.size > 0 && (
              <button type="button" className="quiet" onClick={() => void keep(new Map())}>
                {CASE_PAGE.putAllBack(moves.size)}
              </button>
            )}
            <a className="btn" href={drawingOf(id)} download>
              {CASE_PAGE.svg}
            </a>
            <a className="btn" href={pdfOf(id, 'A4')} download>
              {CASE_PAGE.pdfA4}
            </a>
            <a className="btn" href={pdfOf(id, 'A3')} download>
              {CASE_PAGE.pdfA3}
            </a>
            <a className="btn" href={sheetOf(id, 'A4')} target="_blank" rel="noreferrer">
              {CASE_PAGE.printA4}
            </a>
            <a className="btn" href={sheetOf(id, 'A3')} target="_blank" rel="noreferrer">
              {CASE_PAGE.printA3}
            </a>
          </div>
          {moving && <p className="small">{CASE_PAGE.dragPartOrGiveIt}</p>}
        </>
      )}
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      <PhotoTrace />
      <LineEditor lines={lines} entry={entry} />
    </div>
  );
}
