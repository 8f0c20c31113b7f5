import type { Case } from '../core/evidence/case.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import { drawCaseSchematic, failingParts } from './draw-case-schematic.ts';

/** What a report shows that is not in the Assessment: the schematic of the traced circuit, with the parts on which a finding fails. */
export async function reportExtras(one: Case, assessment: Assessment): Promise<ReportExtras> {
  const schematic = await drawCaseSchematic(one, { failing: failingParts(assessment) });
  return schematic === null ? {} : { schematic };
}
