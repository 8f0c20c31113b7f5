import { describe, expect, it } from 'vitest';
import { openBench } from '../../../src/core/working/bench/bench.ts';
import { impulseStood } from '../../../src/core/working/board/impulse-stood.ts';
import { gatherFacts } from '../../../src/core/working/facts.ts';
import { buildCase } from '../build-case.ts';
import { across, type PartInput } from '../evidence-pieces.ts';

// IEC 60384-14 (secondary: makers' pages): X1 4 kV, X2 2.5 kV, Y1 8 kV, Y2 5 kV, Y4 2.5 kV; of X1, X2 and Y2 over the root of the microfarads above 1 µF.
// The mains of 230 V in category II brings 2500 V (IEC 60664-1 table F.1).
const stood = (safetyClass: string, part: Partial<PartInput>) => {
  const one = buildCase({ parts: [across('cx', 'line', 'neutral', part)], ...nets });
  return impulseStood(gatherFacts(openBench(one, new Map())), one.parts[0]!, safetyClass);
};
const nets = {
  conductors: [
    { id: 'line', name: 'line', side: 'mains' as const },
    { id: 'neutral', name: 'neutral', side: 'mains' as const },
  ],
};

describe('the impulse that a capacitor across the mains has stood', () => {
  it('X2 of 330 nF: 2500 V, as much as comes', () => {
    expect(stood('X2', { value: '330 nF' })?.volts.value).toBe(2500);
    expect(stood('X2', { value: '330 nF' })?.notes).toEqual([{ key: 'impulseStood', args: { volts: 2500, comes: 2500 } }]);
  });

  it('X2 of 4 µF: 1250 V, less than comes; measured outranks marked', () => {
    expect(stood('X2', { value: '4 µF' })?.notes).toEqual([{ key: 'impulseTooLow', args: { volts: 1250, comes: 2500 } }]);
    expect(stood('X2', { value: '1 µF', measured: '4 µF' })?.volts.value).toBe(1250);
  });

  it('Y1 stands 8000 V whatever its size', () => expect(stood('Y1', {})?.volts.value).toBe(8000));

  it('nothing is said of a size that nobody read, or of X3, whose figure was read nowhere', () => {
    expect(stood('X2', {})).toBeNull();
    expect(stood('X3', { value: '100 nF' })).toBeNull();
  });
});
