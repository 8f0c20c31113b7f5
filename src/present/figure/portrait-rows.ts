import { type Assessment, type Finding, HAZARDS, type Hazard, type Outcome } from '../../core/result/assessment.ts';

/** One row of the portrait: the worst finding of one check, and how many others there are. */
export interface PortraitRow {
  readonly finding: Finding;
  readonly others: number;
  /** Some findings of the check say something, though its worst does not. */
  readonly partly: boolean;
}

export interface PortraitGroup {
  readonly hazard: Hazard;
  readonly rows: readonly PortraitRow[];
  /** Checks of this hazard that were not assessed and are drawn as one hatched row. */
  readonly unread: readonly Finding[];
  readonly notApplicable: number;
}

/** As coverage counts it: a check with one place not assessed is not assessed, whatever its other places say. */
const WORST_FIRST: readonly Outcome[] = ['fail', 'inconclusive', 'notAssessed', 'pass', 'notApplicable'];
const FEW = 3; // as many unread checks are drawn one by one

/** A check's line is the worst of its findings; checks nobody could assess are kept together. */
export function toPortrait(assessment: Assessment): PortraitGroup[] {
  return HAZARDS.flatMap((hazard) => {
    const ofHazard = assessment.findings.filter((finding) => finding.hazard === hazard);
    const checks = [...new Set(ofHazard.map(({ check }) => check))];
    const rows = checks.map((check) => toRow(ofHazard.filter((finding) => finding.check === check)));
    const read = rows.filter(({ finding, partly }) => partly || isRead(finding));
    const unread = rows.filter(({ finding, partly }) => finding.outcome === 'notAssessed' && !partly && !isRead(finding));
    const notApplicable = rows.length - read.length - unread.length;
    if (rows.length === 0) return [];
    if (unread.length <= FEW) return [{ hazard, rows: [...read, ...unread], unread: [], notApplicable }];
    return [{ hazard, rows: read, unread: unread.map(({ finding }) => finding), notApplicable }];
  });
}

/** How many checks came out each way, a check counted as the worst of its findings. */
export function countOutcomes(assessment: Assessment): ReadonlyMap<Outcome, number> {
  const checks = [...new Set(assessment.findings.map(({ check }) => check))];
  const counts = new Map<Outcome, number>(WORST_FIRST.map((outcome) => [outcome, 0]));
  for (const check of checks) {
    const { outcome } = toRow(assessment.findings.filter((finding) => finding.check === check)).finding;
    counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  }
  return counts;
}

function toRow(findings: readonly Finding[]): PortraitRow {
  const ordered = [...findings].sort((a, b) => WORST_FIRST.indexOf(a.outcome) - WORST_FIRST.indexOf(b.outcome) || byRatio(a, b));
  const read = ordered.some(isRead);
  return { finding: ordered[0]!, others: findings.length - 1, partly: read && !isRead(ordered[0]!) };
}

function isRead({ outcome, measured }: Finding): boolean {
  return outcome !== 'notApplicable' && (outcome !== 'notAssessed' || measured !== null);
}

/** Greatest ratio first; no ratio counts as the greatest. */
function byRatio(a: Finding, b: Finding): number {
  return (b.margin ?? Number.MAX_VALUE) - (a.margin ?? Number.MAX_VALUE);
}
