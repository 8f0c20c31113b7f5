import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { label, PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// The limit of a promise is what the label prints, and what was held inside the window of a USB A socket, 4.75 to 5.25 V (secondary). A printed
// figure is taken as rounded to its last digit (house). Marks: class III is not fed from the mains, class I needs earth (IEC 61140, memory); the flat
// two-pin plug is rated 2.5 A (EN 50075, secondary); 3 W/cm³ is more than is sold (common practice).
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Body = Extract<Exhibit, { kind: 'body' }>;
type Claim = NonNullable<Extract<Exhibit, { kind: 'label' }>['claims']>[number];
const claim = (value: string, more: Partial<Claim> = {}): Claim => ({
  id: 'promise',
  text: `promises ${value}`,
  value,
  from: 'listing',
  ...more,
});
const case_ = (claims: Claim[], more: { port?: PortInput; ports?: PortInput[]; exhibits?: Exhibit[] } = {}): CasePatch => ({
  ports: more.ports ?? [more.port ?? usbPort('2 A')],
  instruments: [plainMeter('0.001 V')],
  days: [PLAIN_DAY],
  exhibits: [label({ claims }), ...(more.exhibits ?? [])],
});
const judged = (...args: Parameters<typeof case_>): Finding => findingOf(judge(case_(...args)), 'labelling/claims@promise');
/** 5.2 V - 0.225 Ω × I: leaves the window at 2.0 A. */
const RUN = sweep([
  ['0', '5.2'],
  ['1', '4.975'],
  ['1.5', '4.8625'],
  ['2.5', '4.6375'],
  ['3', '4.525'],
]);

describe('listing and box against the label', () => {
  it('2 A where the label prints 2 A passes, 2.1 A fails and disappoints, 2.0 A and 2.04 A are one figure rounded', () => {
    expect(judged([claim('2.0 A')])).toMatchObject({ outcome: 'pass', limit: { name: 'onTheLabelToo', at: { value: 2 } } });
    const beyond = judged([claim('2.1 A')]);
    expect(beyond).toMatchObject({ outcome: 'fail', consequence: 'disappointing', headline: true });
    expect(noteKeys(beyond)).toContain('promisedBy');
    expect(judge(case_([claim('2.1 A', { from: 'box' })])).verdict.failure).toBe('Below its claims');
    expect(judged([claim('2.0 A')], { port: usbPort('1.96 A') }).outcome).toBe('pass');
    expect(judged([claim('2.0 A')], { port: usbPort('1.94 A') }).outcome).toBe('fail');
  });

  it('20 W where the label prints 9 V 2.22 A, 19.98 W, is the same promise; 25 W is not', () => {
    const port = usbPort('3 A', {
      levels: [
        { id: '5v', voltage: '5 V', printed: '3 A' },
        { id: '9v', voltage: '9 V', printed: '2.22 A' },
      ],
    });
    expect(judged([claim('20 W')], { port })).toMatchObject({ outcome: 'pass', limit: { at: { value: expect.closeTo(19.98, 9) } } });
    expect(judged([claim('25 W')], { port }).outcome).toBe('fail');
  });

  it('a level that only the box prints is put to the label at the same voltage', () => {
    const port = usbPort('2 A', {
      levels: [
        { id: '5v', voltage: '5 V', printed: '2 A', from: 'label' },
        { id: '5v-box', voltage: '5 V', printed: '3 A', from: 'box' },
        { id: '9v-box', voltage: '9 V', printed: '2 A', from: 'box' },
      ],
    });
    const assessment = judge(case_([], { port }));
    expect(findingOf(assessment, 'labelling/claims@usb-5v-box')).toMatchObject({ outcome: 'fail', limit: { at: { value: 2 } } });
    const silent = findingOf(assessment, 'labelling/claims@usb-9v-box');
    expect(silent).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(noteKeys(silent)).toContain('labelSilent');
  });

  it('a promise for no output in particular, on a unit with two, is not guessed', () => {
    const ports = [usbPort('2 A'), usbPort('2 A', { id: 'second' })];
    expect(judged([claim('3 A')], { ports })).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(judged([claim('3 A', { of: 'second' })], { ports }).outcome).toBe('fail');
  });

  it('what the label promises itself is not compared with itself; a claim without a figure is no subject', () => {
    expect(judged([claim('3 A', { from: 'label' })])).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(findingsOf(judge(case_([{ id: 'words', text: 'charges very fast' }])), 'labelling/claims')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });
});

describe('against what was held', () => {
  it('2.0 A held: a promise of 1.9 A is kept, of 2.2 A is not, of 2.0 A is undecided', () => {
    const wide = { port: usbPort('5 A'), exhibits: [RUN] };
    expect(judged([claim('1.9 A')], wide).outcome).toBe('pass');
    expect(judged([claim('2.2 A')], wide)).toMatchObject({ outcome: 'fail', consequence: 'disappointing', limit: { name: 'claim' } });
    expect(judged([claim('2.0 A')], wide).outcome).toBe('inconclusive');
    expect(judged([claim('2.2 A', { from: 'label' })], wide).outcome).toBe('fail');
  });

  it('the worse of both counts: more than the label although it was held', () => {
    expect(judged([claim('1.9 A')], { port: usbPort('1.5 A'), exhibits: [RUN] })).toMatchObject({
      outcome: 'fail',
      limit: { name: 'onTheLabelToo' },
    });
  });
});

describe('marks that cannot be true inform and set no word', () => {
  const body = (more: Partial<Body> = {}): Body => ({ id: 'body-1', kind: 'body', plug: 'in the body', plugSystem: 'flatTwoPin', ...more });
  const marked = (subject: string, exhibits: Exhibit[]): Finding =>
    findingOf(judge({ ports: [usbPort('2 A')], exhibits }), `labelling/claims@${subject}`);

  it('class III on the mains, class I on a plug without earth; class II is possible', () => {
    expect(marked('class-of-plug', [label({ class: 'III' })])).toMatchObject({
      outcome: 'fail',
      consequence: 'informative',
      headline: false,
    });
    expect(marked('class-of-plug', [label({ class: 'I' }), body()])).toMatchObject({
      outcome: 'fail',
      measured: { word: 'classOneTwoPins' },
    });
    expect(marked('class-of-plug', [label({ class: 'I' }), body({ plugSystem: 'bs1363' })]).outcome).toBe('pass');
    expect(marked('class-of-plug', [label({ class: 'II' }), body()]).outcome).toBe('pass');
    expect(judge({ exhibits: [label({ class: 'III' })] }).verdict.failure).not.toBe('Below its claims');
    expect(findingsOf(judge({ exhibits: [label({ class: 'I' })] }), 'labelling/claims')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });

  it('an input of 2.5 A is all that the flat two-pin plug is rated for', () => {
    expect(marked('rating-of-plug', [label({ input: { current: '2.5 A' } }), body()]).outcome).toBe('pass');
    expect(marked('rating-of-plug', [label({ input: { current: '2.6 A' } }), body()])).toMatchObject({
      outcome: 'fail',
      consequence: 'informative',
      limit: { grade: 'secondary' },
    });
  });

  it('120 W in a cube of 27 mm by 27 mm by 40 mm is 4.1 W in each cubic centimetre; 20 W is 0.67 W', () => {
    const cube = body({ size: ['27 mm ± 1 mm', '27 mm ± 1 mm', '40 mm ± 1 mm'] });
    const dense = marked('watts-in-the-case', [label({ claims: [claim('120 W')] }), cube]);
    expect(dense).toMatchObject({
      outcome: 'fail',
      consequence: 'informative',
      limit: { grade: 'common-practice' },
      measured: { value: expect.closeTo(119.5 / 29.16, 6) },
    });
    expect(marked('watts-in-the-case', [label({ claims: [claim('20 W')] }), cube]).outcome).toBe('pass');
    expect(
      marked('watts-in-the-case', [label({ claims: [claim('90 W')] }), body({ size: ['27 mm ± 6 mm', '27 mm ± 6 mm', '40 mm ± 6 mm'] })])
        .outcome,
    ).toBe('inconclusive');
  });
});
