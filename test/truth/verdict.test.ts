import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/assess/assess.ts';
import { judgeVerdict } from '../../src/core/assess/judge-verdict.ts';
import { assessment as assessmentSchema, type Consequence, type Finding } from '../../src/core/result/assessment.ts';
import { canonicalText } from '../../src/core/result/canonical.ts';
import { buildCase, type CasePatch, findingOf, judge } from './build-case.ts';
import {
  across,
  board,
  CONDUCTORS,
  face,
  gap,
  label,
  PLAIN_DAY,
  plainMeter,
  spot,
  sweep,
  touch,
  usbPort,
  WARM,
  workingVoltage,
} from './evidence-pieces.ts';

const UNDER = { ...WARM, loads: [...WARM.loads] };
const EMPTY = judge();
/** The findings of an empty case, with some put in the place of those of their check. */
function withFindings(...own: Finding[]): Finding[] {
  return [...EMPTY.findings.filter(({ check }) => own.every((one) => one.check !== check)), ...own];
}
function finding(check: string, subject: string, consequence: Consequence, more: Partial<Finding> = {}): Finding {
  return {
    ...findingOf(EMPTY, check),
    id: `${check}@${subject}`,
    subject,
    about: subject,
    consequence,
    outcome: 'fail',
    reason: 'notMet',
    headline: true,
    ...more,
  };
}

describe('failure words', () => {
  it.each([
    ['shock/creepage', 'lethal', 'Dangerous'],
    ['fire/fuse', 'injurious', 'Unsafe'],
    ['harm/overvoltage', 'damaging', 'Harmful to devices'],
    ['delivery/current', 'disappointing', 'Below its claims'],
  ] as const)('a failing %s finding that is %s makes the unit %s', (check, consequence, word) => {
    const verdict = judgeVerdict(withFindings(finding(check, 'x', consequence)));
    expect(verdict).toMatchObject({ failure: word, doubtful: null, decidedBy: [`${check}@x`], doubtfulBy: [], also: [] });
  });

  it('an informative failure sets no word', () => {
    const verdict = judgeVerdict(withFindings(finding('labelling/ratings', 'maker', 'informative')));
    expect(verdict.decidedBy).toEqual([]);
    expect(['Nothing found wrong', 'No verdict yet']).toContain(verdict.failure);
  });

  it('the worst word wins, the others stand under it in order, each with its findings', () => {
    const verdict = judgeVerdict(
      withFindings(
        finding('delivery/current', 'a', 'disappointing'),
        finding('harm/overvoltage', 'a', 'damaging'),
        finding('shock/creepage', 'p', 'lethal'),
        finding('shock/creepage', 'q', 'injurious'),
        finding('fire/fuse', 'mains', 'injurious'),
      ),
    );
    expect(verdict.failure).toBe('Dangerous');
    expect(verdict.decidedBy).toEqual(['shock/creepage@p']);
    expect(verdict.also.map(({ failure }) => failure)).toEqual(['Unsafe', 'Harmful to devices', 'Below its claims']);
    expect([...(verdict.also[0]?.by ?? [])].sort()).toEqual(['fire/fuse@mains', 'shock/creepage@q']);
  });

  it('several findings of the same word all decide, and the weakest grade of their limits is shown', () => {
    const { verdict } = judge({
      conductors: CONDUCTORS,
      exhibits: [gap('4.0 mm'), workingVoltage('240 V ± 0 V'), board({ fuse: 'track' })],
    });
    expect(verdict).toMatchObject({ failure: 'Unsafe', grade: 'memory' });
    expect([...verdict.decidedBy].sort()).toEqual(['fire/fuse@mains', 'shock/barrier@hand', 'shock/creepage@hv-minus~out-minus']);
  });

  it('one passing check and nothing else is "Nothing found wrong", with what was not examined beside it', () => {
    const { verdict } = judge({ exhibits: [board({ fuse: 'cartridge' })] });
    expect(verdict).toMatchObject({
      failure: 'Nothing found wrong',
      doubtful: null,
      coverage: { shock: 'not examined', fire: 'partly examined' },
      grade: null,
    });
  });

  it('an empty case has no verdict yet', () => {
    expect(EMPTY.verdict).toMatchObject({
      failure: 'No verdict yet',
      doubtful: null,
      decidedBy: [],
      also: [],
      grade: null,
      coverage: { shock: 'not examined', fire: 'not examined' },
    });
  });

  it('evidence that was refused is no assessment: still no verdict', () => {
    const isolated = touch('0.01 mA', { under: { supply: 'isolating', orientation: 'A', mains: '230 V', frequency: '50 Hz' } });
    expect(judge({ conductors: CONDUCTORS, exhibits: [isolated] }).verdict.failure).toBe('No verdict yet');
  });
});

