import { CHECK_WORDS } from '../words/check-words.ts';
import type { GradeStroke } from '../words/grade-words.ts';
import { HAZARD_WORDS } from '../words/hazard-words.ts';
import type { CasePortrait, PortraitMark } from './case-portrait.ts';

/** A few cases side by side: one row per check that any of them has a mark for, in the order of the bench set. */
export interface ColumnGroup {
  readonly hazard: string;
  readonly title: string;
  readonly rows: readonly ColumnRow[];
  /** Checks of this hazard that are open for at least one case and have a mark in none. */
  readonly unread: number;
}

export interface ColumnRow {
  readonly check: string;
  readonly title: string;
  readonly strokes: readonly GradeStroke[];
  /** One per case; null where the check does not apply to it. */
  readonly cells: readonly (PortraitMark | 'unread' | null)[];
}

export function toColumns(cases: readonly CasePortrait[]): readonly ColumnGroup[] {
  return Object.entries(HAZARD_WORDS).flatMap(([hazard, title]) => {
    const checks = Object.keys(CHECK_WORDS).filter((check) => check.startsWith(`${hazard}/`));
    const rows = checks
      .filter((check) => cases.some(({ marks }) => marks.some((mark) => mark.check === check)))
      .map((check) => toRow(check, cases));
    const shown = new Set(rows.map(({ check }) => check));
    const open = checks.filter((check) => !shown.has(check) && cases.some(({ unread }) => unread.includes(check)));
    return rows.length + open.length === 0 ? [] : [{ hazard, title, rows, unread: open.length }];
  });
}

function toRow(check: string, cases: readonly CasePortrait[]): ColumnRow {
  const cells = cases.map(
    ({ marks, unread }) => marks.find((mark) => mark.check === check) ?? (unread.includes(check) ? ('unread' as const) : null),
  );
  const strokes = cells.flatMap((cell) => (cell === null || cell === 'unread' || cell.limit === null ? [] : [cell.limit.stroke]));
  return { check, title: CHECK_WORDS[check]?.title ?? check, strokes: [...new Set(strokes)], cells };
}

/** The mark of a case that stands worst on one hazard, or null when none has been judged. */
export function worstMark({ marks }: Pick<CasePortrait, 'marks'>, hazard: string): PortraitMark | null {
  const judged = marks.filter((mark) => mark.hazard === hazard && mark.outcome !== 'notAssessed' && mark.outcome !== 'notApplicable');
  return judged.reduce<PortraitMark | null>((worst, mark) => (worst === null || badness(mark) > badness(worst) ? mark : worst), null);
}

/** A failure without a ratio is worse than every ratio; what says neither is better than all. */
function badness({ margin, outcome }: PortraitMark): number {
  return margin ?? (outcome === 'fail' ? Number.POSITIVE_INFINITY : -1);
}

/** How many of the ratios are worse than one, the worst first in the list; failures without a ratio are worse than all that have one. */
export function countWorse(places: { readonly ratios: readonly number[]; readonly beyond: number }, mark: PortraitMark): number {
  if (mark.margin === null) return 0;
  const own = mark.margin * (1 + ROUNDED); // the list is rounded to three digits: a case is not worse than itself
  return places.beyond + places.ratios.filter((ratio) => ratio > own).length;
}

const ROUNDED = 0.005;
