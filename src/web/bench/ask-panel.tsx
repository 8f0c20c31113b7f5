import { useState } from 'react';
import { ASK_WORDS, BENCH_WORDS } from '../../present/words/bench-words.ts';
import { LIST_WORDS } from '../../present/words/page-words.ts';
import { useOpenPage } from '../state/use-case.ts';
import { openAsks, optionsOf } from './ask-state.ts';
import { NamePanel } from './name-panel.tsx';
import { pickText } from './pick-text.ts';
import type { Ask, Option } from './task/task.ts';
import { useHands } from './use-hands.ts';

export function optionText({ value, name }: Option): string {
  return name ?? pickText(value);
}

/** The question at hand: the one that is asked anew, else the first that is open; and how many are open. */
export function useAskAtHand(asks: readonly Ask[]): { readonly ask: Ask | undefined; readonly left: number } {
  const { store } = useOpenPage();
  const { chosen, asking } = useHands();
  const open = openAsks(asks, chosen, store);
  const again = asks.find(({ key }) => key === asking);
  return { ask: again ?? open[0], left: open.length + (again === undefined || open.includes(again) ? 0 : 1) };
}

/** One question at a time, with keys large enough for a glove. */
export function AskPanel({ ask, left }: { ask: Ask; left: number }) {
  const { store } = useOpenPage();
  const { choose, chosen, live, askAgain } = useHands();
  const [naming, setNaming] = useState(false);
  const options = optionsOf(ask, chosen, store);
  const { names } = ask;
  if (names !== undefined && !live && (naming || options.length === 0))
    return (
      <NamePanel
        ask={ask}
        names={names}
        onLeave={() => {
          setNaming(false);
          if (options.length === 0) askAgain(null);
        }}
      />
    );
  return (
    <section className="ask" aria-labelledby="ask-title">
      <h2 id="ask-title">
        {ASK_WORDS[ask.key] ?? ask.key} <small>{left > 1 ? BENCH_WORDS.moreToChoose(left - 1) : BENCH_WORDS.thenReading}</small>
      </h2>
      <div className="keys">
        {options.map((option) => (
          <button
            type="button"
            key={option.value}
            aria-pressed={chosen[ask.key] === option.value}
            onClick={() => choose(ask.key, option.value)}
          >
            {optionText(option)}
          </button>
        ))}
        {names !== undefined && !live && (
          <button type="button" className="new" onClick={() => setNaming(true)}>
            + {BENCH_WORDS.newOne(LIST_WORDS[names.list]?.one ?? names.list)}
          </button>
        )}
      </div>
    </section>
  );
}

/** What the next reading is taken under; each word is a key that asks again. */
export function ChosenLine({ asks }: { asks: readonly Ask[] }) {
  const { store } = useOpenPage();
  const { chosen, asking, askAgain } = useHands();
  const told = asks.flatMap((ask) => {
    const options = ask.options(store);
    const found = options.find(({ value }) => value === chosen[ask.key]) ?? (options.length === 1 ? options[0] : undefined);
    if (found !== undefined && (options.length > 1 || ask.names !== undefined)) return [{ key: ask.key, words: optionText(found) }];
    return options.length === 0 && ask.names !== undefined && ask.needsName !== true ? [{ key: ask.key, words: BENCH_WORDS.toName }] : [];
  });
  if (told.length === 0) return null;
  return (
    <p className="chosen">
      {told.map(({ key, words }) => (
        <button
          type="button"
          key={key}
          aria-pressed={asking === key}
          onClick={() => askAgain(asking === key ? null : key)}
          aria-label={BENCH_WORDS.change(ASK_WORDS[key] ?? key, words)}
        >
          {ASK_WORDS[key] ?? key} <b>{words}</b>
        </button>
      ))}
    </p>
  );
}
