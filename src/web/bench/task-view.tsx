import type { Json } from '../../app/casebook/change.ts';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { PICK_WORDS, TASK_WORDS } from '../../present/words/bench-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import type { CaseStore } from '../state/case-store.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { ActRow, KeepKey } from './act-row.tsx';
import { AskPanel, ChosenLine, useAskAtHand } from './ask-panel.tsx';
import { chosenFor, openAsks } from './ask-state.ts';
import type { Tree } from './day-order.ts';

import { findMarks } from './marks.ts';
import { NumberView } from './number-view.tsx';
import { pickText } from './pick-text.ts';
import { MarkList } from './side-panel.tsx';
import type { Task } from './task/task.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useHands } from './use-hands.ts';

const WATCHES: Readonly<Record<string, 'outputVoltage' | 'temperature'>> = {
  idle: 'outputVoltage',
  soakRow: 'temperature',
  spotOutside: 'temperature',
};

/** Readings that the caution above shows too, and that open what is shut: kept there as well. */
const SHOWN_AT: Readonly<Record<string, string>> = { residual: 'residual-now', residualLater: 'residual-later' };

export function NumberTask({ task }: { task: Extract<Task, { entry: 'number' }> }) {
  const { store } = useOpenPage();
  const { step, live } = useHands();
  const shownAt = SHOWN_AT[task.id];
  const { what } = TASK_WORDS[task.id] ?? { what: task.id };
  const last = task.kept(store).at(-1);
  return (
    <NumberView
      what={what}
      number={task.number}
      other={task.other}
      asks={task.asks}
      was={last === undefined ? BENCH_PAGE.nothingKeptYet : BENCH_PAGE.last(valueText(last))}
      level={null}
      watches={WATCHES[task.id] ?? null}
      canMark={step?.open !== 'live' || live}
      takesStates={task.other?.needed !== true}
      target={null}
      changesFor={(_typed, given) => task.keep(store, given)}
      {...(shownAt === undefined ? {} : { onKept: (text: string | null) => showResidual(store, shownAt, text) })}
    />
  );
}

/** In the caution too, where it opens what was shut; it stands in the case already. */
function showResidual(store: CaseStore, at: string, text: string | null): void {
  store.setScreen(at, text?.replace(/ V$/, '') ?? null);
  const id = listOf(store, 'exhibits').findLast(({ kind }) => kind === 'residual')?.['id'];
  const kept = text === null || id === undefined ? null : String(id);
  store.setScreen('residual-kept', at === 'residual-now' || kept === null ? kept : `${kept}+`);
}

/** One press answers: what was seen. */
export function PickTask({ task }: { task: Extract<Task, { entry: 'pick' }> }) {
  const { store } = useOpenPage();
  const hands = useHands();
  const last = task.kept(store).at(-1);
  const pick = (key: string, value: Json): void =>
    hands.keep(task.keep(store, { value, chosen: {}, at: hands.now() }), 'keep', pickText(key));
  useBenchKeys({ space: () => undefined, enter: () => undefined, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <div className="keys picks">
          {task.picks.map(({ key, value }) => (
            <button type="button" key={key} aria-pressed={JSON.stringify(value) === JSON.stringify(last)} onClick={() => pick(key, value)}>
              {pickText(key)}
            </button>
          ))}
        </div>
        <p className="was">{last === undefined ? BENCH_PAGE.nothingKeptYet : BENCH_PAGE.keptValue(valueText(last))}</p>
      </section>
      <aside className="beside">
        <MarkList />
      </aside>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <KeepKey words={BENCH_PAGE.onePressKeeps} missing={BENCH_PAGE.above} ready={false} onKeep={() => undefined} />
      </ActRow>
    </>
  );
}

/** Each press is one try, and says how it went. */
export function TriesTask({ task }: { task: Extract<Task, { entry: 'tries' }> }) {
  const { store } = useOpenPage();
  useSnapshot();
  const hands = useHands();
  const open = openAsks(task.asks, hands.chosen, store)[0];
  const { ask, left } = useAskAtHand(task.asks);
  const kept = task.kept(store) as readonly Tree[];
  const made = kept.reduce((sum, tries) => sum + Number(tries['made'] ?? 0), 0);
  const failed = kept.reduce((sum, tries) => sum + Number(tries['failed'] ?? 0), 0);
  const count = (well: boolean): void => {
    if (open !== undefined) return;
    const chosen = chosenFor(task.asks, hands.chosen, store);
    hands.keep(
      task.keep(store, { value: well, chosen, at: hands.now() }),
      'keep',
      well ? BENCH_PAGE.oneThatWentWell : BENCH_PAGE.oneThatFailed,
    );
  };
  useBenchKeys({ space: () => count(true), enter: () => undefined, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <ChosenLine asks={task.asks} />
        {ask !== undefined ? (
          <AskPanel key={ask.key} ask={ask} left={left} />
        ) : (
          <>
            <p className="bench-what">
              {TASK_WORDS[task.id]?.what ?? task.id}
              {BENCH_PAGE.triesMade}
            </p>
            <p className="count">{made}</p>
            <p className="was">{failed === 0 ? BENCH_PAGE.noneFailed : BENCH_PAGE.failed(failed)}</p>
            {hands.kept !== null && (
              <button type="button" className="plain" onClick={hands.kept.takeBack}>
                {BENCH_PAGE.undo} {hands.kept.words}
              </button>
            )}
          </>
        )}
      </section>
      <aside className="beside">
        <MarkList />
      </aside>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <span className="two">
          <button type="button" disabled={open !== undefined} onClick={() => count(false)}>
            {BENCH_PAGE.failedKey}
          </button>
          <button type="button" className="keep" disabled={open !== undefined} onClick={() => count(true)}>
            {BENCH_PAGE.wentWell}
            <small>{BENCH_PAGE.space}</small>
          </button>
        </span>
      </ActRow>
    </>
  );
}

/** What is kept, in words: a reading, a state with its reason, tries. */
export function valueText(value: Json): string {
  if (value === true || value === false) return pickText(value ? 'yes' : 'no');
  if (typeof value === 'string') return PICK_WORDS[value] ?? choiceWords(value);
  if (typeof value !== 'object' || value === null) return String(value);
  const tree = value as Tree;
  if (tree['v'] !== undefined) return valueText(tree['v']);
  if (tree['state'] === 'marked') return BENCH_PAGE.markAt(String(tree['at']).slice(String(tree['at']).indexOf('T') + 1));
  if (tree['state'] !== undefined)
    return `${choiceWords(String(tree['state']))}${tree['because'] === undefined ? '' : `: ${String(tree['because'])}`}`;
  if (tree['made'] !== undefined) return BENCH_PAGE.madeFailed(String(tree['made']), String(tree['failed']));
  return '';
}
