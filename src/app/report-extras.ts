import type { Case } from '../core/evidence/case.ts';
import { isRefusal } from '../core/quantity/refusal.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { ReportExtras } from '../present/report/report-parts.ts';
import type { Point } from '../present/schematic/geometry.ts';
import { keptRuns } from './circuit/kept-runs.ts';
import { drawCaseSchematic, partMarks } from './draw-case-schematic.ts';
import type { DrawCircuit } from './drawn-circuit.ts';
import type { OpenCase } from './open-case.ts';
import { readPicture } from './picture/read-picture.ts';

interface ExtrasFrom {
  /** Parts of the schematic moved by hand. */
  readonly moves?: ReadonlyMap<string, Point>;
  readonly draw?: DrawCircuit;
  /** What the files of the case hold: numbers of thermal pictures, runs of its circuit. */
  readonly kept?: Pick<OpenCase, 'tables' | 'results'>;
}

/**
 * What a report shows that is not in the Assessment: the schematic of the traced circuit, with what was found on its parts, the numbers of
 * thermal pictures on which something was drawn, and the runs of the circuit.
 */
export async function reportExtras(
  one: Case,
  assessment: Assessment,
  { moves = new Map(), draw = drawCaseSchematic, kept }: ExtrasFrom = {},
): Promise<ReportExtras> {
  const drawn = await draw(one, { moves, marks: partMarks(assessment) });
  const thermal = new Map(
    (assessment.pictures ?? []).flatMap(({ exhibit }) => {
      const field = readPicture(one, kept?.tables ?? new Map(), exhibit);
      return isRefusal(field) ? [] : [[exhibit, field] as const];
    }),
  );
  const runs = kept === undefined ? null : keptRuns({ one, ...kept });
  return {
    ...(drawn === null ? {} : { schematic: drawn.figure }),
    ...(thermal.size === 0 ? {} : { thermal }),
    ...(runs === null ? {} : { runs }),
  };
}
