import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, judge, noteKeys } from '../build-case.ts';
import { HOT_ROOM, onPart } from '../component-rows.ts';
import { CONDUCTORS, type PartInput } from '../evidence-pieces.ts';

/*
 * Package SMA: 28 K/W from junction to lead (one maker's sheet of 3 A parts, secondary). 2 A through 0.7 V, rectangular ± 0.4 V (common practice):
 * 1.4 W, 39.2 K with a standard uncertainty of 0.4/√3 × 2 × 28 = 12.93 K. The room is at the highest ambient, so nothing is scaled.
 */
const output = CONDUCTORS.find(({ side }) => side === 'output')!.id;
const DIODE: PartInput = {
  id: 'd5',
  ref: 'D5',
  kind: 'diode',
  package: 'SMA',
  rating: { temperature: '150 °C' },
  pins: [
    { pin: 'A', net: output },
    { pin: 'K', net: output },
  ],
};
const judged = (celsius: string, part: PartInput = DIODE): Finding =>
  findingOf(judge({ ...onPart(part, celsius, { under: HOT_ROOM }), conductors: CONDUCTORS }), 'endurance/rectifier-margin@spot');

describe('the junction of an output rectifier', () => {
  it('is 39.2 K above leads of 60 °C: far below 150 °C', () => {
    const finding = judged('60 °C ± 2 K');
    expect(finding).toMatchObject({ outcome: 'pass', state: 'labelLoad', limit: { name: 'ratedTemperature' } });
    expect(finding.measured).toMatchObject({ value: expect.closeTo(60 + 39.2 + 273.15, 6), u: expect.closeTo(Math.hypot(12.933, 1), 2) });
    expect(noteKeys(finding)).toContain('junctionFromLead');
  });

  it('nobody can tell at 111 °C, and at 145 °C it is beyond: the leads alone nearly are', () => {
    expect(judged('110.8 °C ± 2 K')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(judged('145 °C ± 2 K')).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
  });

  it('is not worked out for a package that is not in the list, or a greatest temperature that nobody read', () => {
    const other = judged('60 °C ± 2 K', { ...DIODE, package: 'D2PAK' });
    expect(other).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(other)).toContain('rectifierPackageNotKnown');
    const { rating: _, ...bare } = DIODE;
    expect(judged('60 °C ± 2 K', bare)).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('is not worked out where two rectifiers share the output: nobody knows who carries what', () => {
    const patch = onPart(DIODE, '60 °C ± 2 K', { under: HOT_ROOM });
    const two = judge({ ...patch, conductors: CONDUCTORS, parts: [DIODE, { ...DIODE, id: 'd6', ref: 'D6' }] });
    expect(noteKeys(findingOf(two, 'endurance/rectifier-margin@spot'))).toContain('severalRectifiers');
  });

  it('a diode on the mains side is none', () => {
    const mains = CONDUCTORS.find(({ side }) => side === 'mains')!.id;
    const part = {
      ...DIODE,
      pins: [
        { pin: 'A', net: mains },
        { pin: 'K', net: mains },
      ],
    };
    const patch = { ...onPart(part, '60 °C ± 2 K', { under: HOT_ROOM }), conductors: CONDUCTORS };
    expect(findingOf(judge(patch), 'endurance/rectifier-margin')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('tells what it loses and what a switched one would lose in its place, and says where nothing is known of its leakage', () => {
    const finding = judged('60 °C ± 2 K');
    expect(noteKeys(finding)).toEqual(expect.arrayContaining(['runawayNotKnown', 'switchedInstead']));
    const note = finding.notes.find(({ key }) => key === 'switchedInstead')!;
    // 0.7 V × 2 A; 4 × 4 A² / (3 × 0.4) × 15 mΩ
    expect(note.args).toMatchObject({ now: expect.closeTo(1.4, 6), switched: expect.closeTo(0.2, 6) });
  });
});
