import { type BarrierWay, barrierWays } from '../../circuit/path/barrier-ways.ts';
import { type Recognised, recognise } from '../../circuit/recognise/recognise.ts';
import { findSlips } from '../../circuit/slip/find-slips.ts';
import type { Slip } from '../../circuit/slip/slip.ts';
import type { Bench } from '../bench/bench.ts';
import { type NoSetPoints, type SetPoints, setPoints } from './set-points.ts';
import { type TracedCircuit, tracedCircuit } from './traced-circuit.ts';
import { valueSlips } from './value-slips.ts';

export interface CircuitFacts extends TracedCircuit {
  readonly recognised: Recognised;
  readonly slips: readonly Slip[];
  /** Ways across the barrier through parts, over the sides as they follow from the parts. */
  readonly ways: readonly BarrierWay[];
  readonly setPoints: SetPoints | NoSetPoints;
}

/** The traced circuit and what follows from its graph; null where no parts with pins share a net. */
export function circuitFacts(bench: Bench): CircuitFacts | null {
  const traced = tracedCircuit(bench);
  if (traced === null) return null;
  const recognised = recognise(traced.circuit, traced.crossing);
  return {
    ...traced,
    recognised,
    slips: [...findSlips(traced.circuit, traced.crossing, recognised), ...valueSlips(bench)],
    ways: barrierWays(traced.circuit, recognised.graph.sideOf),
    setPoints: setPoints(bench, recognised),
  };
}
