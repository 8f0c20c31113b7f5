import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, judge, noteKeys } from '../build-case.ts';
import { label, PLAIN_DAY, type PortInput, plainMeter, sweep } from '../evidence-pieces.ts';

// Limits: Commission Regulation (EU) 2019/1782, annex II 1(b), read in its data file. More than one voltage at a time, 1 to 49 W: 0.075 ln P + 0.561;
// 34 W (5 V 2 A and 12 V 2 A): 0.82548. Outputs of one voltage below 6 V and from 0.55 A: 0.0834 ln P - 0.0014 P + 0.609; 15 W (2 A and 1 A at 5 V):
// 0.81385. Reduced to 10 W: 0.78704. Derating of several outputs: 10 CFR 430 subpart B appendix Z, secondary.
const SHARES = [0.25, 0.5, 0.75, 1];
interface Unit {
  /** Volts and printed amperes of the first and the second output. */
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
  readonly efficiency?: number;
  readonly shares?: readonly number[];
  readonly reduce?: number;
  readonly voltage?: string | null;
  readonly mains?: string;
  readonly more?: CasePatch;
  readonly uWatt?: string;
}
const port = (id: string, [volts, amperes]: readonly [number, number]): PortInput => ({
  id,
  kind: volts === 5 ? 'usbA' : 'barrel',
  levels: [{ id: 'v', voltage: `${volts} V`, printed: `${amperes} A` }],
});

/** One run for each load point: both outputs at that share of what is printed, and the input power that the efficiency makes of it. */
function unit({
  first,
  second,
  efficiency = 0.83,
  shares = SHARES,
  reduce = 1,
  voltage,
  mains = '230 V',
  more = {},
  uWatt = '0.01 W',
}: Unit): CasePatch {
  const runs = shares.map((share, index) => {
    const [one, two] = [first[1] * share * reduce, second[1] * share * reduce];
    const input = (first[0] * one + second[0] * two) / efficiency;
    return sweep([[String(one), String(first[0]), input.toFixed(6)]], {
      id: `together-${index + 1}`,
      level: 'v',
      port: 'one',
      under: { mains, loads: [{ port: 'two', draws: `${two} A ± 0 A` }] },
      ...(voltage === null ? {} : { others: [{ id: 'v-two', port: 'two', voltage: voltage ?? `${second[0]} V ± 0 V` }] }),
    });
  });
  return {
    ports: [port('one', first), port('two', second)],
    instruments: [plainMeter('0 V', { uWatt })],
    days: [PLAIN_DAY],
    exhibits: runs,
    ...more,
  };
}
const TWO_VOLTAGES = { first: [5, 2], second: [12, 2] } as const;
const ONE_VOLTAGE = { first: [5, 2], second: [5, 1] } as const;
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/efficiency@together');

describe('two voltages at a time, 34 W together', () => {
  it('0.83 passes 0.8255, the line for more than one voltage', () => {
    const finding = judged(unit(TWO_VOLTAGES));
    expect(finding).toMatchObject({ outcome: 'pass', limit: { name: 'ecodesign', grade: 'official-text' } });
    expect(finding.limit?.at?.value).toBeCloseTo(0.075 * Math.log(34) + 0.561, 9);
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(0.83, 6);
    expect(noteKeys(finding)).toContain('togetherSeveralVoltages');
  });

  it('0.82548 exactly is undecided, 0.80 fails and disappoints', () => {
    expect(judged(unit({ ...TWO_VOLTAGES, efficiency: 0.825476 }))).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(judged(unit({ ...TWO_VOLTAGES, efficiency: 0.8 }))).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
    });
  });

  it('a watt meter off by a watt decides neither 0.83 nor 0.80', () => {
    for (const efficiency of [0.83, 0.8]) expect(judged(unit({ ...TWO_VOLTAGES, efficiency, uWatt: '1 W' })).outcome).toBe('inconclusive');
  });

  it('below 1 W and above 49 W the line has other coefficients, and beyond 250 W there is none', () => {
    const limitOf = (first: readonly [number, number], second: readonly [number, number]): number =>
      judged(unit({ first, second })).limit?.at?.value ?? Number.NaN;
    expect(limitOf([5, 0.08], [12, 0.05])).toBeCloseTo(0.497 * 1 + 0.067, 9);
    expect(limitOf([5, 2], [20, 3])).toBeCloseTo(0.86, 9);
    expect(limitOf([5, 2], [50, 5])).toBeNaN();
  });
});

