import { useId, useRef, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { draftWords } from '../../present/words/draft-words.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { HangingOn } from '../part/hanging-on.tsx';
import { newItemId } from '../state/place-parts.ts';
import { remarksOn } from '../state/remarks-on.ts';
import { useChosen, useStanding } from '../state/use-case.ts';

export interface EntryProps {
  readonly place: string;
  readonly label: string;
  /** Drawn as a label beside the entry; else it is spoken only. */
  readonly shown?: boolean;
  readonly example?: string;
  readonly required?: boolean;
  /** What stands here when nothing is typed; left out, the place is emptied. */
  readonly blank?: Json;
  readonly inputMode?: 'text' | 'decimal';
  /** What was understood of the text, shown under it. */
  readonly understand?: (text: string) => string | null;
  /** "-" or "?" alone, when the place knows states. */
  readonly onState?: (state: 'absent' | 'unknown') => void;
  readonly parse?: (text: string) => string | number;
  readonly rows?: number;
}

/** A text at a place of the case: kept at every key, also when it cannot be read; what is wrong is said under it in one sentence. */
export function Entry(props: EntryProps) {
  const { place, label, shown = true, example, required = false, blank, understand, onState, parse, rows } = props;
  const store = useStanding();
  const conflict = useChosen(({ conflicts }) => conflicts.find(({ at }) => at === place));
  const id = useId();
  const step = useRef('');
  const [typed, setTyped] = useState<string | null>(null);
  const value = store.valueAt(place);
  const draft = store.draftAt(place);
  const kept = draft?.text ?? (value === undefined || typeof value === 'object' ? '' : String(value));
  const text = typed ?? kept;
  const wrong = draft !== undefined && (typed === null || typed === draft.text) ? draftWords(draft) : null;
  const remarks = useChosen(({ view }) => remarksOn(place, view.warnings));
  const remark = wrong === null && conflict === undefined ? remarks : '';
  const understood = wrong === null && text !== '' && understand !== undefined ? understand(text) : null;
  const isState = (entered: string): boolean => onState !== undefined && (entered === '-' || entered === '?');
  const write = (entered: string): void => {
    setTyped(entered);
    if (isState(entered)) return;
    if (step.current === '') step.current = newItemId('entry');
    const empty = blank ?? (required ? '' : undefined);
    store.set(place, entered === '' ? empty : (parse?.(entered) ?? entered), step.current, {
      key: 'entry',
      args: { at: place },
    });
  };
  const leave = (): void => {
    if (typed !== null && isState(typed)) onState?.(typed === '-' ? 'absent' : 'unknown');
    setTyped(null);
    step.current = '';
  };
  const shared = {
    id,
    value: text,
    placeholder: example === undefined ? undefined : example,
    'aria-invalid': wrong !== null,
    'aria-describedby': `${id}-said`,
    'aria-label': shown ? undefined : label,
    'data-place': place,
    autoComplete: 'off',
    spellCheck: false,
    onBlur: leave,
  } as const;
  return (
    <div className={`entry${wrong === null && remark === '' ? '' : ' wrong'}`}>
      {shown && (
        <span className="labelled">
          <label htmlFor={id}>{label}</label>
          <HangingOn place={place} />
        </span>
      )}
      {rows === undefined ? (
        <input
          {...shared}
          type="text"
          inputMode={props.inputMode}
          onChange={(event) => write(event.target.value)}
          onKeyDown={(event) => event.key === 'Enter' && leave()}
        />
      ) : (
        <textarea {...shared} rows={rows} onChange={(event) => write(event.target.value)} />
      )}
      <span className="said" id={`${id}-said`} role={wrong === null && conflict === undefined && remark === '' ? undefined : 'status'}>
        {wrong ?? (conflict === undefined ? (remark === '' ? understood : remark) : conflictWords(conflict))}
      </span>
    </div>
  );
}

function conflictWords({ mine, theirs }: { mine?: unknown; theirs?: unknown }): string {
  const show = (value: unknown): string =>
    value === undefined ? ENTRY_WORDS.nothing : typeof value === 'string' ? `“${value}”` : JSON.stringify(value);
  return ENTRY_WORDS.anotherTabWroteHereMeanwhile(show(theirs), show(mine));
}
