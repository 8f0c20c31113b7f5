import type { Case } from '../core/evidence/case.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import type { Point } from '../present/schematic/geometry.ts';
import { drawCaseSchematic, partMarks } from './draw-case-schematic.ts';
import type { DrawCircuit } from './drawn-circuit.ts';

/**
 * What a report shows that is not in the Assessment: the schematic of the traced circuit, with what was found on its parts. `moves`: parts
 * moved by hand.
 */
export async function reportExtras(
  one: Case,
  assessment: Assessment,
  { moves = new Map(), draw = drawCaseSchematic }: { moves?: ReadonlyMap<string, Point>; draw?: DrawCircuit } = {},
): Promise<ReportExtras> {
  const drawn = await draw(one, { moves, marks: partMarks(assessment) });
  return drawn === null ? {} : { schematic: drawn.figure };
}
