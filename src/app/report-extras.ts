import type { Case } from '../core/evidence/case.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import { drawCaseSchematic } from './draw-case-schematic.ts';

/** What a report shows that is not in the Assessment: the schematic of the traced circuit. */
export async function reportExtras(one: Case): Promise<ReportExtras> {
  const schematic = await drawCaseSchematic(one);
  return schematic === null ? {} : { schematic };
}
