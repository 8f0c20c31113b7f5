import { toCanonical } from '../../core/result/canonical.ts';
import { summaryText } from '../../present/text/summary.ts';
import { judgeCase } from '../judge-case.ts';
import { columns, print, wantsColour } from '../output.ts';

/** Judges a case and prints the verdict, or the whole Assessment as JSON. */
export async function assess(path: string, options: { json?: boolean; casebook?: string }): Promise<void> {
  const assessment = await judgeCase(path, options);
  if (options.json === true) print(JSON.stringify(toCanonical(assessment), null, 2));
  else print(summaryText(assessment, { colour: wantsColour(), width: columns() }));
}
