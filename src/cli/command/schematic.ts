import { writeFile } from 'node:fs/promises';
import { drawCaseSchematic, partMarks } from '../../app/draw-case-schematic.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { toSvgFile } from '../../present/figure/to-svg-file.ts';
import { HAND_MOVES_KEY, parseHandMoves } from '../../present/schematic/hand-moves.ts';
import { PAPERS, type Paper, renderDrawingSheet } from '../../present/schematic/render-drawing-sheet.ts';
import { SCHEMATIC_CSS } from '../../present/schematic/schematic-style.ts';
import { HOW_TO_PRINT } from '../../present/words/circuit-words.ts';
import { judgeOpenCase } from '../judge-case.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

export interface SchematicOptions {
  readonly out: string;
  readonly dark?: boolean;
  readonly paper?: string;
  readonly casebook?: string;
}

/**
 * Writes the schematic of a case's traced circuit: as one SVG file, where the name ends in .pdf as one page of a PDF, or in .html as a sheet
 * that a browser prints. Parts that were moved by hand in the workspace stand where they were put.
 */
export async function schematic(path: string, options: SchematicOptions): Promise<void> {
  const paper = (options.paper ?? PAPERS[0]).toUpperCase();
  if (!isPaper(paper)) throw new Refused([refuse('no-such-paper', options.paper ?? '', PAPERS.join(' or '), { place: '--paper' })]);
  const { casebook } = options;
  const { open, assessment } = await judgeOpenCase(path, casebook === undefined ? {} : { casebook });
  const moves =
    casebook === undefined
      ? new Map()
      : await withCasebook(casebook, { access: 'read' }, async (store) =>
          parseHandMoves((await store.cases.readScreen(path))[HAND_MOVES_KEY]),
        );
  const drawn = await drawCaseSchematic(open.one, { moves, marks: partMarks(assessment) });
  if (drawn === null) throw new Refused([refuse('no-circuit', path, 'a case whose parts have pins on common nets', { place: '/parts' })]);
  const isSheet = options.out.endsWith('.html');
  const isPdf = options.out.endsWith('.pdf');
  const file = isPdf
    ? await (await import('../../paper/to-drawing-pdf.ts')).toDrawingPdf(drawn.figure, {
        about: assessment.case,
        paper,
        tool: assessment.tool,
        at: new Date(),
      })
    : isSheet
      ? renderDrawingSheet(drawn.figure, assessment.case, paper)
      : toSvgFile(drawn.figure, options.dark === true ? 'dark' : 'light', SCHEMATIC_CSS);
  try {
    await writeFile(options.out, file);
  } catch (error) {
    throw new Refused([
      refuse('cannot-write', options.out, `a place that can be written to (${(error as { code?: string }).code ?? 'unknown'})`),
    ]);
  }
  print(`schematic written to ${options.out}`);
  if (!isPdf) print(HOW_TO_PRINT(isSheet));
}

function isPaper(paper: string): paper is Paper {
  return PAPERS.some((one) => one === paper);
}
