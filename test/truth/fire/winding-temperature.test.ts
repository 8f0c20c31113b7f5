import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { spot, TRANSFORMER, usbPort, WARM, winding } from '../evidence-pieces.ts';

// Limits by thermocouple: class A 90 °C and B 110 °C (IEC 60950-1 clause 4.5, secondary: published test reports), E 105, F 130, H 155 °C (memory).
// Highest ambient 40 °C (house default). Part temperature follows the ambient by 1.00 to 1.15 K per K, 1.075 taken, rectangular (practice of the bench).
// With the room at 40 °C nothing is scaled: the doubt of the reading alone decides, and P can be done by hand.
type Spot = Parameters<typeof spot>;
const HOT_ROOM = { ...WARM, ambient: '40 °C ± 0 K', loads: [...WARM.loads] };
const with_ = (
  value: Spot[1],
  windingClass: Parameters<typeof winding>[0],
  under: NonNullable<Spot[2]>['under'] = HOT_ROOM,
): CasePatch => ({
  ports: [usbPort()],
  parts: [TRANSFORMER],
  places: [winding(windingClass)],
  exhibits: [spot('winding', value, { under })],
});
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'fire/winding-temperature@winding');

describe('a winding of class B in a room at the highest ambient', () => {
  it('110 °C exactly is undecided', () => {
    const finding = judged(with_('110 °C ± 2 K', 'B'));
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.limit?.at?.value).toBeCloseTo(383.15, 9);
    expect(finding.margin).toBeCloseTo(1, 9);
    expect(finding.probability).toBeCloseTo(0.5, 6);
  });

  it('108 °C passes and 112 °C fails, two standard uncertainties away; the ratio is rise over permitted rise', () => {
    const inside = judged(with_('108 °C ± 2 K', 'B'));
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met', state: 'labelLoad' });
    expect(inside.probability).toBeCloseTo(0.977249868, 5);
    expect(inside.margin).toBeCloseTo(68 / 70, 9);
    expect(inside.rise).toEqual({ found: expect.closeTo(68, 9), permitted: expect.closeTo(70, 9), ambient: expect.closeTo(313.15, 9) });
    const outside = judged(with_('112 °C ± 2 K', 'B'));
    expect(outside).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
    expect(outside.probability).toBeCloseTo(0.022750132, 5);
    expect(outside.margin).toBeCloseTo(72 / 70, 9);
  });

  it('a doubt of twenty kelvin decides nothing at 100 °C', () => {
    expect(judged(with_('100 °C ± 20 K', 'B'))).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
  });

  it('without a doubt stated, a tenth of the permitted rise either way is undecided', () => {
    expect(judged(with_('104 °C', 'B'))).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
    expect(judged(with_('102 °C', 'B'))).toMatchObject({ outcome: 'pass', probability: null });
    expect(judged(with_('118 °C', 'B'))).toMatchObject({ outcome: 'fail', probability: null });
  });

  it('above 120 °C fails, below 90 °C passes, below 130 °C is open', () => {
    expect(judged(with_('> 120 °C', 'B'))).toMatchObject({ outcome: 'fail' });
    expect(judged(with_('< 90 °C', 'B'))).toMatchObject({ outcome: 'pass' });
    expect(judged(with_('< 130 °C', 'B'))).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });
});

describe('other classes', () => {
  it.each([
    ['A', 90],
    ['E', 105],
    ['B', 110],
    ['F', 130],
    ['H', 155],
  ] as const)('class %s stands %d °C by thermocouple', (windingClass, celsius) => {
    const finding = judged(with_('60 °C ± 1 K', windingClass));
    expect(finding.limit?.at?.value).toBeCloseTo(celsius + 273.15, 9);
    expect(finding.outcome).toBe('pass');
  });

  it('class F is known from memory only: 140 °C is a doubtful Unsafe, 160 °C is beyond 1.3 and headlined', () => {
    const little = judge(with_('140 °C ± 2 K', 'F')); // rise 100 over 90: 1.11
    expect(findingOf(little, 'fire/winding-temperature@winding')).toMatchObject({
      outcome: 'fail',
      headline: false,
      limit: { grade: 'memory' },
    });
    expect(little.verdict).toMatchObject({
      failure: 'No verdict yet',
      doubtful: 'Unsafe',
      doubtfulBy: ['fire/winding-temperature@winding'],
      decidedBy: [],
    });
    const much = judge(with_('160 °C ± 2 K', 'F')); // rise 120 over 90: 1.33; 117 K is 1.3, three standard uncertainties below
    expect(findingOf(much, 'fire/winding-temperature@winding')).toMatchObject({ outcome: 'fail', headline: true });
    expect(much.verdict).toMatchObject({ failure: 'Unsafe', doubtful: null, grade: 'memory' });
  });

  it('beyond 1.3 but not surely is not headlined', () => {
    expect(judged(with_('158 °C ± 4 K', 'F'))).toMatchObject({ outcome: 'fail', headline: false }); // 1.3 lies at 157 °C, half a standard uncertainty below
  });

  it('a class that nobody knows is inconclusive at any temperature, a class not looked for is not assessed', () => {
    expect(judged(with_('50 °C ± 1 K', { state: 'unknown', because: 'no mark' }))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged(with_('50 °C ± 1 K', undefined))).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });
});

