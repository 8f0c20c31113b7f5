import { useEffect, useState } from 'react';
import type { Change, Json } from '../../app/casebook/change.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { ASK_WORDS, BENCH_WORDS, OTHER_WORDS } from '../../present/words/bench-words.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { ActRow, KeepKey } from './act-row.tsx';
import { AskPanel, ChosenLine, useAskAtHand } from './ask-panel.tsx';
import { chosenFor, openAsks } from './ask-state.ts';
import { beep } from './bench-signal.ts';
import { BigField } from './big-field.tsx';
import { type Entered, isCrossed, stopsOf } from './crossed-stop.ts';
import { findMarks } from './marks.ts';
import { NumberPad, typedOn } from './number-pad.tsx';
import { MarkList, StopLines } from './side-panel.tsx';
import { StatePanel, type Why } from './state-panel.tsx';
import type { Ask, Given, NumberEntry } from './task/task.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useHands, withUnit } from './use-hands.ts';

/** What is kept of an entry: digits as typed, the same with the unit. */
export interface Typed {
  readonly text: string;
  readonly value: Json;
  readonly otherText: string;
  readonly other?: Json;
}

const UNKNOWN_KEY = '?';
const ABSENT_KEY = '-';
const MOST_STOPS = 3; // what can be read at a metre beside the entry

