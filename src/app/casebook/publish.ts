import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import { digestOfBytes } from '../../core/result/digest.ts';
import type { CasebookStore, KeptAssessment } from './casebook-store.ts';
import type { Desk } from './desk.ts';

/** A published Assessment without its bytes. */
export interface Published {
  /** Counted from 1 within its case. */
  readonly number: number;
  readonly revision: number;
  readonly at: string;
  readonly sha256: string;
}

/** Keeps the case as it is judged now, as the bytes that this tool makes of this revision. The same bytes again stay the version they were. */
export async function publish(store: CasebookStore, desk: Desk, id: string, at: string): Promise<Published | Refusal> {
  const judged = await desk.assess(id);
  if (isRefusal(judged)) return judged;
  const bytes = new TextEncoder().encode(canonicalText(judged.assessment));
  const sha256 = digestOfBytes(bytes);
  await store.cases.keepAssessment(id, { revision: judged.revision, at, sha256, bytes });
  const mine = (await listPublished(store, id)).findLast((one) => one.sha256 === sha256 && one.revision === judged.revision);
  if (mine === undefined) throw new Error('an Assessment that was kept is not there');
  return mine;
}

/** In the order in which they were published. */
export async function listPublished(store: CasebookStore, id: string): Promise<Published[]> {
  return (await store.cases.assessments(id)).map(({ revision, at, sha256 }, index) => ({ number: index + 1, revision, at, sha256 }));
}

export async function readPublished(store: CasebookStore, id: string, number: number): Promise<KeptAssessment | Refusal> {
  const kept = (await store.cases.assessments(id))[number - 1];
  return kept ?? refuse('no-such-version', String(number), 'the number of a published Assessment of this case');
}
