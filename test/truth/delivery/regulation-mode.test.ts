import { describe, expect, it } from 'vitest';
import type { Assessment, Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// No limit is published for how an output limits; that it limits at all is common practice and informative. Current or power within 10 % of its mean
// counts as constant. A window of a USB A socket begins at 4.75 V (secondary).
type Run = ReturnType<typeof sweep>;
const case_ = (exhibits: Run[], more: { port?: PortInput; gain?: string } = {}): CasePatch => ({
  ports: [more.port ?? usbPort()],
  instruments: [plainMeter(more.gain ?? '0.001 V', { uAmpere: '0.001 A' })],
  days: [PLAIN_DAY],
  exhibits,
});
const ID = 'delivery/regulation-mode@usb~5v';
const judged = (rows: string[][], more: Partial<Run> = {}): Finding => findingOf(judge(case_([sweep(rows, more)])), ID);
const INSIDE = [
  ['0', '5.1'],
  ['0.5', '5.05'],
  ['1', '5'],
  ['1.5', '4.95'],
  ['2', '4.9'],
];
const beyond = (...rows: [string, string][]): string[][] => [...INSIDE, ...rows];

describe('the kind of limit, from the rows below the window', () => {
  it('current that stays while the voltage sinks', () => {
    const finding = judged(beyond(['2.2', '4.2'], ['2.22', '3'], ['2.24', '1.5']));
    expect(finding).toMatchObject({ outcome: 'pass', consequence: 'informative', measured: { word: 'constantCurrent' } });
    expect(finding.notes.find(({ key }) => key === 'limit-constantCurrent')?.args['current']).toBeCloseTo(2.22, 6);
  });

  it('power that stays: current rises as voltage sinks', () => {
    const finding = judged(beyond(['2.3', '4.3478'], ['2.8', '3.5714'], ['4', '2.5'])); // 10 W
    expect(finding).toMatchObject({ outcome: 'pass', measured: { word: 'constantPower' } });
    expect(finding.notes.find(({ key }) => key === 'limit-constantPower')?.args['power']).toBeCloseTo(10, 3);
  });

  it('at the edge of 10 %: 9 to 11 W are still constant power, 8.9 to 11.1 W are not', () => {
    expect(judged(beyond(['2.5', '4.4'], ['4', '2.5'], ['6', '1.5']))).toMatchObject({ measured: { word: 'constantPower' } }); // 11, 10, 9 W
    expect(judged(beyond(['2.5', '4.44'], ['4', '2.5'], ['6', '1.4834'])).measured).not.toMatchObject({ word: 'constantPower' });
  });

  it('current that is taken back with the voltage folds back', () => {
    const finding = judged(beyond(['2.4', '4.5'], ['1.6', '3'], ['0.9', '1.2']));
    expect(finding).toMatchObject({ outcome: 'pass', measured: { word: 'foldback' } });
  });

  it('more and more current as the voltage sinks is no limit, and sets no word', () => {
    const assessment = judge(case_([sweep(beyond(['2.5', '4.5'], ['4', '3.8'], ['6', '3']))])); // 11, 15, 18 W
    expect(findingOf(assessment, ID)).toMatchObject({
      outcome: 'fail',
      consequence: 'informative',
      measured: { word: 'soft' },
      limit: { grade: 'common-practice' },
    });
    expect(assessment.verdict.failure).toBe('Nothing found wrong');
  });

  it('an output that just stops tries again or stays off, by what was seen', () => {
    expect(judged(beyond(['2.1', '0.1']), { beyond: 'triesAgain' })).toMatchObject({ outcome: 'pass', measured: { word: 'hiccup' } });
    expect(judged(beyond(['2.1', '0.1']), { beyond: 'staysOff' })).toMatchObject({ outcome: 'pass', measured: { word: 'latchOff' } });
    expect(judged(beyond(['2.1', '0.1']))).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged(beyond(['2.1', '0.1']), { beyond: { state: 'unknown', because: 'the load tripped' } }).outcome).toBe('inconclusive');
  });

  it('at another mains another limit may be true, and both are said', () => {
    const nominal = sweep(beyond(['2.2', '4.2'], ['2.22', '3'], ['2.24', '1.5']), { id: 'at-230' });
    const low = sweep(beyond(['2.3', '4.3478'], ['2.8', '3.5714'], ['4', '2.5']), { id: 'at-115', under: { mains: '115 V' } });
    const finding = findingOf(judge(case_([nominal, low])), ID);
    expect(finding).toMatchObject({ measured: { word: 'constantCurrent' } });
    expect(finding.notes).toContainEqual({ key: 'limitElsewhere', args: { mains: 115, kind: 'constantPower' } });
  });

  it('rows just below the window tell no shape', () => {
    expect(judged(beyond(['2.2', '4.7'], ['2.22', '4.65'], ['2.24', '4.6'])).outcome).toBe('inconclusive');
  });

  it('a sweep that never leaves the window has not been beyond it', () => {
    const finding = judged(INSIDE);
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(finding)).toContain('notSweptBeyond');
  });
});

