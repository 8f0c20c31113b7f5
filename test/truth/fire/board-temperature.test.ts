import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge } from '../build-case.ts';
import { HOT_ROOM } from '../component-rows.ts';
import { type PlaceInput, spot, usbPort } from '../evidence-pieces.ts';

// Printed board 130 °C: a published IEC 60950-1 test report, table 4.5 (secondary). Phenolic paper 105 °C: memory.
const CHECK = 'fire/board-temperature';
type Value = Parameters<typeof spot>[1];
const at = (
  laminate: PlaceInput['laminate'],
  value: Value,
  under: NonNullable<Parameters<typeof spot>[2]>['under'] = HOT_ROOM,
): CasePatch => ({
  ports: [usbPort()],
  places: [{ id: 'board', name: 'board under the switch', ...(laminate === undefined ? {} : { laminate }) }],
  exhibits: [spot('board', value, { under })],
});
const judged = (...args: Parameters<typeof at>): Finding => findingOf(judge(at(...args)), `${CHECK}@board`);

describe('a place on the printed board', () => {
  it('of glass epoxy: 130 °C is undecided, 128 °C passes, 132 °C fails', () => {
    expect(judged('fr4', '130 °C ± 2 K')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    const inside = judged('fr4', '128 °C ± 2 K');
    expect(inside).toMatchObject({
      outcome: 'pass',
      limit: { name: 'ofItsKind', grade: 'secondary' },
      notes: [{ key: 'scaledToHighestAmbient' }],
    });
    expect(inside.margin).toBeCloseTo(88 / 90, 9);
    expect(judged('fr4HighCti', '132 °C ± 2 K')).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
  });

  it('of phenolic paper: 107 °C fails on a figure from memory, 145 °C (105 K over 65 K) is headlined', () => {
    expect(judged('fr2', '103 °C ± 2 K').outcome).toBe('pass');
    expect(judged('fr1', '107 °C ± 2 K')).toMatchObject({ outcome: 'fail', headline: false, limit: { grade: 'memory' } });
    expect(judged('fr1', '145 °C ± 2 K')).toMatchObject({ outcome: 'fail', headline: true });
  });

  it('of a laminate nobody can tell, or whose figure is not known: passes below 105 °C, fails above 130 °C, open between', () => {
    for (const laminate of [{ state: 'unknown', because: 'painted black' }, 'cem1', 'cem3'] as const) {
      expect(judged(laminate, '103 °C ± 2 K').outcome).toBe('pass');
      expect(judged(laminate, '118 °C ± 2 K')).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
      expect(judged(laminate, '132 °C ± 2 K')).toMatchObject({ outcome: 'fail', headline: true });
    }
  });

  it('a wide doubt, a bound, an open cover', () => {
    expect(judged('fr4', '120 °C ± 30 K').outcome).toBe('inconclusive');
    expect(judged('fr4', '> 140 °C').outcome).toBe('fail');
    expect(judged('fr4', '> 100 °C')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged('fr4', '90 °C ± 1 K', { ...HOT_ROOM, cover: 'open' })).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('a place that is not on the board asks nothing, nor does one of which nobody said so', () => {
    for (const laminate of [undefined, { state: 'absent', because: 'hangs in the air' }] as const)
      expect(findingsOf(judge(at(laminate, '150 °C ± 1 K')), CHECK)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });

  it('conditions that nobody wrote down, and the states of a temperature', () => {
    const { minutes: _left, ...under } = HOT_ROOM;
    expect(judged('fr4', '60 °C ± 1 K', under)).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(judged('fr4', { state: 'unknown', because: 'the wire came off' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged('fr4', { v: '60 °C', struck: 'the wire came off' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('at half the label load a cool board says nothing, a hot one fails all the same', () => {
    const half = { ...HOT_ROOM, loads: [{ port: 'usb', level: '5v', draws: '1 A' }] };
    expect(judged('fr4', '60 °C ± 1 K', half)).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(judged('fr4', '140 °C ± 1 K', half).outcome).toBe('fail');
  });
});
