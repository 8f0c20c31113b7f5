import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { label, PLAIN_DAY, type PortInput, plainMeter, sweep } from '../evidence-pieces.ts';

// The limit is what the label prints for all outputs together: a total, else the sum of what it prints for each. Windows 4.75 to 5.25 V (USB A, secondary).
// A drop-out of more than 1 s counts as an interruption (a convention of this project, common practice).
// The curve V = 5.2 V - 0.225 Ω × I leaves the window at 2.000 A; a voltmeter off by 0.0225 V moves that by 0.1 A, or 0.5 W at 5 V.
const STRAIGHT = [
  ['0', '5.2'],
  ['1', '4.975'],
  ['1.5', '4.8625'],
  ['2.5', '4.6375'],
  ['3', '4.525'],
];
const STRONG = [
  ['0', '5.2'],
  ['1', '5.15'],
  ['2', '5.1'],
  ['3', '5.05'],
  ['4', '5'],
];
const port = (id: string, printed: string): PortInput => ({ id, kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed }] });
type Run = ReturnType<typeof sweep>;
/** Port `usb` swept while `two` drew a current, with the voltage of `two` meanwhile. */
const beside = (rows: string[][], draws: string, voltage: string | null = '5.00 V ± 0.02 V', more: Partial<Run> = {}): Run =>
  sweep(rows, {
    under: { mains: '230 V', loads: [{ port: 'two', draws: `${draws} ± 0 A` }] },
    ...(voltage === null ? {} : { others: [{ id: 'v-two', port: 'two', voltage }] }),
    ...more,
  });
const case_ = (exhibits: NonNullable<CasePatch['exhibits']>, own = '2 A', uVolt = '0.0225 V'): CasePatch => ({
  ports: [port('usb', own), port('two', '1 A')],
  instruments: [plainMeter(uVolt, { uAmpere: '0.001 A' })],
  days: [PLAIN_DAY],
  exhibits,
});
const judged = (patch: CasePatch, subject = 'usb'): Finding => findingOf(judge(patch), `delivery/ports@${subject}`);
const total = (value: string) => label({ claims: [{ id: 't', text: 'total', of: 'total', value }] });

describe('two outputs of 2 A and 1 A, no total printed: 15 W together', () => {
  it('2 A held beside 1 A is undecided', () => {
    const finding = judged(case_([beside(STRAIGHT, '1 A')]));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', limit: { name: 'printedTogether' } });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(15, 6);
    expect(finding.limit?.at?.value).toBeCloseTo(15, 9);
  });

  it('1.8 A printed passes, 2.2 A printed fails, two standard uncertainties away', () => {
    expect(judged(case_([beside(STRAIGHT, '1 A')], '1.8 A'))).toMatchObject({ outcome: 'pass', reason: 'met' });
    const finding = judged(case_([beside(STRAIGHT, '1 A')], '2.2 A'));
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'disappointing', headline: true });
    expect(finding.probability).toBeCloseTo(0.02275, 3);
    expect(finding.margin).toBeCloseTo(16 / 15, 6);
  });

  it('a voltmeter ten times worse decides neither', () => {
    for (const own of ['1.8 A', '2.2 A']) expect(judged(case_([beside(STRAIGHT, '1 A')], own, '0.225 V')).outcome).toBe('inconclusive');
  });

  it('a sweep that ends inside the window below what is printed is open', () => {
    expect(
      judged(
        case_([
          beside(
            [
              ['0', '5.2'],
              ['1', '5.15'],
            ],
            '1 A',
          ),
        ]),
      ),
    ).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('beside half the load it must still hold its own; holding it there is not the whole sum', () => {
    expect(judged(case_([beside(STRAIGHT, '0.5 A')], '2.2 A')).outcome).toBe('fail');
    const finding = judged(case_([beside(STRONG, '0.5 A')]));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(finding)).toContain('sumNotAsked');
  });

  it('a neighbour that drew more than is printed for it excuses a shortfall', () => {
    const finding = judged(case_([beside(STRAIGHT, '2 A')], '2.2 A'));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(finding)).toContain('neighbourOverdrawn');
    expect(judged(case_([beside(STRONG, '2 A')])).outcome).toBe('pass');
  });
});

