import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { stackOf, tape, winding } from '../barrier/hand-solved.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { type Changes, electrical, PRIMARY, SECONDARY } from './electrical-case.ts';

const UNKNOWN = { state: 'unknown', because: 'mark removed' } as const;
const forgotten = undefined as never;
const of = (id: string, changes: Changes = {}): Finding => findingOf(judge(electrical(changes)), id);

describe('core saturation: L I / (N A) against 0.38 T, the least of the usual ferrites', () => {
  const B = 'fire/core-saturation@t1';
  // 1 mH, 100 turns, 19.2 mm²: 0.4 A is 0.208 T, 0.7296 A is 0.38 T
  it.each([
    ['0.4 A is 0.208 T: well inside', { peakCurrent: '0.4 A ± 0 A' }, 'pass', 'met'],
    ['0.9 A is 0.47 T: saturated', { peakCurrent: '0.9 A ± 0 A' }, 'fail', 'notMet'],
    ['0.7296 A ± 0.05 A is at the limit: nobody can tell', { peakCurrent: '0.7296 A ± 0.05 A' }, 'inconclusive', 'withinUncertainty'],
    ['at least 0.9 A saturates', { peakCurrent: '> 0.9 A' }, 'fail', 'notMet'],
    ['at least 0.4 A tells nothing', { peakCurrent: '> 0.4 A' }, 'inconclusive', 'oneSided'],
    ['no doubt stated and 5 % below the limit: blind', { peakCurrent: '0.69 A' }, 'inconclusive', 'uncertaintyUnknown'],
    ['a better ferrite allows more', { peakCurrent: '0.74 A ± 0 A', ferrite: 'PC40' }, 'pass', 'met'],
    ['nobody measured the peak', { peakCurrent: forgotten }, 'notAssessed', 'notLooked'],
    ['a core that nobody knows', { core: 'XX 99' }, 'notAssessed', 'notLooked'],
  ] as const)('%s', (_, stack, outcome, reason) => expect(of(B, { stack })).toMatchObject({ outcome, reason }));

  it('is computed as by hand', () => expect(of(B).measured).toMatchObject({ value: expect.closeTo(0.4 / 1.92, 9), unit: 'T' }));
});

describe('switch: crest of 264 V and the clamp, or the plateau alone', () => {
  const V = 'fire/switch-voltage@t1';
  // 373.4 V + 150 V = 523.4 V
  it.each([
    ['650 V stand 523 V', {}, 'pass', 'met'],
    ['500 V do not', { switchV: '500 V' }, 'fail', 'notMet'],
    [
      'clamp 226 V ± 10 V on 600 V: at the limit',
      { switchV: '600 V', stack: { clamp: '226.6 V ± 10 V' } },
      'inconclusive',
      'withinUncertainty',
    ],
    ['without the clamp the plateau of 428 V passes within 0.8 of 650 V', { stack: { clamp: forgotten } }, 'pass', 'met'],
    ['and is open on 500 V', { switchV: '500 V', stack: { clamp: forgotten } }, 'inconclusive', 'unknownValue'],
    ['and fails on 400 V', { switchV: '400 V', stack: { clamp: forgotten } }, 'fail', 'notMet'],
    ['a rating that could not be read', { switchV: UNKNOWN }, 'inconclusive', 'unknownValue'],
    ['nobody said which part it is', { stack: { switchPart: forgotten } }, 'notAssessed', 'notLooked'],
  ] as const)('%s', (_, changes, outcome, reason) => expect(of(V, changes as Changes)).toMatchObject({ outcome, reason }));
});

describe('rectifier: 5 V and a tenth of the crest of 264 V, 42.3 V', () => {
  const V = 'fire/rectifier-voltage@t1';
  it.each([
    ['60 V stand it within 0.8', {}, 'pass', 'met'],
    ['50 V are open: 42 V is within the rating and beyond 0.8 of it', { rectifierV: '50 V' }, 'inconclusive', 'unknownValue'],
    ['40 V do not stand it', { rectifierV: '40 V' }, 'fail', 'notMet'],
    ['a rating that could not be read', { rectifierV: UNKNOWN }, 'inconclusive', 'unknownValue'],
    [
      'secondary turns lost',
      { stack: { outsideIn: [winding('s', 'output', { ...SECONDARY, turns: UNKNOWN }), tape('t', '3'), winding('p', 'mains', PRIMARY)] } },
      'notAssessed',
      'notLooked',
    ],
  ] as const)('%s', (_, changes, outcome, reason) => expect(of(V, changes as Changes)).toMatchObject({ outcome, reason }));
});

