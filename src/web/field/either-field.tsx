import { useId, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { useStanding } from '../state/use-case.ts';
import { Field } from './field.tsx';

/**
 * Something that can be said in more than one way: a word from a list, or an amount. The ways are offered as words; an amount opens its
 * own entry.
 */
export function EitherField({ place, label, shown, of }: { place: string; label: string; shown: boolean; of: readonly FormNode[] }) {
  const store = useStanding();
  const id = useId();
  const value = store.valueAt(place);
  const ways = of.flatMap(waysOf);
  const current = ways.find((way) => way.fits(value));
  const [open, setOpen] = useState<string | null>(null);
  const chosen = current ?? ways.find(({ words }) => words === open);
  if (ways.every((way) => way.entry !== null && way.blank === ''))
    return <Field node={of[0] ?? { is: 'text' }} place={place} label={label} shown={shown} />; // a name or a number: one text
  return (
    <div className="either">
      <div className="entry">
        {shown && <label htmlFor={id}>{label}</label>}
        <select
          id={id}
          data-place={place}
          aria-label={shown ? undefined : label}
          value={chosen?.words ?? ''}
          onChange={(event) => {
            const way = ways.find(({ words }) => words === event.target.value);
            setOpen(way?.words ?? null);
            store.set(place, way?.blank, `way-${place}-${event.target.value}`, { key: 'entry', args: { at: place } });
          }}
        >
          <option value="">{ENTRY_WORDS.notSaid}</option>
          {ways.map(({ words }) => (
            <option key={words}>{words}</option>
          ))}
        </select>
      </div>
      {chosen?.entry !== undefined && chosen.entry !== null && (
        <Field node={chosen.entry.node} place={place + chosen.entry.below} label={`${label}: ${chosen.words}`} shown={false} required />
      )}
    </div>
  );
}

interface Way {
  readonly words: string;
  readonly blank: Json;
  readonly fits: (value: Json | undefined) => boolean;
  readonly entry: { readonly node: FormNode; readonly below: string } | null;
}

function waysOf(node: FormNode): Way[] {
  if (node.is === 'choice')
    return node.options.map((option) => ({ words: choiceWords(option), blank: option, fits: (value) => value === option, entry: null }));
  if (node.is === 'object') {
    const [first] = node.members;
    if (first === undefined) return [];
    const inner = first.node;
    const holds = (value: Json | undefined): unknown =>
      typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Record<string, Json>)[first.key] : undefined;
    if (inner.is === 'choice')
      return inner.options.map((option) => ({
        words: choiceWords(option),
        blank: { [first.key]: option },
        fits: (value) => holds(value) === option,
        entry: null,
      }));
    if (inner.is === 'fixed')
      return [
        {
          words: choiceWords(String(inner.value)),
          blank: { [first.key]: inner.value, because: '' },
          fits: (value) => holds(value) === inner.value,
          entry: { node: { is: 'text' }, below: '/because' },
        },
      ];
    return [
      {
        words: choiceWords(first.key),
        blank: { [first.key]: '' },
        fits: (value) => holds(value) !== undefined,
        entry: { node: inner, below: `/${first.key}` },
      },
    ];
  }
  return [
    {
      words: ENTRY_WORDS.anAmount,
      blank: '',
      fits: (value) => typeof value === 'string' || typeof value === 'number',
      entry: { node, below: '' },
    },
  ];
}
