import { expect, test } from 'vitest';
import { applyChanges } from '../../src/app/casebook/apply-changes.ts';
import { takeEdit } from '../../src/app/casebook/take-edit.ts';
import { type Kept, keepDistance, keepNote, keepPhoto, keepTemperature, localTimeOf } from '../../src/web/capture/quick-reading.ts';
import { emptyState } from '../store/example-case.ts';

const NOW = { id: 'spots-a1', at: '2026-03-04T10:31:05' };
const PHOTO = { sha256: 'a'.repeat(64), bytes: 10, media: 'image/jpeg', name: 'board 1.jpg' };
const PINS = { id: 'pins', name: 'plug pins' };
const OUTPUT = { id: 'output', name: 'output' };

/** An invented case with two conductors and a place, as the schema takes it. */
const begun = () =>
  applyChanges(emptyState('quay-cube'), [
    {
      at: '/case/conductors',
      was: [],
      to: [
        { ...PINS, side: 'mains' },
        { ...OUTPUT, side: 'output' },
      ],
    },
    { at: '/case/places', was: [], to: [{ id: 'top', name: 'case, top' }] },
  ]).state;

test.each<[string, Kept]>([
  ['a photo', keepPhoto(PHOTO, 'the board', [], NOW)],
  ['a temperature at a place that is there', keepTemperature({ id: 'top', name: 'case, top' }, '82.6 °C', 'contact', ['top'], NOW)],
  ['a temperature at a place named on the spot', keepTemperature({ newName: 'Bulk capacitor' }, '92 °C', 'infrared', ['top'], NOW)],
  ['a distance', keepDistance(PINS, OUTPUT, 'surface', 'caliper', '6.4 mm', NOW)],
])('%s is taken by the case as evidence with nothing left over, and its undo leaves the case as it was', (_, kept) => {
  const before = begun();
  const taken = takeEdit(before, kept.changes);
  if (Array.isArray(taken)) throw new Error(JSON.stringify(taken));
  expect([taken.conflicts, taken.state.drafts]).toEqual([[], {}]);
  expect(taken.one.exhibits.map(({ id }) => id)).toEqual(['spots-a1']);
  expect(applyChanges(taken.state, kept.back)).toMatchObject({ state: before, conflicts: [] });
});

test('a note goes under the lines that are there, and its undo brings them back alone', () => {
  const one = applyChanges(begun(), keepPhoto(PHOTO, 'the board', [], NOW).changes).state;
  const first = applyChanges(one, keepNote('spots-a1', undefined, 'a scorch mark').changes).state;
  const second = keepNote('spots-a1', 'a scorch mark', 'and a smell');
  const both = takeEdit(first, second.changes);
  if (Array.isArray(both)) throw new Error(JSON.stringify(both));
  expect(both.one.exhibits[0]?.note).toBe('a scorch mark\nand a smell');
  expect(applyChanges(both.state, second.back).state).toEqual(first);
});

test('times are the wall clock, two digits each', () => {
  expect(localTimeOf(new Date(2026, 2, 4, 9, 5, 7))).toBe('2026-03-04T09:05:07');
});