/** One big number, with what it is taken under, the stop limits it may cross, and the keys. */
export function NumberView({
  what,
  number,
  other,
  asks,
  was,
  level,
  watches,
  set,
  canMark,
  takesStates = true,
  markOnly = false,
  target,
  above,
  changesFor,
  onKept,
}: {
  what: string;
  number: NumberEntry;
  other?: (NumberEntry & { readonly needed?: true }) | undefined;
  asks: readonly Ask[];
  was: React.ReactNode;
  /** "port~level" whose stop limits count; null for all of them. */
  level: string | null;
  watches: keyof Entered | null;
  /** What was set and is not typed here: the current of a sweep, in ampere. */
  set?: Entered;
  canMark: boolean;
  /** Whether it may stand in the case that there is no number, and why. */
  takesStates?: boolean;
  /** The cover is off and it is live: nothing is typed. */
  markOnly?: boolean;
  target: number | null;
  above?: React.ReactNode;
  /** Changes that keep this; a mark comes without text. */
  changesFor: (typed: Typed, given: Given) => readonly Change[];
  /** What the page itself keeps of it; null when it is taken back. */
  onKept?: (text: string | null) => void;
}) {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const hands = useHands();
  const { chosen, choose, text, onOther } = hands;
  const live = hands.live || markOnly;
  const open = openAsks(asks, chosen, store);
  const { ask, left } = useAskAtHand(asks);
  const [why, setWhy] = useState<Why | 'unsaid' | null>(null);
  const unit = hands.unit(number.key, number.units);
  const otherUnit = other === undefined ? '' : hands.unit(other.key, other.units);
  const read = readAs(text, unit, number.kind);
  const readOther = other === undefined ? null : readAs(hands.other, otherUnit, other.kind);
  const entered: Entered = {
    ...set,
    ...(watches === null || read === null ? {} : { [watches]: read }),
    ...(other?.kind === 'power' && readOther !== null ? { inputPower: readOther } : {}),
  };
  const stops = stopsOf(view.next, level);
  const crossed = stops.filter((stop) => isCrossed(stop, entered));
  const alarm = crossed.map(({ words }) => words).join();
  useEffect(() => {
    if (alarm !== '') beep();
  }, [alarm]);
  const marks = findMarks(store).length;
  const needsOther = other?.needed === true && hands.other.trim() === '';
  const missing =
    open[0] !== undefined
      ? BENCH_WORDS.chooseFirst(ASK_WORDS[open[0].key] ?? open[0].key)
      : needsOther && text !== ''
        ? BENCH_PAGE.thenThe(OTHER_WORDS[other.key])
        : '';
  const ready = text.trim() !== '' && open.length === 0 && !live && !needsOther;
  const given = (value: Json, more?: Json): Given => ({
    value,
    ...(more === undefined ? {} : { other: more }),
    chosen: chosenFor(asks, chosen, store),
    at: hands.now(),
  });
  const settle = (): void => {
    for (const ask of asks) if (ask.everyTime === true) choose(ask.key, null);
  };
  const keepState = (state: Json, words: string): void => {
    hands.keep(changesFor({ text: '', value: state, otherText: '' }, given(state)), 'keep', words);
    setWhy(null);
    settle();
  };
  const mayState = takesStates && open.length === 0 && !live;
  const typeIn = (typed: string): void => {
    hands.type(typed);
    if (mayState && !onOther && typed.trim() === UNKNOWN_KEY) {
      hands.clear();
      setWhy('unknown');
    }
  };
  const keep = (): void => {
    if (mayState && text.trim() === ABSENT_KEY) {
      hands.clear();
      setWhy('absent');
      return;
    }
    if (needsOther && text.trim() !== '') {
      hands.turnTo(true);
      return;
    }
    if (!ready) return;
    const otherUnread = other !== undefined && hands.other.trim() !== '' && readOther === null;
    if (read === null || otherUnread) {
      hands.say(read === null ? BENCH_WORDS.notRead(text, what) : BENCH_WORDS.notRead(hands.other, OTHER_WORDS[other?.key ?? ''] ?? ''));
      return;
    }
    const value = withUnit(text, unit);
    const more = other === undefined || hands.other.trim() === '' ? undefined : withUnit(hands.other, otherUnit);
    const typed = { text: text.trim(), value, otherText: hands.other.trim(), ...(more === undefined ? {} : { other: more }) };
    hands.keep(changesFor(typed, given(value, more)), 'keep', String(value), () => onKept?.(null));
    onKept?.(String(value));
    settle();
  };
  const mayMark = canMark && open.length === 0;
  const mark = (): void => {
    if (!mayMark) return;
    const value: Json = { state: 'marked', at: hands.now() };
    hands.keep(changesFor({ text: '', value, otherText: '' }, given(value)), 'mark', BENCH_PAGE.markNumber(marks + 1));
    settle();
  };
  useBenchKeys({ space: mark, enter: keep, undo: () => void store.undo(), letters: {} });
  const press = (key: string): void => typeIn(typedOn(onOther ? hands.other : text, key));
  return (
    <>
      <section className="bench-entry">
        {above}
        {ask !== undefined ? (
          <>
            <ChosenLine asks={asks} />
            <AskPanel key={ask.key} ask={ask} left={left} />
          </>
        ) : why !== null ? (
          <StatePanel what={what} first={why === 'unsaid' ? null : why} onKeep={keepState} onLeave={() => setWhy(null)} />
        ) : (
          <>
            <ChosenLine asks={asks} />
            {live ? (
              <p className="locked">{BENCH_WORDS.liveOnly}</p>
            ) : (
              <BigField
                label={what}
                unit={unit}
                units={number.units}
                unitKey={number.key}
                locked={live}
                focused={!onOther}
                value={text}
                small={false}
                onType={typeIn}
              />
            )}
            {other !== undefined && !live && (
              <BigField
                label={`${OTHER_WORDS[other.key] ?? other.key}${other.needed === true ? '' : BENCH_PAGE.ifRead}`}
                unit={otherUnit}
                units={other.units}
                unitKey={other.key}
                locked={live}
                focused={onOther}
                value={hands.other}
                small
                onType={typeIn}
              />
            )}
            <p className="was">
              {was}
              {mayState && (
                <button type="button" className="plain" onClick={() => setWhy('unsaid')}>
                  {BENCH_WORDS.noNumberKey}
                </button>
              )}
            </p>
          </>
        )}
        <p className="said" role="status">
          {hands.trouble}
        </p>
        {crossed.map((stop) => (
          <p className="alarm-line" role="alert" key={stop.words}>
            {BENCH_WORDS.alarm(stop.title, stop.at)}
          </p>
        ))}
      </section>
      <aside className="beside">
        {watches === null ? null : <StopLines stops={stops} entered={entered} most={MOST_STOPS} />}
        <MarkList />
      </aside>
      {ask === undefined && why === null && !live && <NumberPad onKey={press} bound={number.kind === 'resistance' && !onOther} />}
      <ActRow onMark={mayMark ? mark : null} markNumber={marks + 1} target={target}>
        <KeepKey
          words={text.trim() === '' ? BENCH_PAGE.keep : BENCH_PAGE.keepValue(String(withUnit(text, unit)))}
          missing={missing}
          ready={ready || (needsOther && text !== '')}
          onKeep={keep}
        />
      </ActRow>
    </>
  );
}

/** The entry in SI; null when it is empty or not read as what is asked for. */
function readAs(text: string, unit: string, kind: NumberEntry['kind']): number | null {
  if (text.trim() === '') return null;
  const read = parseQuantity(String(withUnit(text, unit)), kind);
  return isRefusal(read) ? null : read.value;
}
