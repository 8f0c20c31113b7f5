import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { type PortInput, usbPort } from '../evidence-pieces.ts';

// Rules: a flame inside goes out within 10 s (IEC 62368-1 B.4.8, secondary: questions and answers of a test house); after a fault no live part can be touched
// (B.4, memory; a rule has no ratio and counts as beyond 1.3). What windings may reach in a fault is from memory in every reference we have, and is
// not used: nothing passes here.
type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;
const short = (more: Partial<Event> = {}): Event => ({
  id: 'short-1',
  kind: 'event',
  what: 'short',
  tries: { made: 1, failed: 0 },
  under: { minutes: '60 min' },
  readings: [],
  ...more,
});
const case_ = (exhibits: Event[], ports: PortInput[] = [usbPort()]): CasePatch => ({ ports, exhibits });
const judged = (more: Partial<Event>): Finding => findingOf(judge(case_([short(more)])), 'fire/short-endurance@usb~short');

describe('a shorted output', () => {
  it('a flame is injurious and sets the word', () => {
    const assessment = judge(case_([short({ aftermath: 'flame' })]));
    const finding = findingOf(assessment, 'fire/short-endurance@usb~short');
    expect(finding).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      headline: true,
      measured: { word: 'flame' },
      limit: { grade: 'secondary' },
      margin: null,
      state: 'shorted',
    });
    expect(assessment.verdict.failure).toBe('Unsafe');
  });

  it('so is a live part that can be touched afterwards, on a rule from memory', () => {
    expect(judged({ aftermath: 'livePart' })).toMatchObject({ outcome: 'fail', headline: true, limit: { grade: 'memory' } });
  });

  it('whatever else becomes of it is shown and never passes', () => {
    for (const aftermath of ['recovers', 'staysOff', 'dead', 'smoke'] as const) {
      const finding = judged({ aftermath });
      expect(finding, aftermath).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown', measured: { word: aftermath } });
      expect(noteKeys(finding)).toContain('faultTemperatureUnknown');
    }
    const assessment = judge(case_([short({ aftermath: 'recovers' })]));
    expect(assessment.verdict.failure).toBe('No verdict yet');
    expect(assessment.verdict.cells.fire.find(({ check }) => check === 'fire/short-endurance')?.state).toBe('notAssessed');
  });

  it('time and input power are said with it; a time that is not stated is said too', () => {
    const power = { id: 'p', name: 'inputPower', value: '6.2 W ± 0.1 W' } as const;
    const finding = judged({ aftermath: 'recovers', readings: [power] });
    expect(finding.notes).toContainEqual({ key: 'endured', args: { exhibit: 'short-1', time: 3600 } });
    expect(finding.notes).toContainEqual({ key: 'faultPower', args: { power: 6.2 } });
    const { under: _none, ...bare } = short({ aftermath: 'recovers' });
    expect(noteKeys(findingOf(judge(case_([bare])), 'fire/short-endurance@usb~short'))).toContain('enduredNotStated');
  });

  it('input power alone is shown, and what became of it is not looked at', () => {
    expect(judged({ readings: [{ id: 'p', name: 'inputPower', value: '6.2 W' }] })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notLooked',
      measured: { value: 6.2, unit: 'W' },
    });
  });

  it('a flame in one of three tries counts, unless that try was struck', () => {
    const three = [
      short({ aftermath: 'recovers' }),
      short({ id: 'short-2', aftermath: 'flame' }),
      short({ id: 'short-3', aftermath: 'recovers' }),
    ];
    expect(findingOf(judge(case_(three)), 'fire/short-endurance@usb~short').outcome).toBe('fail');
    expect(findingOf(judge(case_([three[0]!, { ...three[1]!, struck: 'another unit' }])), 'fire/short-endurance@usb~short').outcome).toBe(
      'notAssessed',
    );
  });

  it('nobody could tell', () => {
    expect(judged({ aftermath: { state: 'unknown', because: 'nobody was in the room' } })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged({ struck: 'another unit', aftermath: 'flame' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });
});

describe('which output', () => {
  it('every port wants its short; an overload is a subject where somebody made one', () => {
    const two: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V' }] };
    const assessment = judge(
      case_(
        [
          short({ port: 'usb', aftermath: 'flame' }),
          short({ id: 'over', what: 'overload', port: 'two', aftermath: 'recovers' }),
          short({ id: 'lost', aftermath: 'flame' }),
        ],
        [usbPort(), two],
      ),
    );
    expect(findingsOf(assessment, 'fire/short-endurance').map(({ subject, outcome }) => [subject, outcome])).toEqual([
      ['some', 'fail'],
      ['two~overload', 'notAssessed'],
      ['two~short', 'notAssessed'],
      ['usb~short', 'fail'],
    ]);
  });

  it('an overload is no short, and a flame there counts as much', () => {
    const finding = findingOf(judge(case_([short({ what: 'overload', aftermath: 'flame' })])), 'fire/short-endurance@usb~overload');
    expect(finding).toMatchObject({ outcome: 'fail', headline: true, state: 'worstSustained' });
  });

  it('nobody made one; there is no port', () => {
    expect(findingOf(judge(case_([])), 'fire/short-endurance@usb~short')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(findingsOf(judge(), 'fire/short-endurance')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
