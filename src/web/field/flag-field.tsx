import { useId } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { HangingOn } from '../part/hanging-on.tsx';
import { useStanding } from '../state/use-case.ts';

/** Yes, no, or not said. */
export function FlagField({ place, label, shown, blank }: { place: string; label: string; shown: boolean; blank?: Json }) {
  const store = useStanding();
  const id = useId();
  const value = store.valueAt(place);
  const set = (next: boolean): void =>
    store.set(place, value === next ? blank : next, `flag-${place}-${next}`, { key: 'entry', args: { at: place } });
  return (
    <fieldset className="kinds" data-place={place}>
      <legend className={shown ? '' : 'for-ears'}>
        {label} {shown && <HangingOn place={place} />}
      </legend>
      {[true, false].map((option) => (
        <label key={String(option)} className={value === option ? 'on' : ''}>
          <input
            type="radio"
            name={id}
            checked={value === option}
            onChange={() => set(option)}
            onClick={() => value === option && set(option)}
          />
          {option ? ENTRY_WORDS.yes : ENTRY_WORDS.no}
        </label>
      ))}
    </fieldset>
  );
}
