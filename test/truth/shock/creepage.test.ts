import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { board, CONDUCTORS, gap, workingVoltage } from '../evidence-pieces.ts';

// Limits: IEC 62368-1:2018 table 17, pollution degree 2, material group III (secondary: two copies agree in every cell): 200 V 2.0 mm, 250 V 2.5 mm,
// 320 V 3.2 mm; straight line between rows, rounded up to 0.1 mm, doubled for reinforced (secondary: a published report has 5.8 mm at 281 V rms),
// never below the clearance (secondary). Clearance at 230 V: 1.5 and 3.0 mm.
const PAIR = 'hv-minus~out-minus';
const AT_240 = workingVoltage('240 V ± 0 V');
type Gap = Parameters<typeof gap>;
const surface = (value: Gap[0], working = AT_240, more: Gap[1] = {}): CasePatch => ({
  conductors: CONDUCTORS,
  exhibits: [gap(value, more), working],
});
const judged = (patch: CasePatch, pair = PAIR): Finding => findingOf(judge(patch), `shock/creepage@${pair}`);
const limitMm = (finding: Finding): number => (finding.limit?.at?.value ?? Number.NaN) * 1000;
const basicMm = (finding: Finding): number => (finding.others.find(({ name }) => name === 'basic')?.at?.value ?? Number.NaN) * 1000;

describe('creepage at a measured working voltage', () => {
  it('5.0 mm between bulk minus and output passes as reinforced at 240 V rms measured: 4.8 mm is the fail line, 5.0 mm the comfort line', () => {
    const finding = judged(surface('5.0 mm'));
    expect(finding).toMatchObject({ outcome: 'pass', reason: 'met', rung: 'reinforcedMet' });
    expect(limitMm(finding)).toBeCloseTo(4.8, 9);
    expect(basicMm(finding)).toBeCloseTo(2.4, 9);
    expect(finding.others.find(({ name }) => name === 'comfort')?.at?.value).toBeCloseTo(0.005, 12);
    expect(finding.margin).toBeCloseTo(4.8 / 5, 9);
    // a caliper without a statement: half width 0.1 mm, rectangular, u = 0.0577 mm, z = 3.464
    expect(finding.probability).toBeCloseTo(0.999734, 5);
  });

  it.each([
    ['240 V', 2.4, 4.8], // reasoned from the rows
    ['250 V', 2.5, 5.0], // a published report asks 5.0 mm at this row (secondary)
    ['281 V', 2.9, 5.8], // a published report: 281 V rms, 5.8 mm (secondary)
    ['320 V', 3.2, 6.4], // row, doubled
    ['400 V', 4.0, 8.0], // row, doubled
    ['100 V', 1.5, 3.0], // the table asks 1.4 and 2.8; the clearance of 230 V mains is more
  ])('at %s rms basic is %d mm and reinforced %d mm', (rms, basic, reinforced) => {
    const bridge = board({ rectifier: 'bridge' });
    const finding = judged({ conductors: CONDUCTORS, exhibits: [gap('9 mm'), workingVoltage(`${rms} ± 0 V`), bridge] });
    expect(basicMm(finding)).toBeCloseTo(basic, 9);
    expect(limitMm(finding)).toBeCloseTo(reinforced, 9);
  });

  it('a path exactly at the limit is undecided, and basic is met', () => {
    const finding = judged(surface('4.8 mm'));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', rung: 'undecided' });
    expect(finding.probability).toBeCloseTo(0.5, 6);
    expect(finding.margin).toBeCloseTo(1, 9);
    expect(noteKeys(finding)).toContain('basicMetRestUndecided');
  });

  it('just inside passes and just outside fails, two standard uncertainties away', () => {
    const inside = judged(surface('4.9 mm ± 0.1 mm'));
    expect(inside).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' });
    expect(inside.probability).toBeCloseTo(0.977249868, 6);
    const outside = judged(surface('4.7 mm ± 0.1 mm'));
    expect(outside).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced', consequence: 'injurious', headline: true });
    expect(outside.probability).toBeCloseTo(0.022750132, 6);
    expect(outside.margin).toBeCloseTo(4.8 / 4.7, 9);
  });

  it('below basic is dangerous, whichever way it was measured', () => {
    for (const path of ['surface', 'printedWiring'] as const) {
      const assessment = judge(surface('2.2 mm ± 0.1 mm', AT_240, { path }));
      expect(findingOf(assessment, `shock/creepage@${PAIR}`)).toMatchObject({
        outcome: 'fail',
        rung: 'belowBasic',
        consequence: 'lethal',
        headline: true,
      });
      expect(assessment.verdict.failure).toBe('Dangerous');
    }
  });

  it('the doubt of the working voltage moves the limit too: 5.1 mm at 245 V ± 2 V passes with P = 0.968', () => {
    // 245 V: 2.45, rounded 2.5, doubled 5.0 mm; 0.02 mm per V, so u(limit) = 0.02 mm; u(path) = 0.05 mm; z = 0.1 / 0.05385
    const finding = judged(surface('5.1 mm ± 0.1 mm', workingVoltage('245 V ± 2 V')));
    expect(finding.outcome).toBe('pass');
    expect(finding.limit?.at?.u).toBeCloseTo(0.00002, 8);
    expect(finding.probability).toBeCloseTo(0.968341, 4);
  });

  it('a reading above the estimate is never talked down: 320 V one plug way asks for 6.4 mm whatever the rectifier is', () => {
    for (const more of [[], [board({ rectifier: 'singleDiode' })], [board({ rectifier: 'bridge' })]]) {
      const finding = judged({ conductors: CONDUCTORS, exhibits: [gap('6.0 mm ± 0.1 mm'), workingVoltage('320 V ± 0 V'), ...more] });
      expect(finding.outcome).not.toBe('pass');
    }
  });

  it('the greatest of several working voltages counts', () => {
    const finding = judged({
      conductors: CONDUCTORS,
      exhibits: [gap('5.0 mm'), AT_240, workingVoltage('281 V ± 0 V', { id: 'working-2' })],
    });
    expect(limitMm(finding)).toBeCloseTo(5.8, 9);
    expect(finding).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
  });

  it('a working voltage that is only a lower bound lets nothing pass that a higher one would fail', () => {
    expect(judged(surface('5.5 mm', workingVoltage('> 250 V'))).outcome).toBe('inconclusive');
  });

  it('a working voltage that is only a lower bound still fails what is too short for it', () => {
    expect(judged(surface('4.0 mm', workingVoltage('> 250 V'))).outcome).toBe('fail');
  });

  it('a working voltage that is only an upper bound fails nothing that a lower one would pass, and passes what the bound itself allows', () => {
    expect(judged(surface('4.0 mm', workingVoltage('< 250 V'))).outcome).toBe('inconclusive');
    expect(judged(surface('5.2 mm', workingVoltage('< 250 V'))).outcome).toBe('pass');
  });

  it('a working voltage read at a mains voltage that nobody wrote down asks for no less than the mains itself', () => {
    expect(judged(surface('4.0 mm', workingVoltage('135 V ± 1 V', { under: { supply: 'direct' } }))).outcome).not.toBe('pass');
  });

  it('a working voltage beyond the table leaves no limit', () => {
    expect(judged(surface('9 mm', workingVoltage('1100 V ± 0 V')))).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });
});

