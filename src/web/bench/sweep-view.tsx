import { useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { ASK_WORDS, BENCH_NOTES, BENCH_WORDS } from '../../present/words/bench-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { residualState } from '../part/residual.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { ActRow, KeepKey, rowWords } from './act-row.tsx';
import { optionText } from './ask-panel.tsx';
import { openAsks } from './ask-state.ts';
import { stopsOf } from './crossed-stop.ts';
import type { Tree } from './day-order.ts';
import { findMarks } from './marks.ts';
import { NumberView } from './number-view.tsx';
import { currentText, planCurrents, readCurrents } from './planned-currents.ts';
import { beginSweep, claimOf, endSweep, findSweep, isEnded, keepRow, rowsOf } from './sweep-record.ts';
import { FREQUENCY, MAINS_VOLTAGE, PORT, SUPPLY } from './task/asks.ts';
import { type Ask, choices } from './task/task.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useHands } from './use-hands.ts';

const DWELLS = ['20 s', '30 s', '60 s']; // above the claim no longer than 20 s a point; common practice
const LEVEL: Ask = {
  key: 'level',
  options: (reader) =>
    listOf(reader, 'ports').flatMap((port) =>
      ((port['levels'] ?? []) as readonly Tree[]).map((level) => ({
        value: `${String(port['id'])}~${String(level['id'])}`,
        name: `${String(port['name'] ?? port['id'])}, ${String(level['voltage'])}`,
      })),
    ),
};
const SET_UP: readonly Ask[] = [
  MAINS_VOLTAGE,
  FREQUENCY,
  SUPPLY,
  { key: 'sense', options: choices('socket', 'cableEnd') },
  { key: 'order', options: choices('up', 'down') },
  { key: 'cover', options: choices('closed', 'open') },
  { key: 'dwell', options: () => DWELLS.map((value) => ({ value, name: value })) },
];

/** A sweep: set up once, then a voltage for each current, until the plan is done or the load goes off. */
export function SweepView() {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const sweep = findSweep(store, screen['bench-sweep']);
  if (sweep === null) return <SetUp />;
  return isEnded(sweep) ? <Ended sweep={sweep} /> : <Rows sweep={sweep} />;
}

/** "port~level" that is chosen: the level's, or the port where it has none. */
function targetOf(reader: Parameters<Ask['options']>[0], chosen: Readonly<Record<string, string>>) {
  const levels = LEVEL.options(reader);
  const ask = levels.length > 0 ? LEVEL : PORT;
  const options = ask.options(reader);
  const value = options.length === 1 ? options[0]?.value : options.find((one) => one.value === chosen[ask.key])?.value;
  const [port = null, level = null] = (value ?? '').split('~');
  return { ask, port: port === '' ? null : port, level };
}

function planFor(
  reader: Parameters<Ask['options']>[0],
  view: Parameters<typeof stopsOf>[0],
  port: string | null,
  level: string | null,
): string {
  const claim = claimOf(reader, port, level);
  if (claim === null) return '';
  const stop = stopsOf(view, level === null ? null : `${port}~${level}`).find(({ of }) => of === 'outputCurrent');
  return planCurrents(claim, stop?.value ?? null)
    .map(currentText)
    .join(' ');
}

function SetUp() {
  const { store } = useOpenPage();
  const { view, screen } = useSnapshot();
  const hands = useHands();
  const { chosen, choose } = hands;
  const { ask, port, level } = targetOf(store, chosen);
  const [typed, setTyped] = useState<string | null>(null);
  const planned = planFor(store, view.next, port, level);
  const plan = typed ?? planned;
  const currents = readCurrents(plan);
  const asks = [ask, ...SET_UP];
  const open = openAsks(asks, chosen, store);
  // with the cover off, hands were inside to connect: a residual comes first
  const shut = chosen['cover'] === 'open' && residualState(screen['residual-now'] ?? '') !== 'low';
  const ready = open.length === 0 && currents !== null && currents.length > 0 && !shut;
  const begin = (): void => {
    if (!ready || currents === null) return;
    const of = (key: string): string => chosen[key] ?? '';
    const ordered = of('order') === 'down' ? currents.toReversed() : currents;
    const set = {
      port,
      level,
      mains: of('mains'),
      frequency: of('frequency'),
      supply: of('supply'),
      sense: of('sense'),
      order: of('order'),
      cover: of('cover'),
      dwell: of('dwell'),
    };
    const { id, changes } = beginSweep(store, set, hands.now());
    store.change(changes, newItemId('sweep'), { key: 'sweep', args: {} });
    store.setScreen('bench-sweep', id);
    store.setScreen('bench-points', ordered.map(currentText).join(' '));
    hands.restart(true);
    hands.powerUp();
  };
  useBenchKeys({ space: () => undefined, enter: begin, undo: () => void store.undo(), letters: {} });
  const missing =
    open[0] === undefined
      ? currents === null || currents.length === 0
        ? BENCH_PAGE.theCurrentsToSet
        : ''
      : BENCH_WORDS.chooseFirst(ASK_WORDS[open[0].key] ?? open[0].key);
  return (
    <>
      <section className="bench-entry set-up">
        {asks.map((one) => {
          const options = one.options(store);
          if (options.length < 2) return null;
          return (
            <fieldset key={one.key}>
              <legend>{ASK_WORDS[one.key] ?? one.key}</legend>
              <div className="keys">
                {options.map((option) => (
                  <button
                    type="button"
                    key={option.value}
                    aria-pressed={chosen[one.key] === option.value}
                    onClick={() => choose(one.key, option.value)}
                  >
                    {optionText(option)}
                  </button>
                ))}
              </div>
            </fieldset>
          );
        })}
        <label className="plan">
          <span>{BENCH_PAGE.currentsToSetA}</span>
          <input value={plan} onChange={(event) => setTyped(event.target.value)} autoComplete="off" />
        </label>
        {shut && <p className="locked">{BENCH_WORDS.closed}</p>}
        {planned === '' && typed === null && <p className="was">{BENCH_WORDS.planNeeded}</p>}
      </section>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <KeepKey words={BENCH_PAGE.begin} missing={missing} ready={ready} onKeep={begin} />
      </ActRow>
    </>
  );
}

function Rows({ sweep }: { sweep: Tree }) {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const hands = useHands();
  const rows = rowsOf(sweep);
  const points = (screen['bench-points'] ?? '').split(' ').filter((one) => one !== '');
  const current = points[rows.length];
  const next = points[rows.length + 1];
  const [editing, setEditing] = useState<string | null>(null);
  const dwell = parseQuantity(String(sweep['dwell'] ?? DWELLS[0]), 'time');
  const covered = ((sweep['under'] ?? {}) as Tree)['cover'] !== 'open';
  const where = sweep['sense'] === 'cableEnd' ? BENCH_PAGE.voltageAtTheCableEnd : BENCH_PAGE.voltageAtTheSocket;
  const end = (how: string): void => store.change(endSweep(sweep, how), newItemId('end'), { key: 'sweep', args: {} });
  if (current === undefined) return <Planned sweep={sweep} onEnd={() => end(BENCH_NOTES.planDone)} />;
  const amps = Number(current);
  return (
    <NumberView
      what={where}
      number={{ key: 'outputVoltage', kind: 'voltage', units: ['V'] }}
      other={covered ? { key: 'inputPower', kind: 'power', units: ['W'] } : undefined}
      asks={[]}
      level={sweep['level'] === undefined ? null : `${String(sweep['port'])}~${String(sweep['level'])}`}
      watches="outputVoltage"
      set={{ outputCurrent: amps }}
      canMark
      takesStates={false}
      markOnly={!covered}
      target={isRefusal(dwell) ? null : dwell.value}
      was={<LastRows sweep={sweep} />}
      above={
        <div className="bench-set">
          <h2>{BENCH_PAGE.setTo(current)}</h2>
          <span>
            {rows.length + 1} {BENCH_PAGE.outOf} {points.length}
            {next === undefined ? BENCH_PAGE.theLast : BENCH_PAGE.thenA(next)}
          </span>
          {editing === null ? (
            <button type="button" className="plain" onClick={() => setEditing(points.slice(rows.length).join(' '))}>
              {BENCH_PAGE.otherCurrents}
            </button>
          ) : (
            <label className="plan">
              <span>{BENCH_PAGE.fromHereOnA}</span>
              <input
                value={editing}
                autoComplete="off"
                onChange={(event) => setEditing(event.target.value)}
                onBlur={() => {
                  const read = readCurrents(editing);
                  if (read !== null && read.length > 0)
                    store.setScreen('bench-points', [...points.slice(0, rows.length), ...read.map(currentText)].join(' '));
                  setEditing(null);
                }}
              />
            </label>
          )}
        </div>
      }
      changesFor={({ text, otherText, value }) => {
        const cell: Json = text === '' ? value : text;
        return keepRow(sweep, current, cell, otherText === '' ? undefined : otherText);
      }}
      key={hands.step?.id}
    />
  );
}

function LastRows({ sweep }: { sweep: Tree }) {
  const FEW = 3;
  const rows = rowsOf(sweep).slice(-FEW).toReversed();
  if (rows.length === 0) return <>{BENCH_PAGE.noRowYet}</>;
  return (
    <>
      {rows.map((row) => (
        <span key={row.id}>{rowWords(row)}</span>
      ))}
    </>
  );
}

/** The plan is done: say so, or add currents. */
function Planned({ sweep, onEnd }: { sweep: Tree; onEnd: () => void }) {
  const { store } = useOpenPage();
  const { kept } = useHands();
  useBenchKeys({ space: () => undefined, enter: onEnd, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <h2>{BENCH_PAGE.allPlannedCurrentsAreTaken}</h2>
        <p className="was">
          <LastRows sweep={sweep} />
        </p>
        {kept !== null && (
          <button type="button" className="plain" onClick={kept.takeBack}>
            {BENCH_PAGE.undo} {kept.words}
          </button>
        )}
      </section>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <button type="button" className="keep" onClick={onEnd}>
          {BENCH_PAGE.endTheSweep}
          <small>{BENCH_PAGE.enter}</small>
        </button>
      </ActRow>
    </>
  );
}

/** What it did beyond the last row, and on to the next sweep. */
function Ended({ sweep }: { sweep: Tree }) {
  const { store } = useOpenPage();
  const hands = useHands();
  const at = `/case/exhibits/${String(sweep['id'])}/beyond`;
  const next = (): void => store.setScreen('bench-sweep', null);
  useBenchKeys({ space: () => undefined, enter: next, undo: () => void store.undo(), letters: {} });
  return (
    <>
      <section className="bench-entry">
        <h2>
          {BENCH_PAGE.sweepEnded} {String(sweep['ends'])}
        </h2>
        <p className="bench-what">{BENCH_PAGE.beyondTheLastRow}</p>
        <div className="keys">
          {choices('keepsGiving', 'triesAgain', 'staysOff')().map((option) => (
            <button
              type="button"
              key={option.value}
              aria-pressed={sweep['beyond'] === option.value}
              onClick={() => hands.keep([{ at, was: sweep['beyond'] as Json | undefined, to: option.value }], 'keep', optionText(option))}
            >
              {option.value === 'staysOff' ? BENCH_PAGE.staysOffUntilTakenAway : optionText(option)}
            </button>
          ))}
        </div>
        <p className="was">
          <LastRows sweep={sweep} />
        </p>
      </section>
      <ActRow onMark={null} markNumber={findMarks(store).length + 1} target={null}>
        <button type="button" className="keep" onClick={next}>
          {BENCH_PAGE.nextSweep}
          <small>{BENCH_PAGE.enter}</small>
        </button>
      </ActRow>
    </>
  );
}
