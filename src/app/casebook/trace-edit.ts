import { parseTrace } from '../../core/circuit/trace/parse-trace.ts';
import { printTrace } from '../../core/circuit/trace/print-trace.ts';
import type { Case } from '../../core/evidence/case.ts';
import type { Refusal } from '../../core/quantity/refusal.ts';
import { toEvidence } from '../../core/working/circuit/to-evidence.ts';
import { toTrace } from '../../core/working/circuit/to-trace.ts';
import type { CaseState } from './case-state.ts';
import type { Change, Json } from './change.ts';

type Tree = { readonly [key: string]: Json };

/** The traced circuit of a case as lines; empty where none was traced. */
export function circuitLines(one: Case): string {
  return printTrace(toTrace(one));
}

/**
 * What circuit lines change in a case: a part keeps everything that a line has no word for, a part whose line is gone keeps all but its pins,
 * nets that are new join the conductors, and the side of a conductor changes only where none was stated. Lines that cannot be read come back
 * by line; the others count.
 */
export function traceChanges(state: CaseState, text: string): { changes: Change[]; refusals: readonly Refusal[] } {
  const { trace, refusals } = parseTrace(text);
  const evidence = toEvidence(trace) as unknown as { parts: readonly Tree[]; conductors: readonly Tree[] };
  const parts = listOf(state, 'parts');
  const conductors = listOf(state, 'conductors');
  const changes: Change[] = [];
  for (const conductor of evidence.conductors) {
    const known = conductors.find(({ id }) => id === conductor['id']);
    if (known === undefined) changes.push({ at: `/case/conductors/${String(conductor['id'])}`, to: conductor });
    else if (isNotLooked(known['side']) && !isNotLooked(conductor['side']))
      changes.push({ at: `/case/conductors/${String(conductor['id'])}/side`, was: known['side'], to: conductor['side'] });
  }
  for (const part of evidence.parts) {
    const known = parts.find(({ id, ref }) => id === part['id'] || ref === part['ref']);
    const id = String(known?.['id'] ?? part['id']);
    changes.push({ at: `/case/parts/${id}`, was: known, to: { ...known, ...part, id } });
  }
  const named = new Set(evidence.parts.map(({ ref }) => ref));
  for (const part of parts) {
    if (part['pins'] === undefined || named.has(part['ref'] as string)) continue;
    changes.push({ at: `/case/parts/${String(part['id'])}/pins`, was: part['pins'] });
  }
  return { changes, refusals };
}

function isNotLooked(side: Json | undefined): boolean {
  return side === undefined || (typeof side === 'object' && side !== null && (side as Tree)['state'] === 'notLooked');
}

function listOf(state: CaseState, list: string): readonly Tree[] {
  const found = state.case[list];
  return Array.isArray(found) ? (found as unknown as readonly Tree[]) : [];
}
