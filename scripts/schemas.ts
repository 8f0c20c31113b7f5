/** Writes schema/*.json from the zod schemas. `--check` writes nothing and exits 1 when a file is out of date. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { CASE_FORMAT, caseDocument } from '../src/core/evidence/case.ts';
import { ASSESSMENT_FORMAT, assessment } from '../src/core/result/assessment.ts';

export function schemaFiles(): Map<string, string> {
  const text = (schema: z.ZodType, title: string): string =>
    `${JSON.stringify({ title, ...z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any', reused: 'ref' }) }, null, 2)}\n`;
  return new Map([
    [join('schema', 'case.schema.json'), text(caseDocument, CASE_FORMAT)],
    [join('schema', 'assessment.schema.json'), text(assessment, ASSESSMENT_FORMAT)],
  ]);
}

if (process.argv[1]?.endsWith('schemas.ts')) {
  for (const [path, text] of schemaFiles()) {
    if (existsSync(path) && readFileSync(path, 'utf8') === text) continue;
    if (process.argv.includes('--check')) {
      console.error(`${path} is out of date; run npm run schema`);
      process.exitCode = 1;
    } else {
      mkdirSync('schema', { recursive: true });
      writeFileSync(path, text);
      console.log(path);
    }
  }
}
