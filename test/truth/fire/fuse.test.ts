import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { board } from '../evidence-pieces.ts';

// A fuse is a part made to break: a printed track or a plain resistor is none (IEC 60127, memory; a rule without a ratio, so it is headlined).
type Fuse = NonNullable<Parameters<typeof board>[0]>['fuse'];
const judged = (fuse: Fuse): Finding => findingOf(judge({ exhibits: [board(fuse === undefined ? {} : { fuse })] }), 'fire/fuse@mains');

describe('the first part behind the plug', () => {
  it.each(['cartridge', 'wire', 'fusibleResistor'] as const)('a %s is a fuse, and how much it can break is said to be open', (kind) => {
    const finding = judged(kind);
    expect(finding).toMatchObject({ outcome: 'pass', reason: 'met', measured: { word: kind }, margin: null, probability: null });
    expect(noteKeys(finding)).toContain('breakingNotJudged');
  });

  it.each(['track', 'plainResistor'] as const)('a %s is none: Unsafe, on a rule and so without a doubtful word', (kind) => {
    const assessment = judge({ exhibits: [board({ fuse: kind })] });
    expect(findingOf(assessment, 'fire/fuse@mains')).toMatchObject({
      outcome: 'fail',
      reason: 'notMet',
      consequence: 'injurious',
      headline: true,
      limit: { grade: 'memory' },
    });
    expect(assessment.verdict).toMatchObject({ failure: 'Unsafe', doubtful: null, decidedBy: ['fire/fuse@mains'] });
  });

  it('looked for and not there is a failure, with the word of the person who looked', () => {
    const finding = judged({ state: 'absent', because: 'the pin is soldered to the bridge' });
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true, measured: { word: 'noFuse' } });
    expect(finding.notes).toContainEqual({ key: 'because', args: { because: 'the pin is soldered to the bridge' } });
  });

  it('could not tell is inconclusive, cannot now is not assessed, a struck word is not assessed', () => {
    expect(judged({ state: 'unknown', because: 'potted' })).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged({ state: 'cannotNow', since: 'burnt' })).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(judged({ v: 'cartridge', struck: 'that was the varistor' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('nobody looked: not assessed', () => {
    for (const patch of [{}, { exhibits: [board()] }, { exhibits: [board({ fuse: { state: 'notLooked' } })] }])
      expect(findingsOf(judge(patch), 'fire/fuse')).toMatchObject([{ id: 'fire/fuse', outcome: 'notAssessed', reason: 'notLooked' }]);
  });

  it('a struck note of a good fuse gives way to a later note of a track', () => {
    const assessment = judge({ exhibits: [board({ fuse: 'cartridge', struck: 'another unit' }), board({ id: 'board-2', fuse: 'track' })] });
    expect(findingOf(assessment, 'fire/fuse@mains')).toMatchObject({ outcome: 'fail', measured: { word: 'track' } });
  });

  it('only a struck note: not assessed, and the reason is that it was struck', () => {
    expect(findingsOf(judge({ exhibits: [board({ fuse: 'cartridge', struck: 'another unit' })] }), 'fire/fuse')).toMatchObject([
      { outcome: 'notAssessed', reason: 'struck' },
    ]);
  });

  it('two notes that contradict each other: the worse counts', () => {
    const assessment = judge({ exhibits: [board({ fuse: 'cartridge' }), board({ id: 'board-2', fuse: 'track' })] });
    expect(findingOf(assessment, 'fire/fuse@mains').outcome).toBe('fail');
  });
});

describe('what a fuse can break', () => {
  // IEC 60127-2: L 35 A and E 150 A (memory), H 1500 A (secondary: makers' data sheets)
  it('stands beside a cartridge and a wire, by letter, and beside nothing else', () => {
    for (const kind of ['cartridge', 'wire'] as const)
      expect(judged(kind).notes).toContainEqual({ key: 'breakingByLetter', args: { low: 35, enhanced: 150, high: 1500 } });
    for (const kind of ['fusibleResistor', 'track', 'plainResistor'] as const)
      expect(noteKeys(judged(kind))).not.toContain('breakingByLetter');
  });
});
