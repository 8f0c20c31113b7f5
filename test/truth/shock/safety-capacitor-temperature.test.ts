import { describe, expect, it } from 'vitest';
import { findingsOf, judge } from '../build-case.ts';
import { itStandsItsRating, onPart } from '../component-rows.ts';

// 125 °C: a published IEC 60950-1 test report, table 4.5 (secondary). 85 °C for one without a mark: memory.
const CHECK = 'shock/safety-capacitor-temperature';

describe('a capacitor across the barrier', () => {
  itStandsItsRating({
    check: CHECK,
    part: { id: 'cy1', ref: 'CY1', kind: 'ceramicCapacitor', safetyClass: 'Y1' },
    least: 85,
    most: 125,
    consequence: 'injurious',
    headlined: true,
  });

  it('an X capacitor keeps nothing away from a hand and is not asked', () => {
    const patch = onPart({ id: 'cx1', ref: 'CX1', kind: 'filmCapacitor', safetyClass: 'X2' }, '120 °C ± 1 K');
    expect(findingsOf(judge(patch), CHECK)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
