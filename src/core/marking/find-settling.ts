import type { Reading, ReadingKind, SettleKey } from './reading.ts';

/** The measurement that tells two values of a kind apart. Nothing on a bench does for a rating. */
const MEASURED: Partial<Readonly<Record<ReadingKind, SettleKey>>> = {
  resistor: 'measure-resistance',
  jumper: 'measure-resistance',
  capacitor: 'measure-capacitance',
  inductor: 'measure-inductance',
};

/**
 * What would settle between the readings of one mark: the letter beside the part on the board when the kinds differ, a measurement when the values of a kind
 * do, the wider gap of colour bands when both directions make sense, else the maker's data sheet. Nothing for a single reading. Reasoned, no source.
 */
export function findSettling(readings: readonly Reading[]): SettleKey[] {
  if (readings.length < 2) return [];
  const found = new Set<SettleKey>();
  if (readings.some(({ notes }) => notes.includes('read-from-last-band'))) found.add('band-spacing');
  const kinds = new Set(readings.map(({ kind }) => kind));
  if (kinds.size > 1) found.add('board-letter');
  for (const kind of kinds) {
    const values = new Set(readings.filter((reading) => reading.kind === kind).map(({ value }) => value));
    const measured = MEASURED[kind];
    if (values.size > 1 && measured !== undefined) found.add(measured);
  }
  if (found.size === 0) found.add('data-sheet');
  return [...found];
}
