import { type CSSProperties, useEffect, useRef } from 'react';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { useHands } from './use-hands.ts';

/** One number, read at a metre. The number shrinks when it is longer than the sheet is wide. */
export function BigField({
  label,
  unit,
  units,
  unitKey,
  locked,
  focused,
  value,
  small,
  onType,
}: {
  label: string;
  unit: string;
  units: readonly string[];
  unitKey: string;
  locked: boolean;
  focused: boolean;
  value: string;
  small: boolean;
  onType: (text: string) => void;
}) {
  const { nextUnit, turnTo } = useHands();
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (focused && !locked) field.current?.focus({ preventScroll: true });
  }, [focused, locked]);
  const touch = typeof matchMedia !== 'undefined' && matchMedia('(pointer: coarse)').matches;
  const LEAST = 3; // digits' worth of room in an empty field
  const style = { '--digits': Math.max(LEAST, value.length) + 1 } as CSSProperties;
  return (
    <div className={`field${small ? ' small' : ''}${focused ? ' on' : ''}`} style={style}>
      <label>
        <span className="bench-what">{label}</span>
        <input
          ref={field}
          className="big"
          inputMode={touch ? 'none' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          readOnly={locked}
          value={value}
          onFocus={() => turnTo(small)}
          onChange={(event) => onType(event.target.value)}
        />
      </label>
      {units.length > 1 ? (
        <button type="button" className="bench-unit" onClick={() => nextUnit(unitKey, units)} aria-label={BENCH_PAGE.unitChange(unit)}>
          {unit}
        </button>
      ) : (
        <span className="bench-unit">{unit}</span>
      )}
    </div>
  );
}
