import { describe, expect, it } from 'vitest';
import { Memory } from '../../src/core/recall/memory.ts';
import { recall } from '../../src/core/recall/recall.ts';

interface Source {
  readonly one: { readonly [name: string]: readonly number[] };
  readonly days: ReadonlyMap<string, object>;
}

const DAY = { date: 'monday' };
const source = (one: Source['one'], days: Source['days'] = new Map([['monday', DAY]])): Source => ({ one, days });

/** Calls `work` in one judgement after the other, and counts how often it was really done. */
function rounds<T>(work: (source: Source) => T, sources: readonly Source[]): { answers: T[]; done: number } {
  const memory = new Memory();
  let done = 0;
  const counted = (from: Source): T => {
    done += 1;
    return work(from);
  };
  const answers = sources.map((from) => {
    memory.begin();
    return recall(counted, memory.open('bench', from, { inside: true }));
  });
  return { answers, done };
}

const [A, B, C] = [[1], [2], [3]];

describe('work is done again when something that it read is another', () => {
  it('a member of a record, and not when a member beside it is', () => {
    expect(rounds(({ one }) => one['a'], [source({ a: A, b: B }), source({ a: A, b: C })])).toEqual({ answers: [A, A], done: 1 });
    expect(rounds(({ one }) => one['a'], [source({ a: A }), source({ a: C })])).toEqual({ answers: [A, C], done: 2 });
  });

  it('a member that was not there, and one that is gone', () => {
    expect(rounds(({ one }) => one['b'] ?? B, [source({ a: A }), source({ a: A, b: C })]).answers).toEqual([B, C]);
    expect(rounds(({ one }) => 'a' in one, [source({ a: A }), source({})]).answers).toEqual([true, false]);
  });

  it('the members there are, asked by name or copied', () => {
    expect(rounds(({ one }) => Object.keys(one), [source({ a: A }), source({ a: A, b: B })]).answers).toEqual([['a'], ['a', 'b']]);
    expect(rounds(({ one }) => ({ ...one }), [source({ a: A }), source({ a: A, b: B })]).answers).toEqual([{ a: A }, { a: A, b: B }]);
  });

  it('an entry of a map that was looked up, found or not', () => {
    const other = new Map([['tuesday', DAY]]);
    expect(rounds(({ days }) => days.has('tuesday'), [source({}), source({}, other)]).answers).toEqual([false, true]);
    const more = new Map([['monday', DAY], ['tuesday', DAY]]); // biome-ignore format: one line
    expect(rounds(({ days }) => days.get('monday'), [source({}), source({}, more)])).toEqual({ answers: [DAY, DAY], done: 1 });
  });

  it('a map that was walked through', () => {
    const more = new Map([['monday', DAY], ['tuesday', DAY]]); // biome-ignore format: one line
    for (const walk of [
      ({ days }: Source) => [...days.keys()],
      ({ days }: Source) => [...days].map(([key]) => key),
      ({ days }: Source) => {
        const keys: string[] = [];
        days.forEach((_, key) => {
          keys.push(key);
        });
        return keys;
      },
    ])
      expect(rounds(walk, [source({}), source({}, more)]).answers).toEqual([['monday'], ['monday', 'tuesday']]);
    expect(rounds(({ days }) => days.size, [source({}), source({}, more)]).answers).toEqual([1, 2]);
  });
});

describe('work that uses other work', () => {
  const inner = ({ one }: Source): number => one['a']![0]!;

  it('is done again when the other read something that is another', () => {
    expect(rounds((from) => recall(inner, from) + 1, [source({ a: A }), source({ a: C })]).answers).toEqual([2, 4]);
  });

  it('is done again when the other failed before and would not fail now', () => {
    const failing = ({ one }: Source): number => {
      if (one['a'] === undefined) throw new Error('nothing there');
      return 1;
    };
    const careful = (from: Source): number => {
      try {
        return recall(failing, from);
      } catch {
        return 0;
      }
    };
    expect(rounds(careful, [source({}), source({ a: A })]).answers).toEqual([0, 1]);
  });

  it('is handed what the others came to, and done again when that is another object', () => {
    const memory = new Memory();
    let done = 0;
    const first = (from: Source): { readonly a: number } => ({ a: from.one['a']![0]! });
    const second = (_: Source, made: { readonly a: number }): number => {
      done += 1;
      return made.a + 1;
    };
    const answers = [source({ a: A, b: B }), source({ a: A, b: C }), source({ a: C })].map((from) => {
      memory.begin();
      const opened = memory.open('bench', from, { inside: true });
      return recall(second, opened, recall(first, opened));
    });
    expect(answers).toEqual([2, 2, 4]);
    expect(done).toBe(2);
  });

  it('is done every time when it is handed what is watched', () => {
    const memory = new Memory();
    const peek = (_: Source, other: Source): number => other.one['a']![0]!;
    const answers = [source({ a: A }), source({ a: C })].map((from) => {
      memory.begin();
      const opened = memory.open('bench', from, { inside: true });
      return recall((own: Source) => recall(peek, own, opened), opened);
    });
    expect(answers).toEqual([1, 3]);
  });
});

describe('a result that reads later what it was made from', () => {
  const lazy = ({ one }: Source): { readonly ask: () => number } => ({ ask: () => one['a']![0]! });
  const asks = (_: Source, made: { readonly ask: () => number }): number => made.ask();

  it('answers what stands there now, and whoever asked it is done again', () => {
    const memory = new Memory();
    const answers = [source({ a: A }), source({ a: A, b: B }), source({ a: C })].map((from) => {
      memory.begin();
      const opened = memory.open('bench', from, { inside: true });
      return recall(asks, opened, recall(lazy, opened));
    });
    expect(answers).toEqual([1, 1, 3]);
  });
});

describe('what is watched', () => {
  it('cannot be changed by who judges it', () => {
    const memory = new Memory();
    memory.begin();
    const opened = memory.open('bench', source({ a: A }), { inside: true });
    expect(() => Object.assign(opened.one, { a: B })).toThrow('not changed while they are judged');
  });

  it('leads from one root to the other under one watch', () => {
    const memory = new Memory();
    let done = 0;
    const work = (facts: { readonly bench: Source; readonly spots: readonly number[] }): number => {
      done += 1;
      return facts.bench.one['a']![0]! + facts.spots[0]!;
    };
    const answers = [[source({ a: A }), B], [source({ a: C }), B], [source({ a: C }), A]].map(([from, spots]) => {
      memory.begin();
      const bench = memory.open('bench', from as Source, { inside: true });
      return recall(work, memory.open('facts', { bench, spots: spots as readonly number[] }, { inside: false }));
    }); // biome-ignore format: table
    expect(answers).toEqual([3, 5, 4]);
    expect(done).toBe(3);
  });
});
