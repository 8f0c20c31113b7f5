import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import type { ReadTable } from '../../../src/core/working/bench/bench.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// Window of a USB A socket: 4.75 to 5.25 V (secondary: EN 301 489-34 and public notes). The limit of this check is what the label prints.
// The curve V = 5.2 V - 0.225 Ω × I crosses 4.75 V at 2.000 A. A voltmeter that is off by u moves the crossing by u / 0.225 Ω: 0.0225 V make 0.1 A.
const STRAIGHT = [
  ['0', '5.2'],
  ['1', '4.975'],
  ['1.5', '4.8625'],
  ['2.5', '4.6375'],
  ['3', '4.525'],
] as const;
type More = { port?: PortInput; uVolt?: string; uAmpere?: string; sweeps?: ReturnType<typeof sweep>[] };
const case_ = (rows: readonly (readonly string[])[], more: More = {}): CasePatch => ({
  ports: [more.port ?? usbPort()],
  instruments: [plainMeter(more.uVolt ?? '0.0225 V', { uAmpere: more.uAmpere ?? '0 A' })],
  days: [PLAIN_DAY],
  exhibits: more.sweeps ?? [sweep(rows)],
});
const judged = (patch: CasePatch, subject = 'usb~5v'): Finding => findingOf(judge(patch), `delivery/current@${subject}`);
const claim = (printed: string): More => ({ port: usbPort(printed) });

describe('the current held inside the window against the printed one', () => {
  it('held exactly the claim is undecided', () => {
    const finding = judged(case_(STRAIGHT));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(2, 6);
    expect('value' in finding.measured! ? finding.measured.u : 0).toBeCloseTo(0.1, 3);
    expect(finding.margin).toBeCloseTo(1, 6);
    expect(finding.probability).toBeCloseTo(0.5, 4);
  });

  it('1.8 A printed passes and 2.2 A printed fails, two standard uncertainties away', () => {
    const inside = judged(case_(STRAIGHT, claim('1.8 A')));
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met' });
    expect(inside.probability).toBeCloseTo(0.97725, 3);
    expect(inside.margin).toBeCloseTo(0.9, 6);
    const assessment = judge(case_(STRAIGHT, claim('2.2 A')));
    const outside = findingOf(assessment, 'delivery/current@usb~5v');
    expect(outside).toMatchObject({ outcome: 'fail', reason: 'notMet', consequence: 'disappointing', headline: true });
    expect(outside.probability).toBeCloseTo(0.02275, 3);
    expect(outside.margin).toBeCloseTo(1.1, 6);
    expect(outside.limit?.grade).toBe('secondary');
    expect(assessment.verdict.failure).toBe('Below its claims');
    expect(assessment.claims).toMatchObject([{ finding: 'delivery/current@usb~5v' }]);
    expect(assessment.claims[0]?.share).toBeCloseTo(2 / 2.2, 6);
  });

  it('a voltmeter ten times worse decides neither', () => {
    for (const printed of ['1.8 A', '2.2 A'])
      expect(judged(case_(STRAIGHT, { ...claim(printed), uVolt: '0.225 V' }))).toMatchObject({ outcome: 'inconclusive' });
  });

  it('never inside the window: nothing is held, without a ratio', () => {
    expect(
      judged(
        case_([
          ['0', '3.1'],
          ['1', '3'],
          ['2', '2.9'],
        ]),
      ),
    ).toMatchObject({ outcome: 'fail', headline: true, margin: null });
  });

  it('a fall off a cliff between two rows is known only to the gap: 1.5 to 2.5 A decides 1 A and 3 A, not 2 A', () => {
    const cliff = [
      ['0', '5.1'],
      ['1.5', '5'],
      ['2.5', '0.5'],
    ];
    expect(judged(case_(cliff, { ...claim('2 A'), uVolt: '0.001 V' }))).toMatchObject({ outcome: 'inconclusive' });
    expect(judged(case_(cliff, { ...claim('1 A'), uVolt: '0.001 V' }))).toMatchObject({ outcome: 'pass' });
    expect(judged(case_(cliff, { ...claim('3 A'), uVolt: '0.001 V' }))).toMatchObject({ outcome: 'fail' });
  });
});

