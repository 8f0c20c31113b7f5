import { describe, expect, it } from 'vitest';
import { clearanceImpulse } from '../../src/core/table/iec-60664-1/2007/clearance-impulse.ts';
import { nextImpulse } from '../../src/core/table/iec-60664-1/2007/next-impulse.ts';
import { ratedImpulseVoltage } from '../../src/core/table/iec-60664-1/2007/rated-impulse-voltage.ts';
import { clearanceHighFrequency } from '../../src/core/table/iec-62368-1/2018/clearance-high-frequency.ts';
import { clearancePeak } from '../../src/core/table/iec-62368-1/2018/clearance-peak.ts';
import { clearanceWithstand } from '../../src/core/table/iec-62368-1/2018/clearance-withstand.ts';
import { columnOf, neverFalls } from './compare-columns.ts';
import { TABLE_F1, TABLE_F2, TABLE_F8 } from './second-copy-60664.ts';
import { TABLE_10, TABLE_14 } from './second-copy-62368.ts';

const cellsOf = (table: typeof clearancePeak | typeof clearanceWithstand | typeof clearanceImpulse, name: string): number[] =>
  columnOf(table, name).map(([, cell]) => cell);
const BOTH = ['B_PD1', 'B_PD2', 'B_PD3', 'R_PD1', 'R_PD2', 'R_PD3'];
const DEGREES = ['PD1', 'PD2', 'PD3'];

describe('clearance by peak voltage, procedure 1', () => {
  it.each(BOTH)('%s is what a second copy of table 10 has', (name) => {
    expect(columnOf(clearancePeak, name)).toEqual(TABLE_10[name]);
  });

  it('of basic insulation in pollution degree 1 is table F.8 of IEC 60664-1', () => {
    expect(columnOf(clearancePeak, 'B_PD1')).toEqual(TABLE_F8['A']);
  });

  it.each(BOTH)('%s never falls with voltage', (name) => {
    expect(neverFalls(cellsOf(clearancePeak, name))).toBe(true);
  });
});

describe('clearance by withstand voltage, procedure 2', () => {
  it.each(BOTH)('%s is what a second copy of table 14 has', (name) => {
    expect(columnOf(clearanceWithstand, name)).toEqual(TABLE_14[name]);
  });

  it.each(DEGREES)('of basic insulation in %s is table F.2 of IEC 60664-1, as far as both go', (degree) => {
    const basic = columnOf(clearanceWithstand, `B_${degree}`);
    expect(columnOf(clearanceImpulse, degree).slice(0, basic.length)).toEqual(basic);
  });

  it.each(BOTH)('%s never falls with voltage', (name) => {
    expect(neverFalls(cellsOf(clearanceWithstand, name))).toBe(true);
  });

  it('of reinforced insulation is nowhere shorter than basic and nowhere longer than twice basic', () => {
    for (const degree of DEGREES) {
      const basic = cellsOf(clearanceWithstand, `B_${degree}`);
      for (const [index, reinforced] of cellsOf(clearanceWithstand, `R_${degree}`).entries()) {
        expect(reinforced).toBeGreaterThan(basic[index]!);
        expect(reinforced).toBeLessThanOrEqual(2 * basic[index]! + 1e-12);
      }
    }
  });
});

describe('clearance by impulse, insulation coordination', () => {
  it.each(DEGREES)('%s is what a second copy of table F.2 has', (degree) => {
    expect(columnOf(clearanceImpulse, degree)).toEqual(TABLE_F2[degree]);
  });

  it('is nowhere shorter in dirtier surroundings', () => {
    const [clean, middle, dirty] = DEGREES.map((degree) => cellsOf(clearanceImpulse, degree));
    expect(clean!.every((cell, index) => cell <= middle![index]! && middle![index]! <= dirty![index]!)).toBe(true);
  });
});

describe('rated impulse voltage', () => {
  it.each(['I', 'II', 'III', 'IV'])('of category %s is what a second copy of table F.1 has', (category) => {
    const D_C_ROW = 1250; // left out there
    expect(columnOf(ratedImpulseVoltage, category).filter(([mains]) => mains !== D_C_ROW)).toEqual(TABLE_F1[category]);
  });

  it.each([
    ['I', 'II'],
    ['II', 'III'],
    ['III', 'IV'],
  ])('of category %s is below that of %s in every row', (lower, higher) => {
    const above = columnOf(ratedImpulseVoltage, higher);
    expect(columnOf(ratedImpulseVoltage, lower).every(([, cell], index) => cell < above[index]![1])).toBe(true);
  });

  it('to 1000 V in a category is followed by that of the next category: the preferred series', () => {
    const next = new Map(nextImpulse.rows.map(([key, cell]) => [key, cell]));
    const rows = ratedImpulseVoltage.rows.filter(([mains]) => mains <= 1000);
    for (const [, ...cells] of rows)
      for (const [index, cell] of cells.slice(0, -1).entries())
        expect(next.get(cell as (typeof nextImpulse.rows)[number][0])).toBe(cells[index + 1]);
  });
});

describe('clearance above 30 kHz', () => {
  /** IEC 60664-4 table 1, inhomogeneous field, as an open magnetics library has it: volts peak, millimetres. */
  const COORDINATION: readonly (readonly [number, number])[] = [
    [600, 0.065],
    [800, 0.18],
    [1000, 0.5],
    [1200, 1.4],
    [1400, 2.35],
    [1600, 4],
    [1800, 6.7],
    [2000, 11],
  ];
  const DEGREE_2 = 1.2; // factor of pollution degree 2 there
  const ROUNDED_MM = 0.01; // both tables are printed to a hundredth

  it('of basic insulation is 1.2 times that of IEC 60664-4, as printed, from 800 V on', () => {
    const basic = columnOf(clearanceHighFrequency, 'basic');
    expect(basic.map(([volts]) => volts)).toEqual(COORDINATION.map(([volts]) => volts));
    for (const [index, [volts, cell]] of basic.entries())
      if (volts >= 800) expect(Math.abs(cell - DEGREE_2 * COORDINATION[index]![1])).toBeLessThanOrEqual(ROUNDED_MM);
  });

  it('of reinforced insulation is twice that of basic, and neither falls', () => {
    const [basic, reinforced] = ['basic', 'reinforced'].map((name) => columnOf(clearanceHighFrequency, name).map(([, cell]) => cell));
    for (const [index, cell] of reinforced!.entries()) expect(cell).toBeCloseTo(2 * basic![index]!, 12);
    expect(neverFalls(basic!)).toBe(true);
  });
});