describe('scaling to the highest ambient', () => {
  const room = (value: string): Finding => judged(with_(value, 'B', { ...HOT_ROOM, ambient: '25 °C ± 0 K' }));

  it('90 °C at 25 °C is 106.1 °C at 40 °C, with 0.65 K of doubt from the factor', () => {
    // 90 + 1.075 × 15 = 106.125 °C; u = √(1² + (15 × 0.075/√3)²) = 1.1926 K; z = (110 - 106.125)/1.1926 = 3.249
    const finding = room('90 °C ± 2 K');
    expect(finding.measured).toMatchObject({ unit: 'K' });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(379.275, 9);
    expect('value' in finding.measured! ? finding.measured.u : 0).toBeCloseTo(1.192424, 4);
    expect(finding.outcome).toBe('pass');
    expect(finding.probability).toBeCloseTo(0.999422, 5);
    expect(noteKeys(finding)).toContain('scaledToHighestAmbient');
  });

  it('100 °C in a room of 25 °C fails although it reads below 110 °C', () => {
    expect(room('100 °C ± 2 K')).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
  });
});

describe('temperatures that cannot be compared', () => {
  const without = (key: 'mains' | 'ambient' | 'cover' | 'minutes' | 'loads'): Finding => {
    const { [key]: _left, ...under } = HOT_ROOM;
    return judged(with_('60 °C ± 1 K', 'B', under));
  };

  it.each(['mains', 'ambient', 'cover', 'minutes', 'loads'] as const)('a reading without %s is kept and not comparable', (key) => {
    const finding = without(key);
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(finding.notes.find((note) => note.key === 'conditionsMissing')?.args['missing']).toContain(key);
  });

  it('with the cover off the winding is at least as hot when closed: it can fail, never pass', () => {
    const open = (value: string): Finding => judged(with_(value, 'B', { ...HOT_ROOM, cover: 'open' }));
    expect(open('60 °C ± 1 K')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(open('120 °C ± 2 K')).toMatchObject({ outcome: 'fail' });
    expect(noteKeys(open('120 °C ± 2 K'))).toContain('coverOpenAtLeast');
  });

  it('with the cover off and a doubt that nobody knows, a reading within a tenth of the limit does not fail', () => {
    expect(judged(with_('112 °C', 'B', { ...HOT_ROOM, cover: 'open' })).outcome).toBe('inconclusive');
  });

  it('bare metal under a camera is refused, and so is a surface of unknown emissivity', () => {
    const camera = (emissivity: string | undefined): Finding => {
      const place = { ...winding('B'), ...(emissivity === undefined ? {} : { emissivity }) };
      const rows = [{ id: 'one', place: 'winding', value: '60 °C ± 1 K', by: 'infrared', cameraEmissivity: '0.95' }] as const;
      return judged({
        ...with_('60 °C', 'B'),
        places: [place],
        exhibits: [spot('winding', '60 °C', { under: HOT_ROOM, rows: [...rows] })],
      });
    };
    expect(camera('0.2')).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
    expect(camera(undefined)).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
    expect(camera('0.95')).toMatchObject({ outcome: 'pass' });
  });

  it('the states of a temperature', () => {
    expect(findingsOf(judge(), 'fire/winding-temperature')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged(with_({ state: 'unknown', because: 'the wire came off' }, 'B'))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged(with_({ state: 'cannotNow', since: 'unwound' }, 'B'))).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(judged(with_({ v: '150 °C', struck: 'wire came off' }, 'B'))).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged(with_({ state: 'absent', because: 'no transformer' }, 'B')).outcome).not.toBe('pass');
  });
});

describe('rows with a room of their own', () => {
  it('two windings in one exhibit, each read with its own ambient, are both judged', () => {
    const rows = [
      { id: 'one', place: 'winding', value: { v: '60 °C ± 1 K', under: { ambient: '39 °C ± 0 K' } }, by: 'contact' },
      { id: 'two', place: 'winding-2', value: { v: '112 °C ± 2 K', under: { ambient: '40 °C ± 0 K' } }, by: 'contact' },
    ] as const;
    const places = [winding('B'), { ...winding('B'), id: 'winding-2', name: 'second winding' }];
    const assessment = judge({
      ...with_('60 °C', 'B'),
      places,
      exhibits: [spot('winding', '60 °C', { under: HOT_ROOM, rows: [...rows] })],
    });
    expect(findingOf(assessment, 'fire/winding-temperature@winding').outcome).toBe('pass');
    expect(findingOf(assessment, 'fire/winding-temperature@winding-2').outcome).toBe('fail');
  });
});

describe('a winding temperature worked out from its resistance', () => {
  // The mean of all turns may be 10 K above what a thermocouple may find: class B 120 °C (secondary: a report's 95 K of rise at 25 °C).
  const byResistance = (value: string, windingClass: Parameters<typeof winding>[0]): Finding => {
    const patch = with_(value, windingClass);
    const [first] = patch.exhibits ?? [];
    if (first?.kind !== 'spots') throw new Error('a spot was expected');
    return judged({ ...patch, exhibits: [{ ...first, rows: first.rows.map((row) => ({ ...row, by: 'resistance' as const })) }] });
  };

  it('is held against a limit 10 K higher: 118 °C passes class B, 122 °C fails', () => {
    expect(byResistance('118 °C ± 2 K', 'B')).toMatchObject({
      outcome: 'pass',
      limit: { at: { value: expect.closeTo(393.15, 9) }, grade: 'secondary' },
    });
    expect(byResistance('122 °C ± 2 K', 'B')).toMatchObject({ outcome: 'fail', headline: true });
    expect(byResistance('98 °C ± 2 K', 'A').limit?.at?.value).toBeCloseTo(373.15, 9);
  });
});