describe('sweeps that stay inside the window', () => {
  const short = [
    ['0', '5.1'],
    ['1', '5.05'],
  ];

  it('a sweep that ends below the claim is open: more than 1 A is not 2 A', () => {
    const finding = judged(case_(short));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided', measured: { side: 'above', u: null } });
  });

  it('a sweep that ends well above the claim passes', () => {
    expect(judged(case_([...short, ['2.5', '4.95']], { uAmpere: '0.01 A' }))).toMatchObject({ outcome: 'pass' });
  });

  it('a meter that nobody named is not trusted within a tenth of the claim, on which side of it the sweep ends', () => {
    const bare = (last: string): Finding =>
      judged({ ports: [usbPort()], exhibits: [{ ...sweep([...short, [last, '5']]), day: undefined }] } as CasePatch);
    expect(bare('2.05').outcome).toBe('inconclusive');
    expect(bare('2.5').outcome).toBe('pass');
  });

  it('a voltage that may as well lie outside the window does not prove that the current was held', () => {
    const edge = [
      ['0', '4.76'],
      ['1', '4.76'],
      ['2', '4.76'],
      ['3', '4.76'],
    ];
    expect(judged(case_(edge, { uVolt: '0.1 V' })).outcome).toBe('inconclusive');
  });

  it('a voltage that may as well lie inside the window does not prove that nothing was held', () => {
    const edge = [
      ['0', '4.74'],
      ['1', '4.74'],
      ['2', '4.74'],
      ['3', '4.74'],
    ];
    expect(judged(case_(edge, { uVolt: '0.1 V' })).outcome).toBe('inconclusive');
  });

  it('a unit that folds back beyond its claim held its claim', () => {
    const foldback = [
      ['0', '5.1'],
      ['1', '5.05'],
      ['2', '4.95'],
      ['2.4', '4.85'],
      ['1.6', '3'],
      ['1', '1.5'],
    ];
    expect(judged(case_(foldback, { uVolt: '0.001 V' })).outcome).not.toBe('fail');
  });
});

describe('a unit that limits its current by itself', () => {
  // a wall: the load is asked for more and more, the current stays at 2 A and the voltage falls
  const wall = [
    ['0', '5.1'],
    ['1', '5.0'],
    ['2', '4.9'],
    ['2.001', '4.5'],
    ['1.999', '3.0'],
    ['1.998', '2.0'],
  ];

  it('held 2 A: 1.5 A printed passes, 3 A printed fails', () => {
    expect(judged(case_(wall, { uVolt: '0.001 V', ...claim('1.5 A') }))).toMatchObject({ outcome: 'pass' });
    expect(judged(case_(wall, { uVolt: '0.001 V', ...claim('3 A') }))).toMatchObject({ outcome: 'fail' });
  });

  it('the same where the first row behind the wall reads a little less than the last before it', () => {
    const leaning = wall.filter(([amperes]) => amperes !== '2.001');
    expect(judged(case_(leaning, { uVolt: '0.001 V', ...claim('1.5 A') }))).toMatchObject({ outcome: 'pass' });
    expect(judged(case_(leaning, { uVolt: '0.001 V', ...claim('3 A') }))).toMatchObject({ outcome: 'fail' });
  });
});

describe('a unit that stops when it is asked for more', () => {
  const latch = [
    ['0', '5.1'],
    ['0.5', '5.05'],
    ['1', '5.0'],
    ['1.5', '4.95'],
    ['2', '4.9'],
    ['0.001', '0.1'],
  ];

  it('held 2 A and not 3 A, a whole step more than it was ever seen to give', () => {
    expect(judged(case_(latch, { uVolt: '0.001 V', uAmpere: '0.001 A', ...claim('1.5 A') }))).toMatchObject({ outcome: 'pass' });
    expect(judged(case_(latch, { uVolt: '0.001 V', uAmpere: '0.001 A', ...claim('3 A') }))).toMatchObject({ outcome: 'fail' });
  });

  it('is not said to have held nothing', () => {
    expect(judged(case_(latch, { uVolt: '0.001 V', uAmpere: '0.001 A', ...claim('2 A') })).outcome).not.toBe('fail');
  });
});

