/** Writes the golden Assessments and lists every finding that a change moved. `--check` only lists, and exits 1 when something moved. */

import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { assessCase } from '../src/app/assess-case.ts';
import { sentence } from '../src/core/quantity/refusal.ts';
import type { Assessment, Finding } from '../src/core/result/assessment.ts';
import { toCanonical } from '../src/core/result/canonical.ts';
import { drawLoadCurve, LOAD_CURVE_WIDE } from '../src/present/figure/load-curve.ts';
import { drawSoakCurve, SOAK_WIDE } from '../src/present/figure/soak-curve.ts';
import { toSvgFile } from '../src/present/figure/to-svg-file.ts';
import { caseFolder } from '../src/store/folder/case-folder.ts';

export const GOLDEN = ['beck-5', 'fell-12', 'moss-trio', 'tarn-30'] as const;

export async function goldenText(name: string): Promise<string> {
  const result = await assessCase(caseFolder(join('examples', name)));
  if (Array.isArray(result)) throw new Error(result.map(sentence).join('\n'));
  return `${JSON.stringify(toCanonical(result.assessment), null, 1)}\n`;
}

/** Figures of a golden case, as files of their own. */
export function goldenFigures(name: string, assessment: Assessment): Map<string, string> {
  const figures = new Map<string, string>();
  for (const curve of assessment.curves)
    figures.set(`${name}-${curve.exhibit}.svg`, toSvgFile(drawLoadCurve(curve, assessment, LOAD_CURVE_WIDE)));
  for (const soak of assessment.soaks)
    figures.set(`${name}-${soak.exhibit}-${soak.column}.svg`, toSvgFile(drawSoakCurve(soak, assessment, SOAK_WIDE)));
  return figures;
}

/** What a reader of the change log wants to know: which verdict, which finding, from what to what. */
export function movedFindings(before: Assessment, after: Assessment): string[] {
  const moved: string[] = [];
  if (before.verdict.failure !== after.verdict.failure) moved.push(`verdict: ${before.verdict.failure} -> ${after.verdict.failure}`);
  const word = (one: Finding | undefined): string =>
    one === undefined
      ? 'not there'
      : `${one.outcome}${one.rung === undefined ? '' : ` (${one.rung})`}, margin ${one.margin?.toPrecision(4) ?? 'none'}, limit ${one.limit?.at?.value ?? 'none'}`;
  const ids = new Set([...before.findings, ...after.findings].map(({ id }) => id));
  for (const id of [...ids].sort()) {
    const [then, now] = [before, after].map(({ findings }) => word(findings.find((one) => one.id === id)));
    if (then !== now) moved.push(`${id}: ${then} -> ${now}`);
  }
  return moved;
}

if (process.argv[1]?.endsWith('golden.ts')) {
  const stale = new Set(readdirSync('test/golden/figures'));
  for (const name of GOLDEN) {
    for (const [file, svg] of goldenFigures(name, JSON.parse(await goldenText(name)) as Assessment)) {
      stale.delete(file);
      const path = join('test/golden/figures', file);
      if (existsSync(path) && readFileSync(path, 'utf8') === svg) continue;
      console.log(`${path} differs`);
      if (process.argv.includes('--check')) process.exitCode = 1;
      else writeFileSync(path, svg);
    }
    const path = `test/golden/${name}.json`;
    const now = await goldenText(name);
    const then = existsSync(path) ? readFileSync(path, 'utf8') : null;
    if (now === then) continue;
    const moved = then === null ? ['new'] : movedFindings(JSON.parse(then) as Assessment, JSON.parse(now) as Assessment);
    console.log(`${name}: ${moved.length === 0 ? 'bytes differ, no finding moved' : ''}`);
    for (const line of moved) console.log(`  ${line}`);
    if (process.argv.includes('--check')) process.exitCode = 1;
    else writeFileSync(path, now);
  }
  for (const file of stale) {
    console.log(`${file} is drawn no more`);
    if (process.argv.includes('--check')) process.exitCode = 1;
    else rmSync(join('test/golden/figures', file));
  }
}
