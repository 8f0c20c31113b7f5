import { describe, expect, it } from 'vitest';
import { findingOf, judge } from '../build-case.ts';
import { itStandsItsRating, onPart } from '../component-rows.ts';

// 100 to 110 °C by type: memory, so a failure by little is a doubtful word.
const OPTOCOUPLER = { id: 'u2', ref: 'U2', kind: 'optocoupler' } as const;
const CHECK = 'shock/optocoupler-temperature';

describe('an optocoupler', () => {
  itStandsItsRating({ check: CHECK, part: OPTOCOUPLER, least: 100, most: 110, consequence: 'injurious', headlined: false });

  it('far beyond is headlined although the figure is from memory: a rise of 95 K over 70 K is 1.36', () => {
    expect(findingOf(judge(onPart(OPTOCOUPLER, '135 °C ± 2 K')), `${CHECK}@spot`)).toMatchObject({
      outcome: 'fail',
      headline: true,
      limit: { grade: 'memory' },
    });
  });
});
