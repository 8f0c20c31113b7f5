import type { Case } from '../core/evidence/case.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import type { Point } from '../present/schematic/geometry.ts';
import { keptRuns } from './circuit/kept-runs.ts';
import { drawCaseSchematic, partMarks } from './draw-case-schematic.ts';
import type { DrawCircuit } from './drawn-circuit.ts';
import type { OpenCase } from './open-case.ts';

/**
 * What a report shows that is not in the Assessment: the schematic of the traced circuit, with what was found on its parts. `moves`: parts
 * moved by hand. `kept`: what the files of the case hold, for the runs of its circuit.
 */
export async function reportExtras(
  one: Case,
  assessment: Assessment,
  {
    moves = new Map(),
    draw = drawCaseSchematic,
    kept,
  }: { moves?: ReadonlyMap<string, Point>; draw?: DrawCircuit; kept?: Pick<OpenCase, 'tables' | 'results'> } = {},
): Promise<ReportExtras> {
  const drawn = await draw(one, { moves, marks: partMarks(assessment) });
  const runs = kept === undefined ? null : keptRuns({ one, ...kept });
  return { ...(drawn === null ? {} : { schematic: drawn.figure }), ...(runs === null ? {} : { runs }) };
}
