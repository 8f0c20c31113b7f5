import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { BENCH_WORDS, DAY_WORDS, TASK_WORDS } from '../../present/words/bench-words.ts';
import { Link } from '../part/link.tsx';
import { toCasePath } from '../state/route.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { ActRow, KeepKey } from './act-row.tsx';
import { AskPanel, ChosenLine, useAskAtHand } from './ask-panel.tsx';
import { openAsks } from './ask-state.ts';
import { BeforeSheet } from './before-sheet.tsx';
import type { DayStep } from './day-order.ts';
import { pointAhead } from './day-progress.ts';
import { FillView } from './fill-view.tsx';
import { findMarks } from './marks.ts';
import { MarkList } from './side-panel.tsx';
import { SweepView } from './sweep-view.tsx';
import type { Ask, Task } from './task/task.ts';
import { TASKS_OF } from './task/tasks-of.ts';
import { NumberTask, PickTask, TriesTask } from './task-view.tsx';
import { TurnsView } from './turns-view.tsx';
import { useBenchKeys } from './use-bench-keys.ts';
import { useHands } from './use-hands.ts';

/** The task at hand: the one that was chosen, else the first of which nothing is kept. */
export function useTask(step: DayStep | null): Task | null {
  const { store } = useOpenPage();
  const { task } = useHands();
  const tasks = TASKS_OF[step?.id ?? ''] ?? [];
  const open = tasks.find((one) => 'kept' in one && one.kept(store).length === 0);
  return tasks.find(({ id }) => id === task) ?? open ?? tasks[0] ?? null;
}

/** One step of the day. What lies behind a point of no return shows what is lost by going there first. */
export function StepView({ step }: { step: DayStep }) {
  const { view } = useSnapshot();
  const hands = useHands();
  const task = useTask(step);
  const point = pointAhead(step.id, view);
  if (hands.filling !== null) return <FillView mark={hands.filling} />;
  if (point !== null) return <BeforeSheet key={point} point={point} />;
  // the residual itself is measured at arm's length: it is what opens the rest
  const isResidual = step.id === 'open' && task?.entry === 'number';
  if (step.open !== undefined && !hands.reachable && !hands.live && !isResidual) return <Shut live={step.open === 'live'} />;
  if (step.open === 'live' && !hands.live) return <BeforePower asks={task !== null && 'asks' in task ? task.asks : []} />;
  if (step.desk !== undefined) return <AtTheDesk step={step} desk={step.desk} />;
  switch (task?.entry) {
    case 'number':
      return <NumberTask key={task.id} task={task} />;
    case 'pick':
      return <PickTask key={task.id} task={task} />;
    case 'tries':
      return <TriesTask key={task.id} task={task} />;
    case 'sweep':
      return <SweepView />;
    case 'turns':
      return <TurnsView />;
    default:
      return <Said words={BENCH_WORDS.opened} />;
  }
}

/** Tasks of a step, to choose from; the one at hand is marked. */
export function TaskTabs({ step }: { step: DayStep }) {
  const { store } = useOpenPage();
  const { goToTask, filling } = useHands();
  const at = useTask(step);
  const tasks = TASKS_OF[step.id] ?? [];
  if (tasks.length < 2 || filling !== null) return null;
  return (
    <ul className="tasks" aria-label={BENCH_PAGE.readingsOfThisStep}>
      {tasks.map((task) => (
        <li key={task.id}>
          <button type="button" aria-current={task === at ? 'step' : undefined} onClick={() => goToTask(task.id)}>
            {TASK_WORDS[task.id]?.what ?? task.id}{' '}
            {'kept' in task && task.kept(store).length > 0 && (
              <small>
                {task.kept(store).length} {BENCH_PAGE.keptCount}
              </small>
            )}
          </button>
        </li>
      ))}
    </ul>
  );
}

/** The mains side lies open: nothing goes on before a measured residual. */
function Shut({ live }: { live: boolean }) {
  return <Said words={BENCH_WORDS.closed} more={live ? BENCH_WORDS.dead : BENCH_WORDS.discharge} />;
}

/** Everything is connected, nothing is live yet. */
function BeforePower({ asks }: { asks: readonly Ask[] }) {
  const { store } = useOpenPage();
  const { setLive, chosen } = useHands();
  const { ask, left } = useAskAtHand(asks);
  const [first] = openAsks(asks, chosen, store);
  const on = (): void => setLive(true);
  useBenchKeys({ space: () => undefined, enter: () => undefined, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <ChosenLine asks={asks} />
        {ask === undefined ? <p className="locked">{BENCH_WORDS.connect}</p> : <AskPanel key={ask.key} ask={ask} left={left} />}
      </section>
      <aside className="beside">
        <MarkList />
      </aside>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <button type="button" className="keep" disabled={first !== undefined} onClick={on}>
          {BENCH_PAGE.mainsOn}
          <small>{BENCH_PAGE.residualEmptiesOnlyMarksFrom}</small>
        </button>
      </ActRow>
    </>
  );
}

function AtTheDesk({ step, desk }: { step: DayStep; desk: string }) {
  const { id } = useSnapshot();
  return (
    <Said words={BENCH_WORDS.desk}>
      <Link className="plain" to={toCasePath(id, desk)}>
        {DAY_WORDS[step.id]}
        {BENCH_PAGE.onPageCase}
      </Link>
    </Said>
  );
}

function Said({ words, more, children }: { words: string; more?: string; children?: React.ReactNode }) {
  const { store } = useOpenPage();
  useBenchKeys({ space: () => undefined, enter: () => undefined, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <p className="locked">{words}</p>
        {more !== undefined && <p className="was">{more}</p>}
        {children}
      </section>
      <aside className="beside">
        <MarkList />
      </aside>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <KeepKey words={BENCH_PAGE.keep} missing={BENCH_PAGE.nothingToKeepHere} ready={false} onKeep={() => undefined} />
      </ActRow>
    </>
  );
}
