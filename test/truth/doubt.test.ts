import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../src/core/evidence/instrument.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { combine } from '../../src/core/trace/combine.ts';
import { type Derived, given, uncertainty } from '../../src/core/trace/derived.ts';
import { doubtOfReading } from '../../src/core/working/bench/doubt-of-reading.ts';
import { findingOf, judge, noteKeys } from './build-case.ts';
import { CONDUCTORS, gap, sweep, usbPort, workingVoltage } from './evidence-pieces.ts';

const METER: Instrument = {
  id: 'm1',
  name: 'meter, invented',
  ranges: [{ of: 'outputVoltage', upTo: '20 V', resolution: '0.001 V', accuracy: '0.5 % + 3 digits' }],
};
/** At 5 V: 0.5 % rectangular makes 14.434 mV, three digits of 1 mV make 1.732 mV. */
const GAIN_V = 0.0144337567;
/** What the digits add so that gain and digits make one rectangle as wide as the whole bound: √(28² − 25²) mV / √3. */
const DIGITS_V = 0.0072801099;

function reading(name: string, value: number, day = 'day-1'): Derived {
  const form = doubtOfReading({ instrument: METER, role: 'outputVoltage', day, field: `/exhibits/s/${name}`, value, lastDigit: 0.001 });
  if (form === null) throw new Error('the meter says nothing about this reading');
  return given('reading', value, 'V', { id: name, name }, { form });
}

function meanOf(readings: readonly Derived[]): Derived {
  const inputs = Object.fromEntries(readings.map((one, index) => [`r${index}`, one]));
  const symbols = Object.fromEntries(Object.keys(inputs).map((name) => [name, name]));
  return combine(
    {
      kind: 'reduce',
      unit: 'V',
      formula: null,
      symbols,
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0) / readings.length,
    },
    inputs,
    { id: 'mean', name: 'mean' },
  );
}

function difference(a: Derived, b: Derived): Derived {
  return combine(
    {
      kind: 'reduce',
      unit: 'V',
      formula: null,
      symbols: { a: 'a', b: 'b' },
      moves: { a: 'up', b: 'down' },
      compute: ({ a: one, b: two }) => one - two,
    },
    { a, b },
    { id: 'difference', name: 'difference' },
  );
}

describe('one meter, many readings', () => {
  it('a single reading has its gain and its digits', () => {
    expect(uncertainty(reading('one', 5))).toBeCloseTo(Math.hypot(GAIN_V, DIGITS_V), 8);
  });

  it('twenty readings with one meter do not beat that meter', () => {
    const mean = uncertainty(meanOf(Array.from({ length: 20 }, (_, index) => reading(`r${index}`, 5))));
    expect(mean).toBeGreaterThanOrEqual(GAIN_V);
    expect(mean).toBeCloseTo(Math.hypot(GAIN_V, DIGITS_V / Math.sqrt(20)), 8);
  });

  it('twenty readings on twenty days are twenty settings of the gain', () => {
    const mean = uncertainty(meanOf(Array.from({ length: 20 }, (_, index) => reading(`r${index}`, 5, `day-${index}`))));
    expect(mean).toBeCloseTo(Math.hypot(GAIN_V, DIGITS_V) / Math.sqrt(20), 8);
  });

  it('a difference of two readings does not suffer from the gain', () => {
    // 0.1 V: gain 0.29 mV; digits 7.28 mV at 5 V and 7.21 mV at 4.9 V: √(27.5² − 24.5²) mV / √3
    expect(uncertainty(difference(reading('a', 5), reading('b', 4.9)))).toBeCloseTo(
      Math.hypot(0.1 * 0.002886751, DIGITS_V, 0.0072111026),
      8,
    );
  });

  it('a reading beyond every range of the meter has no doubt of it', () => {
    expect(doubtOfReading({ instrument: METER, role: 'outputVoltage', day: 'day-1', field: '/x', value: 25, lastDigit: 0.001 })).toBeNull();
  });
});

