import type { JobKey } from '../../core/circuit/recognise/job.ts';
import type { Assessment, CircuitResult } from '../../core/result/assessment.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { JOB_WORDS, jobReason, NOT_RECOGNISED, topologyText } from '../words/circuit-words.ts';

/** What the traced circuit is, every part with its job and the reason, and the ways across the barrier through parts. */
export function setCircuit({ circuit }: Pick<Assessment, 'circuit'>): Markup {
  if (circuit === undefined) return NOTHING;
  return html`<p>${topologyText(circuit.topology)}</p>
${setWays(circuit.ways)}<details class="jobs" open><summary>What each part is there for</summary><table><thead><tr><th scope="col">part</th><th scope="col">is there for</th><th scope="col">because it stands</th></tr></thead><tbody>${joined(circuit.jobs.map(setJob))}</tbody></table></details>
`;
}

function setJob(job: CircuitResult['jobs'][number]): Markup {
  const known = job.job !== null && Object.hasOwn(JOB_WORDS, job.job) ? JOB_WORDS[job.job as JobKey] : null;
  return html`<tr><th scope="row">${job.ref}</th><td>${known ?? html`<i>${NOT_RECOGNISED}</i>`}</td><td>${known === null ? '' : jobReason(job)}</td></tr>`;
}

/** One line for each row of parts; the nets it leaves and reaches. */
function setWays(ways: CircuitResult['ways']): Markup {
  if (ways.length === 0) return NOTHING;
  const byParts = new Map<string, string[]>();
  for (const { parts, nets } of ways)
    byParts.set(parts.join(' and '), [...(byParts.get(parts.join(' and ')) ?? []), `${nets[0]} to ${nets.at(-1)}`]);
  return html`<p class="small"><b>Ways across the barrier through parts:</b> ${joined(
    [...byParts].map(([parts, ends]) => html`${parts} (${[...new Set(ends)].join(', ')})`),
    '; ',
  )}.</p>\n`;
}