describe('which run counts', () => {
  const good = [
    ['0', '5.1'],
    ['1', '5.05'],
    ['3', '4.9'],
  ];
  const bad = [
    ['0', '5.1'],
    ['1', '4.9'],
    ['1.5', '4.6'],
    ['2', '4.3'],
  ];
  const at = (id: string, rows: string[][], mains: string) => sweep(rows, { id, under: { mains } });

  it('the run nearest the nominal mains, not the one that looks better', () => {
    expect(judged(case_([], { sweeps: [at('s-115', bad, '115 V'), at('s-230', good, '230 V')], uAmpere: '0.01 A' }))).toMatchObject({
      outcome: 'pass',
    });
    expect(judged(case_([], { sweeps: [at('s-115', good, '115 V'), at('s-230', bad, '230 V')] }))).toMatchObject({ outcome: 'fail' });
  });

  it('of two runs at the same mains the worse, never their average', () => {
    expect(judged(case_([], { sweeps: [at('s-1', good, '230 V'), at('s-2', bad, '231 V')] }))).toMatchObject({ outcome: 'fail' });
  });

  it('a struck row and a struck run do not count', () => {
    const rows = [
      { id: 'r1', cells: ['0', '5.1'] },
      { id: 'r2', cells: ['1', '3'], struck: 'clip fell off' },
      { id: 'r3', cells: ['3', '4.9'] },
    ];
    const struckRow = { ...sweep(good), table: { ...sweep(good).table, rows } };
    expect(judged(case_([], { sweeps: [struckRow], uAmpere: '0.01 A' }))).toMatchObject({ outcome: 'pass' });
    expect(
      judged(case_([], { sweeps: [at('s-1', good, '230 V'), { ...at('s-2', bad, '230 V'), struck: 'wrong unit' }], uAmpere: '0.01 A' })),
    ).toMatchObject({ outcome: 'pass' });
  });

  it('only a struck run: not assessed, and the reason is that it was struck', () => {
    expect(judged(case_([], { sweeps: [sweep(bad, { struck: 'wrong unit' })] }))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
  });

  it('a doubt written into a cell outranks the meter', () => {
    const doubtful = [
      ['0', '5.1'],
      ['1', '5.0'],
      ['2', '4.85 V ± 0.6 V'],
      ['3', '4.65 V ± 0.6 V'],
    ];
    expect(judged(case_(doubtful, { uVolt: '0.0001 V', ...claim('2.2 A') })).outcome).toBe('inconclusive');
  });

  it('the drop in the leads of the day is added back', () => {
    const leads = [{ id: 'pair', resistance: '0.225 Ω ± 0 Ω' }];
    const patch = { ...case_(STRAIGHT, { uVolt: '0.001 V', uAmpere: '0 A' }), days: [{ ...PLAIN_DAY, leads }] };
    expect(judged(patch)).toMatchObject({ outcome: 'pass' }); // 5.2 V at the socket at every load
  });
});

describe('columns of a file', () => {
  const HASH = 'a'.repeat(64);
  const files = [{ id: 'log', path: 'log.csv', sha256: HASH, bytes: 10, media: 'text/csv' }];
  const columns = [
    { id: 'i', role: 'outputCurrent', from: 'I' },
    { id: 'v', role: 'outputVoltage', from: 'V' },
  ] as const;
  const fromFile: CasePatch = {
    ...case_([], { sweeps: [{ ...sweep([['0', '0']]), table: { file: 'log', columns: [...columns] } }], uAmpere: '0.01 A' }),
    files,
  };
  const table = (unit: string | null, amperes: number[], doubts: string[] = []): ReadTable => ({
    rows: amperes.length,
    columns: [
      { name: 'I', unit, values: amperes, doubts },
      { name: 'V', unit: 'V', values: amperes.map(() => 5), doubts: [] },
    ],
  });
  const read = (one: ReadTable | null): ReturnType<typeof judge> => judge(fromFile, one === null ? new Map() : new Map([[HASH, one]]));
  const of = (one: ReadTable | null): Finding => findingOf(read(one), 'delivery/current@usb~5v');

  it('2500 mA of the file are 2.5 A of the claim', () => {
    expect(of(table('mA', [0, 1000, 2500]))).toMatchObject({ outcome: 'pass' });
    expect(of(table('A', [0, 1, 2.5]))).toMatchObject({ outcome: 'pass' });
    expect(of(table('mA', [0, 1, 2.5]))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('a file that was not read, a column that is not there or in doubt, and a unit that nobody stated leave the claim open, with a warning', () => {
    const other = table('A', [0, 2.5]);
    const noColumn: ReadTable = { ...other, columns: [{ name: 'X', unit: 'A', values: [0, 2.5], doubts: [] }, other.columns[1]!] };
    for (const [one, warning] of [
      [null, 'fileMissing'],
      [noColumn, 'columnMissing'],
      [table('A', [0, 2.5], ['decimal-comma']), 'columnInDoubt'],
      [table(null, [0, 2.5]), 'unitNotStated'],
      [table('V', [0, 2.5]), 'unitNotStated'],
    ] as const) {
      expect(of(one)).toMatchObject({ outcome: 'notAssessed' });
      expect(read(one).warnings.map(({ key }) => key)).toContain(warning);
    }
  });

  it('a cell without a number is left out, not taken as nought', () => {
    const { columns: own, rows } = table('A', [0, 1, 2.5]);
    const holed: ReadTable = { rows, columns: [own[0]!, { ...own[1]!, values: [5, Number.NaN, 5] }] };
    expect(of(holed)).toMatchObject({ outcome: 'pass' });
  });
});

describe('no claim, no window, no sweep', () => {
  it('nothing printed leaves no limit', () => {
    const finding = judged(case_(STRAIGHT, { port: usbPort({ state: 'absent', because: 'no current printed' }) }));
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(noteKeys(finding)).toContain('noClaim');
  });

  it('nothing swept is not looked; no port at all is one finding', () => {
    expect(judged({ ports: [usbPort()] })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(findingsOf(judge(), 'delivery/current')).toMatchObject([
      { id: 'delivery/current', outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });

  it('a printed current of zero is a slip of the pen and no reason to give up the case', () => {
    expect(() => judge(case_(STRAIGHT, claim('0 A')))).not.toThrow();
  });

  it('a level that is a range has no window of its own', () => {
    const port = usbPort('3 A', {
      kind: 'usbC',
      levels: [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
    });
    expect(judged(case_(STRAIGHT, { port }))).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });

  it('a plain 12 V adapter is held to 5 % by common practice, and the finding says so', () => {
    const port: PortInput = { id: 'usb', kind: 'barrel', levels: [{ id: '5v', voltage: '12 V', printed: '2 A' }] };
    const finding = judged(
      case_(
        [
          ['0', '12.1'],
          ['1', '11.6'],
          ['1.5', '11.1'],
          ['2', '10.6'],
        ],
        { port, uVolt: '0.01 V' },
      ),
    );
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'disappointing', headline: true, limit: { grade: 'common-practice' } });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(1.2, 6); // 11.4 V
  });
});

describe('what the runs show beside each other', () => {
  // V = V0 - R × I crosses 4.75 V at (V0 - 4.75) / R
  const line = (open: number, ohm: number): string[][] => [0, 1, 1.5, 2.5, 3].map((i) => [String(i), (open - ohm * i).toFixed(6)]);
  const at = (id: string, rows: string[][], more: Parameters<typeof sweep>[1] = {}): ReturnType<typeof sweep> =>
    sweep(rows, { id, ...more });
  const exact: More = { uVolt: '0.001 V', port: usbPort('2 A') };
  const noteOf = (finding: Finding, key: string): Record<string, unknown> | undefined =>
    finding.notes.find((note) => note.key === key)?.args;
  const HELD_2A5 = line(5.2, 0.18);
  const HELD_1A5 = line(5.2, 0.3);

  it('held at the socket and missed at the end of the cable: lost in the cable and its contacts', () => {
    const finding = judged(case_([], { ...exact, sweeps: [at('socket', HELD_2A5), at('end', HELD_1A5, { sense: 'cableEnd' })] }));
    expect(finding.outcome).toBe('fail');
    expect(noteOf(finding, 'lostInCable')).toEqual({
      socket: 'socket',
      end: 'end',
      held: expect.closeTo(2.5, 6),
      left: expect.closeTo(1.5, 6),
    });
  });

  it('missed at the socket too, held at both, one place only, or within the doubt: the cable is not named', () => {
    const pairs: [string[][], string[][]][] = [
      [HELD_1A5, line(5.2, 0.36)],
      [HELD_2A5, line(5.2, 0.2)],
      [HELD_2A5, line(5.2, 0.2251)],
    ];
    for (const [socket, end] of pairs) {
      const finding = judged(case_([], { ...exact, sweeps: [at('socket', socket), at('end', end, { sense: 'cableEnd' })] }));
      expect(noteKeys(finding)).not.toContain('lostInCable');
    }
    expect(noteKeys(judged(case_([], { ...exact, sweeps: [at('end', HELD_1A5, { sense: 'cableEnd' })] })))).not.toContain('lostInCable');
  });

  it('hot over cold is 1.5 A of 2.5 A; of several runs the worse counts, and another mains or place does not', () => {
    const under = (start: 'hot' | 'cold', mains = '230 V'): Parameters<typeof sweep>[1] => ({ under: { mains, start } });
    const cold = at('cold', HELD_2A5, under('cold'));
    const finding = judged(
      case_([], { ...exact, sweeps: [cold, at('hot-1', line(5.2, 0.2), under('hot')), at('hot-2', HELD_1A5, under('hot'))] }),
    );
    expect(noteOf(finding, 'hotOverCold')?.['ratio']).toBeCloseTo(0.6, 6);
    const others = [at('hot', HELD_1A5, under('hot', '115 V')), at('hot', HELD_1A5, { ...under('hot'), sense: 'cableEnd' })];
    for (const other of others) expect(noteKeys(judged(case_([], { ...exact, sweeps: [cold, other] })))).not.toContain('hotOverCold');
  });

  it('a run that never left the window gives no ratio', () => {
    const short = [
      ['0', '5.2'],
      ['1', '5.1'],
    ];
    const runs = [at('cold', HELD_2A5, { under: { start: 'cold' } }), at('hot', short, { under: { start: 'hot' } })];
    expect(noteKeys(judged(case_([], { ...exact, sweeps: runs })))).not.toContain('hotOverCold');
  });
});
