import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { BENCH_WORDS } from '../../present/words/bench-words.ts';
import { EXHIBIT_WORDS } from '../../present/words/page-words.ts';
import type { StopView } from '../../present/workspace/next-view.ts';
import { useOpenPage } from '../state/use-case.ts';
import { type Entered, isCrossed, placeOnLine, watchedValue } from './crossed-stop.ts';
import { clockText } from './local-time.ts';
import { findMarks } from './marks.ts';
import { useHands } from './use-hands.ts';

/** Stop limits of this unit as margin lines, with the value just typed beside each that watches it. */
export function StopLines({ stops, entered, most }: { stops: readonly StopView[]; entered: Entered; most: number }) {
  const sorted = [...stops].sort(
    (a, b) => Number(isCrossed(b, entered)) - Number(isCrossed(a, entered)) || told(b, entered) - told(a, entered),
  );
  return (
    <section className="stops" aria-labelledby="stops-title">
      <h2 id="stops-title">{BENCH_PAGE.stopLimitsForThisUnit}</h2>
      {stops.length === 0 && <p>{BENCH_WORDS.noStops}</p>}
      {sorted.slice(0, most).map((stop) => {
        const value = watchedValue(stop, entered);
        const crossed = isCrossed(stop, entered);
        return (
          <div key={stop.words} className={`stop${crossed ? ' crossed' : ''}`}>
            <span>
              <b>{stop.title}</b> {stop.about !== '' && !stop.title.startsWith(stop.about) && <i>{stop.about}</i>}
            </span>
            <span>
              {stop.of === 'outputVoltageDown' ? BENCH_PAGE.stopBelow : BENCH_PAGE.stopAt} {stop.at}
            </span>
            <span className="line" aria-hidden="true">
              {value !== undefined && (
                <svg viewBox="0 0 20 20" aria-hidden="true" style={{ left: `${placeOnLine(stop, value) * 100}%` }}>
                  {crossed ? <path className="cross" d="M4 4L16 16M16 4L4 16" /> : <circle cx="10" cy="10" r="9" />}
                </svg>
              )}
            </span>
          </div>
        );
      })}
    </section>
  );
}

function told(stop: StopView, entered: Entered): number {
  return watchedValue(stop, entered) === undefined ? 0 : 1;
}

/** Marks that still miss their value; each can be filled in once nothing is live. */
export function MarkList() {
  const { store } = useOpenPage();
  const { fill, live, filling } = useHands();
  const marks = findMarks(store);
  if (marks.length === 0) return null;
  return (
    <section className="marks" aria-labelledby="marks-title">
      <h2 id="marks-title">
        {marks.length} {BENCH_PAGE.markedValueStillMissing}
      </h2>
      <ul>
        {marks.map((mark, index) => (
          <li key={mark.place} className={filling?.place === mark.place ? 'now' : ''}>
            <b>{index + 1}</b>
            <span>
              {clockText(mark.at)} <i>{EXHIBIT_WORDS[mark.of]?.one ?? mark.of}</i>
            </span>
            <button type="button" disabled={live} onClick={() => fill(mark)}>
              {BENCH_PAGE.fillIn}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
