import { useEffect, useState } from 'react';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { countText } from './local-time.ts';
import { useHands } from './use-hands.ts';

const TICK_MS = 250;
const PER_S = 1000;

/** Seconds since a moment, counted while it is shown. */
export function useSeconds(since: number | null): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (since === null) return;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), TICK_MS);
    return () => clearInterval(timer);
  }, [since]);
  return since === null ? 0 : Math.max(0, (now - since) / PER_S);
}

/** Time since the last reading, against the time it takes to settle. */
export function BenchTimer({ target }: { target: number | null }) {
  const { since, restart } = useHands();
  const seconds = useSeconds(since);
  const settled = target !== null && seconds >= target;
  return (
    <button
      type="button"
      className={`timer${settled ? ' settled' : ''}`}
      onClick={() => restart(true)}
      aria-label={BENCH_PAGE.startTheTimerAgain}
    >
      <b>{since === null ? '0:00' : countText(seconds)}</b>
      <small>{target === null ? BENCH_PAGE.sinceTheLast : settled ? BENCH_PAGE.settled : BENCH_PAGE.settleOf(countText(target))}</small>
      {target !== null && <progress max={target} value={Math.min(seconds, target)} aria-hidden="true" />}
    </button>
  );
}
