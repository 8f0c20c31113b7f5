import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// The limit of this check is what the output advertises, read at the output. Window of a USB A socket: 4.75 to 5.25 V (secondary: EN 301 489-34 and
// public notes); of a fixed level: 5 % (secondary: kernel source of a port controller).
// The curve V = 5.2 V - 0.225 Ω × I crosses 4.75 V at 2.000 A; a voltmeter that is off by 0.0225 V moves that by 0.1 A.
const STRAIGHT = [
  ['0', '5.2'],
  ['1', '4.975'],
  ['1.5', '4.8625'],
  ['2.5', '4.6375'],
  ['3', '4.525'],
];
type Advertised = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'advertised' }>;
const offering = (offers: Advertised['offers'], more: Partial<Advertised> = {}): Advertised => ({
  id: 'adv-1',
  kind: 'advertised',
  port: 'usb',
  by: 'trigger board',
  offers,
  ...more,
});
const at5 = (current: string, more: Partial<Advertised> = {}): Advertised => offering([{ id: 'first', voltage: '5 V', current }], more);
const case_ = (
  exhibits: NonNullable<CaseInput['exhibits']>,
  more: { port?: PortInput; ports?: PortInput[]; uVolt?: string; uAmpere?: string } = {},
): CasePatch => ({
  ports: more.ports ?? [more.port ?? usbPort('1 A')],
  instruments: [plainMeter(more.uVolt ?? '0.0225 V', { uAmpere: more.uAmpere ?? '0 A' })],
  days: [PLAIN_DAY],
  exhibits,
});
const judged = (patch: CasePatch, subject = 'usb~5v'): Finding => findingOf(judge(patch), `delivery/advertised@${subject}`);

describe('the current held inside the window against the advertised one', () => {
  it('held exactly what is advertised is undecided', () => {
    const finding = judged(case_([sweep(STRAIGHT), at5('2 A')]));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 6);
    expect(finding.probability).toBeCloseTo(0.5, 4);
  });

  it('1.8 A advertised passes, 2.2 A advertised fails, two standard uncertainties away', () => {
    expect(judged(case_([sweep(STRAIGHT), at5('1.8 A')])).probability).toBeCloseTo(0.97725, 3);
    expect(judged(case_([sweep(STRAIGHT), at5('1.8 A')]))).toMatchObject({ outcome: 'pass', reason: 'met' });
    const finding = judged(case_([sweep(STRAIGHT), at5('2.2 A')]));
    expect(finding).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
      limit: { name: 'advertised', kind: 'atLeast', grade: 'secondary' },
    });
    expect(finding.probability).toBeCloseTo(0.02275, 3);
    expect(finding.margin).toBeCloseTo(1.1, 6);
  });

  it('advertising 3 A and collapsing at 2 A fails although the label says 1 A and keeps it', () => {
    const assessment = judge(case_([sweep(STRAIGHT), at5('3 A')]));
    expect(findingOf(assessment, 'delivery/current@usb~5v').outcome).toBe('pass');
    const finding = findingOf(assessment, 'delivery/advertised@usb~5v');
    expect(finding.outcome).toBe('fail');
    const columns = finding.notes.find(({ key }) => key === 'advertisedHeldPrinted');
    expect(columns?.args['advertised']).toBe(3);
    expect(columns?.args['held']).toBeCloseTo(2, 6);
    expect(columns?.args['printed']).toBe(1);
    const ids = assessment.steps.map(({ id }) => id);
    for (const id of ['/exhibits/adv-1/offers/first/current', 'load/sweep-1/held-current', '/ports/usb/levels/5v/printed'])
      expect(ids).toContain(id);
    expect(assessment.verdict.failure).toBe('Below its claims');
  });

  it('printing more than is advertised is a matter of the label: 1 A advertised and kept passes', () => {
    expect(judged(case_([sweep(STRAIGHT), at5('1 A')], { port: usbPort('3 A') }))).toMatchObject({ outcome: 'pass' });
  });

  it('a voltmeter ten times worse decides neither', () => {
    for (const current of ['1.8 A', '2.2 A'])
      expect(judged(case_([sweep(STRAIGHT), at5(current)], { uVolt: '0.225 V' })).outcome).toBe('inconclusive');
  });

  it('a sweep that ends inside the window below what is advertised is open, one that ends above it passes', () => {
    const short = [
      ['0', '5.1'],
      ['1', '5.05'],
      ['2.5', '5'],
    ];
    expect(judged(case_([sweep(short), at5('3 A')], { uAmpere: '0.01 A' }))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged(case_([sweep(short), at5('2 A')], { uAmpere: '0.01 A' }))).toMatchObject({ outcome: 'pass' });
  });

  it('of two readings of what is offered the larger counts: the device may believe either', () => {
    expect(judged(case_([sweep(STRAIGHT), at5('1 A'), at5('3 A', { id: 'adv-2' })])).outcome).toBe('fail');
    expect(judged(case_([sweep(STRAIGHT), at5('1 A'), at5('3 A', { id: 'adv-2', struck: 'wrong socket' })])).outcome).toBe('pass');
  });
});