describe('what the transformer can pass: 1 mH, 0.4 A, 100 kHz are 8 W, of which 7.04 W arrive', () => {
  const NOMINAL = 'delivery/power-capability@t1~nominal';
  it.each([
    ['5 W are claimed', {}, 'pass', 'met'],
    ['10 W are claimed', { printed: '2 A' }, 'fail', 'notMet'],
    [
      '7.0 W are claimed: what is lost on the way decides, and that is only estimated',
      { printed: '1.4 A' },
      'inconclusive',
      'withinUncertainty',
    ],
    ['nobody named the law', { stack: { law: forgotten } }, 'notAssessed', 'notLooked'],
    ['the law could not be told', { stack: { law: UNKNOWN } }, 'notAssessed', 'notLooked'],
    ['the inductance was not measured', { stack: { inductance: forgotten } }, 'notAssessed', 'notLooked'],
  ] as const)('%s', (_, changes, outcome, reason) => expect(of(NOMINAL, changes as Changes)).toMatchObject({ outcome, reason }));

  it('a small bulk capacitor cannot hold the rail at 90 V, and less is passed there', () => {
    const small = electrical({ bulk: '2.2 µF ± 0 %', stack: { longestOn: '0.45 ± 0' } });
    const lowest = findingOf(judge(small), 'delivery/power-capability@t1~lowest');
    expect(lowest.outcome).toBe('fail');
    expect(noteKeys(lowest)).toContain('capabilityCut');
    expect(findingOf(judge(small), NOMINAL).outcome).toBe('pass');
  });
});

describe('winding loss: heat in the copper over the power in the core', () => {
  const LOSS = 'fire/winding-loss@t1';
  it('is small with wire of 0.2 and 0.5 mm', () => expect(of(LOSS)).toMatchObject({ outcome: 'pass', consequence: 'disappointing' }));
  it('is large with a hair of a wire', () => {
    const thin = [
      winding('s', 'output', { ...SECONDARY, wire: '0.05 mm ± 0.001 mm', overall: '0.06 mm ± 0.001 mm' }),
      tape('t', '3'),
      winding('p', 'mains', PRIMARY),
    ];
    expect(of(LOSS, { stack: { outsideIn: thin } })).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
  });
  it('is not assessed without the length of a turn', () =>
    expect(of(LOSS, { stack: { meanTurn: forgotten } }).outcome).toBe('notAssessed'));
});

describe('turns counted and ratio seen', () => {
  it('agree: the turns are used', () =>
    expect(of('fire/rectifier-voltage@t1', { stack: { ratioSeen: '10.1 ± 0.2' } }).outcome).toBe('pass'));
  it('contradict each other: neither is used, and it is said once', () => {
    const assessment = judge(electrical({ stack: { ratioSeen: '8.0 ± 0.2' } }));
    for (const id of ['fire/rectifier-voltage@t1', 'fire/switch-voltage@t1', 'delivery/power-capability@t1~nominal'])
      expect(findingOf(assessment, id), id).toMatchObject({ outcome: 'inconclusive', reason: 'contradicted' });
    expect(assessment.warnings.map(({ key }) => key)).toEqual(['ratiosDisagree']);
    expect(assessment.transformers?.[0]?.disagree).toEqual({ counted: 10, seen: 8 });
  });
});

