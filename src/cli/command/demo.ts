import { mkdir, readdir, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { assessCase } from '../../app/assess-case.ts';
import { reportExtras } from '../../app/report-extras.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { renderReport } from '../../present/report/render-report.ts';
import { explainCheck } from '../../present/text/explain.ts';
import { summaryText } from '../../present/text/summary.ts';
import { caseFolder } from '../../store/folder/case-folder.ts';
import { columns, print, Refused, wantsColour } from '../output.ts';
import { EXAMPLES } from '../places.ts';
import { importCase } from './import.ts';
import { serve } from './serve.ts';

/** Judges the invented demo cases, explains one deciding number of each, and writes their reports. */
export async function demo(options: { out: string; once?: boolean; port?: string }): Promise<void> {
  await mkdir(options.out, { recursive: true });
  const names = (await readdir(EXAMPLES, { withFileTypes: true }))
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
  const written: string[] = [];
  for (const name of names) {
    const result = await assessCase(caseFolder(join(EXAMPLES, name)));
    if (Array.isArray(result)) throw new Refused(result);
    const { assessment } = result;
    print(summaryText(assessment, { colour: wantsColour(), width: columns() }));
    const file = join(options.out, `${name}.html`);
    await writeFile(file, renderReport(assessment, await reportExtras(result.open.one, assessment, { kept: result.open })));
    written.push(file);
  }
  const [first] = names;
  if (first !== undefined) {
    const result = await assessCase(caseFolder(join(EXAMPLES, first)));
    if (Array.isArray(result)) throw new Refused(result);
    const decided = tellingOf(result.assessment);
    const text = decided === undefined ? null : explainCheck(result.assessment, decided.id, { colour: wantsColour() });
    if (text !== null && !isRefusal(text)) print(`Where the number that decides ${result.assessment.case.name} comes from:\n\n${text}`);
  }
  print(`\nreports:\n${written.map((file) => `  ${file}`).join('\n')}`);
  if (options.once === true || process.env['CI'] === 'true') return;
  const casebook = join(options.out, 'demo.casebook');
  const kept = await stat(casebook).catch(() => null);
  if (kept === null) for (const name of names) await importCase(join(EXAMPLES, name), { casebook });
  await serve({ casebook, ...(options.port === undefined ? {} : { port: options.port }) });
}

/** Of the findings that decide, one with arithmetic behind it that still fits on a screen. */
function tellingOf({ findings, verdict, steps }: Assessment): Finding | undefined {
  const below = new Map<string, ReadonlySet<string>>();
  for (const { id, formula, uses } of steps)
    below.set(id, new Set([...(formula === null ? [] : [id]), ...uses.flatMap(({ step }) => [...(below.get(step) ?? [])])]));
  const formulas = ({ step, limit }: Finding): number =>
    new Set([step, limit?.step].flatMap((id) => [...(below.get(id ?? '') ?? [])])).size;
  const deciding = findings.filter(({ id, step }) => verdict.decidedBy.includes(id) && step !== null);
  const byLength = deciding.toSorted((a, b) => formulas(a) - formulas(b));
  return byLength.find((finding) => formulas(finding) > 1) ?? byLength[0];
}
