import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { type PortInput, usbPort } from '../evidence-pieces.ts';

// Limits at a 5 V socket: 6.0 V over, 4.1 V under for a moment (USB Battery Charging 1.2, from memory), 5.5 V to stay at (secondary: controller
// sources). At a fixed level 0.5 V beyond the window of 5 % (vSrcValid, secondary: kernel source of a port controller): 9 V may go from 8.05 to
// 9.95 V. A failure from memory sets the headline only beyond 1.3 times: 7.8 V over, 4.1 / 1.3 = 3.154 V under.
type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;
type What = Event['what'];
type Name = Event['readings'][number]['name'];
const event = (what: What, readings: Partial<Record<Name, string>>, more: Partial<Event> = {}): Event => ({
  id: `event-${what.toLowerCase()}`,
  kind: 'event',
  what,
  tries: { made: 5, failed: 0 },
  readings: Object.entries(readings).map(([name, value]) => ({ id: name.toLowerCase(), name: name as Name, value: value! })),
  ...more,
});
const case_ = (exhibits: Event[], port: PortInput = usbPort()): CasePatch => ({ ports: [port], exhibits });
const judged = (patch: CasePatch, what = 'step'): Finding => findingOf(judge(patch), `harm/transient@usb~5v~${what}`);
const peak = (volts: string, what: What = 'step'): Finding => judged(case_([event(what, { peak: volts })]), what.toLowerCase());

describe('peaks at a 5 V socket', () => {
  it('6.0 V exactly is undecided, from memory', () => {
    const finding = peak('6.0 V ± 0.2 V'); // u = 0.1 V
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', limit: { name: 'overshoot', grade: 'memory' } });
    expect(finding.margin).toBeCloseTo(1, 9);
  });

  it('5.8 V passes and 6.2 V fails, two standard uncertainties away; a figure from memory leaves only a doubt', () => {
    expect(peak('5.8 V ± 0.2 V')).toMatchObject({ outcome: 'pass' });
    expect(peak('5.8 V ± 0.2 V').probability).toBeCloseTo(0.97725, 5);
    const assessment = judge(case_([event('step', { peak: '6.2 V ± 0.2 V' })]));
    const finding = findingOf(assessment, 'harm/transient@usb~5v~step');
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'damaging', headline: false });
    expect(finding.probability).toBeCloseTo(0.02275, 5);
    expect(assessment.verdict).toMatchObject({ failure: 'No verdict yet', doubtful: 'Harmful to devices' });
  });

  it('8.2 V is beyond 1.3 times for certain and sets the word, 7.7 V is not', () => {
    expect(judge(case_([event('unplug', { peak: '8.2 V ± 0.2 V' })])).verdict.failure).toBe('Harmful to devices');
    expect(peak('7.7 V ± 0.2 V', 'unplug')).toMatchObject({ outcome: 'fail', headline: false });
  });

  it('a scope that is off by a volt decides neither 5.8 V nor 6.2 V; nor does one that nobody named', () => {
    for (const volts of ['5.8 V ± 2 V', '6.2 V ± 2 V', '5.8 V', '6.2 V']) expect(peak(volts).outcome).toBe('inconclusive');
    expect(peak('5.1 V')).toMatchObject({ outcome: 'pass', probability: null });
  });

  it('off the screen above 6.5 V fails, above 5.5 V is open, below 5.5 V passes', () => {
    expect(peak('> 6.5 V').outcome).toBe('fail');
    expect(peak('> 5.5 V')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(peak('< 5.5 V').outcome).toBe('pass');
  });

  it('of several peaks the highest decides, and a struck one does not count', () => {
    const one = event('step', { peak: '5.4 V ± 0.1 V' });
    const two = event('step', { peak: '6.6 V ± 0.1 V' }, { id: 'second' });
    expect(judged(case_([one, two])).outcome).toBe('fail');
    expect(judged(case_([one, { ...two, struck: 'probe slipped' }])).outcome).toBe('pass');
    expect(judged(case_([{ ...two, struck: 'probe slipped' }]))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });
});

describe('where it settles, and how far it dips', () => {
  it('6.2 V that stays is beyond 5.5 V on a better source, and sets the word', () => {
    const assessment = judge(case_([event('step', { peak: '5.8 V ± 0.1 V', settled: '5.7 V ± 0.1 V' })]));
    expect(findingOf(assessment, 'harm/transient@usb~5v~step')).toMatchObject({
      outcome: 'fail',
      headline: true,
      limit: { name: 'deviceStands', grade: 'secondary' },
    });
    expect(assessment.verdict.failure).toBe('Harmful to devices');
  });

  it('a dip to 4.0 V lets a device stop and does not break it; 4.2 V passes, 4.1 V is open', () => {
    const dip = (volts: string): Finding => judged(case_([event('step', { peak: '5.2 V ± 0.1 V', trough: volts })]));
    expect(dip('4.0 V ± 0.1 V')).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: false,
      limit: { name: 'undershoot' },
    });
    expect(dip('4.2 V ± 0.1 V').outcome).toBe('pass');
    expect(dip('4.1 V ± 0.1 V').outcome).toBe('inconclusive');
    expect(judge(case_([event('step', { peak: '5.2 V ± 0.1 V', trough: '2.9 V ± 0.1 V' })])).verdict.failure).toBe('Below its claims');
  });

  it('a start comes from nothing: its trough is no dip', () => {
    expect(judged(case_([event('start', { peak: '5.2 V ± 0.1 V', trough: '0 V ± 0.1 V' })]), 'start').outcome).toBe('pass');
  });

  it('without a peak a good dip proves nothing', () => {
    const finding = judged(case_([event('step', { trough: '4.8 V ± 0.1 V' })]));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(finding)).toContain('noPeak');
  });
});