describe('a law is named before anything is computed by it', () => {
  const powerOf = (law: NonNullable<Changes['stack']>['law'], more: Changes['stack'] = {}) =>
    judge(electrical({ stack: { law, ...more } })).transformers?.[0];
  const value = (sheet: ReturnType<typeof powerOf>, key: string): number | undefined =>
    sheet?.numbers.find((one) => one.key === key)?.value.value;

  it('a self-oscillating unit gets no number from a formula that contains a fixed frequency, though one was typed', () => {
    const assessment = judge(electrical({ stack: { law: 'selfOscillating' } }));
    const formulas = new Set(assessment.steps.filter(({ id }) => id.startsWith('transformer/')).map(({ formula }) => formula));
    for (const fixed of [
      'magnetics/power-of-strokes',
      'magnetics/continuous-power',
      'magnetics/boundary-current',
      'magnetics/peak-of-power',
    ])
      expect(formulas, fixed).not.toContain(fixed);
    expect(formulas).toContain('magnetics/boundary-power');
  });

  it('its power is I V Vr / 2 (V + Vr), without the inductance', () => {
    const sheet = powerOf('selfOscillating');
    const [rail, reflected] = [value(sheet, 'valleyAtNominal')!, value(sheet, 'reflected')!];
    expect(value(sheet, 'mostAtNominal')).toBeCloseTo((0.4 * rail * reflected) / (2 * (rail + reflected)), 9);
    const other = powerOf('selfOscillating', { inductance: '2 mH ± 0 %' });
    expect(value(other, 'mostAtNominal')).toBeCloseTo(value(sheet, 'mostAtNominal')!, 9);
  });

  it('a fixed frequency gives L I² f / 2, whatever the rail, while the mode is discontinuous', () =>
    expect(value(powerOf('fixedFrequency'), 'mostAtNominal')).toBeCloseTo(8, 9));

  it('a valley-switched unit needs no frequency, a fixed one does', () => {
    expect(value(powerOf('valleySwitched', { frequency: forgotten }), 'mostAtNominal')).toBeGreaterThan(0);
    expect(powerOf('fixedFrequency', { frequency: forgotten })?.blocked).toContainEqual({ key: 'mostAtNominal', missing: ['frequency'] });
  });

  it('constant current from the primary side gives k n I d / 2, and no other law gives it', () => {
    const sheet = powerOf('primaryCurrent');
    expect(value(sheet, 'heldCurrent')).toBeCloseTo((0.965 * 10 * 0.4 * value(sheet, 'offShare')!) / 2, 9);
    expect(value(powerOf('fixedFrequency'), 'heldCurrent')).toBeUndefined();
  });

  it('what goes in comes out: energy of a stroke times frequency is the power, for every law', () => {
    for (const law of ['fixedFrequency', 'valleySwitched', 'selfOscillating'] as const) {
      const sheet = powerOf(law);
      expect(value(sheet, 'energy')! * value(sheet, 'frequency')!, law).toBeCloseTo(value(sheet, 'mostAtNominal')!, 6);
    }
  });
});

describe('a screen between the windings, as information', () => {
  const layers = (screen: boolean) => [
    winding('s', 'output'),
    tape('a', '3'),
    ...(screen ? [winding('e', 'mains', { role: 'screen' }), tape('b', '1')] : []),
    winding('p', 'mains'),
  ];
  it('is there', () =>
    expect(of('interference/winding-screen@t1', { stack: stackOf(layers(true)) })).toMatchObject({
      outcome: 'pass',
      measured: { word: 'present' },
    }));
  it('is not, which sets no word', () => {
    const assessment = judge(electrical({ stack: stackOf(layers(false)) }));
    expect(findingOf(assessment, 'interference/winding-screen@t1')).toMatchObject({ outcome: 'fail', consequence: 'informative' });
    expect(assessment.verdict.decidedBy).not.toContain('interference/winding-screen@t1');
  });
});

describe('nobody unwound anything', () => {
  it.each([
    'shock/barrier',
    'shock/winding-insulation',
    'shock/wire-insulation',
    'shock/optocoupler',
    'shock/working-voltage',
    'fire/core-saturation',
    'fire/switch-voltage',
    'fire/rectifier-voltage',
    'fire/winding-loss',
    'delivery/power-capability',
    'interference/winding-screen',
  ])('%s is not assessed', (check) => expect(findingsOf(judge(), check)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]));
});
