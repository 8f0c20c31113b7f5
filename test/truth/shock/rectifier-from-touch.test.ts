import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import { openBench } from '../../../src/core/working/bench/bench.ts';
import { gatherFacts } from '../../../src/core/working/facts.ts';
import { type RectifierHint, rectifierFromTouch } from '../../../src/core/working/touch/rectifier-from-touch.ts';
import { buildCase } from '../build-case.ts';
import { AT_HIGHEST_MAINS, CONDUCTORS, touch, touchPeak } from '../evidence-pieces.ts';

// Common practice, no publication: behind a single diode one bulk rail is one pole of the mains, so a capacitor from it to the output is fed in full
// one way round and not at all the other (251 V over 1 nF at 50 Hz is 0.08 mA, or nothing); behind a bridge turning the plug changes nothing.
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
const B = { id: 'touch-b', under: { ...AT_HIGHEST_MAINS, orientation: 'B' } } as const;
const hints = (...exhibits: Exhibit[]): RectifierHint[] =>
  rectifierFromTouch(gatherFacts(openBench(buildCase({ conductors: CONDUCTORS, exhibits }), new Map())).touch);
const says = (...exhibits: Exhibit[]): string | undefined => hints(...exhibits)[0]?.says;

describe('what turning the plug says of the rectifier', () => {
  it('80 µA one way and 3 µA the other: one conductor; the difference is 77 µA', () => {
    const [hint] = hints(touch('80 µA ± 2 µA'), touch('3 µA ± 2 µA', B));
    expect(hint).toMatchObject({ from: 'out-minus', says: 'oneConductor' });
    expect(hint?.difference.value).toBeCloseTo(77e-6, 12);
    expect(says(touch('3 µA ± 2 µA'), touch('80 µA ± 2 µA', B))).toBe('oneConductor');
  });

  it('54 µA and 56 µA, each within 4 µA, are alike as behind a bridge', () => {
    expect(says(touch('54 µA ± 4 µA'), touch('56 µA ± 4 µA', B))).toBe('symmetric');
  });

  it('80 µA and 60 µA differ, but a single diode would leave only strays: it cannot be told', () => {
    expect(says(touch('80 µA ± 2 µA'), touch('60 µA ± 2 µA', B))).toBe('cannotTell');
  });

  it('doubts that hide a difference, and doubts that nobody stated, tell nothing', () => {
    expect(says(touch('80 µA ± 60 µA'), touch('30 µA ± 60 µA', B))).toBe('cannotTell');
    expect(says(touch('54 µA ± 30 µA'), touch('56 µA ± 30 µA', B))).toBe('cannotTell');
    expect(says(touch('80 µA'), touch('3 µA', B))).toBe('cannotTell');
    expect(says(touch('0 µA ± 1 µA'), touch('0 µA ± 1 µA', B))).toBe('cannotTell');
  });

  it('one way only, one behind an isolating supply, or a bound, gives no hint', () => {
    expect(hints(touch('80 µA ± 2 µA'))).toEqual([]);
    expect(hints(touch('80 µA ± 2 µA'), touch('3 µA ± 2 µA', { ...B, under: { ...B.under, supply: 'isolating' } }))).toEqual([]);
    expect(hints(touch('80 µA ± 2 µA'), touch('< 3 µA', B))).toEqual([]);
  });

  it('peak and rms readings are not mixed', () => {
    expect(hints(touch('80 µA ± 2 µA'), touchPeak('3 µA ± 2 µA', B))).toEqual([]);
  });

  it('the greatest of two readings one way counts', () => {
    expect(
      hints(touch('70 µA ± 2 µA'), touch('80 µA ± 2 µA', { id: 'touch-a2' }), touch('3 µA ± 2 µA', B))[0]?.difference.value,
    ).toBeCloseTo(77e-6, 12);
  });
});
