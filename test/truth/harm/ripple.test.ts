import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { usbPort } from '../evidence-pieces.ts';

// No published limit for the ripple at a socket is known to us: IEC 62684 leaves it to others, and 200 mV peak to peak in 20 MHz is a habit of
// the trade (common practice), shown and not judged. So at, inside and outside of it the answer is the same: not assessed.
type Ripple = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'ripple' }>;
const read = (value: Ripple['value'], more: Partial<Ripple> = {}): Ripple => ({
  id: 'ripple-1',
  kind: 'ripple',
  port: 'usb',
  value,
  bandwidth: '20 MHz',
  fixture: '0.1 µF and 10 µF at the socket, tip and ring',
  ...more,
});
const with_ = (...exhibits: Ripple[]) => judge({ ports: [usbPort()], exhibits });

describe('ripple', () => {
  it('no ripple is judged, at, below or far above what the trade expects', () => {
    for (const value of ['200 mV ± 1 mV', '199 mV ± 1 mV', '201 mV ± 1 mV', '20 mV', '2 V ± 0.1 V', '0.2 V ± 0.2 V', '< 50 mV', '> 1 V']) {
      const assessment = with_(read(value));
      const finding = findingOf(assessment, 'harm/ripple@usb~5v');
      expect(finding, value).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown', limit: null });
      expect(finding.measured, value).not.toBeNull();
      expect(assessment.verdict.failure).toBe('No verdict yet');
    }
  });

  it('the reading stays, with the habit of the trade beside it as what it is', () => {
    const finding = findingOf(with_(read('140 mV ± 20 mV')), 'harm/ripple@usb~5v');
    expect(finding.measured).toMatchObject({ value: 0.14, unit: 'V', u: 0.01 });
    expect(finding.others).toMatchObject([{ name: 'rippleHabit', at: { value: 0.2, unit: 'V' }, grade: 'common-practice' }]);
    expect(noteKeys(finding)).toContain('rippleHabit');
  });

  it('read in another bandwidth it stands alone', () => {
    const finding = findingOf(with_(read('140 mV', { bandwidth: '100 MHz' })), 'harm/ripple@usb~5v');
    expect(finding.others).toEqual([]);
    expect(noteKeys(finding)).toContain('rippleOtherBandwidth');
  });

  it('without bandwidth or fixture it is nothing', () => {
    for (const more of [
      { bandwidth: { state: 'notLooked' } },
      { fixture: { state: 'notLooked' } },
      { fixture: { state: 'unknown', because: 'lost' } },
      { fixture: ' ' },
    ] as const) {
      const finding = findingOf(with_(read('140 mV', more)), 'harm/ripple@usb~5v');
      expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable', measured: null });
      expect(noteKeys(finding)).toContain('rippleWithout');
    }
  });

  it('of several the largest is shown', () => {
    const finding = findingOf(
      with_(read('50 mV'), read('90 mV', { id: 'ripple-2' }), read('900 mV', { id: 'ripple-3', struck: 'ground lead' })),
      'harm/ripple@usb~5v',
    );
    expect(finding.measured).toMatchObject({ value: 0.09 });
  });

  it('what nobody could tell, what was struck, what was never read', () => {
    expect(findingOf(with_(read({ state: 'unknown', because: 'the picture is lost' })), 'harm/ripple@usb~5v')).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(findingOf(with_(read('90 mV', { struck: 'ground lead' })), 'harm/ripple@usb~5v')).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
    expect(findingsOf(with_(), 'harm/ripple')).toMatchObject([{ outcome: 'notAssessed', reason: 'limitUnknown' }]);
    expect(with_().next.flatMap(({ settles }) => settles)).not.toContain('harm/ripple');
  });
});
