import type { Assessment } from '../../core/result/assessment.ts';

const NUMBERS = new WeakMap<Assessment, ReadonlyMap<string, number>>();

/** Steps are counted from one in the order of the Assessment, so that paper can point at them too. */
export function stepNumber(assessment: Assessment, id: string): number | null {
  const known = NUMBERS.get(assessment) ?? new Map(assessment.steps.map((step, index) => [step.id, index + 1]));
  NUMBERS.set(assessment, known);
  return known.get(id) ?? null;
}
