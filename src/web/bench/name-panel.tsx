import { useState } from 'react';
import { BENCH_WORDS } from '../../present/words/bench-words.ts';
import { LIST_WORDS } from '../../present/words/page-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { idFromName, newItemId } from '../state/place-parts.ts';
import { useOpenPage } from '../state/use-case.ts';
import { pickText } from './pick-text.ts';
import type { Ask, NewNames } from './task/task.ts';
import { useHands } from './use-hands.ts';

/** Names something that is not on the list yet: a name, then one key that says what it is, keeps and chooses it. */
export function NamePanel({ ask, names, onLeave }: { ask: Ask; names: NewNames; onLeave: () => void }) {
  const { store } = useOpenPage();
  const { choose } = useHands();
  const [name, setName] = useState('');
  const one = LIST_WORDS[names.list]?.one ?? names.list;
  const clean = name.trim();
  const add = (item: NewNames['as'][number]['item']): void => {
    const taken = listOf(store, names.list).map(({ id }) => String(id));
    const id = idFromName(clean, taken);
    const called = names.list === 'parts' ? { ref: clean } : { name: clean };
    store.change([{ at: `/case/${names.list}/${id}`, to: { id, ...called, ...item } }], newItemId('name'), { key: 'addItem', args: {} });
    choose(ask.key, id);
    onLeave();
  };
  return (
    <section className="ask" aria-labelledby="name-title">
      <h2 id="name-title">{BENCH_WORDS.newOne(one)}</h2>
      <form
        className="plan"
        onSubmit={(event) => {
          event.preventDefault();
          const [only, ...others] = names.as;
          if (clean !== '' && only !== undefined && others.length === 0) add(only.item);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Escape') onLeave();
        }}
      >
        <label>
          <span>{names.list === 'parts' ? BENCH_WORDS.reference : BENCH_WORDS.name}</span>
          {/* biome-ignore lint/a11y/noAutofocus: the key that opened it asks for exactly this */}
          <input autoFocus value={name} autoComplete="off" spellCheck={false} onChange={(event) => setName(event.target.value)} />
        </label>
      </form>
      <div className="keys">
        {names.as.map(({ key, item }) => (
          <button type="button" key={key} disabled={clean === ''} onClick={() => add(item)}>
            {pickText(key)}
          </button>
        ))}
        <button type="button" onClick={onLeave}>
          {BENCH_WORDS.leave}
        </button>
      </div>
    </section>
  );
}
