import { describe, expect, it } from 'vitest';
import type { Assessment, Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { across, board, CONDUCTORS, type PartInput } from '../evidence-pieces.ts';

// What may stand across the barrier: one Y1, or two equal Y2 in series (IEC 62368-1 annex G.11 and table G.12 with IEC 60384-14: secondary,
// a test laboratory's answers and a safety engineers' list). One Y2 is basic insulation (secondary, the same answers). An ordinary capacitor, an X
// capacitor or a wire may not stand there at any value (memory; a rule without a ratio).
const parts = (...own: PartInput[]): CasePatch => ({ conductors: CONDUCTORS, parts: own });
const judged = (patch: CasePatch, path: string): Finding => findingOf(judge(patch), `shock/bridging-part@${path}`);
const line = (assessment: Assessment): string | undefined =>
  assessment.verdict.cells.shock.find(({ check }) => check === 'shock/bridging-part')?.state;
const GOOD = { identity: 'established', value: '1 nF' } as const;
const straight = (more: Partial<PartInput>): Finding => judged(parts(across('c1', 'hv-minus', 'out-minus', more)), 'c1');
const series = (one: Partial<PartInput>, two: Partial<PartInput>): Finding =>
  judged(parts(across('c1', 'hv-minus', 'middle', one), across('c2', 'middle', 'out-minus', two)), 'c1+c2');

describe('one part across the barrier', () => {
  it('a Y1 whose identity is established may stand there, and the household standard is said to differ', () => {
    const finding = straight({ ...GOOD, safetyClass: 'Y1' });
    expect(finding).toMatchObject({
      outcome: 'pass',
      reason: 'met',
      rung: 'reinforcedMet',
      measured: { word: 'Y1' },
      margin: null,
      probability: null,
    });
    expect(finding.limit?.words).toEqual(['Y1', 'Y2+Y2']);
    expect(noteKeys(finding)).toContain('householdStandardDiffers');
  });

  it('a Y1 that is only claimed is inconclusive: certified means nothing before the part is known to be what it says', () => {
    for (const identity of ['claimed', { state: 'unknown', because: 'the marking is smeared' }] as const) {
      const finding = straight({ safetyClass: 'Y1', identity });
      expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
      expect(noteKeys(finding)).toContain('identityNotEstablished');
    }
    expect(straight({ safetyClass: 'Y1' }).outcome).toBe('inconclusive');
  });

  it('an ordinary ceramic or film capacitor bridges the barrier, and the unit is Dangerous', () => {
    for (const kind of ['ceramicCapacitor', 'filmCapacitor', 'electrolyticCapacitor'] as const) {
      const assessment = judge(
        parts(
          across('c1', 'hv-minus', 'out-minus', {
            kind,
            value: '1 nF',
            safetyClass: { state: 'absent', because: 'marked 102 1KV and nothing else' },
          }),
        ),
      );
      expect(findingOf(assessment, 'shock/bridging-part@c1')).toMatchObject({
        outcome: 'fail',
        rung: 'bridgedOrAbsent',
        consequence: 'lethal',
        headline: true,
      });
      expect(assessment.verdict.failure).toBe('Dangerous');
    }
  });

  it('an X capacitor, a Y3 and a Y4 may not stand there however small', () => {
    for (const safetyClass of ['X1', 'X2', 'X3', 'Y3', 'Y4'] as const)
      expect(straight({ ...GOOD, value: '10 pF', safetyClass })).toMatchObject({
        outcome: 'fail',
        rung: 'bridgedOrAbsent',
        consequence: 'lethal',
      });
  });

  it('one Y2 is basic, not reinforced', () => {
    expect(straight({ ...GOOD, safetyClass: 'Y2' })).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
      headline: true,
      measured: { word: 'Y2' },
    });
  });

  it('one Y2 towards earth is enough, an X2 is not', () => {
    const towardsEarth = (safetyClass: 'Y2' | 'X2'): Finding =>
      judged(parts(across('c1', 'line', 'earth', { ...GOOD, safetyClass })), 'c1');
    expect(towardsEarth('Y2')).toMatchObject({ outcome: 'pass', rung: 'basicMet' });
    expect(towardsEarth('X2')).toMatchObject({ outcome: 'fail', rung: 'bridgedOrAbsent' });
  });

  it('a wire, a coil, a fuse or a diode bridges it', () => {
    for (const kind of ['jumper', 'inductor', 'fuse', 'diode', 'varistor'] as const)
      expect(straight({ kind })).toMatchObject({ outcome: 'fail', rung: 'bridgedOrAbsent', consequence: 'lethal' });
  });

  it('a part with a foot on the mains, one on earth and one on the output is asked for what the output needs', () => {
    const pins = ['line', 'earth', 'out-minus'].map((net, index) => ({ pin: String(index + 1), net }));
    const outcomes = findingsOf(
      judge(parts({ ...across('c1', 'line', 'earth', { ...GOOD, safetyClass: 'Y2' }), pins })),
      'shock/bridging-part',
    ).map(({ outcome }) => outcome);
    expect(outcomes.some((outcome) => outcome === 'fail' || outcome === 'inconclusive')).toBe(true);
  });

  it('a resistor has no limit here: inconclusive, never a pass', () => {
    expect(straight({ kind: 'resistor', value: '10 MΩ' })).toMatchObject({ outcome: 'inconclusive', reason: 'limitUnknown' });
  });

  it('a shell counts as an output', () => {
    expect(judged(parts(across('c1', 'line', 'shell', { ...GOOD, safetyClass: 'Y2' })), 'c1')).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
    });
  });

  it('transformers and optocouplers are asked by other checks', () => {
    expect(findingsOf(judge(parts(across('t1', 'hv-minus', 'out-minus', { kind: 'transformer' }))), 'shock/bridging-part')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });
});