describe('creepage when nobody measured the working voltage', () => {
  const estimated = (value: Gap[0]): Finding => judged({ conductors: CONDUCTORS, exhibits: [gap(value)] });

  it('it is taken as 1.15 times the mains, the limit becomes 5.4 mm with a doubt of 0.13 mm, and the finding says so', () => {
    const finding = estimated('6.2 mm');
    expect(limitMm(finding)).toBeCloseTo(5.4, 9);
    expect(finding.limit?.at?.u).toBeCloseTo(0.0001328, 6);
    expect(noteKeys(finding)).toContain('workingVoltageEstimated');
    expect(finding.outcome).toBe('pass');
  });

  it('5.4 mm is undecided and 5.0 mm is not a certain failure: at 1.05 times the mains it would do', () => {
    expect(estimated('5.4 mm')).toMatchObject({ outcome: 'inconclusive', rung: 'undecided' });
    expect(estimated('5.0 mm').outcome).toBe('inconclusive');
    expect(estimated('4.4 mm')).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
  });

  it('the estimate does not lower the grade of the limit, and a reading behind an isolating source is no better than none', () => {
    const isolated = workingVoltage('20 V', { under: { supply: 'isolating' } });
    const assessment = judge(surface('3.1 mm', isolated));
    const finding = findingOf(assessment, `shock/creepage@${PAIR}`);
    expect(limitMm(finding)).toBeCloseTo(5.4, 9);
    expect(finding).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
    expect(finding.limit?.grade).toBe('secondary');
    expect(assessment.warnings).toContainEqual({ key: 'workingVoltageRefused', at: '/exhibits/working-1', args: { supply: 'isolating' } });
  });

  it('a reading on a supply that nobody wrote down, or that was struck, is no better than none', () => {
    expect(limitMm(judged(surface('9 mm', workingVoltage('20 V', { under: {} }))))).toBeCloseTo(5.4, 9);
    expect(limitMm(judged(surface('9 mm', workingVoltage('20 V', { struck: 'probe slipped' }))))).toBeCloseTo(5.4, 9);
  });

  it('120 V mains: 138 V estimated asks for 3.2 mm', () => {
    expect(limitMm(judged({ conductors: CONDUCTORS, exhibits: [gap('9 mm')], setting: { market: 'US' } }))).toBeCloseTo(3.2, 9);
  });
});

