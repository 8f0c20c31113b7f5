import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { BENCH_NOTES } from '../../present/words/bench-words.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { BenchTimer, useSeconds } from './bench-timer.tsx';
import { clockText } from './local-time.ts';
import { endSweep, findSweep, isEnded, rowsOf, type SweepRow } from './sweep-record.ts';
import { UNDO_MS, useHands } from './use-hands.ts';

const DOUBLE_PRESS_MS = 700; // a second press within it is the bounce of the first: it does not take back
const PER_S = 1000;

/** Ends what runs, at once: the timer, and the sweep with what happened. */
export function useLoadOff(): () => void {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const { restart, now } = useHands();
  return () => {
    const at = now();
    restart(false);
    store.setScreen('bench-load-off', at);
    const sweep = findSweep(store, screen['bench-sweep']);
    if (sweep === null || isEnded(sweep)) return;
    const last = rowsOf(sweep).at(-1);
    const words = last === undefined ? '' : rowWords(last);
    store.change(endSweep(sweep, BENCH_NOTES.loadOff(clockText(at), words)), newItemId('off'), { key: 'loadOff', args: {} });
  };
}

/** "5.11 V at 0.240 A", or that it was only marked. */
export function rowWords({ current, voltage, power }: SweepRow): string {
  const amps = typeof current === 'string' ? `${current} A` : BENCH_PAGE.anUnreadCurrent;
  const watts = typeof power === 'string' ? `, ${power} W` : '';
  return typeof voltage === 'string' ? BENCH_PAGE.vAt(voltage, amps, watts) : BENCH_PAGE.aMarkAt(amps);
}

/** The keys under the entry. Load off keeps its corner whatever the step is; the row mirrors for the left hand. */
export function ActRow({
  onMark,
  markNumber,
  target,
  children,
}: {
  onMark: (() => void) | null;
  markNumber: number;
  target: number | null;
  children: React.ReactNode;
}) {
  const { screen } = useSnapshot();
  const off = useLoadOff();
  const offAt = screen['bench-load-off'];
  return (
    <nav className="acts" aria-label={BENCH_PAGE.keysOfTheBench}>
      <button type="button" className="halt" onClick={off}>
        {BENCH_PAGE.loadOff}
        <small className="only-desk">{offAt === undefined ? BENCH_PAGE.actsAtOnce : BENCH_PAGE.lastAt(clockText(offAt))}</small>
      </button>
      <button type="button" className="mark" disabled={onMark === null} onClick={() => onMark?.()}>
        {BENCH_PAGE.mark} {markNumber}
        <small className="only-desk">{BENCH_PAGE.spaceFootSwitch}</small>
      </button>
      <BenchTimer target={target} />
      {children}
    </nav>
  );
}

/** Keeps what is typed. For ten seconds after, the same key takes it back. */
export function KeepKey({ words, missing, onKeep, ready }: { words: string; missing: string; ready: boolean; onKeep: () => void }) {
  const { kept, text, other } = useHands();
  const from = kept === null ? null : kept.until - UNDO_MS;
  const seconds = useSeconds(from);
  const isUndo = kept !== null && text === '' && other === '';
  if (isUndo)
    return (
      <button
        type="button"
        className="keep undo"
        onClick={() => {
          if (from !== null && Date.now() - from > DOUBLE_PRESS_MS) kept.takeBack();
        }}
      >
        {BENCH_PAGE.undo} {kept.words}
        <small>
          {Math.max(0, Math.ceil(UNDO_MS / PER_S - seconds))} {BENCH_PAGE.sLeft}
        </small>
      </button>
    );
  return (
    <button type="button" className="keep" disabled={!ready} onClick={onKeep}>
      {words}
      <small>{missing === '' ? BENCH_PAGE.enterPedal : missing}</small>
    </button>
  );
}
