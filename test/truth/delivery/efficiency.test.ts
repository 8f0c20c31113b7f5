import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// Limits: Commission Regulation (EU) 2019/1782, annex II 1(b), read in its data file. Below 6 V and from 0.55 A: 0.0834 ln P - 0.0014 P + 0.609, so
// 5 V 2 A (10 W) 0.78704. Others: 0.071 ln P - 0.0014 P + 0.67, so 5 V 0.5 A (2.5 W) 0.73156 and 12 V 2.5 A (30 W) 0.86949.
const volts5 = (inputs: readonly [string, string, string, string]): string[][] =>
  ['0.5', '1', '1.5', '2'].map((amperes, index) => [amperes, '5', inputs[index]!]);
const AT_080 = volts5(['3.125', '6.25', '9.375', '12.5']);
const case_ = (rows: readonly (readonly string[])[], more: { port?: PortInput; uWatt?: string; mains?: string } = {}): CasePatch => ({
  ports: [more.port ?? usbPort()],
  instruments: [plainMeter('0 V', { uWatt: more.uWatt ?? '0.05 W' })],
  days: [{ ...PLAIN_DAY, under: { ...PLAIN_DAY.under, mains: more.mains ?? '230 V' } }],
  exhibits: [sweep(rows)],
});
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/efficiency@usb~5v');

describe('average efficiency of 5 V 2 A', () => {
  it('0.80 passes 0.787 with P = 0.974: one watt meter off by 0.05 W moves all four points together', () => {
    // dη/dP of the mean: 0.8/4 × (1/3.125 + 1/6.25 + 1/9.375 + 1/12.5) = 0.13333 per W; u = 0.0066667; z = 0.012964/0.0066667
    const finding = judged(case_(AT_080));
    expect(finding).toMatchObject({ outcome: 'pass', reason: 'met' });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(0.8, 9);
    expect('value' in finding.measured! ? finding.measured.u : 0).toBeCloseTo(0.0066667, 5);
    expect(finding.limit?.at?.value).toBeCloseTo(0.7870356, 6);
    expect(finding.limit?.grade).toBe('official-text');
    expect(finding.margin).toBeCloseTo(0.9837945, 6);
    expect(finding.probability).toBeCloseTo(0.974092, 4);
  });

  it('0.787 exactly is undecided', () => {
    const finding = judged(case_(volts5(['3.176476', '6.352953', '9.529429', '12.705905'])));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 5);
    expect(finding.probability).toBeCloseTo(0.5, 3);
  });

  it('0.77 fails, disappoints, and is headlined on the text of the regulation', () => {
    const assessment = judge(case_(volts5(['3.246753', '6.493506', '9.74026', '12.987013'])));
    expect(findingOf(assessment, 'delivery/efficiency@usb~5v')).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
    });
    expect(findingOf(assessment, 'delivery/efficiency@usb~5v').margin).toBeCloseTo(1.0221242, 5);
    expect(assessment.verdict).toMatchObject({ failure: 'Below its claims', grade: 'official-text' });
  });

  it('a watt meter off by half a watt decides neither 0.80 nor 0.77', () => {
    expect(judged(case_(AT_080, { uWatt: '0.5 W' }))).toMatchObject({ outcome: 'inconclusive' });
    expect(judged(case_(volts5(['3.246753', '6.493506', '9.74026', '12.987013']), { uWatt: '0.5 W' }))).toMatchObject({
      outcome: 'inconclusive',
    });
  });

  it('a plain supply above 6 V has what makers promised beside it, and above 10 W its efficiency at a tenth of the load told', () => {
    // code of conduct, tier 2, 12 W: 0.071 ln 12 - 0.00115 × 12 + 0.67 (secondary); the tenth has no least (EU 2019/1782, annex II 2(c))
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '1 A' }] };
    const rows = ['0.1', '0.25', '0.5', '0.75', '1'].map((amperes) => [
      amperes,
      '12',
      String((Number(amperes) * 12) / (amperes === '0.1' ? 0.6 : 0.9)),
    ]);
    const finding = judged(case_(rows, { port }));
    expect(finding.others.find(({ name }) => name === 'voluntary')?.at?.value).toBeCloseTo(0.071 * Math.log(12) - 0.00115 * 12 + 0.67, 9);
    expect(finding.notes.find(({ key }) => key === 'efficiencyAtTenth')?.args['efficiency']).toBeCloseTo(0.6, 9);
    expect(noteKeys(judged(case_(AT_080)))).not.toContain('efficiencyAtTenth');
    expect(judged(case_(AT_080)).others).toEqual([]);
  });

  it('rows beside the load points are joined by straight lines', () => {
    const rows = ['0.4', '0.6', '0.9', '1.1', '1.4', '1.6', '1.9', '2.1'].map((amperes) => [
      amperes,
      '5',
      String((Number(amperes) * 5) / 0.8),
    ]);
    const { measured, outcome } = judged(case_(rows, { uWatt: '0.01 W' }));
    expect(measured !== null && 'value' in measured ? measured.value : 0).toBeCloseTo(0.8, 9);
    expect(outcome).toBe('pass');
  });

  it('a mean that is good over three points and bad at one is the mean of all four', () => {
    // 0.5, 0.9, 0.9, 0.9: mean 0.80
    const finding = judged(case_(volts5(['5', '5.555556', '8.333333', '11.111111']), { uWatt: '0.001 W' }));
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(0.8, 6);
    expect(finding.outcome).toBe('pass');
  });

  it('one-sided input powers: below at every point passes, above at every point fails', () => {
    const sided = (sign: string, inputs: readonly string[]): Finding =>
      judged(case_(['0.5', '1', '1.5', '2'].map((amperes, index) => [amperes, '5', `${sign} ${inputs[index]} W`])));
    expect(sided('<', ['3', '6', '9', '12']).outcome).toBe('pass'); // better than 0.83
    expect(sided('>', ['4', '8', '12', '16']).outcome).toBe('fail'); // worse than 0.625
    expect(sided('<', ['4', '8', '12', '16']).outcome).toBe('inconclusive');
  });

  it('without a named meter a tenth of the limit either way is undecided', () => {
    const { day: _left, ...own } = sweep(AT_080, { under: { mains: '230 V' } });
    expect(judged({ ports: [usbPort()], exhibits: [own] })).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
  });
});

