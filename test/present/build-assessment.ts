import { BENCH_SET, LABORATORY } from '../../src/core/check/bench-set.ts';
import {
  type Amount,
  ASSESSMENT_FORMAT,
  type Assessment,
  assessment,
  type Finding,
  type Limit,
  type Step,
} from '../../src/core/result/assessment.ts';

/** Hand-made Assessments of invented units, checked against the schema, for drawing only: nothing here was worked out by a check. */
export type Source = NonNullable<Step['source']>;

const HASH = 'ab'.repeat(32);

export function amountOf(value: number, unit: string, u: number | null = null, side?: Amount['side']): Amount {
  return { value, unit, u, ...(side === undefined ? {} : { side }) };
}

export function sourceOf(grade: Source['grade'], place = 'table 1'): Source {
  return { publication: 'Invented rules for adapters', edition: '2021', place, grade, checked: '2026-11-25' };
}

export function limitOf(kind: Limit['kind'], at: Amount | null, grade: Limit['grade'], more: Partial<Limit> = {}): Limit {
  return { kind, name: 'fail', ...(at === null ? {} : { at }), source: sourceOf(grade), grade, ...more };
}

export function findingOf(check: string, more: Partial<Finding> = {}): Finding {
  const bench = BENCH_SET.find(({ id }) => id === check);
  if (bench === undefined) throw new Error(`${check} is not in the bench set`);
  const subject = more.subject ?? null;
  return {
    id: subject === null ? check : `${check}@${subject}`,
    check,
    subject,
    about: null,
    hazard: bench.hazard,
    consequence: bench.worst,
    outcome: 'notAssessed',
    reason: 'notLooked',
    measured: null,
    limit: null,
    others: [],
    margin: null,
    marginBand: null,
    probability: null,
    headline: true,
    step: null,
    fields: [],
    under: {},
    notes: [],
    ...more,
  };
}

export function stepOf(id: string, more: Partial<Step> = {}): Step {
  return {
    id,
    kind: 'reading',
    name: id,
    symbol: null,
    value: null,
    unit: null,
    u: null,
    formula: null,
    uses: [],
    budget: [],
    source: null,
    notes: [],
    ...more,
  };
}

function cellsOf(hazard: 'shock' | 'fire', findings: readonly Finding[]): Assessment['verdict']['cells']['shock'] {
  const states = {
    pass: 'settled',
    fail: 'settled',
    inconclusive: 'inconclusive',
    notAssessed: 'notAssessed',
    notApplicable: 'notApplicable',
  } as const;
  return BENCH_SET.filter((check) => check.hazard === hazard).map(({ id }) => ({
    check: id,
    state: states[findings.find(({ check }) => check === id)?.outcome ?? 'notAssessed'],
  }));
}

/** Fills what is not given: every other check of the bench set is not assessed. */
export function assessmentOf(
  more: { readonly [K in keyof Assessment]?: Assessment[K] } = {},
  verdict: Partial<Assessment['verdict']> = {},
): Assessment {
  const given = more.findings ?? [];
  const checks = new Set(given.map(({ check }) => check));
  const order = BENCH_SET.map(({ id }) => id);
  const findings = [...given, ...BENCH_SET.filter(({ id }) => !checks.has(id)).map(({ id }) => findingOf(id))].sort(
    (a, b) => order.indexOf(a.check) - order.indexOf(b.check),
  );
  const built: Assessment = {
    format: ASSESSMENT_FORMAT,
    tool: 'mainsworthy 0.1.0',
    rules: { version: '1', sha256: HASH },
    case: { id: 'fell-12-a', product: 'fell-12', name: 'Fell 12', sample: 'A', sha256: HASH, invented: true },
    setting: {},
    bench: { examinedBy: null, bought: null, days: [], events: [], instruments: [], exhibits: [] },
    steps: [],
    formulas: {},
    curves: [],
    soaks: [],
    next: [],
    stored: null,
    lastChance: [],
    claims: [],
    unjudged: [],
    stale: [],
    laboratory: [...LABORATORY],
    warnings: [],
    ...more,
    findings,
    verdict: {
      failure: 'No verdict yet',
      doubtful: null,
      coverage: { shock: 'not examined', fire: 'not examined' },
      cells: { shock: cellsOf('shock', findings), fire: cellsOf('fire', findings) },
      missing: findings
        .filter(({ outcome, hazard }) => outcome === 'notAssessed' && (hazard === 'shock' || hazard === 'fire'))
        .map(({ check, reason }) => ({ check, reason })),
      decidedBy: [],
      doubtfulBy: [],
      also: [],
      grade: null,
      ...verdict,
    },
  };
  return assessment.parse(built);
}
