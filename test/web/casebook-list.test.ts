import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnRoom } from '../../src/web/casebook/use-column-room.ts';
import { missingPages, stepTo, visibleRows } from '../../src/web/casebook/visible-rows.ts';
import { isFiltered, type ListQuery, parseListQuery, toAddress, toggled, toRequest } from '../../src/web/state/casebook-query.ts';

const word = fc.string({ minLength: 1, maxLength: 12 });
const words = fc.uniqueArray(word, { maxLength: 3 });
const anyQuery: fc.Arbitrary<ListQuery> = fc.record({
  search: word.filter((text) => text.trim() !== ''),
  failure: words,
  coverage: words,
  hazard: words,
  kind: words,
  claim: words,
  sort: word,
  archived: fc.boolean(),
  unit: word,
  check: word,
});

describe('what is asked of the list', () => {
  it('comes back out of the address as it went in', () => {
    fc.assert(
      fc.property(anyQuery, (query) => {
        expect(parseListQuery(`?${toAddress(query)}`)).toEqual(query);
      }),
    );
  });

  it('leaves the address empty when nothing is asked', () => {
    expect(toAddress(parseListQuery(''))).toBe('');
    expect(isFiltered(parseListQuery(''))).toBe(false);
  });

  it('asks the server the same, whichever case and check the panel shows', () => {
    fc.assert(
      fc.property(anyQuery, word, (query, other) => {
        expect(toRequest({ ...query, unit: other, check: other })).toBe(toRequest(query));
      }),
    );
  });

  it('takes a word of a filter in at the first press and out at the second', () => {
    const once = toggled(parseListQuery(''), 'failure', 'Unsafe');
    expect(once.failure).toEqual(['Unsafe']);
    expect(toggled(once, 'failure', 'Unsafe').failure).toEqual([]);
  });
});

describe('a long list', () => {
  it('has every row that stands in the window, and never many more, wherever it is scrolled to', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000 }),
        fc.integer({ min: -500, max: 400_000 }),
        fc.integer({ min: 100, max: 2000 }),
        (total, top, height) => {
          const rowHeight = 34;
          const { first, end } = visibleRows({ total, rowHeight, top, height });
          for (const index of [0, 1, total - 1, Math.floor(top / rowHeight), Math.floor((top + height) / rowHeight)]) {
            const inWindow = index >= 0 && index < total && (index + 1) * rowHeight > top && index * rowHeight < top + height;
            if (inWindow) expect(index >= first && index < end).toBe(true);
          }
          expect(end - first).toBeLessThanOrEqual(Math.ceil(height / rowHeight) + 14);
        },
      ),
    );
  });

  it('asks for the pages that are missing and for no other', () => {
    const here = new Set([40, 41, 42]);
    expect(missingPages(38, 43, 40, (index) => here.has(index))).toEqual([0]);
    expect(missingPages(79, 121, 40, () => false)).toEqual([1, 2, 3]);
  });

  it('is walked with the arrow keys and never left at either end', () => {
    expect(stepTo('ArrowDown', 9, 10, 5)).toBe(9);
    expect(stepTo('PageUp', 3, 10, 5)).toBe(0);
    expect(stepTo('End', 0, 10_000, 5)).toBe(9999);
    expect(stepTo('a', 3, 10, 5)).toBeNull();
    expect(stepTo('ArrowDown', 0, 0, 5)).toBeNull();
  });
});

describe('columns', () => {
  it('stand side by side as far as there is room, four on a desk, none on a phone', () => {
    expect(columnRoom(1440)).toBe(4);
    expect(columnRoom(390)).toBe(0);
  });
});
