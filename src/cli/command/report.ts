import { writeFile } from 'node:fs/promises';
import { reportExtras } from '../../app/report-extras.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { renderReport } from '../../present/report/render-report.ts';
import { judgeOpenCase } from '../judge-case.ts';
import { print, Refused } from '../output.ts';

/** Writes the report of a case as one HTML file. */
export async function report(path: string, options: { out: string; casebook?: string }): Promise<void> {
  const { open, assessment } = await judgeOpenCase(path, options);
  const extras = await reportExtras(open.one, assessment, { kept: open });
  try {
    await writeFile(options.out, renderReport(assessment, extras));
  } catch (error) {
    throw new Refused([
      refuse('cannot-write', options.out, `a place that can be written to (${(error as { code?: string }).code ?? 'unknown'})`),
    ]);
  }
  print(`report written to ${options.out}`);
}
