import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// Limits: 5.5 V on a 5 V USB socket, upper end of what a device must stand (secondary: controller sources); 0.5 V beyond the window of a fixed level, so
// 9 V stands 9.45 + 0.5 = 9.95 V (secondary: kernel source of a port controller). None is published for plain adapters.
const case_ = (rows: readonly (readonly string[])[], port: PortInput = usbPort(), more: ReturnType<typeof sweep>[] = []): CasePatch => ({
  ports: [port],
  instruments: [plainMeter('0.01 V')],
  days: [PLAIN_DAY],
  exhibits: [sweep(rows), ...more],
});
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'harm/overvoltage@usb~5v');
const idle = (volts: string, port?: PortInput): Finding =>
  judged(
    case_(
      [
        ['0', volts],
        ['1', '5.0'],
      ],
      port,
    ),
  );

describe('the highest voltage on a 5 V USB socket', () => {
  it('5.50 V exactly is undecided', () => {
    const finding = idle('5.50');
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 9);
    expect(finding.probability).toBeCloseTo(0.5, 6);
  });

  it('5.48 V passes and 5.52 V harms, two standard uncertainties away', () => {
    const inside = idle('5.48');
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met' });
    expect(inside.probability).toBeCloseTo(0.97725, 5);
    expect(inside.margin).toBeCloseTo(5.48 / 5.5, 9);
    const assessment = judge(
      case_([
        ['0', '5.52'],
        ['1', '5.0'],
      ]),
    );
    const outside = findingOf(assessment, 'harm/overvoltage@usb~5v');
    expect(outside).toMatchObject({ outcome: 'fail', consequence: 'damaging', headline: true, limit: { grade: 'secondary' } });
    expect(outside.probability).toBeCloseTo(0.02275, 5);
    expect(outside.margin).toBeCloseTo(5.52 / 5.5, 9);
    expect(assessment.verdict.failure).toBe('Harmful to devices');
  });

  it('every mains voltage tried counts, not only the nominal one', () => {
    const high = sweep(
      [
        ['0', '6.2'],
        ['1', '5.0'],
      ],
      { id: 'sweep-264', under: { mains: '264 V' } },
    );
    expect(
      judged(
        case_(
          [
            ['0', '5.1'],
            ['1', '5.0'],
          ],
          usbPort(),
          [high],
        ),
      ),
    ).toMatchObject({ outcome: 'fail' });
  });

  it('a load beyond the claim counts too', () => {
    expect(
      judged(
        case_([
          ['0', '5.1'],
          ['3', '5.9'],
        ]),
      ),
    ).toMatchObject({ outcome: 'fail' });
  });

  it('a row with its poles the wrong way round hides no overvoltage', () => {
    expect(
      judged(
        case_([
          ['0', '7.0'],
          ['1', '5.0'],
          ['2', '-0.5'],
        ]),
      ),
    ).toMatchObject({ outcome: 'fail', consequence: 'damaging' });
  });

  it('a struck row and a struck run do not count', () => {
    const rows = [
      { id: 'r1', cells: ['0', '9'], struck: 'wrong socket' },
      { id: 'r2', cells: ['1', '5'] },
    ];
    const patch = case_([['0', '5']]);
    expect(judged({ ...patch, exhibits: [{ ...sweep([['0', '5']]), table: { ...sweep([['0', '5']]).table, rows } }] })).toMatchObject({
      outcome: 'pass',
    });
    expect(
      judged({ ...patch, exhibits: [...(patch.exhibits ?? []), sweep([['0', '9']], { id: 'sweep-2', struck: 'wrong socket' })] }),
    ).toMatchObject({ outcome: 'pass' });
  });

  it('above 6 V fails, above 5.2 V is open, and stays open beside a row that reads 5.3 V', () => {
    expect(idle('> 6 V')).toMatchObject({ outcome: 'fail' });
    expect(idle('> 5.2 V')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(
      judged(
        case_([
          ['0', '> 5.2 V'],
          ['1', '5.3'],
        ]),
      ).outcome,
    ).toBe('inconclusive');
  });

  it('without a named meter a tenth of the limit either way is undecided', () => {
    const bare = (volts: string): Finding => {
      const { day: _left, ...own } = sweep([['0', volts]]);
      return judged({ ports: [usbPort()], exhibits: [own] });
    };
    expect(bare('5.1')).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown', probability: null });
    expect(bare('4.9')).toMatchObject({ outcome: 'pass' });
    expect(bare('6.1')).toMatchObject({ outcome: 'fail' });
  });
});

describe('other sockets', () => {
  it('a 9 V level stands 9.95 V', () => {
    const port = usbPort('2 A', { kind: 'usbC', levels: [{ id: '5v', voltage: '9 V', printed: '2 A' }] });
    expect(idle('9.93', port)).toMatchObject({ outcome: 'pass' });
    expect(idle('9.97', port)).toMatchObject({ outcome: 'fail' });
    expect(idle('9.5', port).limit?.at?.value).toBeCloseTo(9.95, 9);
  });

  it('a plain adapter has no published limit: not assessed at any voltage, never a pass', () => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '2 A' }] };
    for (const volts of ['12', '20']) expect(idle(volts, port)).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });

  it('a socket whose kind nobody could tell is not held to the limits of another', () => {
    const port = usbPort('2 A', { kind: { state: 'unknown', because: 'broken off' } });
    expect(idle('5.3', port).outcome).not.toBe('pass');
  });
});

describe('nothing to judge', () => {
  it('no sweep, or none that could be read', () => {
    expect(findingsOf(judge({ ports: [usbPort()] }), 'harm/overvoltage')).toMatchObject([
      { id: 'harm/overvoltage', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    expect(findingsOf(judge(case_([['OL', 'OL']])), 'harm/overvoltage')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
