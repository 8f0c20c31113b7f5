import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { label, PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// The limit is what the label prints, inside the window of a USB A socket, 4.75 to 5.25 V (secondary). Ends of the range: 207 and 253 V for a unit of the
// European market (230 V and 10 %), 90 and 264 V for one that prints 100-240 V; a run counts within 5 % of an end.
// The curve V = 5.2 V - 0.225 Ω × I crosses 4.75 V at 2.000 A; 0.0225 V move that by 0.1 A.
const STRAIGHT = [
  ['0', '5.2'],
  ['1', '4.975'],
  ['1.5', '4.8625'],
  ['2.5', '4.6375'],
  ['3', '4.525'],
];
const STRONG = [
  ['0', '5.2'],
  ['1', '5.15'],
  ['2', '5.1'],
  ['3', '5.05'],
  ['4', '5'],
];
const WEAK = [
  ['0', '5.2'],
  ['0.5', '4.975'],
  ['0.75', '4.8625'],
  ['1.25', '4.6375'],
  ['1.5', '4.525'],
]; // half of STRAIGHT
type Run = ReturnType<typeof sweep>;
const at = (mains: string, rows: string[][], more: Partial<Run> = {}): Run =>
  sweep(rows, { id: `sweep-${mains.split(' ')[0]}`, under: { mains }, ...more });
const case_ = (exhibits: NonNullable<CasePatch['exhibits']>, port: PortInput = usbPort()): CasePatch => ({
  ports: [port],
  instruments: [plainMeter('0.0225 V', { uAmpere: '0.001 A' })],
  days: [PLAIN_DAY],
  exhibits,
});
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/mains-range@usb~5v');

describe('the claim at both ends of the mains', () => {
  it('held exactly at the weaker end is undecided', () => {
    const finding = judged(case_([at('207 V', STRAIGHT), at('253 V', STRONG)]));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 6);
  });

  it('missed at both ends, it says why at either: 1.0 A at 207 V and 2.0 A at 253 V follow the rail', () => {
    const finding = judged(case_([at('207 V', WEAK), at('253 V', STRAIGHT)], usbPort('3 A')));
    expect(finding.outcome).toBe('fail');
    expect(finding.notes.filter(({ key }) => key === 'causeShown').map(({ args }) => [args['mains'], args['cause']])).toEqual([
      [207, 'bulkValley'],
      [253, 'bulkValley'],
    ]);
  });

  it('1.8 A printed passes and 2.2 A printed fails, by the lowest mains', () => {
    const exhibits = [at('207 V', STRAIGHT), at('253 V', STRONG)];
    const inside = judged(case_(exhibits, usbPort('1.8 A')));
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met' });
    const outside = judged(case_(exhibits, usbPort('2.2 A')));
    expect(outside).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
      limit: { name: 'claim', grade: 'secondary' },
    });
    expect(outside.probability).toBeCloseTo(0.02275, 3);
    expect(outside.notes).toContainEqual({ key: 'lowestMains', args: { exhibit: 'sweep-207', mains: 207, sense: 'socket' } });
  });

  it('the highest mains counts as much as the lowest', () => {
    expect(judged(case_([at('207 V', STRONG), at('253 V', WEAK)])).outcome).toBe('fail');
  });

  it('a sweep that ends inside the window below the claim is open', () => {
    expect(
      judged(
        case_([
          at('207 V', [
            ['0', '5.1'],
            ['1', '5.05'],
          ]),
          at('253 V', STRONG),
        ]),
      ),
    ).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('what is left at the lowest mains of what is held at the highest stands beside it: 1 A of 2 A', () => {
    const assessment = judge(case_([at('207 V', WEAK), at('253 V', STRAIGHT)], usbPort('0.8 A')));
    expect(assessment.steps.find(({ id }) => id === 'load/usb/5v/knee-ratio')?.value).toBeCloseTo(0.5, 6);
    expect(findingOf(assessment, 'delivery/mains-range@usb~5v').notes.find(({ key }) => key === 'kneeRatio')?.args['ratio']).toBeCloseTo(
      0.5,
      6,
    );
    const open = judge(case_([at('207 V', WEAK), at('253 V', STRONG)], usbPort('0.8 A'))); // never leaves: no ratio
    expect(open.steps.some(({ id }) => id === 'load/usb/5v/knee-ratio')).toBe(false);
  });
});

describe('an end that nobody tried', () => {
  it('one good end is no range, and the other is named', () => {
    const low = judged(case_([at('207 V', STRONG)]));
    expect(low).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(low.notes).toContainEqual({ key: 'highestNotTried', args: { mains: 253 } });
    expect(noteKeys(judged(case_([at('253 V', STRONG)])))).toContain('lowestNotTried');
    expect(noteKeys(judged(case_([at('230 V', STRONG)])))).toEqual(['lowestNotTried', 'highestNotTried']);
  });

  it('one bad end is enough', () => {
    const finding = judged(case_([at('207 V', WEAK)]));
    expect(finding.outcome).toBe('fail');
    expect(noteKeys(finding)).toContain('highestNotTried');
  });

  it('within 5 % of an end counts as there: 217 V does, 218 V does not', () => {
    expect(judged(case_([at('217 V', STRONG), at('253 V', STRONG)])).outcome).toBe('pass');
    expect(judged(case_([at('218 V', STRONG), at('253 V', STRONG)])).outcome).toBe('notAssessed');
  });

  it('100-240 V on the label asks for 90 and 264 V; 100 and 240 V are not the ends', () => {
    const universal = (low: string, high: string): Finding =>
      judged(case_([label({ input: { voltage: '100-240 V' } }), at(low, STRONG), at(high, STRONG)]));
    expect(universal('90 V', '264 V').outcome).toBe('pass');
    expect(universal('100 V', '240 V')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(universal('207 V', '253 V').outcome).toBe('notAssessed');
  });

  it('a run whose mains nobody wrote down is at neither end', () => {
    const patch = case_([
      at('207 V', STRONG),
      sweep(STRONG, { id: 'nowhere', under: { mains: { state: 'unknown', because: 'not noted' } } }),
    ]);
    expect(judged(patch).outcome).toBe('notAssessed');
  });

  it('with a neighbour loaded it is another question', () => {
    const second: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V' }] };
    const loads = [{ port: 'two', draws: '2 A' }];
    const patch = case_([at('207 V', WEAK, { under: { mains: '207 V', loads } }), at('253 V', STRONG)]);
    expect(judged({ ...patch, ports: [usbPort(), second] }).outcome).toBe('notAssessed');
  });
});

describe('nothing to judge', () => {
  it('no claim, no window, no sweep, a struck sweep, no port', () => {
    expect(judged(case_([at('207 V', STRONG)], usbPort({ state: 'absent', because: 'nothing printed' })))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    const range: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
    };
    expect(judged(case_([at('207 V', STRONG)], range))).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(judged(case_([]))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(case_([at('207 V', STRONG, { struck: 'wrong unit' })]))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(findingsOf(judge(), 'delivery/mains-range')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
