import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge } from '../build-case.ts';

// BS 1363, line and neutral pins: 17.7 mm long, at least 9.5 mm from the edge of the face (secondary, one weak copy of an encyclopaedia article). What a
// length may be off, 0.9 mm, is a convention of this project and weighs no more than disappointing.
type Body = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'body' }>;
const body = (pin: Body['pin'], more: Partial<Body> = {}): Body => ({
  id: 'body-1',
  kind: 'body',
  plug: 'three flat pins',
  plugSystem: 'bs1363',
  ...(pin === undefined ? {} : { pin }),
  ...more,
});
const judged = (subject: string, pin: Body['pin'], more: Partial<Body> = {}): Finding =>
  findingOf(judge({ exhibits: [body(pin, more)] }), `labelling/plug@${subject}`);

describe('from a pin of the British plug to the edge of its face', () => {
  it('9.5 mm is undecided, 9.8 mm passes, 9.2 mm fails and injures: a finger meets the pin', () => {
    expect(judged('pin-edge', { toEdge: '9.5 mm ± 0.1 mm' })).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(judged('pin-edge', { toEdge: '9.8 mm ± 0.1 mm' })).toMatchObject({
      outcome: 'pass',
      limit: { name: 'pinsFromEdge', grade: 'secondary' },
    });
    expect(judged('pin-edge', { toEdge: '9.2 mm ± 0.1 mm' })).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
  });

  it('a caliper good to a millimetre leaves it open, a floor passes, a ceiling fails', () => {
    expect(judged('pin-edge', { toEdge: '9.8 mm ± 1 mm' }).outcome).toBe('inconclusive');
    expect(judged('pin-edge', { toEdge: '> 10 mm' }).outcome).toBe('pass');
    expect(judged('pin-edge', { toEdge: '< 9 mm' }).outcome).toBe('fail');
  });

  it('nobody looked, could not tell, struck', () => {
    expect(judged('pin-edge', { length: '17.7 mm' })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged('pin-edge', { toEdge: { state: 'unknown', because: 'the face is melted' } }).outcome).toBe('inconclusive');
    expect(judged('pin-edge', { toEdge: '9 mm' }, { struck: 'another unit' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('is asked of no other plug', () => {
    const flat = judge({ exhibits: [body({ toEdge: '3 mm ± 0.1 mm' }, { plugSystem: 'flatTwoPin' })] });
    expect(findingsOf(flat, 'labelling/plug').map(({ id }) => id)).not.toContain('labelling/plug@pin-edge');
  });
});

describe('length of a pin of the British plug', () => {
  it('17.7 mm passes, 18.6 mm is at the edge, 19 mm disappoints and no more', () => {
    expect(judged('pin-length', { length: '17.7 mm ± 0.1 mm' })).toMatchObject({ outcome: 'pass', limit: { name: 'pinOfSystem' } });
    expect(judged('pin-length', { length: '18.6 mm ± 0.1 mm' }).outcome).toBe('inconclusive');
    expect(judged('pin-length', { length: '19 mm ± 0.1 mm' })).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
  });

  it('its pins are flat: a diameter has no figure', () => {
    expect(judged('pin-diameter', { diameter: '4 mm' })).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });
});