describe('unknown is never zero', () => {
  it('a reading without a stated doubt, meter or method carries none, not nought', () => {
    const unstated = gap('9 mm', { method: { state: 'unknown', because: 'not written down' } });
    const finding = findingOf(judge({ conductors: CONDUCTORS, exhibits: [unstated] }), 'shock/creepage@hv-minus~out-minus');
    expect(finding.measured).toMatchObject({ u: null });
    expect(finding.probability).toBeNull();
  });

  it('one unknown doubt among known ones makes the doubt of the result unknown', () => {
    const unknown = given(
      'reading',
      5,
      'V',
      { id: 'u', name: 'u' },
      { form: new Map([['x', { leaf: { id: 'x', u: null, means: 'notStated' }, c: 1 }]]) },
    );
    expect(uncertainty(meanOf([reading('a', 5), unknown]))).toBeNull();
  });

  it('a photo doubts 0.3 mm, a caliper 0.1 mm, a microscope 0.05 mm, rectangular, unless somebody states better', () => {
    const u = (method: 'photo' | 'caliper' | 'microscope', value = '9 mm'): unknown => {
      const { measured } = findingOf(
        judge({ conductors: CONDUCTORS, exhibits: [gap(value, { method })] }),
        'shock/creepage@hv-minus~out-minus',
      );
      return measured !== null && 'value' in measured ? measured.u : null;
    };
    expect(u('photo')).toBeCloseTo(0.000173205, 8);
    expect(u('caliper')).toBeCloseTo(0.000057735, 8);
    expect(u('microscope')).toBeCloseTo(0.0000288675, 8);
    expect(u('photo', '9 mm ± 0.02 mm')).toBeCloseTo(0.00001, 9);
  });

  it('digits count as typed: 4.98 doubts ten times as much as 4.980 on a meter that states three digits', () => {
    const u = (volts: string): number => {
      const meter = { id: 'm1', name: 'meter, invented', ranges: [{ of: 'outputVoltage', accuracy: '3 digits' }] } as const;
      const day = { id: 'day-1', date: '2026-03-05', uses: { outputVoltage: 'm1' }, under: {} } as const;
      const assessment = judge({
        ports: [usbPort()],
        instruments: [{ ...meter, ranges: [...meter.ranges] }],
        days: [day],
        exhibits: [sweep([['0', volts]])],
      });
      const { measured } = findingOf(assessment, 'harm/overvoltage@usb~5v');
      return measured !== null && 'value' in measured ? (measured.u ?? Number.NaN) : Number.NaN;
    };
    expect(u('4.98')).toBeCloseTo(0.0173205, 6);
    expect(u('4.980')).toBeCloseTo(0.00173205, 7);
  });
});

describe('steps that jump', () => {
  const at = (rms: string, path: string): Assessment => judge({ conductors: CONDUCTORS, exhibits: [gap(path), workingVoltage(rms)] });
  const branches = (assessment: Assessment): string[] =>
    assessment.steps.filter(({ notes }) => notes.some(({ key }) => key === 'otherBranch')).map(({ id }) => id);

  it('a working voltage that straddles a tenth of a millimetre leaves both branches, and the outcome stands only if they agree', () => {
    // 240 V: 2.40, so 4.8 mm; 242 V: 2.42, rounded up 2.5, so 5.0 mm
    const split = at('240 V ± 2 V', '4.95 mm ± 0.04 mm');
    expect(findingOf(split, 'shock/creepage@hv-minus~out-minus')).toMatchObject({ outcome: 'inconclusive', reason: 'branchesDisagree' });
    expect(branches(split)).toContain('insulation/hv-minus~out-minus/creepage/rounded');
    expect(findingOf(at('240 V ± 2 V', '5.3 mm ± 0.04 mm'), 'shock/creepage@hv-minus~out-minus').outcome).toBe('pass');
    expect(findingOf(at('240 V ± 2 V', '4.5 mm ± 0.04 mm'), 'shock/creepage@hv-minus~out-minus').outcome).toBe('fail');
  });

  it('one that straddles nothing leaves no such note', () => {
    const whole = at('235 V ± 2 V', '4.95 mm ± 0.04 mm');
    expect(branches(whole).filter((id) => id.includes('creepage'))).toEqual([]);
    expect(findingOf(whole, 'shock/creepage@hv-minus~out-minus').outcome).toBe('pass');
  });
});

