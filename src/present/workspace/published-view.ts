import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { getFailureHalf } from '../figure/verdict-halves.ts';
import { coverageHeadline } from '../words/failure-words.ts';
import { findingLimit, findingName, findingValue } from '../words/finding-text.ts';
import { OUTCOME_WORDS, outcomeText } from '../words/outcome-words.ts';

/** What a published Assessment is, for a list of them. */
export interface PublishedView {
  readonly name: string;
  readonly sample: string;
  readonly invented: boolean;
  readonly failure: string;
  readonly coverage: string;
  /** SHA-256 of the case that was judged. */
  readonly caseSha256: string;
  readonly tool: string;
  readonly rules: { readonly version: string; readonly sha256: string };
}

/** A published Assessment without its bytes. */
export interface Published {
  /** Counted from 1 within its case. */
  readonly number: number;
  readonly revision: number;
  readonly at: string;
  readonly sha256: string;
}

/** What is published of a case, and what would be published of it now. */
export interface Publishing {
  readonly now: PublishedView & { readonly revision: number };
  /** `view` is null for an Assessment of another format: its bytes can be read, not drawn. */
  readonly published: readonly (Published & { readonly view: PublishedView | null })[];
}

/** One finding that says something else than it did. */
export interface MovedRow {
  readonly id: string;
  readonly name: string;
  readonly was: MovedSide;
  readonly now: MovedSide;
}
interface MovedSide {
  readonly markSvg: string;
  readonly words: string;
}

export interface MovedView {
  readonly verdict: { readonly was: string; readonly now: string } | null;
  readonly coverage: { readonly was: string; readonly now: string } | null;
  /** Judged by other rules or another tool: a finding can move although nothing in the case did. */
  readonly rules: boolean;
  readonly tool: boolean;
  readonly rows: readonly MovedRow[];
}

const MARK = 11;

export function toPublishedView(assessment: Assessment): PublishedView {
  return {
    name: assessment.case.name,
    sample: assessment.case.sample,
    invented: assessment.case.invented,
    failure: getFailureHalf(assessment).word,
    coverage: coverageHeadline(assessment.verdict.coverage).words,
    caseSha256: assessment.case.sha256,
    tool: assessment.tool,
    rules: assessment.rules,
  };
}

/** What the case says now otherwise than when it was published, in the order of the verdict column. */
export function toMovedView(before: Assessment, now: Assessment): MovedView {
  const [then, today] = [toPublishedView(before), toPublishedView(now)];
  const old = new Map(before.findings.map((finding) => [finding.id, finding]));
  const ids = new Set(now.findings.map(({ id }) => id));
  const rows: MovedRow[] = [
    ...now.findings.map((finding) => ({ was: old.get(finding.id), now: finding })),
    ...before.findings.filter(({ id }) => !ids.has(id)).map((finding) => ({ was: finding, now: undefined })),
  ].flatMap((pair) => {
    const told = pair.now ?? pair.was;
    const was = toSide(pair.was);
    const is = toSide(pair.now);
    return told === undefined || was.words === is.words ? [] : [{ id: told.id, name: findingName(told), was, now: is }];
  });
  return {
    verdict: then.failure === today.failure ? null : { was: then.failure, now: today.failure },
    coverage: then.coverage === today.coverage ? null : { was: then.coverage, now: today.coverage },
    rules: before.rules.sha256 !== now.rules.sha256,
    tool: before.tool !== now.tool,
    rows,
  };
}

function toSide(finding: Finding | undefined): MovedSide {
  if (finding === undefined) return { markSvg: drawOutcomeMark('notAssessed', MARK).markup, words: OUTCOME_WORDS.notAssessed };
  const words = [outcomeText(finding), findingValue(finding), findingLimit(finding)].filter((part) => part !== '');
  return { markSvg: drawOutcomeMark(finding.outcome, MARK).markup, words: words.join(', ') };
}
