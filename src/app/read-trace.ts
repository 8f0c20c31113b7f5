import { type Recognised, recognise } from '../core/circuit/recognise/recognise.ts';
import { findSlips } from '../core/circuit/slip/find-slips.ts';
import type { Slip } from '../core/circuit/slip/slip.ts';
import { parseTrace } from '../core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../core/circuit/trace/to-circuit.ts';
import type { CaseInput } from '../core/evidence/case.ts';
import type { Refusal } from '../core/quantity/refusal.ts';
import { toEvidence } from '../core/working/circuit/to-evidence.ts';

export interface ReadTrace {
  /** As a case holds it. */
  readonly evidence: Pick<CaseInput, 'parts' | 'conductors'>;
  readonly recognised: Recognised;
  readonly slips: readonly Slip[];
  /** Lines that could not be read; all others are in the evidence. */
  readonly refusals: readonly Refusal[];
}

/** Circuit lines to parts and conductors, with what the graph says of them. */
export function readTrace(text: string): ReadTrace {
  const { trace, refusals } = parseTrace(text);
  const { circuit, crossing } = toCircuit(trace);
  const recognised = recognise(circuit, crossing);
  return { evidence: toEvidence(trace), recognised, slips: findSlips(circuit, crossing, recognised), refusals };
}
