import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import { findingOf, judge, noteKeys } from '../build-case.ts';
import { board, CONDUCTORS, label, usbPort } from '../evidence-pieces.ts';

// IEC 62368-1 clause 6.2 (secondary: two report forms, a test laboratory): arcing source above 50 V peak where peak voltage times rms current exceeds 15;
// resistive source above 15 W after 30 s; power sources of the first class to 15 W, of the second to 100 W read after 5 s.
type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;

describe('a joint of the mains that may part', () => {
  const joint = (current: string | null) =>
    findingOf(
      judge({
        conductors: CONDUCTORS,
        exhibits: [
          board({ faults: [{ id: 'one', kind: 'mainsJoint', what: 'a crack round the pin', photo: 'p1' }] }),
          { id: 'p1', kind: 'photo', file: 'f1', of: 'the joint' },
          ...(current === null ? [] : [label({ input: { voltage: '230 V', current } })]),
        ],
        files: [{ id: 'f1', path: 'p1.jpg', sha256: '0'.repeat(64), bytes: 1, media: 'image/jpeg' }],
      }),
      'fire/workmanship@board-1-one',
    );

  it('with 0.2 A and the crest of 253 V can arc: 71.6 against 15', () => {
    const finding = joint('0.2 A');
    expect(finding.notes.find(({ key }) => key === 'arcingSource')?.args).toEqual({
      product: expect.closeTo(253 * Math.SQRT2 * 0.2, 6),
      line: 15,
    });
  });

  it('with 0.04 A it cannot by this rule, and stays what it was: a danger', () => {
    const finding = joint('0.04 A');
    expect(noteKeys(finding)).toContain('noArcingSource');
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
  });

  it('without a printed current nothing is said of it', () => {
    expect(noteKeys(joint(null)).filter((key) => key.toLowerCase().includes('arcing'))).toEqual([]);
  });
});

describe('power drawn in a fault', () => {
  const keys = (what: 'short' | 'overload', watts: string, minutes: string): string[] => {
    const event: Event = {
      id: 'fault-1',
      kind: 'event',
      what,
      tries: { made: 1, failed: 0 },
      under: { minutes },
      aftermath: 'recovers',
      readings: [{ id: 'p', name: 'inputPower', value: watts }],
    };
    return noteKeys(findingOf(judge({ ports: [usbPort()], exhibits: [event] }), `fire/short-endurance@usb~${what}`));
  };

  it('of 15 W or less is no ignition source; of more for half a minute it may be one', () => {
    expect(keys('short', '15 W', '10 min')).toContain('faultPowerSmall');
    expect(keys('short', '15.1 W', '30 s')).toContain('faultPowerIgnites');
    expect(keys('short', '15.1 W', '29 s').filter((key) => key.startsWith('faultPower'))).toEqual(['faultPower']);
  });

  it('makes the output a source of a class only in an overload that was held for five seconds', () => {
    expect(keys('overload', '15 W', '1 min')).toContain('powerSourceFirst');
    expect(keys('overload', '60 W', '1 min')).toContain('powerSourceSecond');
    expect(keys('overload', '130 W', '1 min')).toContain('powerSourceThird');
    expect(keys('overload', '60 W', '4 s').filter((key) => key.startsWith('powerSource'))).toEqual([]);
    expect(keys('short', '60 W', '1 min').filter((key) => key.startsWith('powerSource'))).toEqual([]);
  });
});