describe('which formula', () => {
  const limitOf = (voltage: string, printed: string): number => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage, printed }] };
    const amperes = Number(printed.split(' ')[0]);
    const rows = [0.25, 0.5, 0.75, 1].map((share) => [
      String(share * amperes),
      voltage.split(' ')[0]!,
      String((share * amperes * Number(voltage.split(' ')[0])) / 0.9),
    ]);
    return judged(case_(rows, { port })).limit?.at?.value ?? Number.NaN;
  };

  it('5 V 0.5 A is below 0.55 A and takes the other formula: 0.73156', () => expect(limitOf('5 V', '0.5 A')).toBeCloseTo(0.73156, 4));
  it('5 V 1 A asks for 0.7362', () => expect(limitOf('5 V', '1 A')).toBeCloseTo(0.7362, 4));
  it('12 V 2.5 A asks for 0.8695', () => expect(limitOf('12 V', '2.5 A')).toBeCloseTo(0.8695, 4));
  it('20 V 3.25 A, 65 W, asks for 0.88', () => expect(limitOf('20 V', '3.25 A')).toBeCloseTo(0.88, 9));
  it('5 V 0.2 A, 1 W, asks for 0.66', () => expect(limitOf('5 V', '0.2 A')).toBeCloseTo(0.66, 9));
  it('above 250 W there is no limit', () => expect(limitOf('50 V', '6 A')).toBeNaN());
});

