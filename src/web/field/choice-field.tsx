import { useId } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { HangingOn } from '../part/hanging-on.tsx';
import { useStanding } from '../state/use-case.ts';

const FEW = 5; // as many stand side by side

/** One of a few words. */
export function ChoiceField(props: {
  place: string;
  label: string;
  shown: boolean;
  required: boolean;
  blank?: Json;
  options: readonly (string | number)[];
}) {
  const { place, label, shown, required, blank, options } = props;
  const store = useStanding();
  const id = useId();
  const value = store.valueAt(place);
  const choose = (next: string | number | undefined): void =>
    store.set(place, next ?? blank, `choice-${place}-${String(next)}`, { key: 'entry', args: { at: place } });
  if (shown && options.length <= FEW)
    return (
      <fieldset className="kinds" data-place={place}>
        <legend>
          {label} <HangingOn place={place} />
        </legend>
        {options.map((option) => (
          <label key={option} className={value === option ? 'on' : ''}>
            <input
              type="radio"
              name={id}
              checked={value === option}
              onChange={() => choose(option)}
              onClick={() => value === option && (!required || blank !== undefined) && choose(undefined)}
            />
            {choiceWords(option)}
          </label>
        ))}
      </fieldset>
    );
  return (
    <div className="entry">
      {shown && (
        <span className="labelled">
          <label htmlFor={id}>{label}</label>
          <HangingOn place={place} />
        </span>
      )}
      <select
        id={id}
        data-place={place}
        aria-label={shown ? undefined : label}
        value={value === undefined || typeof value === 'object' ? '' : String(value)}
        onChange={(event) => choose(options.find((option) => String(option) === event.target.value))}
      >
        {(!required || blank !== undefined || value === undefined) && <option value="">{ENTRY_WORDS.notChosen}</option>}
        {options.map((option) => (
          <option key={option} value={String(option)}>
            {choiceWords(option)}
          </option>
        ))}
      </select>
    </div>
  );
}
