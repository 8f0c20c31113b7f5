import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { DAY_WORDS, POINT_WORDS, PROGRESS_WORDS } from '../../present/words/bench-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { DAY } from './day-order.ts';
import { isPassed, nextStep, progressOf } from './day-progress.ts';
import { beginDay, lastDay } from './new-day.ts';
import { MarkList } from './side-panel.tsx';
import { useHands } from './use-hands.ts';

/** The day in its order, with what is done and the points after which there is no way back. */
export function DayList() {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const { goTo, now } = useHands();
  const exhibits = listOf(store, 'exhibits');
  const next = nextStep(exhibits, view);
  const today = now().slice(0, now().indexOf('T'));
  const last = lastDay(store);
  const begin = (): void => store.change(beginDay(store, today), newItemId('day'), { key: 'day', args: {} });
  return (
    <section className="bench-day" aria-labelledby="day-title">
      <h2 id="day-title" className="for-ears">
        {BENCH_PAGE.theDay}
      </h2>
      {last !== today && (
        <p className="was">
          <span>{last === null ? BENCH_PAGE.noDayAtBenchYet : BENCH_PAGE.readingsGoToDay(last)}</span>
          <button type="button" className="plain" onClick={begin}>
            {BENCH_PAGE.begin} {today}
            {last === null ? '' : BENCH_PAGE.sameInstruments}
          </button>
        </p>
      )}
      <ol>
        {DAY.map((one) => {
          if ('point' in one) {
            const words = POINT_WORDS[one.point];
            const left = view.lastChance.find(({ before }) => before === one.point)?.measures.length ?? 0;
            const passed = isPassed(one.point, view);
            return (
              <li key={one.point} className="point">
                <button type="button" onClick={() => goTo({ is: 'point', id: one.point })} disabled={passed}>
                  <b>{passed ? words.done : words.before}</b>
                  <span>
                    {passed ? BENCH_PAGE.noWayBack : left === 0 ? BENCH_PAGE.nothingLeftForBefore : BENCH_PAGE.countOnlyNow(left)}
                  </span>
                </button>
              </li>
            );
          }
          const progress = progressOf(one, exhibits, view);
          return (
            <li key={one.id} className={`${progress}${one.id === next ? ' next' : ''}`}>
              <button type="button" onClick={() => goTo({ is: 'step', id: one.id })} aria-current={one.id === next ? 'step' : undefined}>
                <b>{DAY_WORDS[one.id]}</b>
                <span>{one.id === next ? BENCH_PAGE.next(PROGRESS_WORDS[progress]) : PROGRESS_WORDS[progress]}</span>
              </button>
            </li>
          );
        })}
      </ol>
      <MarkList />
    </section>
  );
}
