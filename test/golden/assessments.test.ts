import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { GOLDEN, goldenText } from '../../scripts/golden.ts';

/** Whole Assessments of the demo cases, read by people when they change: `npm run golden` rewrites them and lists every finding that moved. */
describe('the Assessment of a demo case is what people last agreed on', () => {
  test.each(GOLDEN)('%s', async (name) => {
    const now = await goldenText(name);
    const then = readFileSync(`test/golden/${name}.json`, 'utf8');
    expect(now === then, `${name} changed: look at npm run golden`).toBe(true);
  });
});
