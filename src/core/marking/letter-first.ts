import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import { E_SERIES } from './e-series.ts';
import { MULTIPLIER_LETTERS } from './multiplier-letter.ts';
import type { Reading, Scheme } from './reading.ts';

const FORM = /^([A-Z])(\d\d)$/;
const THREE_FIGURES = 2; // 1.8 stands as 180

/** Number ranges of the code, each running through a series with its tolerance: 01 to 24, 25 to 48, 49 to 60. Memory. */
const RANGES = [
  { from: 1, values: E_SERIES.E24, share: 0.02 },
  { from: 25, values: E_SERIES.E24, share: 0.05 },
  { from: 49, values: E_SERIES.E12, share: 0.1 },
] as const;

/**
 * A chip resistor's code with the letter first: the letter is the power of ten, the two digits name a value of E24 (2 % and 5 %) or E12 (10 %)
 * as three figures. 0.1 Ω to 9.1 GΩ, in ohm. The whole scheme is from memory.
 */
export const letterFirst: Scheme = {
  slug: 'letter-first',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const number = Number(match[2]);
    const found: Reading[] = [];
    for (const { from, values, share } of RANGES) {
      const inDecade = values[number - from];
      if (inDecade === undefined) continue;
      for (const { exponent, grade, disputed } of MULTIPLIER_LETTERS[match[1]!] ?? []) {
        found.push(
          buildReading('resistor', shiftDecimal(inDecade, exponent + THREE_FIGURES), 'letter-first', {
            tolerance: { minus: share, plus: share, unit: '1' },
            grades: [grade],
            notes: disputed ? ['tolerance-set-by-code', 'multiplier-letter-disputed'] : ['tolerance-set-by-code'],
          }),
        );
      }
    }
    return found;
  },
};