describe('failures on limits from memory', () => {
  const hot = (celsius: string, more: CasePatch = {}): CasePatch => ({
    ports: [usbPort()],
    places: [face()],
    ...more,
    exhibits: [spot('face', celsius, { under: UNDER }), ...(more.exhibits ?? [])],
  });

  it('below 1.3 times the limit stand beside the headline as doubtful, and "Nothing found wrong" is not said', () => {
    const { verdict } = judge(hot('82 °C ± 1 K', { exhibits: [board({ fuse: 'cartridge' })] })); // 57 K over 52 K: 1.10, from memory
    expect(verdict).toMatchObject({ doubtful: 'Unsafe', doubtfulBy: ['burn/enclosure-temperature@face'], decidedBy: [] });
    expect(verdict.failure).not.toBe('Nothing found wrong');
    expect(verdict.failure).not.toBe('Unsafe');
  });

  it('surely above 1.3 set the headline', () => {
    const { verdict } = judge(hot('98 °C ± 1 K')); // 73 K over 52 K: 1.40
    expect(verdict).toMatchObject({ failure: 'Unsafe', doubtful: null, decidedBy: ['burn/enclosure-temperature@face'], grade: 'memory' });
  });

  it('a doubtful word worse than the headline stands beside it, a milder or equal one does not', () => {
    const doubt = finding('burn/enclosure-temperature', 'x', 'injurious', { headline: false });
    expect(judgeVerdict(withFindings(doubt, finding('delivery/current', 'a', 'disappointing')))).toMatchObject({
      failure: 'Below its claims',
      doubtful: 'Unsafe',
      doubtfulBy: ['burn/enclosure-temperature@x'],
    });
    expect(judgeVerdict(withFindings(doubt, finding('fire/fuse', 'a', 'injurious')))).toMatchObject({
      failure: 'Unsafe',
      doubtful: null,
      doubtfulBy: [],
    });
    expect(judgeVerdict(withFindings(doubt, finding('shock/creepage', 'p', 'lethal')))).toMatchObject({
      failure: 'Dangerous',
      doubtful: null,
    });
  });

  it('a lower failure that is doubtful does not vanish into "Nothing found wrong"', () => {
    for (const consequence of ['lethal', 'injurious', 'damaging', 'disappointing'] as const) {
      const verdict = judgeVerdict(
        withFindings(
          finding('shock/creepage', 'p', consequence, { headline: false }),
          finding('fire/fuse', 'mains', 'injurious', { outcome: 'pass', headline: false }),
        ),
      );
      expect(verdict.failure).not.toBe('Nothing found wrong');
      expect(verdict.doubtful).not.toBeNull();
    }
  });

  it('a rule without a ratio counts as beyond 1.3', () => {
    expect(judge({ exhibits: [board({ fuse: { state: 'absent', because: 'pin to bridge' } })] }).verdict).toMatchObject({
      failure: 'Unsafe',
      doubtful: null,
    });
  });
});

describe('coverage', () => {
  const state = (patch: CasePatch, check: string): string | undefined =>
    [...judge(patch).verdict.cells.shock, ...judge(patch).verdict.cells.fire].find((cell) => cell.check === check)?.state;

  it('shock and fire count apart, and every check not examined is named with its reason', () => {
    const { verdict } = judge({ exhibits: [board({ fuse: 'track' })] });
    expect(verdict.coverage).toEqual({ shock: 'not examined', fire: 'partly examined' });
    expect(verdict.missing).toContainEqual({ check: 'shock/creepage', reason: 'notLooked' });
    expect(verdict.missing).toContainEqual({ check: 'shock/fault-touch-current', reason: 'notLooked' });
    expect(verdict.missing.map(({ check }) => check)).not.toContain('fire/fuse');
  });

  it('a check nobody wrote yet is never counted as examined', () => {
    expect(state({}, 'fire/material-temperature')).toBe('notAssessed');
    expect(EMPTY.findings.filter(({ reason }) => reason === 'notImplemented').every(({ outcome }) => outcome === 'notAssessed')).toBe(true);
  });

  it('every lethal and injurious check settled is "examined"; one left open is "partly"; does not apply counts neither way', () => {
    const settled = EMPTY.findings.map((one): Finding => ({ ...one, outcome: 'pass', reason: 'met' }));
    expect(judgeVerdict(settled).coverage).toEqual({ shock: 'examined', fire: 'examined' });
    const open = (outcome: Finding['outcome']): Finding[] =>
      settled.map((one) => (one.check === 'shock/enclosure' ? { ...one, outcome } : one));
    expect(judgeVerdict(open('inconclusive')).coverage).toEqual({ shock: 'partly examined', fire: 'examined' });
    expect(judgeVerdict(open('notAssessed')).coverage).toEqual({ shock: 'partly examined', fire: 'examined' });
    expect(judgeVerdict(open('notApplicable')).coverage).toEqual({ shock: 'examined', fire: 'examined' });
    expect(judgeVerdict(open('fail')).coverage).toEqual({ shock: 'examined', fire: 'examined' });
  });

  it('the informative check of the hazard does not count', () => {
    expect(EMPTY.verdict.cells.shock.map(({ check }) => check)).not.toContain('shock/working-voltage');
  });

  it('the worst subject is the state of the check: fail, inconclusive, not assessed, pass', () => {
    const two = (second: string): CasePatch => ({
      conductors: CONDUCTORS,
      exhibits: [gap('> 9 mm', { path: 'air' }), gap(second, { id: 'gap-2', to: 'out-plus', path: 'air' })],
    });
    expect(state(two('9 mm'), 'shock/clearance')).toBe('settled');
    expect(state(two('3.0 mm'), 'shock/clearance')).toBe('inconclusive');
    expect(state(two('0.1 mm'), 'shock/clearance')).toBe('settled');
  });

  it('what no bench can judge goes with every verdict, the same every time', () => {
    const expected = [
      'flammability',
      'ballPressure',
      'humidity',
      'impulse',
      'electricStrength',
      'faultsForHours',
      'emissions',
      'materialsTracking',
    ];
    expect(EMPTY.laboratory).toEqual(expected);
    expect(judge({ exhibits: [board({ fuse: 'cartridge' })] }).laboratory).toEqual(expected);
  });
});

