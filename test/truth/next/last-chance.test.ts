import { describe, expect, it } from 'vitest';
import { judge } from '../build-case.ts';

const happened = (...what: ('opened' | 'desoldered' | 'unwound')[]) =>
  judge({ events: what.map((one, index) => ({ id: `${one}-1`, at: `2026-03-04T1${index}:00:00`, what: one })) }).lastChance;
const listed = (chance: ReturnType<typeof happened>, point: string) => chance.find(({ before }) => before === point)?.measure ?? [];

/** Common practice of the bench: a measurement belongs before the first step that takes it away. */
describe('what can only be measured now', () => {
  it('names each measurement once while everything is still ahead', () => {
    const all = happened().flatMap(({ measure }) => measure);
    expect(all).toEqual([...new Set(all)]);
    expect(listed(happened(), 'opening')).toContain('touchBothWays');
    expect(listed(happened(), 'desoldering')).toContain('spotWinding');
    expect(listed(happened(), 'desoldering')).not.toContain('touchBothWays');
  });

  it('after opening, what a closed case shows can still be read once it is closed again', () => {
    expect(happened('opened').map(({ before }) => before)).toEqual(['desoldering', 'unwinding']);
    expect(listed(happened('opened'), 'desoldering')).toEqual(expect.arrayContaining(['touchBothWays', 'spotWinding']));
  });

  it('after the board is taken apart neither is asked for any more', () => {
    const after = happened('opened', 'desoldered');
    expect(after.map(({ before }) => before)).toEqual(['unwinding']);
    expect(after.flatMap(({ measure }) => measure)).not.toContain('touchBothWays');
  });
});
