import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noiseFor } from '../../scripts/demo/noise.ts';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../../src/core/circuit/trace/to-circuit.ts';
import { SEED } from '../property/seed.ts';
import { copyOf } from './copies.ts';
import { INVENTED_CIRCUITS } from './invented-circuits.ts';

const RUNS = 150; // copies of each circuit

describe('who traced the board does not change what it is', () => {
  it.each(INVENTED_CIRCUITS)('$name: renamed, reordered, mirrored, a resistor cut in two, a snubber added', ({ lines }) => {
    const { circuit, crossing } = toCircuit(parseTrace(lines).trace);
    const original = recognise(circuit, crossing);
    const jobOf = (id: string): string | null => original.jobs.get(id)?.job ?? null;
    fc.assert(
      fc.property(fc.nat(), fc.boolean(), fc.boolean(), (seed, split, snubber) => {
        const noise = noiseFor('copies', String(seed));
        const pick = (below: number): number => Math.floor(noise.uniform() * below);
        const copy = copyOf(circuit, crossing, pick, { split, snubber });
        const found = recognise(copy.circuit, copy.crossing);
        expect(found.topology).toEqual(original.topology);
        const jobs = circuit.parts.map(({ id, ref }) => [ref, found.jobs.get(copy.idOf.get(id)!)?.job ?? null]);
        expect(jobs).toEqual(circuit.parts.map(({ id, ref }) => [ref, jobOf(id)]));
        for (const [half, whole] of copy.halves) expect(found.jobs.get(half)?.job ?? null).toBe(jobOf(whole));
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });
});
