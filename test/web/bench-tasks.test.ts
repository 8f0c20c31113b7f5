import { describe, expect, it } from 'vitest';
import type { Json } from '../../src/app/casebook/change.ts';
import { ASK_WORDS, OTHER_WORDS, TASK_WORDS } from '../../src/present/words/bench-words.ts';
import { chosenFor, openAsks, optionsOf } from '../../src/web/bench/ask-state.ts';
import { fillMark, findMarks } from '../../src/web/bench/marks.ts';
import { minutesSince } from '../../src/web/bench/task/heat-tasks.ts';
import type { Ask, Task } from '../../src/web/bench/task/task.ts';
import { TASKS_OF } from '../../src/web/bench/task/tasks-of.ts';
import { type BenchCase, demoCase, emptyCase } from './bench-case.ts';

type Kept = Extract<Task, { readonly keep: unknown }>;
const TASKS = Object.values(TASKS_OF).flatMap((tasks) => tasks.flatMap((task): Kept[] => ('keep' in task ? [task] : [])));
const NUMBERS = TASKS.flatMap((task) => (task.entry === 'number' ? [task] : []));
/** Kept once: a new one takes the place of the old. */
const ONCE = new Set(['mass', 'pinDiameter', 'pinLength', 'centreOfMass', 'inductance', 'leakage', 'residualLater']);
const AT = '2026-03-12T10:00:00';
const CASES: readonly (readonly [string, () => BenchCase])[] = [
  ['a new case', emptyCase],
  ['a case with outputs, conductors and places', () => demoCase('tarn-30')],
];

