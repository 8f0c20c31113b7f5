import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { board } from '../evidence-pieces.ts';

// Three drops from 1 m: IEC 62368-1 annex T.7 (memory), and what the trade does. A live part that can be reached is lethal; a case that opens or
// a mains wire that only solder holds is injurious (docs/decisions/0003-verdict.md).
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Body = Extract<Exhibit, { kind: 'body' }>;
const body = (more: Partial<Body> = {}): Body => ({ id: 'body-1', kind: 'body', plug: 'flat two-pin', ...more });
const judged = (subject: string, ...exhibits: Exhibit[]): Finding => findingOf(judge({ exhibits }), `shock/enclosure@${subject}`);

describe('a live part within reach', () => {
  it('is lethal, and out of reach passes', () => {
    expect(judged('live-part', body({ livePartTouchable: true }))).toMatchObject({
      outcome: 'fail',
      consequence: 'lethal',
      headline: true,
      measured: { word: 'withinReach' },
    });
    expect(judge({ exhibits: [body({ livePartTouchable: true })] }).verdict.failure).toBe('Dangerous');
    expect(judged('live-part', body({ livePartTouchable: false }))).toMatchObject({
      outcome: 'pass',
      reason: 'met',
      limit: { grade: 'memory' },
    });
  });

  it('could not tell is inconclusive, struck does not count, the worse of two exhibits does', () => {
    expect(judged('live-part', body({ livePartTouchable: { state: 'unknown', because: 'a dark slot' } }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged('live-part', body({ livePartTouchable: true, struck: 'another unit' }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
    expect(judged('live-part', body({ livePartTouchable: false }), body({ id: 'body-2', livePartTouchable: true })).outcome).toBe('fail');
  });
});

describe('drops', () => {
  const drops = (made: number, failed: number, dropHeight: string | null = '1 m'): Finding =>
    judged('drop', body({ drops: { made, failed }, ...(dropHeight === null ? {} : { dropHeight }) }));

  it('three from 1 m without opening pass; two are not yet enough; one that opens it fails whichever it was', () => {
    expect(drops(3, 0)).toMatchObject({ outcome: 'pass', measured: { word: 'staysShut' } });
    expect(drops(2, 0)).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(drops(2, 0))).toEqual(['fewDrops']);
    expect(drops(1, 1)).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true, measured: { word: 'opened' } });
    expect(judge({ exhibits: [body({ drops: { made: 3, failed: 1 }, dropHeight: '1 m' })] }).verdict.failure).toBe('Unsafe');
  });

  it('lower than 1 m can only fail it, higher can only pass it, a height nobody wrote down neither', () => {
    expect(drops(3, 0, '0.7 m').outcome).toBe('notAssessed');
    expect(drops(3, 1, '0.7 m').outcome).toBe('fail');
    expect(drops(3, 0, '1.5 m').outcome).toBe('pass');
    expect(drops(3, 1, '1.5 m').outcome).toBe('notAssessed');
    expect(drops(3, 0, null).outcome).toBe('notAssessed');
    expect(drops(3, 1, null).outcome).toBe('notAssessed');
    expect(drops(3, 0, '0.96 m').outcome).toBe('pass');
    expect(drops(3, 0, '0.94 m').outcome).toBe('notAssessed');
  });
});

describe('seam and wires', () => {
  it('a seam that opens and a wire held by solder alone injure', () => {
    expect(judged('seam', body({ seamOpens: true }))).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect(judged('seam', body({ seamOpens: false })).outcome).toBe('pass');
    expect(judged('wires', board({ wiresHeld: false }))).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      measured: { word: 'bySolderOnly' },
    });
    expect(judged('wires', board({ wiresHeld: true })).outcome).toBe('pass');
  });

  it('one answer leaves the other three not assessed, so that the check is not taken as examined', () => {
    const findings = findingsOf(judge({ exhibits: [body({ seamOpens: false })] }), 'shock/enclosure');
    expect(Object.fromEntries(findings.map(({ subject, outcome }) => [subject, outcome]))).toEqual({
      'live-part': 'notAssessed',
      drop: 'notAssessed',
      seam: 'pass',
      wires: 'notAssessed',
    });
  });

  it('nobody looked at any of it', () => {
    expect(findingsOf(judge({ exhibits: [body(), board()] }), 'shock/enclosure')).toMatchObject([
      { id: 'shock/enclosure', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    expect(judged('seam', body({ seamOpens: { state: 'cannotNow', since: 'opened' } }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'cannotNow',
    });
  });
});
