import { describe, expect, it } from 'vitest';
import { caseOf, stackOf, tape, winding } from '../barrier/hand-solved.ts';
import { findingOf, findingsOf, judge } from '../build-case.ts';
import { across, workingVoltage } from '../evidence-pieces.ts';

const wire = (more: Parameters<typeof winding>[2]) =>
  findingOf(
    judge(caseOf({ title: '', outcome: 'pass', stack: stackOf([winding('s', 'output', more), tape('t', '3'), winding('p', 'mains')]) })),
    'shock/wire-insulation@t1/s',
  );

describe('the cover of a wire', () => {
  // bare 0.25 mm: grade 2 reaches 0.297 mm at most, 0.047 mm over the copper
  const bare = '0.25 mm ± 0.001 mm';
  const lost = { state: 'unknown', because: 'looks like enamel' } as const;
  it.each([
    ['enamel is nothing, and the question does not arise', { wireKind: 'enamelled' }, 'notApplicable', undefined],
    ['three layers are reinforced', { wireKind: 'tripleInsulated' }, 'pass', 'reinforcedMet'],
    ['fully insulated wire without its overall diameter is open', { wireKind: 'fullyInsulated' }, 'inconclusive', 'undecided'],
    [
      'built 2.1 times as thick as grade 2 it is what it says',
      { wireKind: 'fullyInsulated', wire: bare, overall: '0.35 mm ± 0.001 mm' },
      'pass',
      'reinforcedMet',
    ],
    [
      'built like grade 2 it is enamel, whatever was said',
      { wireKind: 'fullyInsulated', wire: bare, overall: '0.297 mm ± 0.001 mm' },
      'fail',
      'bridgedOrAbsent',
    ],
    ['an unexplained thick wire is open', { wireKind: lost, wire: bare, overall: '0.36 mm ± 0.001 mm' }, 'inconclusive', 'undecided'],
    ['an unexplained thin one is enamel', { wireKind: lost, wire: bare, overall: '0.29 mm ± 0.001 mm' }, 'notApplicable', undefined],
    ['an unexplained one whose cover nobody measured is open', { wireKind: lost }, 'inconclusive', 'undecided'],
    ['nobody looked', { wireKind: { state: 'notLooked' } }, 'notAssessed', undefined],
  ] as const)('%s', (_, more, outcome, rung) => {
    const finding = wire(more as Parameters<typeof winding>[2]);
    expect([finding.outcome, finding.rung]).toEqual([outcome, rung]);
  });
});

describe('an optocoupler across the barrier', () => {
  const coupler = (identity: Parameters<typeof across>[3] extends infer P ? (P extends { identity?: infer I } ? I : never) : never) =>
    findingOf(
      judge(
        caseOf({
          title: '',
          outcome: 'pass',
          parts: [across('u2', 'out-minus', 'hv-minus', { kind: 'optocoupler', ...(identity === undefined ? {} : { identity }) })],
        }),
      ),
      'shock/optocoupler@u2',
    );
  it('whose maker and series are known passes', () =>
    expect(coupler('established')).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' }));
  it('that only claims to be one is open', () => expect(coupler('claimed')).toMatchObject({ outcome: 'inconclusive', rung: 'undecided' }));
  it('whose mark was removed is open', () => expect(coupler({ state: 'unknown', because: 'sanded off' }).outcome).toBe('inconclusive'));
  it('nobody looked at is not assessed', () => expect(coupler(undefined).outcome).toBe('notAssessed'));
  it('does not arise where the primary side regulates', () => {
    const stack = { ...stackOf([winding('s', 'output'), winding('p', 'mains')]), law: 'primaryCurrent' as const };
    expect(findingsOf(judge(caseOf({ title: '', outcome: 'pass', stack })), 'shock/optocoupler')).toMatchObject([
      { outcome: 'notApplicable' },
    ]);
  });
});

describe('the working voltage, as information', () => {
  const judged = (volts: string, supply: 'direct' | 'isolating' = 'direct') =>
    findingsOf(
      judge(
        caseOf({
          title: '',
          outcome: 'pass',
          exhibits: [workingVoltage(volts, { under: { supply, mains: '230 V', frequency: '50 Hz' } })],
        }),
      ),
      'shock/working-voltage',
    )[0];
  it('240 V is within what is assumed', () => expect(judged('240 V ± 0 V')).toMatchObject({ outcome: 'pass', consequence: 'informative' }));
  it('300 V is more, and every limit follows the reading', () =>
    expect(judged('300 V ± 0 V')).toMatchObject({ outcome: 'fail', consequence: 'informative' }));
  it('264 V is about what is assumed', () => expect(judged('264 V ± 0 V')?.outcome).toBe('inconclusive'));
  it('behind an isolating supply it counts for nothing', () =>
    expect(judged('300 V ± 0 V', 'isolating')).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' }));
});
