import { describe, expect, it } from 'vitest';
import { beginDay, lastDay } from '../../src/web/bench/new-day.ts';
import { demoCase, emptyCase } from './bench-case.ts';

describe('a new day at the bench', () => {
  it('takes instruments, mains and supply from the last day, and no ambient', () => {
    const one = demoCase('fell-12');
    const before = one.parsed().days.at(-1);
    const after = one.after(beginDay(one, '2026-04-02')).parsed().days;
    expect(after.length).toBe(one.parsed().days.length + 1);
    expect(after.at(-1)).toMatchObject({ date: '2026-04-02', uses: before?.uses, under: { mains: before?.under.mains } });
    expect(before?.under.ambient).toBeDefined();
    expect(after.at(-1)?.under.ambient).toBeUndefined();
  });

  it('is the first of a new case', () => {
    const one = emptyCase();
    expect(lastDay(one)).toBeNull();
    expect(lastDay(one.after(beginDay(one, '2026-04-02')))).toBe('2026-04-02');
  });
});
