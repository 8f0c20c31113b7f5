import type { Finding, Limit, Outcome, Rung } from '../../core/result/assessment.ts';
import { GRADE_STROKES, type GradeStroke } from '../words/grade-words.ts';

/** All that a margin line needs of a finding: small enough to be kept by the thousand, and the same line is drawn of both. */
export interface LineMark {
  readonly outcome: Outcome;
  /** Ratio; above 1 is beyond the limit. Null: no ratio, or an infinite one. */
  readonly margin: number | null;
  /** Ratios at the good and at the bad end of where the true value lies; a bad end of null is open. */
  readonly band: readonly [number, number | null] | null;
  readonly rung: Rung | null;
  readonly limit: LineLimit | null;
  /** An amount was judged against an amount; else the answer is a yes or a no. */
  readonly amounts: boolean;
  /** It was looked at, and the value could still be anywhere. */
  readonly anywhere: boolean;
}

export interface LineLimit {
  readonly two: boolean;
  readonly stroke: GradeStroke;
  /** The lower rung of a barrier finding, as a ratio of the limit. */
  readonly basic: { readonly ratio: number; readonly stroke: GradeStroke } | null;
}

export function toLineMark(finding: Finding): LineMark {
  const { outcome, margin, rung, limit, measured } = finding;
  return {
    outcome,
    margin,
    band: bandOf(finding),
    rung: rung ?? null,
    limit: limit === null ? null : { two: limit.kind === 'within', stroke: GRADE_STROKES[limit.grade], basic: basicOf(finding, limit) },
    amounts: measured !== null && 'value' in measured && limit?.at !== undefined,
    anywhere: measured !== null && 'side' in measured && measured.side === 'anywhere',
  };
}

function basicOf({ others }: Finding, limit: Limit): LineLimit['basic'] {
  const basic = others.find(({ name }) => name === 'basic');
  const asked = limit.at?.value;
  const lower = basic?.at?.value;
  if (basic === undefined || limit.name === 'basic' || asked === undefined || lower === undefined || lower <= 0) return null;
  return { ratio: asked / lower, stroke: GRADE_STROKES[basic.grade] };
}

/** The 95 % interval, or the whole side on which a bound leaves the value. */
function bandOf(finding: Finding): LineMark['band'] {
  if (finding.marginBand !== null) return finding.marginBand;
  const side = finding.measured !== null && 'value' in finding.measured ? finding.measured.side : undefined;
  if (side === undefined || finding.margin === null) return null;
  const opensToGood = (side === 'below') === (finding.limit?.kind === 'atMost');
  return opensToGood ? [0, finding.margin] : [finding.margin, null];
}
