import { ASK_WORDS, PICK_WORDS } from '../../present/words/bench-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { useOpenPage } from '../state/use-case.ts';
import { optionsOf } from './ask-state.ts';
import type { Ask, Option } from './task/task.ts';
import { useHands } from './use-hands.ts';

export function optionText({ value, name }: Option): string {
  return name ?? PICK_WORDS[value] ?? choiceWords(value);
}

/** One question at a time, with keys large enough for a glove. */
export function AskPanel({ ask, left }: { ask: Ask; left: number }) {
  const { store } = useOpenPage();
  const { choose, chosen } = useHands();
  return (
    <section className="ask" aria-labelledby="ask-title">
      <h2 id="ask-title">
        {ASK_WORDS[ask.key] ?? ask.key} <small>{left > 1 ? `${left - 1} more to choose` : 'then the reading'}</small>
      </h2>
      <div className="keys">
        {optionsOf(ask, chosen, store).map((option) => (
          <button type="button" key={option.value} onClick={() => choose(ask.key, option.value)}>
            {optionText(option)}
          </button>
        ))}
      </div>
    </section>
  );
}

/** What the next reading is taken under; each word is a key that asks again. */
export function ChosenLine({ asks }: { asks: readonly Ask[] }) {
  const { store } = useOpenPage();
  const { chosen, choose } = useHands();
  const told = asks.flatMap((ask) => {
    const options = ask.options(store);
    const found = options.find(({ value }) => value === chosen[ask.key]);
    return found === undefined || options.length < 2 ? [] : [{ key: ask.key, words: optionText(found) }];
  });
  if (told.length === 0) return null;
  return (
    <p className="chosen">
      {told.map(({ key, words }) => (
        <button type="button" key={key} onClick={() => choose(key, null)} aria-label={`${ASK_WORDS[key] ?? key}: ${words}, change`}>
          {ASK_WORDS[key] ?? key} <b>{words}</b>
        </button>
      ))}
    </p>
  );
}
