import { describe } from 'vitest';
import { itStandsItsRating } from '../component-rows.ts';

// 105 °C: a published IEC 60950-1 test report, table 4.5 (secondary). 85 °C, the other common type: memory.
describe('an electrolytic capacitor', () => {
  itStandsItsRating({
    check: 'endurance/capacitor-temperature',
    part: { id: 'c1', ref: 'C1', kind: 'electrolyticCapacitor' },
    least: 85,
    most: 105,
    consequence: 'disappointing',
    headlined: true,
  });
});
