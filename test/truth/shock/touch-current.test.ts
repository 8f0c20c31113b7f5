import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { AT_HIGHEST_MAINS, across, CONDUCTORS, label, touch, touchPeak } from '../evidence-pieces.ts';

// Limits: IEC 62368-1:2018 table 4, first limit 0.5 mA rms, 0.707 mA peak (secondary: a national adoption); second 5 mA rms, 7.07 mA peak (memory).
// A failure on the second needs 1.3 times the limit, 6.5 mA, to be headlined. Lines without failure: 0.25 mA (IEC 60950-1 table 5A), 0.09 mA (IEC 62684).
type Touch = Parameters<typeof touch>;
const one = (value: Touch[0], more: Touch[1] = {}): CasePatch => ({ conductors: CONDUCTORS, exhibits: [touch(value, more)] });
const wayA = (patch: CasePatch): Finding => findingOf(judge(patch), 'shock/touch-current@out-minus~A');

describe('touch current at the highest mains', () => {
  it('exactly half a milliampere is undecided', () => {
    const finding = wayA(one('0.500 mA ± 0.02 mA'));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 9);
    expect(finding.probability).toBeCloseTo(0.5, 6);
  });

  it('0.48 mA passes and 0.52 mA injures, two standard uncertainties from half a milliampere', () => {
    const inside = wayA(one('0.480 mA ± 0.02 mA'));
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met' });
    expect(inside.probability).toBeCloseTo(0.977249868, 5);
    expect(inside.margin).toBeCloseTo(0.96, 9);
    const assessment = judge(one('0.520 mA ± 0.02 mA'));
    const outside = findingOf(assessment, 'shock/touch-current@out-minus~A');
    expect(outside).toMatchObject({ outcome: 'fail', reason: 'notMet', consequence: 'injurious', headline: true });
    expect(outside.probability).toBeCloseTo(0.022750132, 5);
    expect(outside.margin).toBeCloseTo(1.04, 9);
    expect(outside.limit?.at?.value).toBeCloseTo(0.0005, 12);
    expect(outside.limit?.grade).toBe('secondary');
    expect(assessment.verdict.failure).toBe('Unsafe');
  });

  it('0.3 mA is above what older rules allowed a class II unit and does not fail for it', () => {
    const finding = wayA(one('0.300 mA ± 0.01 mA'));
    expect(finding.outcome).toBe('pass');
    const lines = Object.fromEntries(finding.others.map(({ name, at }) => [name, at?.value]));
    expect(lines['class2']).toBeCloseTo(0.00025, 12);
    expect(lines['phoneSupply']).toBeCloseTo(0.00009, 12);
  });

  it('7 mA is lethal: beyond 1.3 times the second limit', () => {
    const assessment = judge(one('7.0 mA ± 0.1 mA'));
    const finding = findingOf(assessment, 'shock/touch-current@out-minus~A');
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'lethal', headline: true });
    expect(finding.margin).toBeCloseTo(1.4, 9);
    expect(finding.limit?.grade).toBe('memory');
    expect(assessment.verdict).toMatchObject({ failure: 'Dangerous', decidedBy: ['shock/touch-current@out-minus~A'], grade: 'memory' });
  });

  it('6 mA is beyond the second limit too: Dangerous stands with the headline, as its word or as the doubtful one', () => {
    const { verdict } = judge(one('6.0 mA ± 0.1 mA'));
    expect([verdict.failure, verdict.doubtful]).toContain('Dangerous');
  });

  it('5 mA with a doubt of a tenth is at least injurious', () => {
    expect(wayA(one('5.0 mA ± 0.2 mA'))).toMatchObject({ outcome: 'fail', headline: true });
  });

  it('a peak of 0.75 mA fails where 0.75 mA rms would, and 0.68 mA peak passes where 0.68 mA rms would not', () => {
    const peak = (value: string): Finding => wayA({ conductors: CONDUCTORS, exhibits: [touchPeak(value)] });
    expect(peak('0.750 mA ± 0.02 mA')).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect(peak('0.680 mA ± 0.02 mA')).toMatchObject({ outcome: 'pass' });
    expect(peak('0.707 mA ± 0.02 mA')).toMatchObject({ outcome: 'inconclusive' });
    expect(peak('10.0 mA ± 0.1 mA')).toMatchObject({ outcome: 'fail', consequence: 'lethal' });
    expect(wayA(one('0.680 mA ± 0.02 mA'))).toMatchObject({ outcome: 'fail' });
  });

  it('a doubt as large as the limit decides nothing', () => {
    expect(wayA(one('0.4 mA ± 0.5 mA'))).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
  });

  it('a current without a doubt is undecided within a tenth of the limit', () => {
    expect(wayA(one('0.46 mA'))).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown', probability: null });
    expect(wayA(one('0.44 mA'))).toMatchObject({ outcome: 'pass', probability: null });
    expect(wayA(one('0.54 mA'))).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
    expect(wayA(one('0.56 mA'))).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
  });
});

