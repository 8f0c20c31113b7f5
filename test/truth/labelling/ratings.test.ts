import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge } from '../build-case.ts';
import { label, usbPort } from '../evidence-pieces.ts';

// What a label must say: input voltage, frequency and current, every output, class, who is responsible (IEC 62368-1 annex F.3, memory). Informative.
type Label = NonNullable<Parameters<typeof label>[0]>;
const FULL: Label = {
  input: { voltage: '100-240 V', frequency: '50/60 Hz', current: '0.3 A' },
  class: 'II',
  maker: 'Invented maker, Invented street 1',
};
const judged = (more: Label, about: string): Finding =>
  findingOf(judge({ ports: [usbPort()], exhibits: [label({ ...FULL, ...more })] }), `labelling/ratings@${about}`);

describe('what a label must say', () => {
  it('all of it is there: every line passes and no word falls', () => {
    const assessment = judge({ ports: [usbPort()], exhibits: [label(FULL)] });
    expect(findingsOf(assessment, 'labelling/ratings').map(({ subject, outcome }) => [subject, outcome])).toEqual([
      ['balance', 'pass'],
      ['class', 'pass'],
      ['input-current', 'pass'],
      ['input-frequency', 'pass'],
      ['input-voltage', 'pass'],
      ['maker', 'pass'],
      ['output-usb-5v', 'pass'],
    ]);
    expect(assessment.verdict.failure).toBe('Nothing found wrong');
    expect(assessment.verdict.coverage).toEqual({ shock: 'not examined', fire: 'not examined' });
  });

  it.each([
    ['input-voltage', { input: { voltage: { state: 'absent', because: 'not printed' }, frequency: '50 Hz', current: '0.3 A' } }],
    ['input-frequency', { input: { voltage: '230 V', frequency: { state: 'absent', because: 'not printed' }, current: '0.3 A' } }],
    ['input-current', { input: { voltage: '230 V', frequency: '50 Hz', current: { state: 'absent', because: 'not printed' } } }],
    ['class', { class: { state: 'absent', because: 'no double square' } }],
    ['maker', { maker: { state: 'absent', because: 'no address anywhere' } }],
  ] as const satisfies readonly (readonly [string, Label])[])(
    '%s looked for and not there fails, informs, and sets no word',
    (about, more) => {
      const assessment = judge({ ports: [usbPort()], exhibits: [label({ ...FULL, ...more })] });
      expect(findingOf(assessment, `labelling/ratings@${about}`)).toMatchObject({
        outcome: 'fail',
        reason: 'notMet',
        consequence: 'informative',
        headline: false,
        measured: { word: 'absent' },
      });
      expect(assessment.verdict.decidedBy).toEqual([]);
      expect(assessment.verdict.doubtful).toBeNull();
      expect(['Dangerous', 'Unsafe', 'Harmful to devices', 'Below its claims']).not.toContain(assessment.verdict.failure);
    },
  );

  it('an output without a printed current fails', () => {
    const assessment = judge({ ports: [usbPort({ state: 'absent', because: 'no current printed' })], exhibits: [label(FULL)] });
    expect(findingOf(assessment, 'labelling/ratings@output-usb-5v')).toMatchObject({ outcome: 'fail', consequence: 'informative' });
  });

  it('a line that nobody looked for is not assessed, never a failure and never a pass', () => {
    const { maker: _left, ...rest } = FULL;
    const assessment = judge({ exhibits: [label(rest)] });
    expect(findingOf(assessment, 'labelling/ratings@maker')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('a line that nobody could read is inconclusive; one that can no longer be read, or was struck, is not assessed', () => {
    expect(judged({ maker: { state: 'unknown', because: 'rubbed off' } }, 'maker')).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged({ maker: { state: 'cannotNow', since: 'burnt' } }, 'maker')).toMatchObject({
      outcome: 'notAssessed',
      reason: 'cannotNow',
    });
    expect(judged({ maker: { v: 'Invented maker', struck: 'from another label' } }, 'maker')).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
  });

  it('no label exhibit: one finding, not assessed', () => {
    expect(findingsOf(judge(), 'labelling/ratings')).toMatchObject([
      { id: 'labelling/ratings', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });
});

describe('what comes out is no more than what can go in', () => {
  // Energy is conserved: 100 V × 0.3 A is 30 W at most, whatever efficiency and power factor are. A printed 0.3 A can be 0.35 A rounded.
  const balance = (current: string, voltage: string, printed: string): Finding =>
    findingOf(
      judge({ ports: [usbPort(printed)], exhibits: [label({ ...FULL, input: { voltage, frequency: '50 Hz', current } })] }),
      'labelling/ratings@balance',
    );

  it('10 W from 100 V and 0.3 A can be; from 100 V and 0.05 A it cannot, and that informs', () => {
    expect(balance('0.3 A', '100-240 V', '2 A')).toMatchObject({
      outcome: 'pass',
      limit: { at: { value: expect.closeTo(35, 9) } },
      measured: { value: 10 },
    });
    const assessment = judge({
      ports: [usbPort('2 A')],
      exhibits: [label({ ...FULL, input: { voltage: '100-240 V', frequency: '50 Hz', current: '0.05 A' } })],
    });
    expect(findingOf(assessment, 'labelling/ratings@balance')).toMatchObject({ outcome: 'fail', consequence: 'informative' });
    expect(assessment.verdict.decidedBy).toEqual([]);
  });

  it('at the limit it can still be, just beyond it cannot; the lower end of the range counts', () => {
    // 100 V × (0.10 A + 0.005 A) = 10.5 W
    expect(balance('0.10 A', '100-240 V', '2.1 A').outcome).toBe('pass');
    expect(balance('0.10 A', '100-240 V', '2.11 A').outcome).toBe('fail');
    expect(balance('0.10 A', '230 V', '2.11 A').outcome).toBe('pass');
  });

  it('without an input current or an output nothing is compared', () => {
    const subjects = (more: Label, ports = [usbPort()]): (string | null)[] =>
      findingsOf(judge({ ports, exhibits: [label({ ...FULL, ...more })] }), 'labelling/ratings').map(({ subject }) => subject);
    expect(subjects({ input: { voltage: '230 V' } })).not.toContain('balance');
    expect(subjects({}, [])).not.toContain('balance');
  });
});
