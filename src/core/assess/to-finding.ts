import { BENCH_SET, type BenchCheck } from '../check/bench-set.ts';
import type { LimitLine } from '../check/decide.ts';
import type { Answer, AnyCheck, Subject } from '../check/define-check.ts';
import type { Amount, Consequence, Finding, Limit, Reason } from '../result/assessment.ts';
import { type Derived, uncertainty } from '../trace/derived.ts';
import type { StepNode } from '../trace/step.ts';

const BY_ID = new Map(BENCH_SET.map((one) => [one.id, one]));

export function benchCheck(id: string): BenchCheck {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`${id} is not in the bench set`);
  return found;
}

export function toAmount(derived: Derived): Amount {
  return {
    value: derived.value,
    unit: derived.unit,
    u: uncertainty(derived),
    ...(derived.side === undefined ? {} : { side: derived.side }),
  };
}

/** One finding with the steps that its derivation needs. */
export function toFinding(check: AnyCheck, subject: Subject, answer: Answer): { finding: Finding; roots: StepNode[] } {
  const { judgement } = answer;
  const measured = judgement.measured;
  const derived = measured !== null && 'value' in measured ? measured : null;
  const roots = [
    ...(derived === null ? [] : [derived.step]),
    ...[judgement.limit, ...judgement.others].flatMap((line) => (line === null ? [] : limitRoots(line))),
    ...(answer.beside ?? []),
  ];
  const finding: Finding = {
    ...bare(check.id, subject),
    consequence: answer.consequence ?? check.consequence,
    ...(answer.rung === undefined ? {} : { rung: answer.rung }),
    outcome: judgement.outcome,
    reason: judgement.reason,
    ...(answer.state === undefined ? {} : { state: answer.state }),
    measured: derived === null ? (measured as { word: string } | null) : toAmount(derived),
    limit: judgement.limit === null ? null : toLimit(judgement.limit),
    others: judgement.others.map(toLimit),
    margin: judgement.margin,
    marginBand: judgement.marginBand === null ? null : [judgement.marginBand[0], judgement.marginBand[1]],
    ...(judgement.rise === undefined ? {} : { rise: { ...judgement.rise } }),
    probability: judgement.probability,
    headline: judgement.outcome === 'fail' && judgement.headline,
    ...(answer.show === undefined ? {} : { show: answer.show }),
    ...(answer.sameAs === undefined ? {} : { sameAs: answer.sameAs }),
    step: derived?.step.id ?? null,
    fields: [...judgement.fields],
    under: {},
    notes: [...judgement.notes, ...(answer.notes ?? [])].map(({ key, args }) => ({ key, args: { ...args } })),
  };
  return { finding, roots };
}

/** A check without any subject gives one finding with a reason. */
export function emptyFinding(id: string, reason: Reason, consequence: Consequence): Finding {
  return {
    ...bare(id, null),
    consequence,
    outcome: reason === 'doesNotApply' ? 'notApplicable' : 'notAssessed',
    reason,
    measured: null,
    limit: null,
    others: [],
    margin: null,
    marginBand: null,
    probability: null,
    headline: false,
    step: null,
    fields: [],
    under: {},
    notes: [],
  };
}

function bare(check: string, subject: Subject | null): Pick<Finding, 'id' | 'check' | 'subject' | 'about' | 'hazard'> {
  return {
    id: subject === null ? check : `${check}@${subject.id}`,
    check,
    subject: subject?.id ?? null,
    about: subject?.about ?? null,
    hazard: benchCheck(check).hazard,
  };
}

export function toLimit(line: LimitLine): Limit {
  return {
    kind: line.kind,
    name: line.name,
    ...(line.at === null ? {} : { at: toAmount(line.at), step: line.at.step.id }),
    ...(line.to === undefined ? {} : { to: toAmount(line.to) }),
    ...(line.words === undefined ? {} : { words: [...line.words] }),
    source: toSource(line.source),
    grade: line.grade,
  };
}

export function toSource(source: LimitLine['source']): Limit['source'] {
  const { alsoBy, disagrees, ...rest } = source;
  return {
    ...rest,
    ...(alsoBy === undefined ? {} : { alsoBy: [...alsoBy] }),
    ...(disagrees === undefined ? {} : { disagrees: [...disagrees] }),
  };
}

function limitRoots(line: LimitLine): StepNode[] {
  return [...(line.at === null ? [] : [line.at.step]), ...(line.to === undefined ? [] : [line.to.step])];
}
