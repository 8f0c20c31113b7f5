import { useState } from 'react';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
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
          <h2 id="before-title">{BENCH_PAGE.beforeIt(words.before)}</h2>
          <p>{BENCH_PAGE.onlyWhile(words.still)}</p>
          <ol className="points" aria-label={BENCH_PAGE.pointsOfNoReturn}>
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
              {BENCH_PAGE.onlyNow} <span>{left.length === 0 ? BENCH_PAGE.nothingLeft : BENCH_PAGE.left(left.length)}</span>
            </h3>
            <ul>
              {left.map(({ measure, words: sentence }, index) => {
                const next = view.next.find((one) => one.measure === measure);
                return (
                  <li key={measure}>
                    <span>
                      <b>{sentence}</b>
                      <span className="w">
                        {next === undefined || next.hazards.length === 0 ? BENCH_PAGE.noHazard : next.hazards.join('; ')}
                      </span>
                      {reasons !== null && (
                        <span className="plan">
                          <label>
                            <span>{BENCH_PAGE.leftBecause}</span>
                            <input
                              value={reasons[measure] ?? ''}
                              onChange={(event) => setReasons({ ...reasons, [measure]: event.target.value })}
                            />
                          </label>
                          {index > 0 && (reasons[measure] ?? '') === '' && (reasons[left[index - 1]?.measure ?? ''] ?? '') !== '' && (
                            <button
                              type="button"
                              className="plain"
                              onClick={() => setReasons({ ...reasons, [measure]: reasons[left[index - 1]?.measure ?? ''] ?? '' })}
                            >
                              {BENCH_PAGE.sameAsAbove}
                            </button>
                          )}
                        </span>
                      )}
                    </span>
                    <button type="button" onClick={() => doIt(measure)}>
                      {BENCH_PAGE.doIt}
                    </button>
                  </li>
                );
              })}
            </ul>
          </section>
          <section className="done" aria-labelledby="kept-title">
            <h3 id="kept-title">
              {BENCH_PAGE.kept} <span>{kept.length}</span>
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
      <nav className="acts end" aria-label={BENCH_PAGE.keysOfTheBench}>
        <button type="button" className="halt" onClick={off}>
          {BENCH_PAGE.loadOff}
        </button>
        <p>{costText(words.point, left.length, cost)}</p>
        <button type="button" disabled={reasons !== null && !complete} onClick={pass}>
          {left.length === 0 ? words.go : words.anyway}
          <small>
            {left.length === 0
              ? BENCH_PAGE.keptWithTheTime
              : reasons === null
                ? BENCH_PAGE.giveAReasonForEach
                : complete
                  ? BENCH_PAGE.keptNotUndoneLightly
                  : BENCH_PAGE.aReasonIsMissing}
          </small>
        </button>
        {first !== undefined && (
          <button type="button" className="keep" onClick={() => doIt(first.measure)}>
            {BENCH_PAGE.doTheFirst}
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
  return BENCH_PAGE.entries(count);
}

function costText(point: string, left: number, { shock, fire }: { readonly shock: number; readonly fire: number }): string {
  if (left === 0) return BENCH_PAGE.nothingIsLostByGoing;
  const parts = [...(shock > 0 ? [BENCH_PAGE.forShock(shock)] : []), ...(fire > 0 ? [BENCH_PAGE.forFire(fire)] : [])];
  const lost = parts.length === 0 ? BENCH_PAGE.noCheckForShockOr : BENCH_PAGE.checksThatMayThenNever(parts.join(', '));
  return BENCH_PAGE.turnsWhatIsLeftInto(point[0]?.toUpperCase(), point.slice(1), lost);
}
