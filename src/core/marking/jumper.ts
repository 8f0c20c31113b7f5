import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';

const ZEROS = /^0{1,4}$/;

/** A link in a resistor's body: 0, 00, 000 or 0000. Value 0 Ω. Source: practice of the bench, read on a question page. */
export const jumper: Scheme = {
  slug: 'jumper',
  part: 'resistor',
  read: (mark) => (ZEROS.test(mark) ? [buildReading('resistor', 0, 'jumper')] : []),
};
