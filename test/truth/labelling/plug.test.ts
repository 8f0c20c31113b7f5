import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';

// Torque: IEC 60065 clause 15.4, 0.25 N m about a pivot 8 mm behind the engagement face (secondary: a maker of test equipment). Pins of the flat
// two-pin plug: 4.0 mm and 19 mm, sleeved (secondary: an encyclopaedia article, a museum); what they may be off, 0.2 mm and 1 mm, is a convention
// of this project and weighs no more than disappointing. Gravity 9.80665 m/s².
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Body = Extract<Exhibit, { kind: 'body' }>;
const body = (more: Partial<Body> = {}): Body => ({
  id: 'body-1',
  kind: 'body',
  plug: 'flat two-pin, in the body',
  plugSystem: 'flatTwoPin',
  ...more,
});
const judged = (subject: string, ...bodies: Body[]): Finding => findingOf(judge({ exhibits: bodies }), `labelling/plug@${subject}`);
const torque = (mass: string, centreOfMass: string): Finding => judged('torque', body({ mass, centreOfMass }));

describe('torque on the socket', () => {
  it('500 g balanced 42.986 mm in front of the face is 0.25 N m, the limit: undecided', () => {
    const at = torque('500 g ± 2 g', '42.9858 mm ± 0.2 mm');
    expect(at.measured).toMatchObject({ value: expect.closeTo(0.25, 6), unit: 'N·m' });
    expect(at).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', limit: { at: { value: 0.25 }, grade: 'secondary' } });
    expect(at.margin).toBeCloseTo(1, 5);
  });

  it('just inside passes, just outside fails and injures', () => {
    // arms of 49.96 mm and 52.0 mm; 490 g: 0.2401 N m, 510 g: 0.2601 N m
    expect(torque('490 g ± 2 g', '41.96 mm ± 0.2 mm')).toMatchObject({
      outcome: 'pass',
      measured: { value: expect.closeTo(0.49 * 9.80665 * 0.04996, 9) },
    });
    expect(torque('510 g ± 2 g', '44.0 mm ± 0.2 mm')).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
  });

  it('a wide uncertainty of the balance point leaves it open', () => {
    expect(torque('500 g ± 2 g', '40 mm ± 10 mm').outcome).toBe('inconclusive');
  });

  it('a small cube needs no balancing: 38 g and 40 mm at most pass as a bound; a large brick needs it', () => {
    const cube = judged('torque', body({ mass: '38 g ± 1 g', size: ['27 mm', '27 mm', '40 mm'] }));
    expect(cube).toMatchObject({ outcome: 'pass', measured: { side: 'below', value: expect.closeTo(0.038 * 9.80665 * 0.048, 9) } });
    expect(noteKeys(cube)).toContain('torqueByGreatestDimension');
    expect(judged('torque', body({ mass: '400 g ± 1 g', size: ['60 mm', '50 mm', '90 mm'] }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
    });
  });

  it('without the mass, or with neither balance point nor size, it is not assessed', () => {
    expect(judged('torque', body({ centreOfMass: '20 mm' }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged('torque', body({ mass: '38 g' }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged('torque', body({ mass: '38 g', centreOfMass: { state: 'unknown', because: 'it rolls' } }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged('torque', body({ mass: '900 g ± 1 g', centreOfMass: '50 mm ± 1 mm', struck: 'another unit' }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
  });

  it('a unit on a cord does not hang in the socket', () => {
    expect(judged('torque', body({ mass: '400 g', centreOfMass: '60 mm', plugSystem: 'cord' }))).toMatchObject({
      outcome: 'notApplicable',
      reason: 'doesNotApply',
    });
    expect(judged('pin-length', body({ mass: '400 g', plugSystem: 'cord' })).outcome).toBe('notApplicable');
  });
});

describe('pins of the flat two-pin plug', () => {
  const diameter = (text: string): Finding => judged('pin-diameter', body({ pin: { diameter: text } }));
  it('4.0 mm passes, 3.8 mm is undecided, 3.7 mm fails and weighs no more than disappointing', () => {
    expect(diameter('4.0 mm ± 0.05 mm')).toMatchObject({
      outcome: 'pass',
      limit: { grade: 'common-practice', at: { value: expect.closeTo(0.0038, 12) }, to: { value: expect.closeTo(0.0042, 12) } },
    });
    expect(diameter('3.8 mm ± 0.05 mm').outcome).toBe('inconclusive');
    expect(diameter('3.7 mm ± 0.05 mm')).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
    expect(diameter('4.8 mm ± 0.05 mm').outcome).toBe('fail');
    expect(diameter('< 3.5 mm').outcome).toBe('fail');
  });

  it('19 mm passes, 17 mm fails; a length nobody measured is not assessed', () => {
    expect(judged('pin-length', body({ pin: { length: '19.0 mm ± 0.1 mm' } })).outcome).toBe('pass');
    expect(judged('pin-length', body({ pin: { length: '17.0 mm ± 0.1 mm' } }))).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
    });
    expect(judged('pin-length', body({ pin: { diameter: '4 mm' } }))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('bare pins can be touched half way in: injurious, whether "no" or "looked and absent"', () => {
    expect(judged('pin-sleeves', body({ pin: { sleeved: false } }))).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      headline: true,
      measured: { word: 'bare' },
    });
    expect(judged('pin-sleeves', body({ pin: { sleeved: { state: 'absent', because: 'metal down to the face' } } })).outcome).toBe('fail');
    expect(judged('pin-sleeves', body({ pin: { sleeved: true } }))).toMatchObject({ outcome: 'pass', limit: { grade: 'secondary' } });
    expect(judged('pin-sleeves', body({ pin: { sleeved: { state: 'unknown', because: 'lacquer or sleeve' } } })).outcome).toBe(
      'inconclusive',
    );
  });

  it('pins of another system, or of one that nobody named, are not put to these figures', () => {
    expect(judged('pin-diameter', body({ plugSystem: 'bs1363', pin: { diameter: '4 mm' } }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    const { plugSystem: _system, ...unnamed } = body({ pin: { diameter: '3 mm ± 0.1 mm', sleeved: false } });
    expect(judged('pin-diameter', unnamed)).toMatchObject({ outcome: 'notAssessed' });
    expect(noteKeys(judged('pin-sleeves', unnamed))).toContain('plugSystemNotStated');
  });

  it('nobody looked at mass or pins', () => {
    expect(findingsOf(judge({ exhibits: [body()] }), 'labelling/plug')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