describe('the output resistance', () => {
  // 5.12 V at 0 A and 4.94 V at 2 A: 90 mΩ, a straight line (schoolbook)
  const line = (ohms: number): string[][] =>
    ['0', '0.5', '1', '1.5', '2', '2.5'].map((amperes) => [amperes, (5.12 - ohms * Number(amperes)).toFixed(4)]);
  const step = (assessment: Assessment, id: string) => assessment.steps.find((one) => one.id === id);

  it('0.18 V over 2 A are 90 mΩ', () => {
    const assessment = judge(case_([sweep(line(0.09))]));
    expect(step(assessment, 'load/sweep-1/output-resistance')?.value).toBeCloseTo(0.09, 6);
  });

  it('a meter that is off by a fixed amount does not move it; its doubt is that of the gain of the ammeter alone', () => {
    const u = step(judge(case_([sweep(line(0.09))], { gain: '0.5 V' })), 'load/sweep-1/output-resistance')?.u;
    expect(u).toBeLessThan(0.0001); // 0.5 V shared by all rows; one standard uncertainty each would make 0.3 Ω
  });

  it('a voltage that rises with the load is named and is neither worse nor better', () => {
    const finding = judged(line(-0.04));
    expect(noteKeys(finding)).toContain('cableCompensation');
    expect(finding.notes.find(({ key }) => key === 'cableCompensation')?.args['rise']).toBeCloseTo(0.04, 6);
  });

  it('socket and end of cable together give the cable: 0.12 less 0.09 Ω', () => {
    const assessment = judge(case_([sweep(line(0.09)), sweep(line(0.12), { id: 'sweep-end', sense: 'cableEnd' })]));
    expect(step(assessment, 'load/usb/5v/cable-resistance')?.value).toBeCloseTo(0.03, 6);
    expect(noteKeys(findingOf(assessment, ID))).toContain('cableAndContacts');
    expect(step(judge(case_([sweep(line(0.09))])), 'load/usb/5v/cable-resistance')).toBeUndefined();
  });

  it('two rows between a tenth and four fifths are too few', () => {
    expect(
      step(
        judge(
          case_([
            sweep([
              ['0', '5.1'],
              ['1', '5'],
              ['1.5', '4.95'],
              ['4', '4.8'],
            ]),
          ]),
        ),
        'load/sweep-1/output-resistance',
      ),
    ).toBeUndefined();
  });
});

describe('nothing to judge', () => {
  it('no sweep, a struck sweep, no window, neighbours loaded, no port', () => {
    expect(findingOf(judge({ ports: [usbPort()] }), ID)).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(INSIDE, { struck: 'wrong unit' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    const range: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
    };
    expect(findingOf(judge(case_([sweep(INSIDE)], { port: range })), ID)).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    const second: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V' }] };
    const loaded = case_([sweep(INSIDE, { under: { mains: '230 V', loads: [{ port: 'two', draws: '1 A' }] } })]);
    expect(findingOf(judge({ ...loaded, ports: [usbPort(), second] }), ID)).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notComparable',
    });
    expect(findingsOf(judge(), 'delivery/regulation-mode')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
