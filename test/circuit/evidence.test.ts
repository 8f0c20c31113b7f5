import { describe, expect, it } from 'vitest';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { printTrace } from '../../src/core/circuit/trace/print-trace.ts';
import { openBench } from '../../src/core/working/bench/bench.ts';
import { toEvidence } from '../../src/core/working/circuit/to-evidence.ts';
import { toTrace } from '../../src/core/working/circuit/to-trace.ts';
import { tracedCircuit } from '../../src/core/working/circuit/traced-circuit.ts';
import { buildCase } from '../truth/build-case.ts';
import { INVENTED_CIRCUITS } from './invented-circuits.ts';

describe('lines, case and lines again', () => {
  it.each(INVENTED_CIRCUITS)('$name: the case holds every part, and its circuit is the same supply', ({ lines, topology }) => {
    const { trace } = parseTrace(lines);
    const one = buildCase(toEvidence(trace));
    expect(toTrace(one).parts).toEqual(trace.parts);
    const again = parseTrace(printTrace(toTrace(one)));
    expect(again.refusals).toEqual([]);
    expect(again.trace.parts).toEqual(trace.parts);
    const traced = tracedCircuit(openBench(one, new Map()))!;
    expect(recognise(traced.circuit, traced.crossing).topology).toEqual(topology);
  });

  it('a side that follows is written into the case, a net that nothing leads to stays not looked at', () => {
    const { conductors } = toEvidence(parseTrace('mains: L\nR1 1k: L, A\nR2 1k: X, Y').trace);
    expect(conductors.map(({ id, side }) => [id, side])).toEqual([
      ['l', 'mains'],
      ['a', 'mains'],
      ['x', { state: 'notLooked' }],
      ['y', { state: 'notLooked' }],
    ]);
  });
});