describe('what is not judged', () => {
  it('a run at 115 V says nothing about 230 V', () => {
    const finding = judged(case_(AT_080, { mains: '115 V' }));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(finding)).toContain('otherMains');
  });

  it('a load point that was not reached is not extrapolated', () => {
    const finding = judged(case_(AT_080.slice(0, 3)));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'outOfRange' });
    expect(finding.notes).toContainEqual({ key: 'loadPointMissing', args: { point: 'full' } });
  });

  it('more power out than in is a contradiction, not a pass', () => {
    expect(judged(case_(volts5(['2', '4', '6', '8']))).outcome).not.toBe('pass');
  });

  it('a watt meter that shows nothing is no efficiency, and no reason to give up the case', () => {
    expect(judged(case_(volts5(['0.00', '6.25', '9.375', '12.5']))).outcome).not.toBe('pass');
  });

  it('no input power, no sweep, no claim, no port', () => {
    expect(judged(case_(AT_080.map((row) => row.slice(0, 2))))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged({ ports: [usbPort()] })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(case_(AT_080, { port: usbPort({ state: 'unknown', because: 'rubbed off' }) }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    expect(findingsOf(judge(), 'delivery/efficiency')).toMatchObject([
      { id: 'delivery/efficiency', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });
});

// 10 CFR 430 level VI has the same figures for single outputs (secondary). Appendix Z (secondary: a copy of the federal regulations): 115 V 60 Hz within 1 %, load
// points that cannot be held are dropped, a negotiating supply at its lowest voltage with 2, 1.5, 1 and 0.5 A.
describe('level VI beside it, on the American market', () => {
  const american = (
    rows: readonly (readonly string[])[],
    more: { port?: PortInput; mains?: string; frequency?: string; market?: 'US' | 'EU' } = {},
  ): Finding => {
    const patch = case_(rows, { ...(more.port === undefined ? {} : { port: more.port }) });
    const under = { mains: more.mains ?? '115 V', frequency: more.frequency ?? '60 Hz', supply: 'direct' } as const;
    return judged({ ...patch, setting: { market: more.market ?? 'US' }, days: [{ ...PLAIN_DAY, under }] });
  };
  const note = (finding: Finding) => finding.notes.find(({ key }) => key === 'levelSix')?.args;

  it('5 V 2 A at 115 V: 0.80 of 0.787, shown and not deciding', () => {
    const finding = american(AT_080);
    expect(note(finding)?.['average']).toBeCloseTo(0.8, 9);
    expect(note(finding)?.['least']).toBeCloseTo(0.7870356, 6);
    expect(finding.others).toMatchObject([{ name: 'levelSix', kind: 'atLeast', grade: 'secondary' }]);
    const poor = american(volts5(['5', '10', '15', '20']));
    expect(note(poor)?.['average']).toBeCloseTo(0.5, 9);
    expect(poor.outcome).not.toBe('fail');
  });

  it('within 1 % of 115 V and 60 Hz, and on no other market', () => {
    expect(note(american(AT_080, { mains: '116.1 V' }))).toBeDefined();
    expect(note(american(AT_080, { mains: '116.2 V' }))).toBeUndefined();
    expect(note(american(AT_080, { frequency: '50 Hz' }))).toBeUndefined();
    expect(note(american(AT_080, { market: 'EU' }))).toBeUndefined();
  });

  it('a load point that the unit cannot hold is dropped; one that nobody tried is not', () => {
    const sags = [...AT_080.slice(0, 3), ['1.6', '3', '10']]; // 5 V to 1.5 A, out of the window before 2 A
    expect(note(american(sags))).toMatchObject({ points: 3 });
    expect(note(american(sags))?.['average']).toBeCloseTo(0.8, 9);
    expect(note(american(AT_080.slice(0, 3)))).toBeUndefined();
  });

  it('a negotiating supply is tested at its lowest voltage with 2 A, whatever is printed', () => {
    const port: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [
        { id: '5v', voltage: '5 V', printed: '3 A' },
        { id: '9v', voltage: '9 V', printed: '3 A' },
      ],
    };
    expect(note(american(AT_080, { port }))).toMatchObject({ points: 4 });
    expect(note(american(AT_080, { port }))?.['least']).toBeCloseTo(0.7870356, 6);
    const nine = {
      ...case_([], { port }),
      setting: { market: 'US' as const },
      exhibits: [sweep(AT_080, { level: '9v', under: { mains: '115 V', frequency: '60 Hz' } })],
    };
    expect(findingOf(judge(nine), 'delivery/efficiency@usb~9v').notes.some(({ key }) => key === 'levelSix')).toBe(false);
  });
});
