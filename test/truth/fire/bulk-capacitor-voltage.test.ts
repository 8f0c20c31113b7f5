import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { electrolytic, onBoard } from '../board-pieces.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { across, PLAIN_DAY, plainMeter, sweep, usbPort } from '../evidence-pieces.ts';

// A rectifier charges its capacitor to √2 times the mains: 373.35 V at 264 V, the highest mains of a unit for 100-240 V, and 357.8 V at 253 V
// (schoolbook; a maker's design note has 372 V and chooses 400 V). A rating is exact as printed.
const CREST = Math.sqrt(2) * 264;
const one = (voltage: Parameters<typeof electrolytic>[3]): CasePatch => onBoard([electrolytic('c1', 'hv-plus', 'hv-minus', voltage)]);
const judged = (patch: CasePatch, id = 'c1'): Finding => findingOf(judge(patch), `fire/bulk-capacitor-voltage@${id}`);

describe('the capacitor behind the rectifier', () => {
  it('400 V stands 264 V mains', () => {
    const finding = judged(one('400 V'));
    expect(finding).toMatchObject({ outcome: 'pass', reason: 'met', measured: { value: 400, unit: 'V' } });
    expect(finding.limit?.at?.value).toBeCloseTo(CREST, 9);
    expect(finding.margin).toBeCloseTo(CREST / 400, 9);
  });

  it('at the crest and just above passes, just below fails: Unsafe', () => {
    expect(judged(one('374 V'))).toMatchObject({ outcome: 'pass' });
    const assessment = judge(one('373 V'));
    expect(findingOf(assessment, 'fire/bulk-capacitor-voltage@c1')).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      headline: true,
    });
    expect(assessment.verdict.failure).toBe('Unsafe');
    expect(judged(one('250 V')).outcome).toBe('fail');
  });

  it('the market rules where no label reaches further: 357.8 V in Europe, 186.7 V in America', () => {
    const without = (market: 'EU' | 'US', voltage: string): Finding => judged({ ...one(voltage), exhibits: [], setting: { market } });
    expect(without('EU', '360 V').outcome).toBe('pass');
    expect(without('EU', '350 V').outcome).toBe('fail');
    expect(without('US', '200 V').outcome).toBe('pass');
    expect(without('US', '160 V').outcome).toBe('fail');
  });

  it('a rating written as a bound is one-sided', () => {
    expect(judged(one('> 390 V')).outcome).toBe('pass');
    expect(judged(one('> 300 V'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged(one('< 350 V')).outcome).toBe('fail');
  });

  it('a rating nobody looked for is not assessed, an unreadable one inconclusive', () => {
    expect(judged(one(undefined))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(one({ state: 'unknown', because: 'sleeve scorched' }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged(one({ v: '250 V', struck: 'that was another' }))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });
});

describe('which capacitor that is', () => {
  it('auxiliary ones of 50 and 100 V on the mains side and one on the output are none', () => {
    const parts = [
      electrolytic('c1', 'hv-plus', 'hv-minus', '400 V'),
      electrolytic('c2', 'aux', 'hv-minus', '50 V'),
      electrolytic('c4', 'aux', 'hv-minus', '100 V'),
      electrolytic('c3', 'out-plus', 'out-minus', '10 V'),
    ];
    expect(findingsOf(judge(onBoard(parts)), 'fire/bulk-capacitor-voltage').map(({ subject, outcome }) => [subject, outcome])).toEqual([
      ['c1', 'pass'],
    ]);
  });

  it('one that the board names as bulk is judged whatever its rating', () => {
    const finding = judged(onBoard([electrolytic('c2', 'aux', 'hv-minus', '50 V')], { bulk: ['c2'] }), 'c2');
    expect(finding.outcome).toBe('fail');
  });

  it('a film capacitor is bulk only where the board names it', () => {
    const film = across('c1', 'hv-plus', 'hv-minus', { kind: 'filmCapacitor', rating: { voltage: '250 V' } });
    expect(findingsOf(judge(onBoard([film])), 'fire/bulk-capacitor-voltage')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    expect(judged(onBoard([film], { bulk: ['c1'] })).outcome).toBe('fail');
  });

  it('nobody looked; looked and none there; looked and could not tell; a struck note', () => {
    const only = (more: Parameters<typeof onBoard>[1]): object => findingsOf(judge(onBoard([], more)), 'fire/bulk-capacitor-voltage')[0]!;
    expect(only({})).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(only({ bulk: { state: 'absent', because: 'a capacitive dropper' } })).toMatchObject({ outcome: 'notApplicable' });
    expect(only({ bulk: { state: 'unknown', because: 'potted' } })).toMatchObject({ outcome: 'notAssessed', reason: 'unknownValue' });
    expect(only({ bulk: { state: 'absent', because: 'a dropper' }, struck: 'wrong board' })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notLooked',
    });
  });

  it('a list that names a part that is not there is refused', () => {
    expect(() => judge(onBoard([], { bulk: ['c9'] }))).toThrow(/c9/);
  });
});

describe('two capacitors', () => {
  const two = (from: [string, string], to: [string, string], voltage: string, more: Parameters<typeof onBoard>[1] = {}): CasePatch =>
    onBoard([electrolytic('c1', from[0], to[0], voltage), electrolytic('c2', from[1], to[1], voltage)], more);

  it('in parallel stand the whole crest each', () => {
    const patch = two(['hv-plus', 'hv-plus'], ['hv-minus', 'hv-minus'], '250 V');
    expect([judged(patch, 'c1').outcome, judged(patch, 'c2').outcome]).toEqual(['fail', 'fail']);
  });

  it('either side of a choke stand the whole crest each', () => {
    const patch = two(['hv-plus', 'hv-plus-2'], ['hv-minus', 'hv-minus'], '250 V');
    const choke = across('l1', 'hv-plus', 'hv-plus-2', { kind: 'inductor' });
    expect(judged({ ...patch, parts: [...patch.parts!, choke] }).outcome).toBe('fail');
  });

  it('that may be in series are open between half and whole, fail below half (186.7 V), pass at the whole', () => {
    const series = (voltage: string): Finding => judged(two(['hv-plus', 'half'], ['half', 'hv-minus'], voltage));
    expect(series('200 V')).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue', measured: { value: 200 } });
    expect(noteKeys(series('200 V'))).toContain('seriesOrDoubler');
    expect(series('160 V').outcome).toBe('fail');
    expect(series('400 V').outcome).toBe('pass');
  });

  it('named without a word on their wiring are open too', () => {
    const bare = (id: string): Parameters<typeof onBoard>[0][number] => ({
      id,
      ref: id,
      kind: 'electrolyticCapacitor',
      rating: { voltage: '200 V' },
    });
    expect(judged(onBoard([bare('c1'), bare('c2')], { bulk: ['c1', 'c2'] })).outcome).toBe('inconclusive');
  });

  it('of a doubler: 200 V is open at 264 V, since nobody says whether it doubles there; 200 V is enough at 132 V', () => {
    const doubler = two(['hv-plus', 'half'], ['half', 'hv-minus'], '200 V', { rectifier: 'doubler' });
    expect(judged(doubler).outcome).toBe('inconclusive');
    expect(judged({ ...doubler, exhibits: doubler.exhibits!.slice(1), setting: { market: 'US' } }).outcome).toBe('pass');
  });
});

describe('how far the bulk voltage falls between two charges, shown beside', () => {
  // 85 V 60 Hz, 18.75 W in, 33 µF: 85.6 V behind a bridge (inputs of a maker's note, solved with the conduction time that belongs to it). Behind a
  // single diode at least 12.5 ms pass without charge: 0.234 J of the 0.238 J it holds; 22 µF hold 0.159 J and are empty before.
  const run = (
    rectifier: 'bridge' | 'singleDiode' | 'doubler' | undefined,
    more: { measured?: string; rows?: string[][] } = {},
  ): Finding => {
    const can = electrolytic('c1', 'hv-plus', 'hv-minus', '400 V', { measured: more.measured ?? '33 µF ± 0.1 µF' });
    const patch = onBoard([can], rectifier === undefined ? {} : { rectifier });
    const days = [{ ...PLAIN_DAY, under: { mains: '85 V', frequency: '60 Hz', supply: 'direct' as const } }];
    const rows = more.rows ?? [
      ['1', '5', '9'],
      ['2', '5', '18.75'],
    ];
    return judged({ ...patch, ports: [usbPort()], instruments: [plainMeter('0.01 V')], days, exhibits: [...patch.exhibits!, sweep(rows)] });
  };
  const valley = (finding: Finding): unknown => finding.notes.find(({ key }) => key === 'bulkValley')?.args['valley'];

  it('at the greatest input power of the sweep', () => {
    expect(valley(run('bridge'))).toBeCloseTo(85.6, 0);
    expect(Number(valley(run('singleDiode')))).toBeLessThan(20);
    expect(valley(run('singleDiode', { measured: '22 µF ± 0.1 µF' }))).toBe(0);
  });

  it('twice the capacitance falls less', () => {
    expect(Number(valley(run('bridge', { measured: '66 µF ± 0.1 µF' })))).toBeGreaterThan(100);
  });

  it('is not guessed: no rectifier named, a doubler, no input power', () => {
    for (const finding of [
      run(undefined),
      run('doubler'),
      run('bridge', {
        rows: [
          ['1', '5'],
          ['2', '5'],
        ],
      }),
    ])
      expect(valley(finding)).toBeUndefined();
  });

  it('behind a doubler each of the two gives half of the power and waits a whole period', () => {
    // 9.375 W out of 33 µF at 60 Hz: at least 12.5 ms without charge take 0.117 J of 0.238 J, at most 16.7 ms take 0.156 J: 70.6 to 85.7 V are left
    const can = (id: string, from: string, to: string): ReturnType<typeof electrolytic> =>
      electrolytic(id, from, to, '200 V', { measured: '33 µF ± 0.1 µF' });
    const patch = onBoard([can('c1', 'hv-plus', 'half'), can('c2', 'half', 'hv-minus')], { rectifier: 'doubler' });
    const days = [{ ...PLAIN_DAY, under: { mains: '85 V', frequency: '60 Hz', supply: 'direct' as const } }];
    const finding = judged({
      ...patch,
      ports: [usbPort()],
      instruments: [plainMeter('0.01 V')],
      days,
      exhibits: [...patch.exhibits!, sweep([['2', '5', '18.75']])],
    });
    const left = Number(finding.notes.find(({ key }) => key === 'valleyOfEach')?.args['valley']);
    expect(left).toBeGreaterThan(70.6);
    expect(left).toBeLessThan(85.8);
  });

  it('a mains of nothing is no mains', () => {
    const patch = onBoard([electrolytic('c1', 'hv-plus', 'hv-minus', '400 V', { measured: '33 µF' })], { rectifier: 'bridge' });
    const days = [{ ...PLAIN_DAY, under: { mains: '0 V', frequency: '0 Hz', supply: 'direct' as const } }];
    expect(
      judged({
        ...patch,
        ports: [usbPort()],
        instruments: [plainMeter('0.01 V')],
        days,
        exhibits: [...patch.exhibits!, sweep([['2', '5', '18.75']])],
      }).outcome,
    ).toBe('pass');
  });
});

describe('how long the output outlives the mains, at each mains voltage', () => {
  // 33 µF at 85.6 V hold 0.121 J: 6.4 ms at 18.75 W, until nothing is left (inputs of a maker's note, P = 15 W at 80 %).
  // At 265 V 60 Hz the crest is 374.8 V and 2.318 J; at least 7.5 ms (the conduction is shorter than 0.8 ms) and at most 8.3 ms of 18.75 W are
  // gone at the valley: 2.162 to 2.177 J are left, 115.3 to 116.2 ms until empty, and 6.4 ms less than that down to the 85.6 V seen to hold.
  const at = (mains: string, power: string, id: string): NonNullable<CasePatch['exhibits']>[number] =>
    sweep([['2', '5', power]], { id, under: { mains, frequency: '60 Hz' } });
  const run = (exhibits: CasePatch['exhibits'], more: Parameters<typeof onBoard>[1] = { rectifier: 'bridge' }): Finding => {
    const patch = onBoard([electrolytic('c1', 'hv-plus', 'hv-minus', '400 V', { measured: '33 µF ± 0.1 µF' })], more);
    return judged({
      ...patch,
      ports: [usbPort()],
      instruments: [plainMeter('0.01 V')],
      days: [PLAIN_DAY],
      exhibits: [...patch.exhibits!, ...(exhibits ?? [])],
    });
  };
  const told = (finding: Finding, key: string): Record<string, unknown>[] =>
    finding.notes.filter((note) => note.key === key).map(({ args }) => args);

  it('the lowest mains gives only what the capacitor holds, a higher one a least time too', () => {
    const finding = run([at('85 V', '18.75', 'low'), at('265 V', '18.75', 'high')]);
    const [low] = told(finding, 'holdUpAtMost');
    expect(low).toMatchObject({ mains: 85, power: 18.75 });
    expect(Number(low!['most'])).toBeGreaterThan(6.3e-3);
    expect(Number(low!['most'])).toBeLessThan(6.5e-3);
    const [high] = told(finding, 'holdUpBetween');
    expect(high).toMatchObject({ mains: 265 });
    expect(Number(high!['most'])).toBeGreaterThan(0.1153);
    expect(Number(high!['most'])).toBeLessThan(0.1162);
    expect(Number(high!['most']) - Number(high!['least'])).toBeCloseTo(Number(low!['most']), 9);
  });

  it('a lower mains at which it gave clearly less does not show how far down it holds this much', () => {
    const finding = run([at('85 V', '10', 'low'), at('265 V', '18.75', 'high')]);
    expect(told(finding, 'holdUpBetween')).toEqual([]);
    expect(told(finding, 'holdUpAtMost').map(({ mains }) => mains)).toEqual([85, 265]);
  });

  it('a row where the output has left its window is nothing that is held', () => {
    const finding = run([
      sweep(
        [
          ['1', '5', '9'],
          ['2', '3', '18.75'],
        ],
        { id: 'low', under: { mains: '85 V', frequency: '60 Hz' } },
      ),
    ]);
    expect(told(finding, 'holdUpAtMost').map(({ power }) => power)).toEqual([9]);
  });

  it('is shown once for capacitors in parallel, and not guessed without a rectifier', () => {
    expect(noteKeys(run([at('85 V', '18.75', 'low')], {}))).not.toContain('holdUpAtMost');
    const can = (id: string): ReturnType<typeof electrolytic> =>
      electrolytic(id, 'hv-plus', 'hv-minus', '400 V', { measured: '33 µF ± 0.1 µF' });
    const patch = onBoard([can('c1'), can('c2')], { rectifier: 'bridge' });
    const all = findingsOf(
      judge({
        ...patch,
        ports: [usbPort()],
        instruments: [plainMeter('0.01 V')],
        days: [PLAIN_DAY],
        exhibits: [...patch.exhibits!, at('85 V', '18.75', 'low')],
      }),
      'fire/bulk-capacitor-voltage',
    );
    expect(all.map((finding) => noteKeys(finding).includes('holdUpAtMost'))).toEqual([true, false]);
  });

  it('behind a doubler each capacitor feeds half of the power', () => {
    // 9.375 W out of 33 µF that the valley leaves with 70.6 to 85.7 V: 0.082 to 0.121 J, 8.8 to 12.9 ms
    const can = (id: string, from: string, to: string): ReturnType<typeof electrolytic> =>
      electrolytic(id, from, to, '200 V', { measured: '33 µF ± 0.1 µF' });
    const patch = onBoard([can('c1', 'hv-plus', 'half'), can('c2', 'half', 'hv-minus')], { rectifier: 'doubler' });
    const finding = judged({
      ...patch,
      ports: [usbPort()],
      instruments: [plainMeter('0.01 V')],
      days: [PLAIN_DAY],
      exhibits: [...patch.exhibits!, at('85 V', '18.75', 'low')],
    });
    const [low] = told(finding, 'holdUpAtMost');
    expect(Number(low!['most'])).toBeGreaterThan(8.7e-3);
    expect(Number(low!['most'])).toBeLessThan(13e-3);
  });
});

describe('what makers take for as many watts, shown beside', () => {
  // 2 to 3 µF a watt where the lowest mains is American, 1 µF where it is European (two makers' notes); 5 V 2 A printed are 10 W
  const told = (setting: CasePatch['setting'], more: CasePatch = {}): unknown => {
    const patch = onBoard([electrolytic('c1', 'hv-plus', 'hv-minus', '400 V', { measured: '15 µF ± 0.1 µF' })]);
    const finding = judged({ ...patch, ports: [usbPort('2 A')], exhibits: [], setting: setting!, ...more });
    return finding.notes.find(({ key }) => key === 'usualBulk')?.args;
  };
  const farads = (value: number): unknown => expect.closeTo(value, 12);

  it('goes by the lowest mains', () => {
    expect(told({ market: 'US' })).toEqual({ found: farads(15e-6), power: 10, least: farads(20e-6), most: farads(30e-6) });
    expect(told({ market: 'EU' })).toEqual({ found: farads(15e-6), power: 10, least: farads(10e-6), most: farads(10e-6) });
  });

  it('and is not said where nothing is printed', () => {
    expect(told({ market: 'EU' }, { ports: [] })).toBeUndefined();
  });
});