describe('outputs of one voltage are one output to the regulation', () => {
  it('2 A and 1 A at 5 V: 15 W by the line below 6 V', () => {
    const finding = judged(unit(ONE_VOLTAGE));
    expect(finding.outcome).toBe('pass');
    expect(finding.limit?.at?.value).toBeCloseTo(0.0834 * Math.log(15) - 0.0014 * 15 + 0.609, 9);
    expect(noteKeys(finding)).toContain('togetherOneVoltage');
  });

  it('0.2 A and 0.2 A at 5 V stay below 0.55 A together and take the other line', () => {
    expect(judged(unit({ first: [5, 0.2], second: [5, 0.2] })).limit?.at?.value).toBeCloseTo(0.071 * Math.log(2) - 0.0014 * 2 + 0.67, 9);
  });
});

describe('a unit printed to give less than its outputs together', () => {
  const total = label({ claims: [{ id: 't', text: 'total', of: 'total', value: '10 W' }] });
  const printed = (reduce: number): CasePatch => {
    const patch = unit({ ...ONE_VOLTAGE, efficiency: 0.8, reduce });
    return { ...patch, exhibits: [...(patch.exhibits ?? []), total] };
  };

  it('loads are reduced alike: 10 W of 15 W is two thirds, and 0.80 passes 0.787', () => {
    const finding = judged(printed(2 / 3));
    expect(finding).toMatchObject({ outcome: 'pass' });
    expect(finding.limit?.at?.value).toBeCloseTo(0.7870356, 6);
    expect(finding.notes.find(({ key }) => key === 'togetherDerated')?.args['share']).toBeCloseTo(2 / 3, 9);
  });

  it('loads that were not reduced stand at no load point', () => {
    expect(judged(printed(1))).toMatchObject({ outcome: 'notAssessed', reason: 'outOfRange' });
  });
});

describe('what is not judged', () => {
  it('a load point that has no run is neither read between nor beyond', () => {
    const finding = judged(unit({ ...TWO_VOLTAGES, shares: [0.25, 0.5, 1] }));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'outOfRange' });
    expect(finding.notes).toContainEqual({ key: 'loadPointMissing', args: { point: 'threeQuarters' } });
  });

  it('a load a tenth beside its point is no load point; one a hundredth beside is', () => {
    expect(judged(unit({ ...TWO_VOLTAGES, shares: [0.25, 0.5, 0.75, 0.9] })).outcome).toBe('notAssessed');
    expect(judged(unit({ ...TWO_VOLTAGES, shares: [0.25, 0.5, 0.75, 0.99] })).outcome).toBe('pass');
  });

  it('a neighbour whose voltage was not read', () => {
    const finding = judged(unit({ ...TWO_VOLTAGES, voltage: null }));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(finding)).toContain('neighboursNotWatched');
  });

  it('runs at other mains, runs of one output alone, no run at all', () => {
    expect(judged(unit({ ...TWO_VOLTAGES, mains: '115 V' }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    const alone = unit(TWO_VOLTAGES);
    expect(judged({ ...alone, exhibits: [sweep([['2', '5', '12.5']], { port: 'one', level: 'v' })] })).toMatchObject({
      outcome: 'notAssessed',
    });
    expect(judged({ ...alone, exhibits: [] })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('an output without a printed current', () => {
    const patch = unit(TWO_VOLTAGES);
    const bare: PortInput = {
      id: 'two',
      kind: 'barrel',
      levels: [{ id: 'v', voltage: '12 V', printed: { state: 'unknown', because: 'worn' } }],
    };
    expect(judged({ ...patch, ports: [patch.ports![0]!, bare] }).outcome).toBe('notAssessed');
  });

  it('more power out than in is a contradiction', () => {
    expect(judged(unit({ ...TWO_VOLTAGES, efficiency: 1.2 }))).toMatchObject({ outcome: 'inconclusive', reason: 'contradicted' });
  });

  it('one-sided voltages: at least 12 V passes, at most 12 V stays open', () => {
    expect(judged(unit({ ...TWO_VOLTAGES, voltage: '> 12 V' })).outcome).toBe('pass');
    expect(judged(unit({ ...TWO_VOLTAGES, voltage: '< 12 V' })).outcome).toBe('inconclusive');
  });

  it('on the American market nothing is said by the American figure, which was read nowhere', () => {
    const patch = unit({
      ...TWO_VOLTAGES,
      more: { setting: { market: 'US', mains: { nominal: '230 V', frequency: '60 Hz', low: '207 V', high: '253 V' } } },
    });
    const finding = judged(patch);
    expect(noteKeys(finding)).toContain('togetherAmericanUnknown');
    expect(finding.others).toEqual([]);
  });
});