describe('two parts in series', () => {
  const y2 = { ...GOOD, safetyClass: 'Y2' } as const;

  it('two equal Y2 may stand there, within the tolerance of their values', () => {
    expect(series(y2, y2)).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet', measured: { word: 'Y2+Y2' } });
    expect(series(y2, { ...y2, value: '1.2 nF' })).toMatchObject({ outcome: 'pass' });
  });

  it('two Y2 of unlike value do not make reinforced, but two are never worse than one', () => {
    const unlike = series(y2, { ...y2, value: '4.7 nF' });
    expect(unlike.outcome).toBe('fail');
    expect(unlike).toMatchObject({ rung: 'basicNotReinforced' });
    expect(unlike.consequence).not.toBe('lethal');
  });

  it('two Y2 whose values nobody wrote down are undecided, not bridged', () => {
    const bare = { safetyClass: 'Y2', identity: 'established' } as const;
    expect(series(bare, bare).outcome).toBe('inconclusive');
  });

  it('a Y2 in series with an ordinary capacitor is at best one Y2', () => {
    expect(series(y2, { safetyClass: { state: 'absent', because: 'no mark' } })).toMatchObject({ outcome: 'fail' });
  });

  it('a bead or a wire link in series with a good Y1 takes nothing from it', () => {
    const y1 = { ...GOOD, safetyClass: 'Y1' } as const;
    for (const kind of ['inductor', 'jumper'] as const) {
      expect(series(y1, { kind }).outcome).not.toBe('fail');
      expect(series({ kind }, y1).outcome).not.toBe('fail');
    }
  });

  it('an ordinary capacitor in series with a good Y1 takes nothing from it', () => {
    expect(series({ ...GOOD, safetyClass: 'Y1' }, { safetyClass: { state: 'absent', because: 'no mark' } }).outcome).not.toBe('fail');
  });

  it('two wires in series bridge the barrier', () => {
    expect(series({ kind: 'jumper' }, { kind: 'inductor' })).toMatchObject({
      outcome: 'fail',
      rung: 'bridgedOrAbsent',
      consequence: 'lethal',
    });
  });
});

