import { shiftDecimal } from '../quantity/shift-decimal.ts';
import type { Grade } from '../source/grade.ts';
import { getMarkingSource } from './marking-sources.ts';
import type { Scheme } from './reading.ts';

const FORM = /^([0-4])([A-Z])$/;

/** Letter to the leading figures of a rated voltage in V; the digit before it is the power of ten. Makers' code tables and a hobby page's. */
const FIGURES: Readonly<Record<string, number>> = {
  A: 1,
  B: 1.25,
  C: 1.6,
  D: 2,
  E: 2.5,
  F: 3.15,
  G: 4,
  H: 5,
  J: 6.3,
  K: 8,
  L: 5.5,
  N: 7.5,
  P: 2.2,
  Q: 1.1,
  V: 3.5,
  W: 4.5,
  Z: 1.8,
};

/** Codes that stand in a table that was read; others follow from the rule, and count as from memory. */
const READ = new Set('0G 0J 0L 1A 1C 1D 1E 1G 1V 1H 1N 1J 1K 2A 2Q 2B 2C 2Z 2D 2P 2E 2F 2V 2G 2W 2H 2J 2K 3A 3B'.split(' '));

export interface RatedVoltage {
  readonly volts: number;
  readonly grade: Grade;
}

/** The rated voltage of a two-character code, in V: 0J is 6.3, 1H is 50, 2E is 250. Null when it is no such code. */
export function parseVoltageCode(code: string): RatedVoltage | null {
  const match = FORM.exec(code);
  const figures = match === null ? undefined : FIGURES[match[2]!];
  if (match === null || figures === undefined) return null;
  return { volts: shiftDecimal(figures, Number(match[1])), grade: READ.has(code) ? 'secondary' : 'memory' };
}

/** A capacitor's rated voltage alone, in V, 1 V to 80 kV. */
export const voltageCode: Scheme = {
  slug: 'voltage-code',
  part: 'capacitor',
  read(mark) {
    const rated = parseVoltageCode(mark);
    if (rated === null) return [];
    return [
      {
        kind: 'voltage-rating',
        value: rated.volts,
        unit: 'V',
        tolerance: null,
        temperatureCoefficient: null,
        voltage: rated.volts,
        safetyClasses: [],
        series: null,
        scheme: 'voltage-code',
        source: getMarkingSource('voltage-code', rated.grade),
        notes: [],
      },
    ];
  },
};
