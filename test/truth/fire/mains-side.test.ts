import { describe, expect, it } from 'vitest';
import { findingOf, findingsOf, judge } from '../build-case.ts';
import { traced, withParts } from '../circuit-pieces.ts';
import { label } from '../evidence-pieces.ts';

const judged = (id: string, changes: Record<string, string> = {}) =>
  findingOf(judge({ ...traced(changes), exhibits: [label({ input: { voltage: '100-240 V' } })] }), `fire/mains-side@${id}`);

describe('the first part that opens, from the trace', () => {
  it('a fuse in a pole with everything behind it', () => {
    expect(judged('fuse')).toMatchObject({ outcome: 'pass', consequence: 'injurious', measured: { word: 'fuse' } });
    expect(judged('fuse', { 'F1: ': 'FR1 10R: L, L1' })).toMatchObject({ outcome: 'pass', measured: { word: 'fusibleResistor' } });
    expect(
      judged('fuse', { 'F1: ': 'F1: L, L1\nF2: N, N2', 'BD1 ': 'BD1 600V: ~1=L1, ~2=N2, +=HV+, -=HV-', 'CX1 ': 'CX1 100nF X2: L1, N2' }),
    ).toMatchObject({ outcome: 'pass' });
  });
  it('a plain resistor, or a bridge straight at the plug, is none: injurious, on a rule', () => {
    expect(judged('fuse', { 'F1: ': 'R1 10R: L, L1' })).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      headline: true,
      measured: { word: 'plainResistor' },
    });
    expect(judged('fuse', { 'F1: ': '', 'BD1 ': 'BD1 600V: ~1=L, ~2=N, +=HV+, -=HV-' })).toMatchObject({
      outcome: 'fail',
      measured: { word: 'noFuse' },
    });
  });
  it('a first part of unknown kind is inconclusive', () => {
    expect(judged('fuse', { 'F1: ': 'X1 (?): 1=L, 2=L1', 'CX1 ': '' })).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });
  it('a capacitor between the poles before the fuse is poor practice, never more than disappointing', () => {
    const finding = judged('fuse', { 'CX1 ': 'CX1 100nF X2: L, N' });
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'disappointing', limit: { grade: 'common-practice' } });
    expect(finding.notes).toContainEqual({ key: 'beforeFuse', args: { parts: 'CX1' } });
  });
});

describe('capacitors between the poles', () => {
  it('class X or Y may stand there; a word of another class or none may not', () => {
    expect(judged('cx1')).toMatchObject({ outcome: 'pass', measured: { word: 'X2' } });
    expect(judged('cx1', { 'CX1 ': 'CX1 100nF Y2: L1, N' })).toMatchObject({ outcome: 'pass' });
    const none = withParts(traced(), { cx1: { safetyClass: { state: 'absent', because: 'a plain film capacitor, 400 V' } } });
    expect(findingOf(judge(none), 'fire/mains-side@cx1')).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
  });
  it('a class nobody looked for is not assessed, one that could not be read is inconclusive', () => {
    expect(judged('cx1', { 'CX1 ': 'CX1 100nF: L1, N' })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    const unread = withParts(traced(), { cx1: { safetyClass: { state: 'unknown', because: 'print rubbed off' } } });
    expect(findingOf(judge(unread), 'fire/mains-side@cx1')).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });
});

describe('what the rectifier blocks', () => {
  // highest mains for a 100-240 V label: 264 V, crest 373.4 V
  it('one crest in a bridge: 600 V will do, 373 V will not, and the rating nobody read is not assessed', () => {
    const finding = judged('bd1');
    expect(finding).toMatchObject({ outcome: 'pass' });
    expect(finding.limit?.at?.value).toBeCloseTo(264 * Math.SQRT2, 6);
    expect(judged('bd1', { 'BD1 ': 'BD1 373V: ~1=L1, ~2=N, +=HV+, -=HV-' })).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect(judged('bd1', { 'BD1 ': 'BD1 374V: ~1=L1, ~2=N, +=HV+, -=HV-' })).toMatchObject({ outcome: 'pass' });
    expect(judged('bd1', { 'BD1 ': 'BD1: ~1=L1, ~2=N, +=HV+, -=HV-' })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });
  it('two crests behind a single diode: 600 V is not enough, 1000 V is', () => {
    const single = (volts: string) => judged('d1', { 'BD1 ': `D1 ${volts}: L1, HV+\nW1: N, HV-` });
    expect(single('600V')).toMatchObject({ outcome: 'fail' });
    expect(single('1000V')).toMatchObject({ outcome: 'pass' });
  });
});

describe('nothing to judge', () => {
  it('without a trace, or without an inlet in it', () => {
    expect(findingsOf(judge(), 'fire/mains-side')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(findingsOf(judge(traced({ 'J1: ': '' })), 'fire/mains-side')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
