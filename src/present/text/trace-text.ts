import type { Recognised } from '../../core/circuit/recognise/recognise.ts';
import type { Slip } from '../../core/circuit/slip/slip.ts';
import { JOB_WORDS, jobReason, NOT_RECOGNISED, topologyText } from '../words/circuit-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { WARNINGS } from '../words/notes.ts';

/** What circuit lines make, for a terminal: the kind of supply, each part's job with its reason, and slips. */
export function traceText({ topology, jobs, graph }: Recognised, slips: readonly Slip[]): string {
  const netName = new Map(graph.circuit.nets.map(({ id, name }) => [id, name]));
  const names = (ids: readonly string[]): string[] => ids.map((id) => netName.get(id) ?? graph.parts.get(id)?.ref ?? id);
  const widest = Math.max(0, ...graph.circuit.parts.map(({ ref }) => ref.length));
  const parts = graph.circuit.parts.map(({ id, ref }) => {
    const found = jobs.get(id);
    if (found === undefined) return `  ${ref.padEnd(widest)}  ${NOT_RECOGNISED}`;
    const reason = jobReason({ part: id, ref, job: found.job, at: names(found.at), with: names(found.with) });
    return `  ${ref.padEnd(widest)}  ${JOB_WORDS[found.job]}${reason === '' ? '' : ` (${reason})`}`;
  });
  const warned = slips.map(({ code, part, nets, args }) => {
    const about = part === null ? '' : (graph.parts.get(part)?.ref ?? part);
    return `  ${sentenceFor(WARNINGS, `slip-${code}`, { part: about, nets: names(nets).join(', '), ...args })}`;
  });
  return [
    topologyText(topology),
    ...(parts.length > 0 ? ['', ...parts] : []),
    ...(warned.length > 0 ? ['', 'Perhaps slips:', ...warned] : []),
  ].join('\n');
}
