import { assess } from '../../src/core/assess/assess.ts';
import type { Case, CaseInput } from '../../src/core/evidence/case.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { sentence } from '../../src/core/quantity/refusal.ts';
import type { Assessment, Finding } from '../../src/core/result/assessment.ts';
import type { Tables } from '../../src/core/working/bench/bench.ts';

export type CasePatch = Partial<CaseInput>;

/** What the schema asks of every case, and nothing more: an invented sample about which nobody wrote anything down. */
const MINIMAL: CaseInput = {
  format: 'mainsworthy-case/1',
  id: 'invented-1',
  product: { id: 'invented', name: 'Invented adapter' },
  sample: 'A',
  invented: true,
  setting: { market: 'EU' },
};

/** A minimal case with whole keys replaced, as JSON, so that it takes the same way as a file. */
export function caseJson(patch: CasePatch = {}): Record<string, unknown> {
  return JSON.parse(JSON.stringify({ ...MINIMAL, ...patch })) as Record<string, unknown>;
}

/** The same with a harmless event for each that a state names as the one after which something could no longer be done. */
function withEventsNamed(patch: CasePatch): CasePatch {
  const known = new Set((patch.events ?? []).map(({ id }) => id));
  const named = [...JSON.stringify(patch).matchAll(/"since":"([^"]+)"/g)].map(([, id]) => id!).filter((id) => !known.has(id));
  const events = [...new Set(named)].map((id) => ({ id, at: '2026-03-05T09:00:00', what: 'purchased' as const }));
  return events.length === 0 ? patch : { ...patch, events: [...(patch.events ?? []), ...events] };
}

/** The same through the schema. A case that is refused is a mistake in the test and says where. */
export function buildCase(patch: CasePatch = {}): Case {
  const parsed = parseCase(caseJson(withEventsNamed(patch)));
  if (Array.isArray(parsed)) throw new Error(parsed.map(sentence).join('\n'));
  return parsed;
}

export function judge(patch: CasePatch = {}, tables: Tables = new Map()): Assessment {
  return assess(buildCase(patch), tables);
}

/** The one finding of that id. */
export function findingOf(assessment: Assessment, id: string): Finding {
  const found = assessment.findings.filter((finding) => finding.id === id);
  if (found.length !== 1)
    throw new Error(`${found.length} findings are called ${id}; there are ${assessment.findings.map((one) => one.id).join(', ')}`);
  return found[0]!;
}

/** Every finding of one check. */
export function findingsOf(assessment: Assessment, check: string): Finding[] {
  return assessment.findings.filter((finding) => finding.check === check);
}

export function noteKeys(finding: Finding): string[] {
  return finding.notes.map(({ key }) => key);
}
