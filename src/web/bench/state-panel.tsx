import { useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { BENCH_WORDS } from '../../present/words/bench-words.ts';
import { STATE_CHOICES } from '../../present/words/page-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { useOpenPage } from '../state/use-case.ts';

export type Why = 'unknown' | 'absent' | 'cannotNow';

/** Events after which a sample is not what it was. */
const GONE: ReadonlySet<string> = new Set(['opened', 'desoldered', 'unwound', 'destroyed']);

/** Why there is no number: looked and could not tell, looked and it is not there, or it cannot be read any more. The first two ask for words. */
export function StatePanel({
  what,
  first,
  onKeep,
  onLeave,
}: {
  what: string;
  first: Why | null;
  onKeep: (state: Json, words: string) => void;
  onLeave: () => void;
}) {
  const { store } = useOpenPage();
  const [why, setWhy] = useState<Why | null>(first);
  const [because, setBecause] = useState('');
  const since = listOf(store, 'events').findLast(({ what: happened }) => GONE.has(String(happened)))?.['id'];
  const offered = (['unknown', 'absent', 'cannotNow'] as const).flatMap((state) => {
    const choice = STATE_CHOICES.find((one) => one.state === state);
    return choice === undefined || (state === 'cannotNow' && since === undefined)
      ? []
      : [{ state, words: choice.words, asks: choice.asks }];
  });
  const asked = offered.find(({ state }) => state === why)?.asks ?? null;
  const reason = because.trim();
  const press = (state: Why, words: string): void => {
    if (state === 'cannotNow') onKeep({ state, since: String(since) }, words);
    else setWhy(state);
  };
  const keep = (): void => {
    if (why !== null && reason !== '') onKeep({ state: why, because: reason }, reason);
  };
  return (
    <section className="ask" aria-labelledby="state-title">
      <h2 id="state-title">{BENCH_WORDS.noNumber(what)}</h2>
      <div className="keys">
        {offered.map(({ state, words }) => (
          <button type="button" key={state} aria-pressed={state === why} onClick={() => press(state, words)}>
            {words}
          </button>
        ))}
        <button type="button" onClick={onLeave}>
          {BENCH_WORDS.leave}
        </button>
      </div>
      {asked !== null && (
        <form
          className="plan"
          onSubmit={(event) => {
            event.preventDefault();
            keep();
          }}
          onKeyDown={(event) => {
            if (event.key === 'Escape') onLeave();
          }}
        >
          <label>
            <span>{asked}</span>
            {/* biome-ignore lint/a11y/noAutofocus: the key that opened it asks for exactly this */}
            <input autoFocus value={because} autoComplete="off" onChange={(event) => setBecause(event.target.value)} />
          </label>
          <button type="submit" className="plain" disabled={reason === ''}>
            {BENCH_WORDS.keepState}
          </button>
        </form>
      )}
    </section>
  );
}
