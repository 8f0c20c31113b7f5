import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';

const FORM = /^([1-9]\d{0,2}|0)V(\d{1,2})$/;

/** A regulator diode's voltage with V at the decimal point, in V: 5V1 is 5.1 V. Source: memory. */
export const zenerVoltage: Scheme = {
  slug: 'zener-voltage',
  part: 'diode',
  read(mark) {
    const match = FORM.exec(mark);
    const value = match === null ? 0 : Number(`${match[1]}.${match[2]}`);
    return value === 0 ? [] : [buildReading('diode', value, 'zener-voltage')];
  },
};
