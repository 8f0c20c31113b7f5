import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, judge, noteKeys } from '../build-case.ts';
import { CONDUCTORS, gap, workingVoltage } from '../evidence-pieces.ts';

// A slot counts along its walls from a width X on: pollution degree 1 0.25 mm, 2 1.0 mm, 3 1.5 mm, or a third of the required clearance where
// that is below 3 mm (secondary: a connector maker's catalogue on IEC 60664-1 clause 6.2). At 240 V rms: basic 2.4 mm, reinforced 4.8 mm;
// clearance at 230 V mains 1.5 and 3.0 mm, at 120 V 2.54 mm reinforced (secondary, as in the tests of creepage and clearance).
type More = NonNullable<Parameters<typeof gap>[1]>;
const judged = (value: string, more: More, id = 'hv-minus~out-minus', working = '240 V ± 0 V', market: 'EU' | 'US' = 'EU'): Finding =>
  findingOf(
    judge({ conductors: CONDUCTORS, setting: { market }, exhibits: [gap(value, more), workingVoltage(working)] }),
    `shock/creepage@${id}`,
  );

describe('a slot on the way along a surface', () => {
  it('1.2 mm wide counts at pollution degree 2, and the finding says from what width on', () => {
    const finding = judged('6 mm ± 0.1 mm', { slot: { width: '1.2 mm ± 0.1 mm' } });
    expect(finding).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' });
    expect(finding.notes).toContainEqual({
      key: 'slotCounts',
      args: { width: expect.closeTo(0.0012, 12), least: expect.closeTo(0.001, 12) },
    });
  });

  it('0.8 mm wide adds nothing: the length along its walls is only an upper bound, and the way straight across is asked for', () => {
    const finding = judged('6 mm ± 0.1 mm', { slot: { width: '0.8 mm ± 0.1 mm' } });
    expect(finding).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
      rung: 'undecided',
      measured: { value: 0.006, side: 'below' },
    });
    expect(noteKeys(finding)).toEqual(expect.arrayContaining(['slotTooNarrow', 'straightMissing']));
  });

  it('too narrow, with the way straight across given: that way is judged', () => {
    const across = (straight: string): Finding => judged('6 mm ± 0.1 mm', { slot: { width: '0.8 mm ± 0.1 mm', straight } });
    expect(across('5.0 mm ± 0.1 mm')).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet', fields: ['/exhibits/gap-1/slot/straight'] });
    expect(across('4.5 mm ± 0.1 mm')).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
    expect(across('2.0 mm ± 0.1 mm')).toMatchObject({ outcome: 'fail', rung: 'belowBasic', consequence: 'lethal' });
    expect(noteKeys(across('4.5 mm ± 0.1 mm'))).toContain('slotBridged');
  });

  it('exactly 1.0 mm wide cannot be told: only a way straight across that is long enough, or a way along the walls that is too short, settles it', () => {
    const open = (value: string, straight?: string): Finding =>
      judged(value, { slot: { width: '1.0 mm ± 0.1 mm', ...(straight === undefined ? {} : { straight }) } });
    expect(open('6 mm ± 0.1 mm')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(open('6 mm ± 0.1 mm', '4.4 mm ± 0.1 mm')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(open('6 mm ± 0.1 mm', '5.0 mm ± 0.1 mm')).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' });
    expect(open('4.0 mm ± 0.1 mm', '2.0 mm ± 0.1 mm')).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
    expect(noteKeys(open('6 mm ± 0.1 mm'))).toContain('slotWidthUndecided');
  });

  it('what is too short even along the walls fails, however narrow the slot', () => {
    expect(judged('2.0 mm ± 0.1 mm', { slot: { width: '0.5 mm ± 0.1 mm' } })).toMatchObject({
      outcome: 'fail',
      rung: 'belowBasic',
      consequence: 'lethal',
    });
    expect(judged('3.0 mm ± 0.1 mm', { slot: { state: 'unknown', because: 'filled with flux' } })).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
    });
  });

  it('a slot of a width nobody could tell lets nothing pass', () => {
    const finding = judged('6 mm ± 0.1 mm', { slot: { state: 'unknown', because: 'filled with flux' } });
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(noteKeys(finding)).toContain('slotWidthUnknown');
  });

  it('"wider than" is one-sided: above 1.5 mm counts, above 0.5 mm is open, below 0.5 mm adds nothing', () => {
    expect(judged('6 mm ± 0.1 mm', { slot: { width: '> 1.5 mm' } }).outcome).toBe('pass');
    expect(judged('6 mm ± 0.1 mm', { slot: { width: '> 0.5 mm' } }).outcome).toBe('inconclusive');
    expect(judged('6 mm ± 0.1 mm', { slot: { width: '< 0.5 mm' } })).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('a way straight across that is longer than the way along the walls cannot be and lets nothing pass', () => {
    const finding = judged('4.9 mm ± 0.1 mm', { slot: { width: '0.5 mm ± 0.1 mm', straight: '49 mm' } });
    expect(finding.outcome).toBe('inconclusive');
    expect(noteKeys(finding)).toContain('straightLonger');
  });

  it('another way that is long enough does not cover one through a slot that is too narrow', () => {
    const exhibits = [
      gap('6 mm ± 0.1 mm'),
      gap('6 mm ± 0.1 mm', { id: 'gap-2', slot: { width: '0.5 mm ± 0.1 mm' } }),
      workingVoltage('240 V ± 0 V'),
    ];
    expect(findingOf(judge({ conductors: CONDUCTORS, exhibits }), 'shock/creepage@hv-minus~out-minus').outcome).toBe('inconclusive');
  });

  it('no slot looked for, and no slot there, change nothing', () => {
    for (const slot of [undefined, { state: 'notLooked' }, { state: 'absent', because: 'plain board' }] as const) {
      const finding = judged('5 mm ± 0.1 mm', slot === undefined ? {} : { slot });
      expect(finding.outcome).toBe('pass');
      expect(noteKeys(finding).filter((key) => key.startsWith('slot'))).toEqual([]);
    }
  });

  it('dirt asks for 1.5 mm: a slot of 1.2 mm no longer counts', () => {
    expect(judged('9 mm ± 0.1 mm', { slot: { width: '1.2 mm ± 0.1 mm' }, dirty: true })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
    });
    expect(judged('9 mm ± 0.1 mm', { slot: { width: '1.7 mm ± 0.1 mm' }, dirty: true })).toMatchObject({ outcome: 'pass' });
  });

  it('between two mains conductors a third of 1.5 mm is enough: 0.6 mm counts, 0.4 mm does not', () => {
    const poles = (width: string): Finding => judged('3 mm ± 0.1 mm', { from: 'line', to: 'neutral', slot: { width } }, 'line~neutral');
    expect(poles('0.6 mm ± 0.1 mm')).toMatchObject({ outcome: 'pass', rung: 'basicMet' });
    expect(poles('0.4 mm ± 0.1 mm')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('at 120 V a third of 2.54 mm is 0.847 mm', () => {
    const finding = judged('6 mm ± 0.1 mm', { slot: { width: '0.95 mm ± 0.1 mm' } }, 'hv-minus~out-minus', '140 V ± 0 V', 'US');
    expect(finding.outcome).toBe('pass');
    expect(finding.notes.find(({ key }) => key === 'slotCounts')?.args['least']).toBeCloseTo(0.00254 / 3, 9);
  });
});

describe('what covers the path', () => {
  it.each([
    ['solderMask', 'maskDoesNotCount'],
    ['lacquer', 'coatingNeedsTests'],
    ['potting', 'coatingNeedsTests'],
  ] as const)('%s earns nothing: 4.5 mm fails as it does bare, with a remark', (coating, key) => {
    const bare = judged('4.5 mm ± 0.1 mm', {});
    const covered = judged('4.5 mm ± 0.1 mm', { coating });
    expect(covered).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced', margin: bare.margin });
    expect(noteKeys(covered)).toContain(key);
    expect(noteKeys(bare)).not.toContain(key);
  });

  it('printed wiring at 250 V is asked 2.5 mm as any surface, not the 1.0 mm of its own column', () => {
    // IEC 60664-1 table F.4, printed wiring, pollution degree 2: 1.0 mm at 250 V (secondary)
    const finding = judged('1.8 mm ± 0.1 mm', { path: 'printedWiring' }, 'hv-minus~out-minus', '250 V ± 0 V');
    expect(finding).toMatchObject({ outcome: 'fail', rung: 'belowBasic' });
    expect(finding.others.find(({ name }) => name === 'basic')?.at?.value).toBeCloseTo(0.0025, 12);
    expect(noteKeys(finding)).toContain('printedWiringNotUsed');
  });
});

describe('clearance by insulation coordination, side by side', () => {
  it('230 V: 1.5 mm basic and 3.0 mm reinforced stand beside the limit that decides', () => {
    // IEC 60664-1 tables F.1 and F.2: 2500 V 1.5 mm, next step 4000 V 3.0 mm (secondary)
    const assessment = judge({ conductors: CONDUCTORS, exhibits: [gap('3.5 mm', { path: 'air' })] });
    const { others } = findingOf(assessment, 'shock/clearance@hv-minus~out-minus');
    expect(others.find(({ name }) => name === 'coordinationBasic')?.at?.value).toBeCloseTo(0.0015, 12);
    expect(others.find(({ name }) => name === 'coordinationReinforced')?.at?.value).toBeCloseTo(0.003, 12);
  });
});
