import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import { E_SERIES } from './e-series.ts';
import { MULTIPLIER_LETTERS } from './multiplier-letter.ts';
import type { Scheme } from './reading.ts';

const FORM = /^(\d\d)([A-Za-z])$/;
const TWO_DECIMALS = 2; // values of E96 have two: 4.99 stands as 499
const ONE_PERCENT = { minus: 0.01, plus: 0.01, unit: '1' } as const; // the code is used on 1 % parts (maker's data sheet)

/**
 * A chip resistor's three-character code: two digits name the n-th value of E96 as three figures (01 is 100, 96 is 976), a letter the power of ten.
 * 0.1 Ω to 9.76 GΩ, in ohm. A letter that tables print differently gives a reading for each. Sources: see the letters.
 */
export const e96Code: Scheme = {
  slug: 'e96-code',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    const inDecade = match === null ? undefined : E_SERIES.E96[Number(match[1]) - 1];
    if (match === null || inDecade === undefined) return [];
    const multipliers = MULTIPLIER_LETTERS[match[2]!.toUpperCase()] ?? [];
    return multipliers.map(({ exponent, grade, disputed }) =>
      buildReading('resistor', shiftDecimal(inDecade, exponent + TWO_DECIMALS), 'e96-code', {
        tolerance: ONE_PERCENT,
        grades: [grade],
        notes: disputed ? ['tolerance-set-by-code', 'multiplier-letter-disputed'] : ['tolerance-set-by-code'],
      }),
    );
  },
};
