import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { usbPort } from '../evidence-pieces.ts';

// IEC 62684: at most 2 V peak to peak against earth, for pulses longer than 250 ns (secondary: a chip maker's page on standards). As information only.
type Swing = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'earthSwing' }>;
const swing = (value: Swing['value'], more: Partial<Swing> = {}): Swing => ({
  id: 'swing-1',
  kind: 'earthSwing',
  port: 'usb',
  under: { supply: 'direct', mains: '230 V', frequency: '50 Hz' },
  pulse: '2 µs',
  value,
  ...more,
});
const judged = (value: Swing['value'], more: Partial<Swing> = {}): Finding =>
  findingOf(judge({ ports: [usbPort()], exhibits: [swing(value, more)] }), 'interference/earth-swing@usb');

describe('an output that swings against earth', () => {
  it('2 V is undecided, 1.9 V passes, 2.1 V fails as information and sets no word', () => {
    expect(judged('2 V ± 0.1 V')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', limit: { grade: 'secondary' } });
    expect(judged('1.9 V ± 0.1 V')).toMatchObject({ outcome: 'pass' });
    expect(judged('2.1 V ± 0.1 V')).toMatchObject({ outcome: 'fail', consequence: 'informative' });
    expect(judge({ ports: [usbPort()], exhibits: [swing('9 V ± 0.1 V')] }).verdict.failure).toBe('Nothing found wrong');
  });

  it('a scope good to 2 V leaves it open; a floor fails, a ceiling passes', () => {
    expect(judged('2.5 V ± 2 V').outcome).toBe('inconclusive');
    expect(judged('> 5 V').outcome).toBe('fail');
    expect(judged('< 1 V').outcome).toBe('pass');
  });

  it('pulses of 250 ns and less are let pass however high; of pulses nobody timed only a low swing says something', () => {
    expect(judged('9 V ± 0.1 V', { pulse: '250 ns' })).toMatchObject({ outcome: 'notApplicable', measured: { value: 9 } });
    expect(judged('9 V ± 0.1 V', { pulse: '260 ns' }).outcome).toBe('fail');
    const untimed = judged('9 V ± 0.1 V', { pulse: { state: 'notLooked' } });
    expect(untimed).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(noteKeys(untimed)).toContain('pulseNotStated');
    expect(judged('1 V ± 0.1 V', { pulse: { state: 'notLooked' } }).outcome).toBe('pass');
  });

  it('behind an isolating source, or one that nobody named, it is kept and does not count', () => {
    for (const supply of ['isolating', 'electronic'] as const)
      expect(judged('1 V ± 0.1 V', { under: { supply } })).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
    expect(noteKeys(judged('1 V ± 0.1 V', { under: {} }))).toContain('supplyNotStated');
  });

  it('nobody looked, struck, could not tell', () => {
    expect(findingsOf(judge({ ports: [usbPort()] }), 'interference/earth-swing')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    expect(judged('1 V', { struck: 'the probe was not compensated' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged({ state: 'unknown', because: 'it never triggered' })).toMatchObject({ outcome: 'inconclusive' });
  });
});
