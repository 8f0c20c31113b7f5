import type { Assessment, Step } from '../../core/result/assessment.ts';
import { GRADES, type Grade } from '../../core/source/grade.ts';

/** Steps below one step that stand on a source, the least well sourced first. Readings have no grade of this kind. */
export function listWeakest(assessment: Assessment, from: Step): readonly { readonly step: Step; readonly grade: Grade }[] {
  const byId = new Map(assessment.steps.map((step) => [step.id, step]));
  const seen = new Set<string>();
  const found: { step: Step; grade: Grade }[] = [];
  const visit = (step: Step): void => {
    if (seen.has(step.id)) return;
    seen.add(step.id);
    // a formula of physics does not weaken a number; a figure taken from somewhere does
    if (step.source !== null && step.formula === null) found.push({ step, grade: step.source.grade });
    for (const { step: id } of step.uses) {
      const used = byId.get(id);
      if (used !== undefined) visit(used);
    }
  };
  visit(from);
  return found.sort((a, b) => GRADES.indexOf(b.grade) - GRADES.indexOf(a.grade));
}
