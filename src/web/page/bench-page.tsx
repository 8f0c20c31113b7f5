import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { BENCH_WORDS, DAY_WORDS, TASK_WORDS } from '../../present/words/bench-words.ts';
import { stepWords } from '../../present/words/step-words.ts';
import { ActRow } from '../bench/act-row.tsx';
import { BeforeSheet } from '../bench/before-sheet.tsx';
import { allowSound } from '../bench/bench-signal.ts';
import { DayList } from '../bench/day-list.tsx';
import { type Point, STEPS } from '../bench/day-order.ts';
import { nextStep } from '../bench/day-progress.ts';
import { findMarks } from '../bench/marks.ts';
import { StepView, TaskTabs, useTask } from '../bench/step-view.tsx';
import { useBenchKeys } from '../bench/use-bench-keys.ts';
import { HandsContext, useHands, useMakeHands } from '../bench/use-hands.ts';
import { useWakeLock } from '../bench/use-wake-lock.ts';
import { Link } from '../part/link.tsx';
import { listOf } from '../part/new-exhibit.ts';
import { Residual } from '../part/residual.tsx';
import type { CaseStore } from '../state/case-store.ts';
import { toCasePath } from '../state/route.ts';
import { CaseContext, type OpenPage, useOpenPage, useSnapshot } from '../state/use-case.ts';
import { useOpenedCase } from '../state/use-opened-case.ts';

/** The day at the bench, large and one-handed. */
export function BenchPage({ id }: { id: string }) {
  const { store, form, trouble } = useOpenedCase(id);
  if (trouble !== '')
    return (
      <main className="alone">
        <p className="trouble" role="alert">
          {trouble}
        </p>
        <Link to="/">{BENCH_PAGE.toTheCasebook}</Link>
      </main>
    );
  if (store === null || form === null) return <main className="alone" aria-busy="true" />;
  return <OpenBench store={store} form={form} />;
}

function OpenBench({ store, form }: Pick<OpenPage, 'store' | 'form'>) {
  const page = useMemo<OpenPage>(
    () => ({ store, form, openOrigin: () => undefined, goToField: () => undefined, showFinding: () => undefined }),
    [store, form],
  );
  return (
    <CaseContext.Provider value={page}>
      <WithHands store={store} />
    </CaseContext.Provider>
  );
}

function WithHands({ store }: { store: CaseStore }) {
  useSyncExternalStore(store.subscribe, store.get);
  const hands = useMakeHands();
  useWakeLock();
  useEffect(() => {
    document.addEventListener('pointerdown', allowSound);
    document.addEventListener('keydown', allowSound);
    return () => {
      document.removeEventListener('pointerdown', allowSound);
      document.removeEventListener('keydown', allowSound);
    };
  }, []);
  return (
    <HandsContext.Provider value={hands}>
      <Bench />
    </HandsContext.Provider>
  );
}

function Bench() {
  const { store } = useOpenPage();
  const { at, step, leftHand } = useHands();
  const name = String((store.valueAt('/case/product/name') as string | undefined) ?? '');
  useEffect(() => {
    document.title = BENCH_PAGE.atTheBench(name);
  }, [name]);
  return (
    <main className={`bench${leftHand ? ' left' : ''}`} data-at={at.is}>
      <BenchCaution />
      <BenchHead name={name} />
      {at.is === 'day' && <Day />}
      {at.is === 'point' && <BeforeSheet key={at.id} point={at.id as Point} />}
      {at.is === 'step' && step !== null && <StepView step={step} />}
    </main>
  );
}

/** How much energy to reckon with, and the measured residual: always on top, never closed. */
function BenchCaution() {
  const { view } = useSnapshot();
  const { live, setLive } = useHands();
  return (
    <section className="caution" aria-label={BENCH_PAGE.caution}>
      <svg viewBox="0 0 40 40" aria-hidden="true">
        <path className="ground" d="M20 4L38 36H2Z" />
        <path className="sign" d="M20 14v11M20 29v3.6" />
      </svg>
      <p>
        <b>{view.caution.energy}</b> <span>{live ? BENCH_WORDS.live : BENCH_WORDS.discharge}</span>
      </p>
      {live ? (
        <button type="button" className="plain" onClick={() => setLive(false)}>
          {BENCH_PAGE.mainsOffPlugOut}
        </button>
      ) : (
        <Residual />
      )}
    </section>
  );
}

function BenchHead({ name }: { name: string }) {
  const { store } = useOpenPage();
  const { id, waiting, trouble, undo } = useSnapshot();
  const hands = useHands();
  const { step, at, leftHand } = hands;
  const task = useTask(step);
  const number = step === null ? 0 : STEPS.indexOf(step) + 1;
  const invented = store.valueAt('/case/invented') === true;
  const title = step === null ? name : tasksTitle(step.id, task?.id);
  return (
    <header className="head">
      <button type="button" className="plain" onClick={() => hands.goTo({ is: 'day' })} disabled={at.is === 'day'}>
        {step === null ? BENCH_PAGE.theDay : BENCH_PAGE.stepOf(number, STEPS.length)}
      </button>
      <h1>{title}</h1>
      <span className="then">
        {step === null || title === DAY_WORDS[step.id] ? '' : `${DAY_WORDS[step.id]}. `}
        {invented ? BENCH_PAGE.inventedData : ''}
        <span role="status">
          {trouble !== null ? trouble.words : waiting > 0 ? BENCH_PAGE.notOnTheDiskYet(waiting) : BENCH_PAGE.allOnTheDisk}
        </span>
      </span>
      <span className="tools">
        <button type="button" className="plain" disabled={undo === null} onClick={() => void store.undo()}>
          {BENCH_PAGE.undo}
          <span className="for-ears"> {stepWords(undo)}</span>
        </button>
        <button
          type="button"
          className="plain"
          aria-pressed={leftHand}
          onClick={() => store.setScreen('bench-hand', leftHand ? null : 'left')}
        >
          {BENCH_PAGE.leftHand}
        </button>
        <Link className="plain" to={toCasePath(id, 'judgement')}>
          {BENCH_PAGE.toTheCase}
        </Link>
      </span>
      {step !== null && <TaskTabs step={step} />}
    </header>
  );
}

function tasksTitle(step: string, task: string | undefined): string {
  return TASK_WORDS[task ?? '']?.title ?? DAY_WORDS[step] ?? '';
}

function Day() {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const { goTo } = useHands();
  const next = nextStep(listOf(store, 'exhibits'), view);
  const on = (): void => goTo({ is: 'step', id: next });
  useBenchKeys({ space: () => undefined, enter: on, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <DayList />
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <button type="button" className="keep" onClick={on}>
          {DAY_WORDS[next]}
          <small>{BENCH_PAGE.enterGoOnWithIt}</small>
        </button>
      </ActRow>
    </>
  );
}
