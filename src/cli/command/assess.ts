import { assessCase } from '../../app/assess-case.ts';
import { toCanonical } from '../../core/result/canonical.ts';
import { summaryText } from '../../present/text/summary.ts';
import { caseFolder } from '../../store/folder/case-folder.ts';
import { columns, print, Refused, wantsColour } from '../output.ts';

/** Judges a case folder and prints the verdict, or the whole Assessment as JSON. */
export async function assess(path: string, options: { json?: boolean }): Promise<void> {
  const result = await assessCase(caseFolder(path));
  if (Array.isArray(result)) throw new Refused(result);
  if (options.json === true) print(JSON.stringify(toCanonical(result.assessment), null, 2));
  else print(summaryText(result.assessment, { colour: wantsColour(), width: columns() }));
}
