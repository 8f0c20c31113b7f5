import { writeFile } from 'node:fs/promises';
import { drawCaseSchematic, failingParts } from '../../app/draw-case-schematic.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { toSvgFile } from '../../present/figure/to-svg-file.ts';
import { SCHEMATIC_CSS } from '../../present/schematic/schematic-style.ts';
import { judgeOpenCase } from '../judge-case.ts';
import { print, Refused } from '../output.ts';

/** Writes the schematic of a case's traced circuit as one SVG file. */
export async function schematic(path: string, options: { out: string; dark?: boolean; casebook?: string }): Promise<void> {
  const { open, assessment } = await judgeOpenCase(path, options);
  const figure = await drawCaseSchematic(open.one, { failing: failingParts(assessment) });
  if (figure === null) throw new Refused([refuse('no-circuit', path, 'a case whose parts have pins on common nets', { place: '/parts' })]);
  try {
    await writeFile(options.out, toSvgFile(figure, options.dark === true ? 'dark' : 'light', SCHEMATIC_CSS));
  } catch (error) {
    throw new Refused([
      refuse('cannot-write', options.out, `a place that can be written to (${(error as { code?: string }).code ?? 'unknown'})`),
    ]);
  }
  print(`schematic written to ${options.out}`);
}
