import { describe, expect, it } from 'vitest';
import { creepage } from '../../src/core/table/iec-62368-1/2018/creepage.ts';
import { columnOf, neverFalls } from './compare-columns.ts';
import { TABLE_F4 } from './second-copy-60664.ts';
import { TABLE_17 } from './second-copy-62368.ts';

const columns = Object.keys(creepage.columns);
const cells = (name: string): number[] => columnOf(creepage, name).map(([, cell]) => cell);

describe('creepage by working voltage', () => {
  it.each(columns)('%s is what a second copy of table 17 of IEC 62368-1 has', (name) => {
    expect(columnOf(creepage, name)).toEqual(TABLE_17[name]);
  });

  it.each(columns)('%s is what a second copy of table F.4 of IEC 60664-1 has', (name) => {
    expect(columnOf(creepage, name)).toEqual(TABLE_F4[name]);
  });

  it('has 147 cells', () => {
    expect(columns.flatMap(cells)).toHaveLength(147);
  });

  it.each(columns)('%s never falls with voltage', (name) => {
    expect(neverFalls(cells(name))).toBe(true);
  });

  it.each([
    ['PD2_I', 'PD2_II'],
    ['PD2_II', 'PD2_III'],
    ['PD3_I', 'PD3_II'],
    ['PD3_II', 'PD3_III'],
    ['PD1', 'PD2_I'],
    ['PD2_I', 'PD3_I'],
    ['PD2_II', 'PD3_II'],
    ['PD2_III', 'PD3_III'],
  ])('%s is nowhere longer than %s: better material and cleaner surroundings need no more', (less, more) => {
    const longer = cells(more);
    expect(cells(less).filter((cell, index) => cell > longer[index]!)).toEqual([]);
  });

  it('of 10 V to 32 V does not depend on the material', () => {
    const low = (name: string): number[] => cells(name).slice(0, 6);
    expect(low('PD2_II')).toEqual(low('PD2_I'));
    expect(low('PD2_III')).toEqual(low('PD2_I'));
    expect(low('PD3_III')).toEqual(low('PD3_I'));
  });

  it('of group III is twice that of group I from 160 V on, in pollution degree 2, but for preferred numbers (3.15 is printed 3.2)', () => {
    const from = creepage.rows.findIndex(([voltage]) => voltage === 160);
    const ROUNDING = 0.02;
    for (const [index, cell] of cells('PD2_III').slice(from).entries()) {
      const twice = 2 * cells('PD2_I').slice(from)[index]!;
      expect(Math.abs(cell - twice) / twice).toBeLessThanOrEqual(ROUNDING);
    }
  });
});
