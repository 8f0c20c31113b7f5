import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { assessCase } from '../../src/app/assess-case.ts';
import { assessment as assessmentSchema } from '../../src/core/result/assessment.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';

const ROOT = 'test/kept';
const kept = readdirSync(ROOT, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name.startsWith('case-'))
  .flatMap((format) => readdirSync(join(ROOT, format.name)).map((name) => join(ROOT, format.name, name)));

/** One saved case of every released format. They are never edited: a format that cannot reopen them is not released. */
describe('a case that was saved once reopens for ever', () => {
  test('there is at least one', () => expect(kept.length).toBeGreaterThan(0));
  test.each(kept)('%s', async (path) => {
    const result = await assessCase(caseFolder(path));
    if (Array.isArray(result)) throw new Error(JSON.stringify(result, null, 1));
    expect(assessmentSchema.safeParse(result.assessment).error).toBeUndefined();
    expect(result.assessment.verdict.failure).not.toBe('No verdict yet');
  });
});
