import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// Windows: USB A 4.75 to 5.25 V (secondary: EN 301 489-34 and public notes); USB C at 5 V 4.75 to 5.5 V (secondary: controller sources); fixed levels
// ± 5 % (secondary: kernel source of a port controller). Two-sided: ratio 0 in the middle, 1 at an edge.
const case_ = (rows: readonly (readonly string[])[], uVolt = '0.01 V', port: PortInput = usbPort()): CasePatch => ({
  ports: [port],
  instruments: [plainMeter(uVolt)],
  days: [PLAIN_DAY],
  exhibits: [sweep(rows)],
});
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/voltage-window@usb~5v');
const flat = (volts: string, uVolt?: string, port?: PortInput): Finding =>
  judged(
    case_(
      [
        ['0', volts],
        ['1', volts],
        ['2', volts],
      ],
      uVolt,
      port,
    ),
  );

describe('the window of a USB A socket', () => {
  it('5.00 V is the middle: ratio 0', () => {
    const finding = flat('5.00');
    expect(finding.outcome).toBe('pass');
    expect(finding.margin).toBeCloseTo(0, 9);
    expect(finding.limit).toMatchObject({ kind: 'within' });
    expect(finding.limit?.at?.value).toBeCloseTo(4.75, 9);
    expect(finding.limit?.to?.value).toBeCloseTo(5.25, 9);
  });

  it('near the middle the band of the ratio holds the ratio', () => {
    const { margin, marginBand } = flat('5.01', '0.05 V'); // 4.91 to 5.11 V: 0 to 0.44 of the half width
    expect(margin).toBeCloseTo(0.04, 9);
    expect(marginBand?.[0]).toBeLessThanOrEqual(0.04);
    expect(marginBand?.[1]).toBeCloseTo(0.44, 4);
  });

  it('an edge exactly is undecided, either edge', () => {
    for (const volts of ['4.75', '5.25']) {
      const finding = flat(volts);
      expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
      expect(finding.margin).toBeCloseTo(1, 9);
      expect(finding.probability).toBeCloseTo(0.5, 6);
    }
  });

  it('two standard uncertainties inside passes, outside fails, at either edge', () => {
    for (const volts of ['4.77', '5.23']) {
      const finding = flat(volts);
      expect(finding.outcome).toBe('pass');
      expect(finding.margin).toBeCloseTo(0.92, 9);
      expect(finding.probability).toBeCloseTo(0.97725, 5);
    }
    for (const volts of ['4.73', '5.27']) {
      const finding = flat(volts);
      expect(finding).toMatchObject({ outcome: 'fail', reason: 'notMet', consequence: 'disappointing', headline: true });
      expect(finding.margin).toBeCloseTo(1.08, 9);
      expect(finding.probability).toBeCloseTo(0.02275, 5);
    }
  });

  it('one row outside among many inside decides', () => {
    const finding = judged(
      case_([
        ['0', '5.1'],
        ['0.5', '5.4'],
        ['1', '5.0'],
        ['2', '4.9'],
      ]),
    );
    expect(finding.outcome).toBe('fail');
    expect(finding.margin).toBeCloseTo(1.6, 9);
  });

  it('a row beyond the claim is not held against the unit, one at the claim is', () => {
    expect(
      judged(
        case_([
          ['0', '5.1'],
          ['2', '4.9'],
          ['2.5', '4.0'],
        ]),
      ).outcome,
    ).toBe('pass');
    expect(
      judged(
        case_([
          ['0', '5.1'],
          ['2', '4.0'],
        ]),
      ).outcome,
    ).toBe('fail');
  });

  it('what the unit does while it limits itself beyond the claim is not held against its window', () => {
    const foldback = [
      ['0', '5.1'],
      ['1', '5.05'],
      ['2', '4.95'],
      ['2.4', '4.85'],
      ['1.6', '3'],
      ['1', '1.5'],
    ];
    expect(judged(case_(foldback)).outcome).toBe('pass');
  });

  it('a meter as wide as the window decides nothing; a doubt of 0.13 V leaves 0.945 in the middle, which is not enough', () => {
    expect(flat('5.0', '0.5 V').outcome).toBe('inconclusive');
    const finding = flat('5.0', '0.13 V'); // each edge 1.923 standard uncertainties away: 2 × 0.97277 - 1 = 0.94554
    expect(finding.probability).toBeCloseTo(0.94554, 4);
    expect(finding.outcome).toBe('inconclusive');
  });

  it('one-sided voltages: above 5.3 V and below 4.7 V fail, below 5.2 V is open', () => {
    expect(
      judged(
        case_([
          ['0', '5.0'],
          ['1', '> 5.3 V'],
          ['2', '5.0'],
        ]),
      ).outcome,
    ).toBe('fail');
    expect(
      judged(
        case_([
          ['0', '5.0'],
          ['1', '< 4.7 V'],
          ['2', '5.0'],
        ]),
      ).outcome,
    ).toBe('fail');
    expect(
      judged(
        case_([
          ['0', '5.0'],
          ['1', '< 5.2 V'],
          ['2', '5.0'],
        ]),
      ).outcome,
    ).toBe('inconclusive');
  });

  it('a row that ran off the range is open even where another row lies farther from the middle', () => {
    expect(
      judged(
        case_([
          ['0', '5.15'],
          ['1', '> 5.1 V'],
          ['2', '5.0'],
        ]),
      ).outcome,
    ).toBe('inconclusive');
  });

  it('a sweep that ends at a tenth of the claim cannot say what the voltage is at the claim', () => {
    expect(
      judged(
        case_([
          ['0', '5.1'],
          ['0.2', '5.08'],
        ]),
      ).outcome,
    ).not.toBe('pass');
  });

  it('a tenth of the half width from an edge is undecided when no meter was named', () => {
    const bare = (volts: string): Finding => {
      const { day: _left, ...own } = sweep([
        ['0', volts],
        ['1', volts],
        ['2', volts],
      ]);
      return judged({ ports: [usbPort()], exhibits: [own] });
    };
    expect(bare('5.24')).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown', probability: null });
    expect(bare('6.2')).toMatchObject({ outcome: 'fail', probability: null });
  });
});

