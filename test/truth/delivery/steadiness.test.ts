import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { type PortInput, usbPort } from '../evidence-pieces.ts';

// Limits: the window of a USB A socket, 4.75 to 5.25 V (secondary: EN 301 489-34 and public notes), for what it does with nothing connected; no failure
// in at least five tries (a convention of this project, common practice). Largest share of failures that n good tries leave open at 95 %: 1 - 0.05^(1/n),
// 0.4507 for five, 0.1391 for twenty.
type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;
type Readings = Partial<Record<Event['readings'][number]['name'], string>>;
const idle = (readings: Readings, more: Partial<Event> = {}): Event => ({
  id: 'idle-1',
  kind: 'event',
  what: 'idle',
  tries: { made: 1, failed: 0 },
  readings: Object.entries(readings).map(([name, value]) => ({ id: name.toLowerCase(), name: name as 'peak', value: value! })),
  ...more,
});
const tried = (what: Event['what'], made: number, failed: number, more: Partial<Event> = {}): Event => ({
  id: `${what.toLowerCase()}-1`,
  kind: 'event',
  what,
  tries: { made, failed },
  readings: [],
  ...more,
});
const case_ = (exhibits: Event[], port: PortInput = usbPort()): CasePatch => ({ ports: [port], exhibits });
const wander = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/steadiness@usb~5v~idle');
const starts = (...events: Event[]): Finding => findingOf(judge(case_(events)), 'delivery/steadiness@starts');

describe('the output with nothing connected', () => {
  const between = (trough: string, peak: string): Finding => wander(case_([idle({ trough, peak })]));

  it('an edge exactly is undecided', () => {
    expect(between('4.75 V ± 0.02 V', '5.1 V ± 0.02 V')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(between('4.9 V ± 0.02 V', '5.25 V ± 0.02 V')).toMatchObject({ outcome: 'inconclusive' });
  });

  it('two standard uncertainties inside passes, outside fails, at either edge', () => {
    expect(between('4.77 V ± 0.02 V', '5.23 V ± 0.02 V')).toMatchObject({ outcome: 'pass', reason: 'met' });
    expect(between('4.73 V ± 0.02 V', '5.1 V ± 0.02 V')).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
      limit: { kind: 'within', grade: 'secondary' },
    });
    expect(between('4.9 V ± 0.02 V', '5.27 V ± 0.02 V').outcome).toBe('fail');
  });

  it('a scope as wide as the window decides nothing', () => expect(between('4.9 V ± 1 V', '5.1 V ± 1 V').outcome).toBe('inconclusive'));

  it('off the screen: above 5.5 V fails, above 5.1 V is open', () => {
    expect(between('4.9 V ± 0.02 V', '> 5.5 V').outcome).toBe('fail');
    expect(between('4.9 V ± 0.02 V', '> 5.1 V')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('where it settles is no wander, unless it settles outside', () => {
    const settled = wander(case_([idle({ settled: '5.1 V ± 0.02 V' })]));
    expect(settled).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(settled)).toContain('wanderNotRead');
    expect(wander(case_([idle({ settled: '5.6 V ± 0.02 V' })])).outcome).toBe('fail');
  });

  it('something connected, no window, a struck event, nothing read', () => {
    expect(wander(case_([idle({ trough: '4.9 V', peak: '5.1 V' }, { under: { loads: [{ port: 'usb', draws: '1 A' }] } })]))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notComparable',
    });
    const range: PortInput = { id: 'usb', kind: 'usbC', levels: [{ id: '5v', voltage: '11 V', range: { from: '3.3 V', to: '11 V' } }] };
    expect(wander(case_([idle({ trough: '4.9 V', peak: '5.1 V' })], range))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    expect(wander(case_([idle({ trough: '1 V', peak: '5.1 V' }, { struck: 'loose clip' })]))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
    expect(wander(case_([]))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });
});

describe('coming up every time', () => {
  it('five starts without a failure pass, and leave 45 % open', () => {
    const finding = starts(tried('start', 5, 0));
    expect(finding).toMatchObject({ outcome: 'pass', limit: { name: 'noFailure', grade: 'common-practice' }, measured: { value: 0 } });
    const note = finding.notes.find(({ key }) => key === 'noneFailed');
    expect(note?.args['made']).toBe(5);
    expect(note?.args['bound']).toBeCloseTo(0.4507, 4);
  });

  it('twenty leave 14 % open', () =>
    expect(starts(tried('start', 20, 0)).notes.find(({ key }) => key === 'noneFailed')?.args['bound']).toBeCloseTo(0.1391, 4));

  it('four are too few, and say so', () => {
    const finding = starts(tried('start', 4, 0));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(noteKeys(finding)).toContain('tooFewTries');
  });

  it('one failure fails, of four as of a hundred', () => {
    for (const made of [4, 100]) {
      const finding = starts(tried('start', made, 1));
      expect(finding).toMatchObject({ outcome: 'fail', consequence: 'disappointing', headline: true, margin: null });
      expect(finding.notes).toContainEqual({ key: 'triesFailed', args: { made, failed: 1 } });
    }
    expect(judge(case_([tried('start', 10, 1)])).verdict.failure).toBe('Below its claims');
  });

  it('events add up, plugging in is starting too, and a struck event is left out', () => {
    expect(starts(tried('start', 3, 0), tried('plugIn', 2, 0)).outcome).toBe('pass');
    expect(starts(tried('start', 6, 0), tried('start', 3, 1, { id: 'second' })).outcome).toBe('fail');
    expect(starts(tried('start', 6, 0), tried('start', 3, 1, { id: 'second', struck: 'socket was off' })).outcome).toBe('pass');
    expect(starts(tried('start', 3, 1, { struck: 'socket was off' }))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('nobody tried, or zero times', () => {
    expect(starts()).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(starts(tried('start', 0, 0))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(findingsOf(judge(), 'delivery/steadiness')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});

describe('other things that are done many times', () => {
  const subjects = (...events: Event[]): (string | null)[] =>
    findingsOf(judge(case_(events)), 'delivery/steadiness').map(({ subject }) => subject);

  it('one capture of a load step is no series; five steps are, and one that dropped out is', () => {
    expect(subjects(tried('step', 1, 0))).not.toContain('steps');
    expect(findingOf(judge(case_([tried('step', 5, 0)])), 'delivery/steadiness@steps').outcome).toBe('pass');
    expect(findingOf(judge(case_([tried('step', 1, 1)])), 'delivery/steadiness@steps').outcome).toBe('fail');
  });

  it('negotiations and returns of the mains are told apart', () => {
    expect(findingOf(judge(case_([tried('negotiation', 10, 2)])), 'delivery/steadiness@negotiations').outcome).toBe('fail');
    expect(findingOf(judge(case_([tried('brownOut', 5, 0)])), 'delivery/steadiness@returns').outcome).toBe('pass');
    expect(findingOf(judge(case_([tried('negotiation', 10, 2)])), 'delivery/steadiness@starts').outcome).toBe('notAssessed');
  });
});
