import { type RefObject, useId, useState } from 'react';
import type { Refusal } from '../../core/quantity/refusal.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';

const EXAMPLE = 'mains: L, N\noutput: OUT+, OUT-\nF1 1A: L, L1\nR7 38k3 1%: OUT+, REF\nC5 2.2nF Y1 !: HV-, OUT-\nT1 P 72: HV+, DRAIN';
const KEPT = 'circuit-lines'; // what is typed and not taken yet survives a reload
const BEGUN = 'circuit-lines-of'; // the lines of the case when that was begun: what was traced on photos meanwhile is not in it
const ROWS = 18;

/** The traced circuit as lines, one a part, typed or pasted. A line that cannot be read leads to itself and stays; the others count. */
export function LineEditor({ lines, entry }: { lines: string; entry: RefObject<HTMLTextAreaElement | null> }) {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const name = useId();
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [trouble, setTrouble] = useState('');
  const typed = screen[KEPT];
  const begun = screen[BEGUN];
  const movedOn = typed !== undefined && begun !== undefined && lines !== '' && begun !== lines;
  const drop = (): void => {
    store.setScreen(KEPT, null);
    store.setScreen(BEGUN, null);
  };
  const take = async (): Promise<void> => {
    setTrouble('');
    try {
      const left = await store.trace(typed ?? lines, newItemId('trace'));
      setRefusals(left);
      if (left.length === 0) drop();
      else store.setScreen(BEGUN, null);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section className="circuitlines" aria-label={CASE_PAGE.linesOfTheCircuit}>
      <h3>
        <label htmlFor={name}>{CASE_PAGE.circuitLines}</label>
      </h3>
      <p className="small">
        {CASE_PAGE.oneLinePartReferenceValue} <b>?</b> {CASE_PAGE.wasNotRead} <b>!</b> {CASE_PAGE.crossesBarrierTransformerHasOne}
      </p>
      <textarea
        ref={entry}
        id={name}
        rows={ROWS}
        spellCheck={false}
        placeholder={EXAMPLE}
        value={typed ?? lines}
        onChange={(event) => {
          if (typed === undefined) store.setScreen(BEGUN, lines);
          store.setScreen(KEPT, event.target.value);
        }}
      />
      {movedOn && (
        <p className="trouble" role="status">
          {CASE_PAGE.circuitMovedOn}
        </p>
      )}
      {refusals.length > 0 && (
        <ul className="remarks" role="status">
          {refusals.map((refusal) => (
            <li key={refusal.place + refusal.got} className="trouble">
              <button
                type="button"
                className="quiet"
                onClick={() => selectLine(entry.current, Number(/\d+/.exec(refusal.place)?.[0] ?? '1'))}
              >
                {refusal.place}
              </button>
              : “{refusal.got}
              {CASE_PAGE.isNot} {refusal.expected}
              {CASE_PAGE.lineStaysHereOthersAre}
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
          {CASE_PAGE.takeTheLines}
        </button>
        {typed !== undefined && (
          <button type="button" className="quiet" onClick={drop}>
            {CASE_PAGE.backToWhatCaseHolds}
          </button>
        )}
      </p>
    </section>
  );
}

/** Selects a line, counted from 1, and brings it into sight. */
export function selectLine(entry: HTMLTextAreaElement | null, line: number): void {
  if (entry === null) return;
  const lines = entry.value.split('\n');
  const from = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  entry.focus();
  entry.setSelectionRange(from, from + (lines[line - 1]?.length ?? 0));
  entry.scrollTop = (entry.scrollHeight / Math.max(1, lines.length)) * Math.max(0, line - 3);
  entry.scrollIntoView({ block: 'nearest' });
}

/** The first line of a part; null where it has none. */
export function lineOf(text: string, ref: string): number | null {
  const index = text.split('\n').findIndex(
    (line) =>
      line
        .trim()
        .split(/[\s:(]/)[0]
        ?.toUpperCase() === ref.toUpperCase(),
  );
  return index < 0 ? null : index + 1;
}