describe('material and dirt', () => {
  it('a tracking index nobody measured counts as group III and the finding says that it is assumed', () => {
    expect(noteKeys(judged(surface('5.2 mm')))).toContain('materialAssumed');
    expect(noteKeys(judged(surface('5.2 mm', AT_240, { cti: '250' })))).not.toContain('materialAssumed');
    // FR-4 is sold with an index of at least 175 (secondary: a listing with a maker's sheet), which is group III; of other laminates no sheet was read
    const known = judged(surface('5.2 mm', AT_240, { material: 'fr4' }));
    expect(known.notes).toContainEqual({ key: 'materialByKind', args: { laminate: 'fr4', least: 175, group: 'III' } });
    expect(noteKeys(judged(surface('5.2 mm', AT_240, { material: 'cem1' })))).toContain('materialAssumed');
  });

  it('an index of 400 is group II: 3.6 mm at 250 V (row 1.8 mm); 600 is group I, where the clearance of 3.0 mm rules', () => {
    const at250 = workingVoltage('250 V ± 0 V');
    expect(limitMm(judged(surface('9 mm', at250, { cti: '400' })))).toBeCloseTo(3.6, 9);
    expect(limitMm(judged(surface('9 mm', at250, { cti: '600' })))).toBeCloseTo(3.0, 9);
    expect(limitMm(judged(surface('9 mm', at250, { cti: '399' })))).toBeCloseTo(5.0, 9);
  });

  it('indices of 175, 174 and 100 are all group III, 399 too; below 100 there is no group', () => {
    const at250 = workingVoltage('250 V ± 0 V');
    for (const cti of ['399', '175', '174', '100']) expect(limitMm(judged(surface('9 mm', at250, { cti })))).toBeCloseTo(5.0, 9);
    expect(judged(surface('9 mm', at250, { cti: '99' })).outcome).not.toBe('pass');
  });

  it('an index below 600 is not group I', () => {
    expect(limitMm(judged(surface('9 mm', workingVoltage('250 V ± 0 V'), { cti: '< 600' })))).toBeGreaterThan(3.5);
  });

  it('a material that tracks below 100 has no group, so no path along it passes', () => {
    // IEC 60664-1 clause 4.8.1.3: group IIIb is 100 to below 175 (secondary: a terminal maker's technical section)
    expect(judged(surface('6 mm', AT_240, { cti: '60' })).outcome).not.toBe('pass');
  });

  it('dirt on the path is pollution degree 3: 7.8 mm at 240 V (rows 3.2 and 4.0 mm)', () => {
    expect(limitMm(judged(surface('9 mm', AT_240, { dirty: true })))).toBeCloseTo(7.8, 9);
  });
});

describe('one-sided paths and paths that are no reading', () => {
  it('more than 5 mm passes, more than 3 mm is open, less than 1 mm is below basic', () => {
    expect(judged(surface('> 5 mm'))).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' });
    expect(judged(surface('> 3 mm'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged(surface('< 1 mm'))).toMatchObject({ outcome: 'fail', rung: 'belowBasic', consequence: 'lethal' });
  });

  it('nobody looked is not assessed, no path at all is bridged', () => {
    expect(findingsOf(judge(), 'shock/creepage')).toMatchObject([{ id: 'shock/creepage', outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged(surface({ state: 'absent', because: 'a bare wire lies across' }))).toMatchObject({
      outcome: 'fail',
      rung: 'bridgedOrAbsent',
      consequence: 'lethal',
      headline: true,
    });
  });

  it('could not tell is inconclusive, cannot now and struck are not assessed', () => {
    expect(judged(surface({ state: 'unknown', because: 'potted' }))).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged(surface({ state: 'cannotNow', since: 'burnt' }))).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(judged(surface({ v: '1 mm', struck: 'wrong pads' }))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('output to output does not apply; line to neutral needs 2.3 mm at 230 V and is a matter of fire', () => {
    expect(judged(surface('0.2 mm', AT_240, { from: 'out-plus' }), 'out-minus~out-plus')).toMatchObject({ outcome: 'notApplicable' });
    const poles = { from: 'line', to: 'neutral' };
    expect(judged(surface('2.5 mm', AT_240, poles), 'line~neutral')).toMatchObject({ outcome: 'pass', rung: 'basicMet' });
    expect(judged(surface('2.1 mm ± 0.1 mm', AT_240, poles), 'line~neutral')).toMatchObject({
      outcome: 'fail',
      rung: 'belowBasic',
      consequence: 'injurious',
    });
    expect(limitMm(judged(surface('2.1 mm', AT_240, poles), 'line~neutral'))).toBeCloseTo(2.3, 9);
  });
});
