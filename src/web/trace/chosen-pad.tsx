import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { SaidPad } from '../../app/casebook/pad-edit.ts';
import { PHOTO } from '../../present/words/photo-words.ts';
import type { TracedPad } from './traced-pads.ts';

/** What the chosen pad is: its pin and its net, changed or left unknown. */
export function ChosenPad({
  pad,
  net,
  nets,
  asks,
  onSay,
  onGone,
}: {
  pad: TracedPad;
  /** Name of its net; empty where it is not known. */
  net: string;
  /** Id of the list of names. */
  nets: string;
  /** The entry takes the focus: the pad was just made and nobody said what it is. */
  asks: boolean;
  /** Answers the sentence that stands in the way, or nothing. */
  onSay: (said: SaidPad) => Promise<string>;
  onGone: () => void;
}) {
  const entry = useRef<HTMLInputElement>(null);
  const [pin, setPin] = useState(pad.pin);
  const [on, setOn] = useState(net);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    if (asks) entry.current?.focus();
  }, [asks]);
  const say = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setTrouble(await onSay({ id: pad.id, photo: pad.photo, at: [pad.at.x, pad.at.y], pin, net: on }));
  };
  return (
    <form className="chosenpad" aria-label={PHOTO.chosenPad} onSubmit={(event) => void say(event)}>
      <label>
        {PHOTO.thisPadIs}{' '}
        <input
          ref={entry}
          value={pin}
          placeholder="R7 1"
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => setPin(event.target.value)}
        />
      </label>
      <label>
        {PHOTO.onNet}{' '}
        <input
          value={on}
          list={nets}
          placeholder={PHOTO.notKnown}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => setOn(event.target.value)}
        />
      </label>
      <button type="submit" className="btn">
        {PHOTO.saySo}
      </button>
      <button type="button" className="quiet" onClick={onGone}>
        {PHOTO.takePadAway}
      </button>
      <p className="trouble" role="alert">
        {trouble}
      </p>
    </form>
  );
}
