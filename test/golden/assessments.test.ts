import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { GOLDEN, goldenFigures, goldenText } from '../../scripts/golden.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';

/** Whole Assessments of the demo cases, read by people when they change: `npm run golden` rewrites them and lists every finding that moved. */
describe('the Assessment of a demo case is what people last agreed on', () => {
  test.each(GOLDEN)('%s', async (name) => {
    const now = await goldenText(name);
    const then = readFileSync(`test/golden/${name}.json`, 'utf8');
    expect(now === then, `${name} changed: look at npm run golden`).toBe(true);
  });
});

describe('the figures of a demo case are what people last looked at', () => {
  test.each(GOLDEN)('%s', async (name) => {
    const figures = goldenFigures(name, JSON.parse(await goldenText(name)) as Assessment);
    expect(figures.size).toBeGreaterThan(1);
    for (const [file, svg] of figures)
      expect(readFileSync(`test/golden/figures/${file}`, 'utf8') === svg, `${file} changed: look at npm run golden`).toBe(true);
  });

  test('and no figure is kept that nothing draws', async () => {
    const drawn = await Promise.all(
      GOLDEN.map(async (name) => [...goldenFigures(name, JSON.parse(await goldenText(name)) as Assessment).keys()]),
    );
    expect(readdirSync('test/golden/figures').sort()).toEqual(drawn.flat().sort());
  });
});