/** The first thing there is to choose, for each ask. */
function firstOf(asks: readonly Ask[], one: BenchCase): Record<string, string> {
  const chosen: Record<string, string> = {};
  for (const ask of asks) {
    const [first] = optionsOf(ask, chosen, one);
    if (first !== undefined) chosen[ask.key] = first.value;
  }
  return chosen;
}
function task(id: string): Kept {
  const found = TASKS.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no task ${id}`);
  return found;
}

describe.each(CASES)('what is kept at the bench in %s', (_name, make) => {
  it.each(NUMBERS.map((one) => [one.id, one] as const))('%s is a reading that the case format takes', (_id, one) => {
    const bench = make();
    const before = one.kept(bench).length;
    const value = `3.2 ${one.number.units[0]}`;
    const given = {
      value,
      ...(one.other === undefined ? {} : { other: `1.5 ${one.other.units[0]}` }),
      chosen: firstOf(one.asks, bench),
      at: AT,
    };
    const after = bench.after(one.keep(bench, given));
    after.parsed();
    expect(JSON.stringify(after.one)).toContain('3.2 ');
    expect(one.kept(after).length).toBeGreaterThan(ONCE.has(one.id) ? 0 : before);
  });

  it.each(NUMBERS.filter(({ other }) => other?.needed !== true).map((one) => [one.id, one] as const))(
    '%s can be marked first and filled in later',
    (_id, one) => {
      const bench = make();
      if (one.id === 'offer') return;
      const marked = bench.after(one.keep(bench, { value: { state: 'marked', at: AT }, chosen: firstOf(one.asks, bench), at: AT }));
      marked.parsed();
      const [mark, ...others] = findMarks(marked);
      if (mark === undefined) throw new Error('the mark is not found');
      expect(others).toEqual([]);
      expect(mark.at).toBe(AT);
      expect([one.number.kind, mark.unit]).toEqual([mark.kind, mark.unit]);
      const filled = marked.after(fillMark(mark, mark.cell ? '3.2' : `3.2 ${mark.unit}`));
      filled.parsed();
      expect(findMarks(filled)).toEqual([]);
    },
  );

  it.each(
    NUMBERS.filter(({ other }) => other?.needed !== true).flatMap((one) =>
      (['unknown', 'absent'] as const).map((state) => [one.id, state, one] as const),
    ),
  )('%s may have no number: %s, with the reason', (_id, state, one) => {
    const bench = make();
    const because = 'the label of the meter said overload';
    const after = bench.after(one.keep(bench, { value: { state, because }, chosen: firstOf(one.asks, bench), at: AT }));
    after.parsed();
    expect(JSON.stringify(after.one)).toContain(because);
  });

  it.each(TASKS.flatMap((one) => (one.entry === 'pick' ? one.picks.map(({ key, value }) => [one.id, key, one, value] as const) : [])))(
    '%s can be %s',
    (_id, _key, one, value) => {
      const bench = make();
      const after = bench.after(one.keep(bench, { value, chosen: {}, at: AT }));
      after.parsed();
      expect(one.kept(after).at(-1)).toEqual(value);
    },
  );

  it.each(TASKS.flatMap((one) => (one.entry === 'tries' ? [[one.id, one] as const] : [])))('%s counts tries and failures', (_id, one) => {
    let bench = make();
    const total = (key: string): number =>
      one.kept(bench).reduce<number>((sum, tries) => sum + Number((tries as Record<string, Json>)[key]), 0);
    const before = { made: total('made'), failed: total('failed') };
    for (const value of [true, false, true]) bench = bench.after(one.keep(bench, { value, chosen: firstOf(one.asks, bench), at: AT }));
    bench.parsed();
    expect({ made: total('made'), failed: total('failed') }).toEqual({ made: before.made + 3, failed: before.failed + 1 });
  });
});

describe('a touch reading', () => {
  it.each(['touchCurrentRms', 'touchCurrentPeak', 'voltageToEarth'])('%s is not kept before supply and plug way are chosen', (id) => {
    const one = task(id);
    const bench = demoCase('tarn-30');
    expect(openAsks(one.asks, {}, bench).map(({ key }) => key)).toEqual(expect.arrayContaining(['supply', 'orientation']));
    const chosen = firstOf(one.asks, bench);
    expect(openAsks(one.asks, chosen, bench)).toEqual([]);
    const after = bench.after(
      one.keep(bench, { value: '3.2 V'.replace('V', one.entry === 'number' ? (one.number.units[0] ?? '') : ''), chosen, at: AT }),
    );
    expect(after.parsed().exhibits.at(-1)?.under).toMatchObject({ supply: 'direct', orientation: 'A' });
  });

  it('asks for the plug way at every reading', () => {
    for (const id of ['touchCurrentRms', 'voltageToEarth'])
      expect(task(id).asks.find(({ key }) => key === 'orientation')?.everyTime, id).toBe(true);
  });
});

describe('a way between two conductors', () => {
  it('never leads from one to itself', () => {
    const bench = demoCase('tarn-30');
    const [first] = task('distance').asks[1]?.options(bench) ?? [];
    const to = task('distance').asks[1];
    if (to === undefined || first === undefined) throw new Error('the distance asks for no conductors');
    expect(optionsOf(to, { between: first.value }, bench).map(({ value }) => value)).not.toContain(first.value);
  });

  it('between the pins of a case without conductors is from line to neutral, not to the output', () => {
    const one = emptyCase();
    const after = one.after(task('coldResistance').keep(one, { value: '1 MΩ', chosen: {}, at: AT }));
    expect(after.parsed().exhibits[0]).toMatchObject({ quantity: 'resistance', between: ['line', 'neutral'] });
  });
});

describe('what has to be chosen', () => {
  it('has words, and so has every number and every task', () => {
    const asks = TASKS.flatMap((one) => one.asks);
    expect(asks.filter(({ key }) => ASK_WORDS[key] === undefined)).toEqual([]);
    expect(Object.values(TASKS_OF).flatMap((tasks) => tasks.filter(({ id }) => TASK_WORDS[id] === undefined))).toEqual([]);
    expect(NUMBERS.filter(({ other }) => other !== undefined && OTHER_WORDS[other.key] === undefined)).toEqual([]);
  });

  it('is not asked where there is no choice, and is asked again when what was chosen is gone', () => {
    const ask: Ask = { key: 'port', options: () => [{ value: 'one' }] };
    const two: Ask = { key: 'port', options: () => [{ value: 'one' }, { value: 'two' }] };
    const one = emptyCase();
    expect(openAsks([ask], {}, one)).toEqual([]);
    expect(chosenFor([ask], {}, one)).toEqual({ port: 'one' });
    expect(openAsks([two], { port: 'gone' }, one)).toEqual([two]);
    expect(chosenFor([two], { port: 'gone' }, one)).toEqual({});
  });
});

describe('a soak', () => {
  it('counts its minutes from its first row, in one table while the conditions are the same', () => {
    expect(minutesSince('2026-03-12T10:00:00', '2026-03-12T10:07:30')).toBe('7.5');
    const one = task('soakRow');
    let bench = demoCase('fell-12');
    const chosen = firstOf(one.asks, bench);
    const before = bench.parsed().exhibits.filter(({ kind }) => kind === 'soak').length;
    bench = bench.after(one.keep(bench, { value: '40.1 °C', chosen, at: '2026-03-12T10:00:00' }));
    bench = bench.after(one.keep(bench, { value: '44.8 °C', other: '23 °C', chosen, at: '2026-03-12T10:10:00' }));
    const soaks = bench.parsed().exhibits.flatMap((exhibit) => (exhibit.kind === 'soak' ? [exhibit] : []));
    expect(soaks.length).toBe(before + 1);
    expect(soaks.at(-1)?.table.rows?.map(({ cells }) => cells)).toEqual([
      ['0.0', '40.1 °C', { state: 'notLooked' }],
      ['10.0', '44.8 °C', '23 °C'],
    ]);
  });
});
