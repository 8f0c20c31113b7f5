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
        The day
      </h2>
      {last !== today && (
        <p className="was">
          <span>{last === null ? 'No day at the bench yet.' : `Readings go to the day of ${last}.`}</span>
          <button type="button" className="plain" onClick={begin}>
            Begin {today}
            {last === null ? '' : ', same instruments'}
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
                  <span>{passed ? 'no way back' : left === 0 ? 'nothing left for before' : `${left} only now`}</span>
                </button>
              </li>
            );
          }
          const progress = progressOf(one, exhibits, view);
          return (
            <li key={one.id} className={`${progress}${one.id === next ? ' next' : ''}`}>
              <button type="button" onClick={() => goTo({ is: 'step', id: one.id })} aria-current={one.id === next ? 'step' : undefined}>
                <b>{DAY_WORDS[one.id]}</b>
                <span>{one.id === next ? `${PROGRESS_WORDS[progress]}, next` : PROGRESS_WORDS[progress]}</span>
              </button>
            </li>
          );
        })}
      </ol>
      <MarkList />
    </section>
  );
}
