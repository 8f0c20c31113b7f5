import { describe, expect, it } from 'vitest';
import { differences, runOurs, runReference } from '../../../bench/solver/compare.ts';
import { SHORT_CIRCUITS } from './reference-circuits.ts';

/**
 * Against ngspice (a general-purpose circuit simulator) with its own exponential diodes, smooth switch and Gummel-Poon transistors,
 * trapezoidal at reltol 1e-4. Both start from the same charges and look at the same stretch of time; output ripple of the switched
 * circuits is left to the longer runs of bench/solver, since it needs a settled loop.
 */
const SETTLING = 'output ripple';

describe.each(SHORT_CIRCUITS)('$id', (circuit) => {
  it('has the same means, peaks and power in both programs, within what is stated', () => {
    const ours = runOurs(circuit);
    expect(ours.outcome).toBe('completed');
    expect(Math.abs(ours.energy.imbalance)).toBeLessThan(1e-6);
    const reference = runReference(circuit);
    const apart = differences(circuit, ours, reference.values)
      .filter(({ name, share, goal }) => name !== SETTLING && !(share <= goal))
      .map(({ name, ours: mine, theirs }) => `${name}: ours ${mine}, ngspice ${theirs}`);
    expect(apart).toEqual([]);
  }, 180_000);
});
