import { useEffect, useRef } from 'react';
import { degreesText, PICTURE_WORDS } from '../../present/words/picture-words.ts';
import { paint } from './paint.ts';
import type { Field } from './use-field.ts';

const STEPS = 256;
const STRIP: Field = { width: STEPS, height: 1, values: Float32Array.from({ length: STEPS }, (_, k) => k), least: 0, greatest: STEPS - 1 };
const TENTH = 0.1;

/** The colours from cold to hot, and the temperatures at their ends, each moved by itself. */
export function ScaleBar(props: {
  field: Field;
  from: number;
  to: number;
  whole: boolean;
  setRange: (range: readonly [number, number] | null) => void;
}) {
  const { field, from, to, whole, setRange } = props;
  const strip = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (strip.current !== null) paint(strip.current, STRIP, 0, STEPS - 1);
  }, []);
  const end = (label: string, value: number, set: (next: number) => void) => (
    <label>
      {label} <b>{degreesText(value)}</b>
      <input
        type="range"
        min={field.least}
        max={field.greatest}
        step={TENTH}
        value={value}
        onChange={(event) => set(Number(event.target.value))}
      />
    </label>
  );
  return (
    <fieldset className="scale-bar">
      <legend className="for-ears">{PICTURE_WORDS.colours}</legend>
      <canvas ref={strip} width={STEPS} height={1} />
      {end(PICTURE_WORDS.darkest, from, (next) => setRange([Math.min(next, to - TENTH), to]))}
      {end(PICTURE_WORDS.lightest, to, (next) => setRange([from, Math.max(next, from + TENTH)]))}
      <button type="button" className="quiet" disabled={whole} onClick={() => setRange(null)}>
        {PICTURE_WORDS.whole}
      </button>
    </fieldset>
  );
}