describe('scaling to the highest mains', () => {
  it('0.40 mA at 230 V 50 Hz is 0.55 mA at 264 V 60 Hz, so a 100-240 V unit fails', () => {
    // 0.40 × 264 × 60 / (230 × 50) = 0.55096 mA
    const under = { mains: '230 V ± 0 V', frequency: '50 Hz ± 0 Hz', supply: 'direct', orientation: 'A' } as const;
    const finding = wayA({
      conductors: CONDUCTORS,
      exhibits: [label({ input: { voltage: '100-240 V' } }), touch('0.400 mA ± 0.01 mA', { under })],
    });
    expect(finding.measured).toMatchObject({ unit: 'A' });
    expect(finding.margin).toBeCloseTo(1.101913, 5);
    expect(finding.outcome).toBe('fail');
    expect(noteKeys(finding)).toContain('scaledToHighestMains');
  });

  it('the same reading on a unit for 230 V alone is scaled to 253 V 50 Hz, 0.44 mA, and passes', () => {
    const under = { mains: '230 V ± 0 V', frequency: '50 Hz ± 0 Hz', supply: 'direct', orientation: 'A' } as const;
    const finding = wayA({ conductors: CONDUCTORS, exhibits: [touch('0.400 mA ± 0.01 mA', { under })] });
    expect(finding.margin).toBeCloseTo(0.88, 6);
    expect(finding.outcome).toBe('pass');
  });

  it('a case that sets 60 Hz mains is judged at 60 Hz: 0.45 mA read at 50 Hz is 0.54 mA', () => {
    const mains = { nominal: '230 V', low: '207 V', high: '253 V', frequency: '60 Hz' };
    expect(wayA({ ...one('0.450 mA ± 0.01 mA'), setting: { market: 'EU', mains } }).outcome).toBe('fail');
  });

  it('a mains voltage that nobody wrote down leaves nothing to scale by', () => {
    expect(wayA(one('0.1 mA ± 0.01 mA', { under: { supply: 'direct', orientation: 'A', frequency: '50 Hz' } }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'refusedEvidence',
    });
  });

  it('a mains voltage of zero is a slip of the pen and no reason to give up the case', () => {
    const finding = wayA(one('0.1 mA ± 0.01 mA', { under: { ...AT_HIGHEST_MAINS, orientation: 'A', mains: '0 V' } }));
    expect(finding.outcome).not.toBe('pass');
  });
});

describe('one-sided currents', () => {
  it('below 0.05 mA passes, below 1 mA is open, above 1 mA fails, above 0.1 mA is open', () => {
    expect(wayA(one('< 0.05 mA'))).toMatchObject({ outcome: 'pass' });
    expect(wayA(one('< 1 mA'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(wayA(one('> 1 mA'))).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect(wayA(one('> 0.1 mA'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(wayA(one('> 8 mA'))).toMatchObject({ outcome: 'fail', consequence: 'lethal' });
  });
});

describe('evidence that does not count', () => {
  it('a reading behind an isolating transformer or an electronic source is kept, refused with the reason, and warned of', () => {
    for (const supply of ['isolating', 'electronic'] as const) {
      const assessment = judge(one('0.002 mA ± 0.001 mA', { under: { ...AT_HIGHEST_MAINS, orientation: 'A', supply } }));
      const finding = findingOf(assessment, 'shock/touch-current@out-minus~A');
      expect(finding).toMatchObject({
        outcome: 'notAssessed',
        reason: 'refusedEvidence',
        measured: null,
        fields: ['/exhibits/touch-a/value'],
      });
      expect(noteKeys(finding)).toContain('supplyNotDirect');
      expect(assessment.warnings.map(({ key }) => key)).toContain('supplyNotDirect');
    }
  });

  it('the supply and the plug way of the day do not count, only those of the reading or its exhibit', () => {
    const day = { id: 'day-1', date: '2026-03-05', uses: {}, under: { ...AT_HIGHEST_MAINS, orientation: 'A' } } as const;
    const noSupply = judge({
      conductors: CONDUCTORS,
      days: [day],
      exhibits: [touch('0.1 mA', { day: 'day-1', under: { orientation: 'A' } })],
    });
    expect(findingOf(noSupply, 'shock/touch-current@out-minus~A')).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
    const noWay = judge({
      conductors: CONDUCTORS,
      days: [day],
      exhibits: [touch('0.1 mA', { day: 'day-1', under: { supply: 'direct' } })],
    });
    expect(findingsOf(noWay, 'shock/touch-current').map(({ outcome }) => outcome)).not.toContain('pass');
  });

  it('an isolating supply stated on the reading itself outranks a direct one on its exhibit', () => {
    expect(wayA(one({ v: '0.002 mA', under: { supply: 'isolating' } }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'refusedEvidence',
    });
  });

  it('one plug way leaves the other not assessed', () => {
    const assessment = judge(one('0.1 mA ± 0.01 mA'));
    expect(findingOf(assessment, 'shock/touch-current@out-minus~A').outcome).toBe('pass');
    const other = findingOf(assessment, 'shock/touch-current@out-minus~B');
    expect(other).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(other)).toContain('otherPlugWay');
    expect(assessment.verdict.cells.shock.find(({ check }) => check === 'shock/touch-current')?.state).toBe('notAssessed');
  });

  it('both ways pass, and the check is settled', () => {
    const b = touch('0.1 mA ± 0.01 mA', { id: 'touch-b', under: { ...AT_HIGHEST_MAINS, orientation: 'B' } });
    const assessment = judge({ conductors: CONDUCTORS, exhibits: [touch('0.1 mA ± 0.01 mA'), b] });
    expect(assessment.verdict.cells.shock.find(({ check }) => check === 'shock/touch-current')?.state).toBe('settled');
  });

  it('the five states: not looked, could not tell, cannot now, struck', () => {
    expect(findingsOf(judge(), 'shock/touch-current')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(wayA(one({ state: 'notLooked' }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(wayA(one({ state: 'unknown', because: 'the display was blank' }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(wayA(one({ state: 'absent', because: 'no output to touch' })).outcome).not.toBe('pass');
    expect(wayA(one({ state: 'cannotNow', since: 'burnt' }))).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(wayA(one({ v: '9 mA', struck: 'clip slipped' }))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });
});

describe('the measured current beside the computed one', () => {
  const y1 = across('c1', 'hv-minus', 'out-minus', { value: '1 nF', safetyClass: 'Y1', identity: 'established' });

  it('0.3 mA through a 1 nF capacitor, which passes at most 0.08 mA at 253 V 50 Hz, means another way through', () => {
    // 2π × 50 Hz × 1 nF × 253 V = 0.07948 mA
    const finding = wayA({ ...one('0.300 mA ± 0.01 mA'), parts: [y1] });
    const note = finding.notes.find(({ key }) => key === 'aboveComputedBound');
    expect(note?.args['boundMa']).toBeCloseTo(0.07948, 4);
  });

  it('a small computed current never makes a measured failure pass', () => {
    expect(wayA({ ...one('0.600 mA ± 0.01 mA'), parts: [y1] })).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
  });
});

describe('a voltage from the output to earth', () => {
  // the network is read across 500 Ω (a service text prints 0.35 V for 0.7 mA peak): 0.24 V are 0.48 mA; a plain 2 kΩ has 0.96 V at 0.48 mA
  type Voltage = Extract<NonNullable<CasePatch['exhibits']>[number], { kind: 'touch'; quantity: 'voltageToEarth' }>;
  const volts = (value: Voltage['value'], method: Voltage['method'], more: Partial<Voltage> = {}): Voltage => ({
    id: 'touch-v',
    kind: 'touch',
    quantity: 'voltageToEarth',
    from: 'out-minus',
    under: { ...AT_HIGHEST_MAINS, orientation: 'A' },
    value,
    method,
    ...more,
  });
  const meter = (inputResistance?: string): NonNullable<CasePatch['instruments']>[number] => ({
    id: 'meter',
    name: 'meter, invented',
    ranges: [],
    ...(inputResistance === undefined ? {} : { inputResistance }),
  });
  const with_ = (exhibit: Voltage, input?: string, others: CasePatch['exhibits'] = []): CasePatch => ({
    conductors: CONDUCTORS,
    instruments: [meter(input)],
    exhibits: [exhibit, ...others],
  });
  const through = (value: string, input?: string): Finding => wayA(with_(volts({ v: value, instrument: 'meter' }, 'meter'), input));

  it('across the network or 2 kΩ is a current: 0.48 mA passes, 0.52 mA injures', () => {
    expect(wayA(with_(volts('0.240 V ± 0.01 V', 'network')))).toMatchObject({ outcome: 'pass', measured: { value: 0.00048, unit: 'A' } });
    expect(wayA(with_(volts('0.260 V ± 0.01 V', 'network')))).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect(wayA(with_(volts('0.960 V ± 0.04 V', 'resistor')))).toMatchObject({ outcome: 'pass' });
    const beyond = wayA(with_(volts('1.040 V ± 0.04 V', 'resistor')));
    expect(beyond).toMatchObject({ outcome: 'fail' });
    expect(noteKeys(beyond)).toEqual(expect.arrayContaining(['fromVoltageToEarth', 'notTheNetwork']));
  });

  it('through a meter it is a bound: 88 V on 10 MΩ settle nothing, 88 V on 100 kΩ are more than half a milliampere', () => {
    const light = through('88 V ± 1 V', '10 MΩ');
    expect(light).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable', measured: { side: 'above' } });
    expect(noteKeys(light)).toContain('lessThroughMeter');
    expect(through('88 V ± 1 V', '100 kΩ')).toMatchObject({ outcome: 'fail', consequence: 'injurious', measured: { side: 'above' } });
  });

  it('a meter whose input nobody stated says nothing; a reading below a bound says nothing either', () => {
    const bare = through('88 V ± 1 V');
    expect(bare).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(bare)).toContain('earthMeterNotStated');
    expect(through('< 88 V', '100 kΩ').outcome).toBe('notAssessed');
  });

  it('behind an isolating source it is refused like a touch current', () => {
    const behind = volts('0 V', 'network', { under: { ...AT_HIGHEST_MAINS, supply: 'isolating', orientation: 'A' } });
    expect(wayA(with_(behind))).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
  });

  it('beside a current that was read it takes nothing away', () => {
    const both = with_(volts({ v: '88 V ± 1 V', instrument: 'meter' }, 'meter'), '10 MΩ', [touch('0.480 mA ± 0.02 mA')]);
    expect(wayA(both)).toMatchObject({ outcome: 'pass', measured: { value: 0.00048 } });
  });
});
