import { BENCH_SET } from '../check/bench-set.ts';
import {
  type Cell,
  type Consequence,
  type Coverage,
  FAILURES,
  type Failure,
  type Finding,
  type Outcome,
  type Verdict,
} from '../result/assessment.ts';
import { weakestGrade } from '../source/grade.ts';

/** What a failing finding of a consequence makes of the unit. Informative findings set no word. */
export const WORD: Readonly<Record<Consequence, Failure | null>> = {
  lethal: 'Dangerous',
  injurious: 'Unsafe',
  damaging: 'Harmful to devices',
  disappointing: 'Below its claims',
  informative: null,
};

/** The worse of two failure words. */
export function worseWord(a: Failure, b: Failure): Failure {
  return FAILURES.indexOf(a) <= FAILURES.indexOf(b) ? a : b;
}

/** What the findings add up to, by the written table of docs/decisions/0003-verdict.md. */
export function judgeVerdict(findings: readonly Finding[]): Verdict {
  const failing = oncePerDefect(findings.filter(({ outcome }) => outcome === 'fail'));
  const words = byWord(failing.filter(({ headline }) => headline));
  const doubts = byWord(failing.filter(({ headline }) => !headline));
  const [worst] = words;
  const [doubt] = doubts;
  const assessed = findings.some(({ outcome }) => outcome === 'pass' || outcome === 'fail' || outcome === 'inconclusive');
  const doubtful =
    doubt !== undefined && (worst === undefined || FAILURES.indexOf(doubt.failure) < FAILURES.indexOf(worst.failure)) ? doubt : null;
  // while a doubtful word stands, "Nothing found wrong" is not said; before any check is assessed neither
  const failure: Failure = worst?.failure ?? (assessed && doubtful === null ? 'Nothing found wrong' : 'No verdict yet');
  const deciding = findings.filter(({ id }) => worst?.by.includes(id) === true);
  const grades = deciding.flatMap(({ limit }) => (limit === null ? [] : [limit.grade]));
  const cells = { shock: cellsOf('shock', findings), fire: cellsOf('fire', findings) };
  return {
    failure,
    doubtful: doubtful?.failure ?? null,
    coverage: { shock: coverageOf(cells.shock), fire: coverageOf(cells.fire) },
    cells,
    missing: [...cells.shock, ...cells.fire]
      .filter(({ state }) => state === 'notAssessed' || state === 'inconclusive')
      .map(({ check }) => ({ check, reason: worstOf(findings.filter((one) => one.check === check)).reason })),
    decidedBy: worst?.by ?? [],
    doubtfulBy: doubtful?.by ?? [],
    also: words.slice(1),
    grade: grades.length === 0 ? null : weakestGrade(grades),
  };
}

/** Without the findings that tell of a defect which another finding tells of as gravely: it is one reason, named once. */
function oncePerDefect(failing: readonly Finding[]): Finding[] {
  return failing.filter(({ sameAs, consequence, headline }) => {
    const other = sameAs === undefined ? undefined : failing.find(({ id }) => id === sameAs);
    return other === undefined || other.consequence !== consequence || (headline && !other.headline);
  });
}

function byWord(failing: readonly Finding[]): { failure: Failure; by: string[] }[] {
  const words = new Map<Failure, string[]>();
  for (const finding of failing) {
    const word = WORD[finding.consequence];
    if (word !== null) words.set(word, [...(words.get(word) ?? []), finding.id]);
  }
  return [...words.entries()].sort(([a], [b]) => FAILURES.indexOf(a) - FAILURES.indexOf(b)).map(([failure, by]) => ({ failure, by }));
}

/** Worst first: the line of a check is its worst subject. */
const ORDER: readonly Outcome[] = ['fail', 'inconclusive', 'notAssessed', 'pass', 'notApplicable'];

export function worstOf(findings: readonly Finding[]): Finding {
  const [worst] = [...findings].sort((a, b) => ORDER.indexOf(a.outcome) - ORDER.indexOf(b.outcome));
  if (worst === undefined) throw new Error('a check without a finding');
  return worst;
}

/** One cell per lethal or injurious check of the bench set. */
function cellsOf(hazard: 'shock' | 'fire', findings: readonly Finding[]): Cell[] {
  return BENCH_SET.filter((one) => one.hazard === hazard && (one.worst === 'lethal' || one.worst === 'injurious')).map(({ id }) => {
    const { outcome } = worstOf(findings.filter(({ check }) => check === id));
    const state =
      outcome === 'notApplicable'
        ? 'notApplicable'
        : outcome === 'notAssessed'
          ? 'notAssessed'
          : outcome === 'inconclusive'
            ? 'inconclusive'
            : 'settled';
    return { check: id, state };
  });
}

function coverageOf(cells: readonly Cell[]): Coverage {
  const applying = cells.filter(({ state }) => state !== 'notApplicable');
  if (applying.every(({ state }) => state === 'settled')) return 'examined';
  return applying.every(({ state }) => state === 'notAssessed') ? 'not examined' : 'partly examined';
}
