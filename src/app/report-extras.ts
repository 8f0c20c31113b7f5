import type { Case } from '../core/evidence/case.ts';
import { isRefusal } from '../core/quantity/refusal.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { Tables } from '../core/working/bench/bench.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import type { Point } from '../present/schematic/geometry.ts';
import { drawCaseSchematic, partMarks } from './draw-case-schematic.ts';
import type { DrawCircuit } from './drawn-circuit.ts';
import { readPicture } from './picture/read-picture.ts';

interface ExtrasFrom {
  /** Parts of the schematic moved by hand. */
  readonly moves?: ReadonlyMap<string, Point>;
  readonly draw?: DrawCircuit;
  readonly tables?: Tables;
}

/**
 * What a report shows that is not in the Assessment: the schematic of the traced circuit, with what was found on its parts, and the numbers of
 * thermal pictures on which something was drawn.
 */
export async function reportExtras(
  one: Case,
  assessment: Assessment,
  { moves = new Map(), draw = drawCaseSchematic, tables = new Map() }: ExtrasFrom = {},
): Promise<ReportExtras> {
  const drawn = await draw(one, { moves, marks: partMarks(assessment) });
  const thermal = new Map(
    (assessment.pictures ?? []).flatMap(({ exhibit }) => {
      const field = readPicture(one, tables, exhibit);
      return isRefusal(field) ? [] : [[exhibit, field] as const];
    }),
  );
  return { ...(drawn === null ? {} : { schematic: drawn.figure }), ...(thermal.size === 0 ? {} : { thermal }) };
}
