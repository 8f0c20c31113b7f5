import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';

/** Own keys for a gloved finger; the keyboard of the phone stays away. `bound`: a meter may say "more than". */
export function NumberPad({ onKey, bound }: { onKey: (key: string) => void; bound: boolean }) {
  const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0'];
  return (
    <fieldset className="pad">
      <legend className="for-ears">{BENCH_PAGE.numberPad}</legend>
      {KEYS.map((key) => (
        <button type="button" key={key} onClick={() => onKey(key)}>
          {key}
        </button>
      ))}
      <button type="button" onClick={() => onKey('wipe')}>
        {BENCH_PAGE.wipe}
      </button>
      {bound && (
        <button type="button" onClick={() => onKey('>')} aria-label={BENCH_PAGE.moreThan}>
          &gt;
        </button>
      )}
    </fieldset>
  );
}

/** What a press makes of the text. */
export function typedOn(text: string, key: string): string {
  if (key === 'wipe') return '';
  if (key === '>') return text.startsWith('>') ? text.slice(1) : `>${text}`;
  if (key === '.' && text.includes('.')) return text;
  return text + key;
}