describe('other sockets', () => {
  it('5.40 V is outside the window of USB A and inside that of USB C', () => {
    expect(flat('5.40').outcome).toBe('fail');
    expect(flat('5.40', '0.01 V', usbPort('2 A', { kind: 'usbC' })).outcome).toBe('pass');
  });

  it('a fixed level of 9 V is held to 8.55 to 9.45 V', () => {
    const port = usbPort('2 A', { kind: 'usbC', levels: [{ id: '5v', voltage: '9 V', printed: '2 A' }] });
    expect(flat('8.57', '0.01 V', port).outcome).toBe('pass');
    expect(flat('8.53', '0.01 V', port).outcome).toBe('fail');
    expect(flat('9.47', '0.01 V', port).outcome).toBe('fail');
  });

  it('a plain 12 V adapter is held to 11.4 to 12.6 V by common practice', () => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '2 A' }] };
    const finding = flat('12.65', '0.01 V', port);
    expect(finding).toMatchObject({ outcome: 'fail', limit: { grade: 'common-practice' } });
    expect(flat('12.5', '0.01 V', port).outcome).toBe('pass');
  });

  it('a socket whose kind nobody could tell is not failed by the window of another: 5.40 V is right for USB C', () => {
    expect(flat('5.40', '0.01 V', usbPort('2 A', { kind: { state: 'unknown', because: 'broken off' } })).outcome).not.toBe('fail');
  });

  it('a level that is a range has no window here', () => {
    const port = usbPort('3 A', {
      kind: 'usbC',
      levels: [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
    });
    const finding = flat('5', '0.01 V', port);
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(noteKeys(finding)).toContain('noWindow');
  });
});

describe('nothing to judge', () => {
  it('no sweep, no port, no readable row', () => {
    expect(judged({ ports: [usbPort()] })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(findingsOf(judge(), 'delivery/voltage-window')).toMatchObject([
      { id: 'delivery/voltage-window', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    const assessment = judge(
      case_([
        ['0', 'OL'],
        ['1', 'OL'],
      ]),
    );
    expect(findingOf(assessment, 'delivery/voltage-window@usb~5v').outcome).toBe('notAssessed');
    expect(assessment.warnings).toContainEqual({ key: 'cellNotRead', at: '/exhibits/sweep-1/table/rows/r1/v', args: {} });
  });
});