describe('the neighbour meanwhile', () => {
  it('when nobody read its voltage, a good sum is no pass', () => {
    const finding = judged(case_([beside(STRONG, '1 A', null)]));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(finding)).toContain('neighboursNotWatched');
  });

  it('when it leaves its own window, the pair fails', () => {
    expect(judged(case_([beside(STRONG, '1 A', '4.5 V ± 0.02 V')]))).toMatchObject({ outcome: 'fail', limit: { name: 'window' } });
    expect(judged(case_([beside(STRONG, '1 A', '4.75 V ± 0.02 V')])).outcome).toBe('inconclusive');
  });

  it('when its voltage could not be told, so it is said', () => {
    expect(
      judged(
        case_([beside(STRONG, '1 A', null, { others: [{ id: 'v', port: 'two', voltage: { state: 'unknown', because: 'meter off' } }] })]),
      ),
    ).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });

  it('a short on it, or a load that nobody knows, is no company to compare in', () => {
    for (const state of ['short', 'unknown'] as const)
      expect(
        judged(case_([sweep(STRAIGHT, { under: { mains: '230 V', loads: [{ port: 'two', draws: { state } }] } })], '2.2 A')),
      ).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });
});

describe('a printed total', () => {
  it('12 W for all: beside 5 W of the neighbour 7 W are enough', () => {
    const finding = judged(case_([beside(STRAIGHT, '1 A'), total('12 W')], '2.2 A'));
    expect(finding).toMatchObject({ outcome: 'pass' });
    expect(finding.limit?.at?.value).toBeCloseTo(12, 9);
  });

  it('3.2 A for all of 5 V are 16 W', () =>
    expect(judged(case_([beside(STRAIGHT, '1 A'), total('3.2 A')], '2.2 A')).limit?.at?.value).toBeCloseTo(16, 9));

  it('outputs that negotiate and print no total leave no sum', () => {
    const patch = case_([beside(STRONG, '1 A')]);
    const negotiating: PortInput = {
      id: 'two',
      kind: 'usbC',
      levels: [
        { id: '5v', voltage: '5 V', printed: '3 A' },
        { id: '9v', voltage: '9 V', printed: '2 A' },
      ],
    };
    const finding = judged({ ...patch, ports: [port('usb', '2 A'), negotiating] });
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(noteKeys(finding)).toContain('noTotal');
  });
});

describe('which combinations', () => {
  it('those that nobody tried are named', () => {
    const three = { ...case_([beside(STRONG, '1 A')]), ports: [port('usb', '2 A'), port('two', '1 A'), port('three', '1 A')] };
    const finding = judged(three);
    expect(finding.outcome).toBe('notAssessed'); // 2 A + 1 A of 20 W: the whole was not asked for
    expect(finding.notes).toContainEqual({ key: 'companyNotTried', args: { count: 2, sets: 'three, three+two' } });
    expect(judged(three, 'three')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('a sweep taken alone says nothing about company', () => {
    expect(judged(case_([sweep(STRAIGHT)], '2.2 A'))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('one output has no company; no output is not looked at', () => {
    expect(findingsOf(judge({ ports: [port('usb', '2 A')] }), 'delivery/ports')).toMatchObject([
      { outcome: 'notApplicable', reason: 'doesNotApply' },
    ]);
    expect(findingsOf(judge(), 'delivery/ports')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});

describe('when a device is put on another output', () => {
  type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;
  const attach = (seconds: string, more: Partial<Event> = {}): Event => ({
    id: 'attach',
    kind: 'event',
    what: 'negotiation',
    port: 'usb',
    tries: { made: 3, failed: 0 },
    under: { loads: [{ port: 'two', draws: '1 A' }] },
    readings: [{ id: 's', name: 'seconds', value: seconds }],
    ...more,
  });
  const dropout = (event: Event): Finding => judged(case_([event]), 'usb~dropout');

  it('one second exactly is undecided, 0.9 s passes, 1.1 s is an interruption', () => {
    expect(dropout(attach('1 s ± 0.1 s'))).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(dropout(attach('0.9 s ± 0.1 s'))).toMatchObject({ outcome: 'pass' });
    expect(dropout(attach('1.1 s ± 0.1 s'))).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      limit: { name: 'interruption', grade: 'common-practice' },
    });
    expect(dropout(attach('1.1 s ± 1 s')).outcome).toBe('inconclusive');
  });

  it('zero passes, more than 5 s fails, more than 0.5 s is open', () => {
    expect(dropout(attach('0')).outcome).toBe('pass');
    expect(dropout(attach('> 5 s')).outcome).toBe('fail');
    expect(dropout(attach('> 0.5 s'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('seconds of a negotiation with no neighbour are no drop-out; nor is a struck one', () => {
    expect(dropout(attach('3 s', { under: {} }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(dropout(attach('3 s', { struck: 'cable fell out' }))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });
});
