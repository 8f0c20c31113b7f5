import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../../src/core/evidence/instrument.ts';
import { derive } from '../../../src/core/formula/derive.ts';
import { power } from '../../../src/core/formula/load/power.ts';
import { boundOf, parseAccuracy } from '../../../src/core/quantity/accuracy.ts';
import { parseQuantity } from '../../../src/core/quantity/parse-quantity.ts';
import { isRefusal } from '../../../src/core/quantity/refusal.ts';
import { given } from '../../../src/core/trace/derived.ts';
import { uncertaintyOf } from '../../../src/core/trace/leaf.ts';
import { doubtOfReading } from '../../../src/core/working/bench/doubt-of-reading.ts';
import { meter } from './meter.ts';
import { STATEMENTS, type Statement } from './statements.ts';

function read({ accuracy, reading }: Statement) {
  const stated = parseAccuracy(accuracy, 'voltage');
  const shown = parseQuantity(reading, 'voltage');
  if (isRefusal(stated) || isRefusal(shown)) throw new Error(`${accuracy} or ${reading} was refused`);
  return { stated, shown };
}

describe.each(STATEMENTS)('$publication: $accuracy at $reading', (statement) => {
  const { stated, shown } = read(statement);

  it('spans the printed band', () => {
    const bound = boundOf(stated, shown.value, shown.lastDigit);
    expect(shown.value - bound).toBeCloseTo(statement.least, 9);
    expect(shown.value + bound).toBeCloseTo(statement.most, 9);
  });

  it('is one rectangle as wide as the printed band, of which the gain is shared with other readings', () => {
    const form = doubtOfReading({
      instrument: meter(statement.accuracy),
      role: 'outputVoltage',
      day: 'd1',
      field: '/v',
      value: shown.value,
      lastDigit: shown.lastDigit,
    });
    const halves = [stated.ofReading * shown.value, stated.digits * shown.lastDigit];
    expect((statement.most - statement.least) / 2).toBeCloseTo(halves[0]! + halves[1]!, 9);
    expect(uncertaintyOf(form ?? new Map())).toBeCloseTo((halves[0]! + halves[1]!) / Math.sqrt(3), 12);
    const gain = [...(form ?? new Map()).values()].find(({ leaf }) => leaf.id.startsWith('gain/'));
    expect((gain?.leaf.u ?? 0) * (gain?.c ?? 0)).toBeCloseTo(halves[0]! / Math.sqrt(3), 12);
  });
});

describe('the reading of 100.0 V within 0.8 % and 2 digits', () => {
  const PRINTED_U = 0.577; // the whole half width of 1.0 V taken as one rectangle
  const form = doubtOfReading({
    instrument: meter('0.8 % + 2'),
    role: 'outputVoltage',
    day: 'd1',
    field: '/v',
    value: 100,
    lastDigit: 0.1,
  });
  const u = uncertaintyOf(form ?? new Map()) ?? Number.NaN;

  it('has the printed 0.577 V, where two rectangles side by side would promise 0.476 V', () => {
    expect(u).toBeCloseTo(PRINTED_U, 3);
    expect(u).toBeGreaterThan(Math.hypot(0.8, 0.2) / Math.sqrt(3));
  });
});

describe('the power of 5.000 V (0.5 % + 3) and 2.000 A (1 % + 5)', () => {
  const LUMPED_U = 0.0791; // watts, each statement as one rectangle
  const instrument: Instrument = {
    id: 'm1',
    name: 'meter',
    ranges: [
      { of: 'outputVoltage', accuracy: '0.5 % + 3' },
      { of: 'outputCurrent', accuracy: '1 % + 5' },
    ],
  };
  const reading = (role: 'outputVoltage' | 'outputCurrent', value: number) => {
    const form = doubtOfReading({ instrument, role, day: 'd1', field: `/${role}`, value, lastDigit: 0.001 }) ?? new Map();
    return given('reading', value, role === 'outputVoltage' ? 'V' : 'A', { id: role, name: role }, { form });
  };
  const watts = derive(power, { voltage: reading('outputVoltage', 5), current: reading('outputCurrent', 2) }, 'power');

  it('is 10 W with four independent parts of doubt', () => {
    expect(watts.value).toBe(10);
    expect(watts.form.size).toBe(4);
  });

  it('has the uncertainty of the two statements, each one rectangle', () => {
    expect(uncertaintyOf(watts.form) ?? Number.NaN).toBeCloseTo(LUMPED_U, 3);
  });
});