describe('the judge as a function', () => {
  const RICH: CasePatch = {
    conductors: CONDUCTORS,
    ports: [usbPort()],
    instruments: [plainMeter('0.01 V', { uAmpere: '0.01 A', uWatt: '0.05 W' })],
    days: [PLAIN_DAY],
    parts: [
      across('c1', 'hv-minus', 'out-minus', { value: '1 nF', safetyClass: 'Y1', identity: 'established' }),
      across('c2', 'line', 'middle'),
      across('c3', 'middle', 'shell'),
    ],
    places: [face()],
    exhibits: [
      label({ input: { voltage: '100-240 V', frequency: '50/60 Hz' }, class: 'II' }),
      gap('5.1 mm'),
      gap('5.6 mm ± 0.2 mm', { id: 'gap-2', to: 'out-plus' }),
      gap('3.2 mm', { id: 'gap-3', path: 'air' }),
      workingVoltage('245 V ± 4 V'),
      touch('0.2 mA ± 0.01 mA'),
      board({ fuse: 'cartridge' }),
      spot('face', '61.5 °C ± 1 K', { under: UNDER }),
      sweep([
        ['0.5', '5.02', '3.1'],
        ['1', '4.98', '6.2'],
        ['1.5', '4.93', '9.3'],
        ['2', '4.88', '12.4'],
        ['2.4', '4.6', '14'],
      ]),
    ],
  };

  it('gives the same bytes twice', () => {
    expect(canonicalText(judge(RICH))).toBe(canonicalText(judge(RICH)));
  });

  it('gives an assessment that its own schema accepts', () => {
    for (const patch of [{}, RICH]) expect(assessmentSchema.safeParse(judge(patch)).error?.issues ?? []).toEqual([]);
  });

  it('does not touch the case: a frozen one is judged to the same bytes', () => {
    const frozen = deepFreeze(buildCase(RICH));
    const before = canonicalText(frozen);
    expect(canonicalText(assess(frozen, new Map()))).toBe(canonicalText(judge(RICH)));
    expect(canonicalText(frozen)).toBe(before);
  });

  it('does not mind the order in which exhibits were written down', () => {
    const findings = (patch: CasePatch): unknown =>
      judge(patch).findings.map(({ id, outcome, margin, probability }) => ({ id, outcome, margin, probability }));
    expect(findings({ ...RICH, exhibits: [...(RICH.exhibits ?? [])].reverse() })).toEqual(findings(RICH));
  });

  it('every finding that decides or doubts is one of the findings, and every deciding one carries the word', () => {
    const assessment = judge({ ...RICH, exhibits: [...(RICH.exhibits ?? []), gap('1.0 mm', { id: 'gap-4', to: 'shell' })] });
    const ids = assessment.findings.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of assessment.verdict.decidedBy)
      expect(findingOf(assessment, id)).toMatchObject({ outcome: 'fail', headline: true, consequence: 'lethal' });
    expect(assessment.verdict.failure).toBe('Dangerous');
    expect(assessment.verdict.decidedBy).toEqual(['shock/barrier@hand', 'shock/creepage@hv-minus~shell']);
  });

  it('temperatures are kept in kelvin and lengths in metres', () => {
    const assessment = judge(RICH);
    expect(findingOf(assessment, 'burn/enclosure-temperature@face').measured).toMatchObject({ value: 334.65, unit: 'K' });
    expect(findingOf(assessment, 'shock/clearance@hv-minus~out-minus').measured).toMatchObject({ value: 0.0032, unit: 'm' });
  });
});

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const member of Object.values(value)) deepFreeze(member);
  }
  return value;
}