describe('what is not known about a bridging part', () => {
  it('the five states of a safety class', () => {
    expect(straight({ ...GOOD })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(straight({ ...GOOD, safetyClass: { state: 'notLooked' } })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(straight({ ...GOOD, safetyClass: { state: 'unknown', because: 'burnt' } })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(straight({ ...GOOD, safetyClass: { state: 'cannotNow', since: 'gone' } })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'cannotNow',
    });
    expect(straight({ ...GOOD, safetyClass: { v: 'Y1', struck: 'read off the wrong part' } })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'struck',
    });
  });

  it('a part whose kind nobody can tell is inconclusive; one whose kind can no longer be told is not assessed and not asked for again', () => {
    expect(straight({ kind: { state: 'unknown', because: 'a brown lump' } })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    const assessment = judge(parts(across('c1', 'hv-minus', 'out-minus', { kind: { state: 'cannotNow', since: 'desoldered' } })));
    expect(findingOf(assessment, 'shock/bridging-part@c1')).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(assessment.next.flatMap(({ settles }) => settles)).not.toContain('shock/bridging-part');
  });

  it('nobody looked: not assessed. Somebody looked for suppression parts and found none: does not apply', () => {
    expect(findingsOf(judge(), 'shock/bridging-part')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    const none = board({ suppression: { state: 'absent', because: 'no part has feet on both sides' } });
    expect(findingsOf(judge({ exhibits: [none] }), 'shock/bridging-part')).toMatchObject([
      { outcome: 'notApplicable', reason: 'doesNotApply' },
    ]);
  });

  it('a struck note of the board no longer says that nothing bridges the barrier', () => {
    const none = board({ struck: 'that was another board', suppression: { state: 'absent', because: 'none seen' } });
    expect(findingsOf(judge({ exhibits: [none] }), 'shock/bridging-part')).toMatchObject([{ outcome: 'notAssessed' }]);
  });

  it('an ordinary capacitor beside a good Y1 decides the line of the check', () => {
    const assessment = judge(
      parts(
        across('c1', 'hv-minus', 'out-minus', { ...GOOD, safetyClass: 'Y1' }),
        across('c2', 'line', 'out-plus', { safetyClass: { state: 'absent', because: 'no mark' } }),
      ),
    );
    expect(findingOf(assessment, 'shock/bridging-part@c1').outcome).toBe('pass');
    expect(findingOf(assessment, 'shock/bridging-part@c2').outcome).toBe('fail');
    expect(assessment.verdict).toMatchObject({ failure: 'Dangerous', decidedBy: ['shock/barrier@hand', 'shock/bridging-part@c2'] });
  });

  it('an ordinary capacitor from the mains to a net whose side nobody could tell keeps the check open', () => {
    const doubtful = across('c2', 'line', 'screw', { safetyClass: { state: 'absent', because: 'no mark' } });
    expect(line(judge(parts(across('c1', 'hv-minus', 'out-minus', { ...GOOD, safetyClass: 'Y1' }), doubtful)))).not.toBe('settled');
  });

  it('a capacitor whose second foot nobody could follow keeps the check open', () => {
    const lost: PartInput = {
      ...across('c2', 'line', 'line'),
      pins: [
        { pin: '1', net: 'line' },
        { pin: '2', net: { state: 'unknown', because: 'under the transformer' } },
      ],
    };
    expect(line(judge(parts(across('c1', 'hv-minus', 'out-minus', { ...GOOD, safetyClass: 'Y1' }), lost)))).not.toBe('settled');
  });

  it('three parts in a row across the barrier are seen', () => {
    const conductors = [...CONDUCTORS, { id: 'middle-2', name: 'second middle net', side: 'floating' } as const];
    const row = [
      across('j1', 'line', 'middle', { kind: 'jumper' }),
      across('c2', 'middle', 'middle-2', { safetyClass: { state: 'absent', because: 'no mark' } }),
      across('j2', 'middle-2', 'out-plus', { kind: 'jumper' }),
    ];
    const good = across('c1', 'hv-minus', 'out-minus', { ...GOOD, safetyClass: 'Y1' });
    expect(line(judge({ conductors, parts: [good] }))).toBe('settled');
    const outcomes = findingsOf(judge({ conductors, parts: [good, ...row] }), 'shock/bridging-part').map(({ outcome }) => outcome);
    expect(outcomes.some((outcome) => outcome === 'fail' || outcome === 'inconclusive')).toBe(true);
  });
});
