import { useState } from 'react';
import { DAY_WORDS, POINT_WORDS, PROGRESS_WORDS } from '../../present/words/bench-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { useLoadOff } from './act-row.tsx';
import { costOf } from './cost-of.ts';
import { DAY, type DayStep, type Point, stepOfMeasure } from './day-order.ts';
import { isPassed, progressOf } from './day-progress.ts';
import { passPoint } from './open-anyway.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useHands } from './use-hands.ts';

const POINTS: readonly Point[] = ['opening', 'desoldering', 'unwinding'];

/** Before something that cannot be taken back: what can only be measured now, what is kept, and what going on costs. */
export function BeforeSheet({ point }: { point: Point }) {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const hands = useHands();
  const off = useLoadOff();
  const [reasons, setReasons] = useState<Readonly<Record<string, string>> | null>(null);
  const words = POINT_WORDS[point];
  const left = view.lastChance.find(({ before }) => before === point)?.measures ?? [];
  const cost = costOf(
    left.map(({ measure }) => measure),
    view,
  );
  const exhibits = listOf(store, 'exhibits');
  const kept = stepsBefore(point).filter((step) => ['done', 'begun'].includes(progressOf(step, exhibits, view)));
  const complete = left.every(({ measure }) => (reasons?.[measure] ?? '').trim() !== '');
  const pass = (): void => {
    if (left.length > 0 && reasons === null) {
      setReasons({});
      return;
    }
    if (!complete) return;
    const out = left.map(({ measure }) => ({ measure, reason: (reasons?.[measure] ?? '').trim() }));
    store.change(passPoint(store, point, out, hands.now()), newItemId('point'), { key: 'milestone', args: {} });
    hands.goTo({ is: 'day' });
  };
  const [first] = left;
  const doIt = (measure: string): void => hands.goTo({ is: 'step', id: stepOfMeasure(measure) ?? '' });
  useBenchKeys({ space: () => undefined, enter: () => undefined, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="before" aria-labelledby="before-title">
        <header>
          <h2 id="before-title">{words.before} it</h2>
          <p>What can be measured only {words.still}.</p>
          <ol className="points" aria-label="points of no return">
            {POINTS.map((one) => (
              <li key={one} aria-current={one === point ? 'step' : undefined}>
                {isPassed(one, view) ? POINT_WORDS[one].done : POINT_WORDS[one].point}
              </li>
            ))}
          </ol>
        </header>
        <div className="lists">
          <section className="only" aria-labelledby="only-title">
            <h3 id="only-title">
              Only now <span>{left.length === 0 ? 'nothing left' : `${left.length} left`}</span>
            </h3>
            <ul>
              {left.map(({ measure, words: sentence }) => {
                const next = view.next.find((one) => one.measure === measure);
                return (
                  <li key={measure}>
                    <span>
                      <b>{sentence}</b>
                      <span className="w">{next === undefined || next.hazards.length === 0 ? 'no hazard' : next.hazards.join('; ')}</span>
                      {reasons !== null && (
                        <label className="plan">
                          <span>left, because</span>
                          <input
                            value={reasons[measure] ?? ''}
                            onChange={(event) => setReasons({ ...reasons, [measure]: event.target.value })}
                          />
                        </label>
                      )}
                    </span>
                    <button type="button" onClick={() => doIt(measure)}>
                      Do it
                    </button>
                  </li>
                );
              })}
            </ul>
          </section>
          <section className="done" aria-labelledby="kept-title">
            <h3 id="kept-title">
              Kept <span>{kept.length}</span>
            </h3>
            <ul>
              {kept.map((step) => (
                <li key={step.id}>
                  <b>{DAY_WORDS[step.id]}</b>
                  <span className="w">
                    {PROGRESS_WORDS[progressOf(step, exhibits, view)]}, {countWords(exhibits.filter(step.shows).length)}
                  </span>
                </li>
              ))}
            </ul>
          </section>
        </div>
      </section>
      <nav className="acts end" aria-label="keys of the bench">
        <button type="button" className="halt" onClick={off}>
          Load off
        </button>
        <p>{costText(words.point, left.length, cost)}</p>
        <button type="button" disabled={reasons !== null && !complete} onClick={pass}>
          {left.length === 0 ? words.go : words.anyway}
          <small>
            {left.length === 0
              ? 'kept with the time'
              : reasons === null
                ? 'give a reason for each'
                : complete
                  ? 'kept, not undone lightly'
                  : 'a reason is missing'}
          </small>
        </button>
        {first !== undefined && (
          <button type="button" className="keep" onClick={() => doIt(first.measure)}>
            Do the first
            <small>{DAY_WORDS[stepOfMeasure(first.measure) ?? '']}</small>
          </button>
        )}
      </nav>
    </>
  );
}

function stepsBefore(point: Point): readonly DayStep[] {
  const at = DAY.findIndex((one) => 'point' in one && one.point === point);
  return DAY.slice(0, at).flatMap((one) => ('id' in one ? [one] : []));
}

function countWords(count: number): string {
  return count === 1 ? '1 entry' : `${count} entries`;
}

function costText(point: string, left: number, { shock, fire }: { readonly shock: number; readonly fire: number }): string {
  if (left === 0) return 'Nothing is lost by going on.';
  const parts = [...(shock > 0 ? [`${shock} for shock`] : []), ...(fire > 0 ? [`${fire} for fire`] : [])];
  const lost =
    parts.length === 0
      ? 'No check for shock or fire hangs on them.'
      : `Checks that may then never be settled: ${parts.join(', ')}. Coverage stays short by them.`;
  return `${point[0]?.toUpperCase()}${point.slice(1)} turns what is left into “cannot now”. ${lost}`;
}
