import { describe, expect, it } from 'vitest';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../../src/core/circuit/trace/to-circuit.ts';
import { INVENTED_CIRCUITS } from './invented-circuits.ts';

describe('a supply is recognised from its graph', () => {
  it.each(INVENTED_CIRCUITS)('$name', ({ lines, topology, jobs }) => {
    const { trace, refusals } = parseTrace(lines);
    expect(refusals).toEqual([]);
    const { circuit, crossing } = toCircuit(trace);
    const found = recognise(circuit, crossing);
    expect(found.topology).toEqual(topology);
    const got = Object.fromEntries(Object.keys(jobs).map((ref) => [ref, found.jobs.get(ref.toLowerCase())?.job ?? null]));
    expect(got).toEqual(jobs);
  });
});
