import { parseCase } from '../../core/evidence/parse-case.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { ASSESSMENT_FORMAT, type Assessment } from '../../core/result/assessment.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import { digestOfBytes } from '../../core/result/digest.ts';
import { renderReport } from '../../present/report/render-report.ts';
import { type MovedView, type Published, type Publishing, toMovedView, toPublishedView } from '../../present/workspace/published-view.ts';
import { openCase } from '../open-case.ts';
import { reportExtras } from '../report-extras.ts';
import { casebookCaseSource } from './casebook-case-source.ts';
import type { CasebookStore, KeptAssessment } from './casebook-store.ts';
import type { Desk } from './desk.ts';
import { noSuchCase } from './no-such-case.ts';
import { stateAt } from './state-at.ts';

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

export async function describePublishing(store: CasebookStore, desk: Desk, id: string): Promise<Publishing | Refusal> {
  const judged = await desk.assess(id);
  if (isRefusal(judged)) return judged;
  const kept = await store.cases.assessments(id);
  return {
    now: { ...toPublishedView(judged.assessment), revision: judged.revision },
    published: kept.map(({ revision, at, sha256, bytes }, index) => {
      const assessment = readAssessment(bytes);
      return { number: index + 1, revision, at, sha256, view: isRefusal(assessment) ? null : toPublishedView(assessment) };
    }),
  };
}

/** The report of a published Assessment: drawn from its bytes and the case as it stood then, judged by nobody again. */
export async function reportPublished(store: CasebookStore, id: string, number: number): Promise<string | Refusal> {
  const kept = await readPublished(store, id, number);
  if (isRefusal(kept)) return kept;
  const assessment = readAssessment(kept.bytes);
  if (isRefusal(assessment)) return assessment;
  const then = await stateAt(store, id, kept.revision);
  if (then === null) return noSuchCase(id);
  const one = parseCase(then.state.case);
  if (Array.isArray(one)) return one[0] ?? noSuchCase(id);
  const open = await openCase(casebookCaseSource(then.state, store.files));
  return renderReport(assessment, await reportExtras(one, assessment, Array.isArray(open) ? {} : { kept: open }));
}

/** What the case says now otherwise than in a published Assessment. */
export async function movedSince(store: CasebookStore, desk: Desk, id: string, number: number): Promise<MovedView | Refusal> {
  const kept = await readPublished(store, id, number);
  if (isRefusal(kept)) return kept;
  const before = readAssessment(kept.bytes);
  if (isRefusal(before)) return before;
  const now = await desk.assess(id);
  return isRefusal(now) ? now : toMovedView(before, now.assessment);
}

function readAssessment(bytes: Uint8Array): Assessment | Refusal {
  const read = JSON.parse(new TextDecoder().decode(bytes)) as Assessment;
  return read.format === ASSESSMENT_FORMAT
    ? read
    : refuse('other-format', String(read.format), `an Assessment of format ${ASSESSMENT_FORMAT}`);
}
