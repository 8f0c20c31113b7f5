import { writeFile } from 'node:fs/promises';
import { assessCase } from '../../app/assess-case.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { renderReport } from '../../present/report/render-report.ts';
import { caseFolder } from '../../store/folder/case-folder.ts';
import { print, Refused } from '../output.ts';

/** Writes the report of a case as one HTML file. */
export async function report(path: string, options: { out: string }): Promise<void> {
  const result = await assessCase(caseFolder(path));
  if (Array.isArray(result)) throw new Refused(result);
  try {
    await writeFile(options.out, renderReport(result.assessment));
  } catch (error) {
    throw new Refused([
      refuse('cannot-write', options.out, `a place that can be written to (${(error as { code?: string }).code ?? 'unknown'})`),
    ]);
  }
  print(`report written to ${options.out}`);
}