describe('other outputs', () => {
  const nine: PortInput = { id: 'usb', kind: 'usbC', levels: [{ id: '5v', voltage: '9 V', printed: '2 A' }] };
  it('a 9 V level may go to 9.95 V and down to 8.05 V', () => {
    const at = (readings: Partial<Record<Name, string>>): Finding => judged(case_([event('step', readings)], nine));
    expect(at({ peak: '9.93 V ± 0.02 V' }).outcome).toBe('pass');
    expect(at({ peak: '9.97 V ± 0.02 V' })).toMatchObject({ outcome: 'fail', headline: true, limit: { grade: 'secondary' } });
    expect(at({ peak: '9.2 V ± 0.02 V', trough: '8.07 V ± 0.02 V' }).outcome).toBe('pass');
    const dip = at({ peak: '9.2 V ± 0.02 V', trough: '8.03 V ± 0.02 V' });
    expect(dip).toMatchObject({ outcome: 'fail', headline: true, consequence: 'disappointing' });
    expect(dip.limit?.at?.value).toBeCloseTo(8.05, 9);
  });

  it('a plain adapter has no published limit: the peak is shown, never judged', () => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '2 A' }] };
    for (const volts of ['12.1 V', '30 V'])
      expect(judged(case_([event('step', { peak: volts })], port))).toMatchObject({
        outcome: 'notAssessed',
        reason: 'limitUnknown',
        measured: { unit: 'V' },
      });
  });

  it('neither has a socket of a kind that nobody could tell', () => {
    expect(
      judged(case_([event('step', { peak: '5.1 V' })], usbPort('2 A', { kind: { state: 'unknown', because: 'broken off' } }))),
    ).toMatchObject({ reason: 'limitUnknown' });
  });

  it('a peak of 20.4 V on a port that negotiates is not held against 5 V because nobody wrote down the level', () => {
    const port: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [
        { id: '5v', voltage: '5 V', printed: '3 A' },
        { id: '20v', voltage: '20 V', printed: '3 A' },
      ],
    };
    const nowhere = case_([event('step', { peak: '20.4 V ± 0.1 V' })], port);
    expect(findingsOf(judge(nowhere), 'harm/transient').every(({ outcome }) => outcome === 'notAssessed')).toBe(true);
    expect(judge(nowhere).unjudged).toContainEqual({ exhibit: 'event-step', kind: 'event' });
    const named = case_([event('step', { peak: '20.4 V ± 0.1 V' }, { port: 'usb', level: '20v' })], port); // 21 V and 0.5 V
    expect(findingOf(judge(named), 'harm/transient@usb~20v~step').outcome).toBe('pass');
  });

  it('with two ports an event that names none belongs to none', () => {
    const second: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V' }] };
    const patch = { ...case_([event('step', { peak: '9 V ± 0.1 V' })]), ports: [usbPort(), second] };
    expect(judged(patch)).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judge(patch).unjudged).toContainEqual({ exhibit: 'event-step', kind: 'event' });
    expect(judged({ ...patch, exhibits: [event('step', { peak: '9 V ± 0.1 V' }, { port: 'usb' })] }).outcome).toBe('fail');
  });
});

describe('what nobody tried', () => {
  it('is named moment by moment, so that one good start is not a pass', () => {
    const assessment = judge(case_([event('start', { peak: '5.2 V ± 0.1 V' })]));
    expect(findingsOf(assessment, 'harm/transient').map(({ subject, outcome }) => [subject, outcome])).toEqual([
      ['usb~5v~plugin', 'notAssessed'],
      ['usb~5v~start', 'pass'],
      ['usb~5v~step', 'notAssessed'],
      ['usb~5v~unplug', 'notAssessed'],
    ]);
  });

  it('the overshoot of a slow return of the mains counts when somebody read it', () => {
    expect(judged(case_([event('brownOut', { peak: '8.5 V ± 0.1 V' })]), 'brownout')).toMatchObject({ outcome: 'fail', headline: true });
  });

  it('no port; a value nobody could tell; words that are no voltage', () => {
    expect(findingsOf(judge(), 'harm/transient')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    const unknown = {
      ...event('step', {}),
      readings: [{ id: 'p', name: 'peak', value: { state: 'unknown', because: 'picture lost' } }],
    } as Event;
    expect(judged(case_([unknown]))).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged(case_([event('step', { peak: 'off the screen' })]))).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });
});
