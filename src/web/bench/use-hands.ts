import { createContext, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { invertChanges } from '../../app/casebook/apply-changes.ts';
import type { Change, Json } from '../../app/casebook/change.ts';
import { RESIDUAL_KEYS, residualState } from '../part/residual.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { type DayStep, STEPS } from './day-order.ts';
import { localTime } from './local-time.ts';
import type { Mark } from './marks.ts';

export const UNDO_MS = 10_000; // how long a kept reading can be taken back from where it was kept

/** Where the bench page is: the list of the day, a step, or the sheet before a point of no return. */
export type At = { readonly is: 'day' } | { readonly is: 'step'; readonly id: string } | { readonly is: 'point'; readonly id: string };

interface Kept {
  readonly words: string;
  readonly until: number;
  readonly takeBack: () => void;
}

/** What every part of the bench page shares: what is typed, what was kept last, the clock. Readings themselves live in the case only. */
export interface Hands {
  readonly at: At;
  readonly step: DayStep | null;
  readonly goTo: (at: At) => void;
  readonly task: string | null;
  readonly goToTask: (id: string) => void;
  readonly chosen: Readonly<Record<string, string>>;
  readonly choose: (key: string, value: string | null) => void;
  /** An ask that is shown although it is answered, to answer it anew. */
  readonly asking: string | null;
  readonly askAgain: (key: string | null) => void;
  readonly text: string;
  readonly other: string;
  readonly onOther: boolean;
  readonly type: (text: string) => void;
  readonly turnTo: (other: boolean) => void;
  readonly clear: () => void;
  readonly unit: (key: string, units: readonly string[]) => string;
  readonly nextUnit: (key: string, units: readonly string[]) => void;
  readonly trouble: string;
  readonly say: (trouble: string) => void;
  /** `onBack`: what else goes when it is taken back. */
  readonly keep: (changes: readonly Change[], name: 'keep' | 'mark', words: string, onBack?: () => void) => void;
  readonly kept: Kept | null;
  readonly filling: Mark | null;
  readonly fill: (mark: Mark | null) => void;
  /** Milliseconds of the moment the last reading was kept; null while no timer runs. */
  readonly since: number | null;
  readonly restart: (on: boolean) => void;
  readonly live: boolean;
  readonly setLive: (live: boolean) => void;
  /** The mains comes on: a residual measured before counts no longer. */
  readonly powerUp: () => void;
  /** Hands may go in, or nothing lies open. */
  readonly reachable: boolean;
  readonly leftHand: boolean;
  readonly now: () => string;
}

export const HandsContext = createContext<Hands | null>(null);

export function useHands(): Hands {
  const hands = useContext(HandsContext);
  if (hands === null) throw new Error('a part of the bench page outside of it');
  return hands;
}

export function useMakeHands(): Hands {
  const { store } = useOpenPage();
  const { screen, waiting } = useSnapshot();
  const at = useMemo(() => parseAt(screen['bench-at']), [screen]);
  const chosen = useMemo(() => JSON.parse(screen['bench-chosen'] ?? '{}') as Record<string, string>, [screen]);
  const [typed, setTyped] = useState({ text: '', other: '', onOther: false });
  const [asking, askAgain] = useState<string | null>(null);
  const [units, setUnits] = useState<Readonly<Record<string, number>>>({});
  const [trouble, say] = useState('');
  const [kept, setKept] = useState<Kept | null>(null);
  const [filling, setFilling] = useState<Mark | null>(null);
  const [since, setSince] = useState<number | null>(null);
  const waits = useRef(waiting);
  waits.current = waiting;
  useEffect(() => {
    if (kept === null) return;
    const timer = setTimeout(() => setKept(null), Math.max(0, kept.until - Date.now()));
    return () => clearTimeout(timer);
  }, [kept]);
  const step = at.is === 'step' ? (STEPS.find(({ id }) => id === at.id) ?? null) : null;
  const live = screen['bench-live'] === 'on';
  const clear = (): void => {
    setTyped({ text: '', other: '', onOther: false });
    say('');
  };
  const emptyResidual = (): void => {
    for (const key of RESIDUAL_KEYS) if ((screen[key] ?? '') !== '') store.setScreen(key, null);
  };
  return {
    at,
    step,
    goTo: (to) => {
      store.setScreen('bench-at', to.is === 'day' ? null : `${to.is}:${to.id}`);
      store.setScreen('bench-task', null);
      setFilling(null);
      askAgain(null);
      clear();
    },
    task: screen['bench-task'] ?? null,
    goToTask: (id) => {
      store.setScreen('bench-task', id);
      setFilling(null);
      askAgain(null);
      clear();
    },
    chosen,
    asking,
    askAgain,
    choose: (key, value) => {
      if (value !== null) askAgain(null);
      const { [key]: _old, ...others } = chosen;
      store.setScreen('bench-chosen', JSON.stringify(value === null ? others : { ...others, [key]: value }));
    },
    ...typed,
    type: (text) => {
      say('');
      setKept(null);
      setTyped((was) => (was.onOther ? { ...was, other: text } : { ...was, text }));
    },
    turnTo: (onOther) => setTyped((was) => ({ ...was, onOther })),
    clear,
    unit: (key, offered) => offered[(units[key] ?? 0) % offered.length] ?? '',
    nextUnit: (key, offered) => setUnits((was) => ({ ...was, [key]: ((was[key] ?? 0) + 1) % offered.length })),
    trouble,
    say,
    keep: (changes, name, words, onBack) => {
      if (changes.length === 0) return;
      store.change(changes, newItemId(name), { key: name, args: {} });
      if (step?.powered === true) emptyResidual();
      const takeBack = (): void => {
        setKept(null);
        onBack?.();
        // while the server is away, the entry is taken back by one that waits behind it
        if (waits.current === 0) void store.undo();
        else store.change(invertChanges(changes), newItemId('back'), { key: 'back', args: {} });
      };
      setKept({ words, until: Date.now() + UNDO_MS, takeBack });
      setSince(Date.now());
      setTyped({ text: '', other: '', onOther: false });
      say('');
    },
    kept,
    filling,
    fill: (mark) => {
      setFilling(mark);
      clear();
    },
    since,
    restart: (on) => setSince(on ? Date.now() : null),
    live,
    setLive: (on) => {
      store.setScreen('bench-live', on ? 'on' : null);
      if (on) emptyResidual();
    },
    powerUp: emptyResidual,
    reachable: step?.open === undefined || residualState(screen['residual-now'] ?? '') === 'low',
    leftHand: screen['bench-hand'] === 'left',
    now: () => localTime(new Date()),
  };
}

function parseAt(text: string | undefined): At {
  const [is, id] = (text ?? '').split(':');
  return (is === 'step' || is === 'point') && id !== undefined ? { is, id } : { is: 'day' };
}

/** A reading as the case keeps it: with the unit, unless the person wrote one. */
export function withUnit(text: string, unit: string): Json {
  const clean = text.trim();
  return /[a-zA-ZΩµ°%]/.test(clean) ? clean : `${clean} ${unit}`;
}