describe('one-sided values', () => {
  const below = given('reading', 3, 'V', { id: 'b', name: 'b' }, { side: 'below' });
  const above = given('reading', 2, 'V', { id: 'a', name: 'a' }, { side: 'above' });
  const exact = given('constant', 1, 'V', { id: 'c', name: 'c' });

  it('stay one-sided through monotone arithmetic and turn about where it falls', () => {
    expect(difference(below, exact)).toMatchObject({ value: 2, side: 'below' });
    expect(difference(exact, below)).toMatchObject({ value: -2, side: 'above' });
    expect(difference(below, above)).toMatchObject({ side: 'below' });
  });

  it('become unknown where they pull both ways or where nobody said which way the result moves', () => {
    expect(difference(below, below)).toMatchObject({ side: 'anywhere' });
    expect(meanOf([below, exact])).toMatchObject({ side: 'anywhere' });
  });

  it('have no uncertainty, which is not nought', () => {
    expect(uncertainty(below)).toBeNull();
    expect(uncertainty(difference(below, exact))).toBeNull();
  });

  it('below the span in which a meter works a reading is one-sided and the meter is named', () => {
    const dark = {
      id: 'usb-meter',
      name: 'meter at the socket, invented',
      works: { of: 'outputVoltage', from: '3.5 V' },
      ranges: [{ of: 'outputVoltage', resolution: '0.01 V', accuracy: '0.01 V' }],
    } as const;
    const day = { id: 'day-1', date: '2026-03-05', uses: { outputVoltage: 'usb-meter' }, under: {} } as const;
    const assessment = judge({
      ports: [usbPort()],
      instruments: [{ ...dark, ranges: [...dark.ranges] }],
      days: [day],
      exhibits: [
        sweep([
          ['0', '5.00'],
          ['1', '0.20'],
        ]),
      ],
    });
    const finding = findingOf(assessment, 'delivery/voltage-window@usb~5v');
    expect(finding).toMatchObject({ outcome: 'fail', measured: { value: 3.5, side: 'below', u: null } });
    expect(assessment.steps.some(({ notes }) => notes.some(({ key }) => key === 'meterDark'))).toBe(true);
    expect(noteKeys(finding)).toContain('worstOfRows');
  });
});

describe('size of a derivation', () => {
  it('two hundred rows of a sweep are not two hundred steps, and no budget lists more than fifteen leaves', () => {
    const rows = Array.from({ length: 200 }, (_, index) => [
      (index / 80).toFixed(4),
      (5.2 - index / 400).toFixed(3),
      (index / 10 + 0.1).toFixed(2),
    ]);
    const { steps } = judge({
      ports: [usbPort()],
      exhibits: [sweep(rows, { under: { mains: '230 V' } })].map(({ day: _left, ...own }) => own),
    });
    expect(steps.length).toBeGreaterThan(10);
    expect(steps.length).toBeLessThanOrEqual(600);
    expect(Math.max(...steps.map(({ budget }) => budget.length))).toBeLessThanOrEqual(15);
  });

  it('every step stands after the steps it uses, and every finding names steps that are there', () => {
    const { steps, findings } = judge({
      conductors: CONDUCTORS,
      exhibits: [gap('5.1 mm'), workingVoltage('245 V ± 2 V'), gap('3.1 mm', { id: 'gap-2', path: 'air' })],
    });
    const seen = new Set<string>();
    for (const step of steps) {
      for (const use of step.uses) expect(seen.has(use.step)).toBe(true);
      seen.add(step.id);
    }
    const named = findings.flatMap(({ step, limit }) => [step, limit?.step ?? null]).filter((id) => id !== null);
    expect(named.length).toBeGreaterThan(3);
    for (const id of named) expect(seen.has(id)).toBe(true);
  });
});