describe('which offer belongs to which level', () => {
  const negotiating = (...levels: [string, string, string][]): PortInput => ({
    id: 'usb',
    kind: 'usbC',
    levels: levels.map(([id, voltage, printed]) => ({ id, voltage, printed })),
  });
  const nine = sweep(
    [
      ['0', '9.1'],
      ['1', '8.9'],
      ['1.5', '8.6'],
      ['2', '8.2'],
      ['2.5', '7.8'],
    ],
    { id: 'sweep-9', level: '9v' },
  );

  it('by voltage: 9 V holds 1.5625 A and is told 2 A, 5 V holds what it is told', () => {
    const patch = case_(
      [
        sweep(STRAIGHT),
        nine,
        offering([
          { id: 'a', voltage: '5 V', current: '1 A' },
          { id: 'b', voltage: '9 V', current: '2 A' },
        ]),
      ],
      {
        port: negotiating(['5v', '5 V', '1 A'], ['9v', '9 V', '1 A']),
        uVolt: '0.001 V',
      },
    );
    expect(judged(patch).outcome).toBe('pass');
    const finding = judged(patch, 'usb~9v'); // 8.55 V lies one eighth of the way from 1.5 A (8.6 V) to 2 A (8.2 V)
    expect(finding.outcome).toBe('fail');
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(1.5625, 6);
  });

  it('an offer without a voltage is one of current at 5 V', () => {
    const patch = case_([sweep(STRAIGHT), offering([{ id: 'pull-up', current: '3 A' }])], {
      port: negotiating(['9v', '9 V', '1 A'], ['5v', '5 V', '1 A']),
    });
    expect(judged(patch).outcome).toBe('fail');
    expect(judged(patch, 'usb~9v')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('an offer that no level stands for is shown as not examined, and a level that is not offered asks nothing', () => {
    const patch = case_(
      [
        sweep(STRAIGHT),
        offering([
          { id: 'a', voltage: '5 V', current: '1 A' },
          { id: 'b', voltage: '12 V', current: '1 A' },
        ]),
      ],
      {
        port: negotiating(['5v', '5 V', '1 A'], ['9v', '9 V', '1 A']),
      },
    );
    expect(judged(patch, 'usb~offer-b')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(judged(patch, 'usb~offer-b'))).toContain('offerWithoutLevel');
    expect(judged(patch, 'usb~9v')).toMatchObject({ outcome: 'notApplicable' });
    expect(noteKeys(judged(patch, 'usb~9v'))).toContain('levelNotOffered');
  });

  it('a range that is offered has no window of its own', () => {
    const port: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
    };
    const patch = case_([sweep(STRAIGHT), offering([{ id: 'pps', voltage: '3.3 V', upTo: '11 V', current: '3 A' }])], { port });
    expect(judged(patch)).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });
});

describe('several ports', () => {
  const second: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '1 A' }] };
  const both = { loads: [{ port: 'two', draws: '1 A' }] };
  const ports = [usbPort('1 A'), second];

  it('an offer made alone is not held against a sweep with the neighbour loaded', () => {
    const finding = judged(case_([sweep(STRAIGHT, { under: { mains: '230 V', ...both } }), at5('3 A')], { ports }));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(finding)).toContain('otherCompany');
  });

  it('an offer made beside a loaded neighbour is held against the sweep beside it', () => {
    const finding = judged(case_([sweep(STRAIGHT, { under: { mains: '230 V', ...both } }), at5('3 A', { under: both })], { ports }));
    expect(finding.outcome).toBe('fail');
  });

  it('a port that nobody listened to is not looked at', () => {
    expect(judged(case_([sweep(STRAIGHT), at5('1 A')], { ports }), 'two~5v')).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notLooked',
    });
  });
});

describe('nothing to judge', () => {
  it('nobody listened, nobody swept, no port', () => {
    expect(judged(case_([sweep(STRAIGHT)]))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(case_([at5('2 A')]))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(judged(case_([at5('2 A')])))).toContain('offerNotSwept');
    expect(findingsOf(judge(), 'delivery/advertised')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });

  it('a barrel plug advertises nothing: the question does not arise', () => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '2 A' }] };
    expect(findingsOf(judge(case_([sweep([['0', '12']])], { port })), 'delivery/advertised')).toMatchObject([
      { outcome: 'notApplicable', reason: 'doesNotApply' },
    ]);
  });

  it('a socket of a kind that nobody could tell may advertise: not looked', () => {
    expect(judged(case_([sweep(STRAIGHT)], { port: usbPort('1 A', { kind: { state: 'unknown', because: 'broken off' } }) }))).toMatchObject(
      { outcome: 'notAssessed', reason: 'notLooked' },
    );
  });
});
