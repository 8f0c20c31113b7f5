import type { Results } from '../core/assess/fresh-results.ts';
import type { Attachment, Case } from '../core/evidence/case.ts';
import { isRefusal } from '../core/quantity/refusal.ts';
import { digestOfBytes } from '../core/result/digest.ts';
import type { CaseSource } from './case-source.ts';

/** The kept results of a case by the hash of their file. A file that is missing, changed or no JSON is left out: its result then counts as stale. */
export async function resultsOf(one: Case, source: CaseSource): Promise<Results> {
  const results = new Map<string, unknown>();
  for (const { path, sha256 } of resultFiles(one)) {
    const bytes = await source.readFile(path);
    if (isRefusal(bytes) || digestOfBytes(bytes) !== sha256) continue;
    try {
      results.set(sha256, JSON.parse(new TextDecoder().decode(bytes)));
    } catch {
      // no JSON: stale
    }
  }
  return results;
}

/** The files in which computed exhibits of a case keep what they came to. */
export function resultFiles(one: Case): readonly Attachment[] {
  const wanted = new Set((one.computed ?? []).map(({ file }) => file));
  return one.files.filter(({ id }) => wanted.has(id));
}
