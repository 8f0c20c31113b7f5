import { useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { STATE_CHOICES } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { useOpenPage, useStanding } from '../state/use-case.ts';
import { Entry } from './entry.tsx';
import { Field } from './field.tsx';
import { ObjectFields } from './object-fields.tsx';

interface Props {
  readonly place: string;
  readonly label: string;
  readonly shown: boolean;
  readonly required: boolean;
  readonly of: FormNode;
  /** All five states; without them only "unknown" beside a reading. */
  readonly states: boolean;
}

const NOT_LOOKED: Json = { state: 'notLooked' };

type Tree = Readonly<Record<string, Json>>;

/** A value in one of its states: a reading with what goes with it, or that there is none and why. */
export function ValueField({ place, label, shown, required, of, states }: Props) {
  const { form } = useOpenPage();
  const store = useStanding();
  const [more, setMore] = useState(false);
  const value = store.valueAt(place);
  const tree = typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Tree) : null;
  const state = typeof tree?.['state'] === 'string' ? tree['state'] : null;
  const isRead = tree !== null && 'v' in tree;
  const offered = states ? STATE_CHOICES : STATE_CHOICES.filter((one) => one.state === 'unknown');
  const destroyed = (store.valueAt('/case/events') as readonly Tree[] | undefined)?.at(-1)?.['id'];
  const setState = (next: string): void => {
    const to: Json | undefined =
      next === ''
        ? undefined
        : next === 'notLooked'
          ? { state: next }
          : next === 'cannotNow'
            ? { state: next, since: String(destroyed ?? '') }
            : { state: next, because: '' };
    store.set(place, to, `state-${place}-${next}`, { key: 'state', args: { at: place, state: next } });
  };
  const known = STATE_CHOICES.find((one) => one.state === state);
  const toggle = (
    <button
      type="button"
      className="quiet more"
      aria-expanded={more}
      aria-label={ENTRY_WORDS.itsStateWhenWithWhat(label)}
      onClick={() => setMore(!more)}
    >
      {more ? '−' : '⋯'}
    </button>
  );
  const states5 = (
    <fieldset className="kinds">
      <legend className="for-ears">
        {label}
        {ENTRY_WORDS.state}
      </legend>
      {[{ state: '', words: 'reading' }, ...offered].map((one) => {
        const isNow = (state ?? '') === one.state;
        return (
          <label key={one.state} className={isNow ? 'on' : ''}>
            <input
              type="radio"
              name={`${place} state`}
              checked={isNow}
              disabled={one.state === 'cannotNow' && destroyed === undefined}
              onChange={() => setState(one.state)}
            />
            {one.words}
          </label>
        );
      })}
    </fieldset>
  );
  if (state !== null && state !== 'notLooked')
    return (
      <div className={`value is-${state}`}>
        {shown && <span className="label">{label}</span>}
        <span className="statebox" data-place={place}>
          {known?.words ?? state}
        </span>
        {toggle}
        {more && <div className="reading-more">{states5}</div>}
        {known?.asks !== null && known !== undefined && (
          <Entry place={`${place}/because`} label={`${label}: ${known.asks}`} shown={false} example={known.asks ?? ''} required />
        )}
      </div>
    );
  const at = isRead ? `${place}/v` : place;
  const detail = (): void => {
    if (!isRead && value !== undefined) store.set(place, { v: value }, `more-${place}`, { key: 'details', args: { at: place } });
  };
  return (
    <div className={`value${state === null ? '' : ' is-notLooked'}${isRead && tree['struck'] !== undefined ? ' struck' : ''}`}>
      <Field
        node={of}
        place={at}
        label={label}
        shown={shown}
        required={isRead}
        {...(required && !isRead && states ? { blank: NOT_LOOKED } : {})}
        onState={setState}
      />
      {toggle}
      {more && (
        <div className="reading-more">
          {states5}
          {states && isRead && form.reading.is === 'object' && <ObjectFields node={form.reading} place={place} without={['v']} />}
          {states && !isRead && value !== undefined && (
            <button type="button" className="quiet add" onClick={detail}>
              {ENTRY_WORDS.whenWithWhatUnderWhich}
            </button>
          )}
        </div>
      )}
    </div>
  );
}
