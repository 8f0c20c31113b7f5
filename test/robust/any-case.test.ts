import { describe, expect, test } from 'vitest';
import type { DemoCase } from '../../scripts/demo/demo-unit.ts';
import { noiseFor } from '../../scripts/demo/noise.ts';
import { DEMO_CASES } from '../../scripts/examples.ts';
import { toReadTable } from '../../src/app/to-read-table.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { assessment as assessmentSchema } from '../../src/core/result/assessment.ts';
import type { Tables } from '../../src/core/working/bench/bench.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';
import { mutate } from './mutate.ts';

const ROUNDS = 1200; // per demo case
const MOST_CHANGES = 6;

function tablesOf({ document, files }: DemoCase): Tables {
  return new Map(
    (document.files ?? []).flatMap(({ path, sha256 }) => {
      const read = readInstrumentFile(files[path]!);
      return isRefusal(read) ? [] : [[sha256, toReadTable(read)] as const];
    }),
  );
}

describe('whatever a person types', () => {
  test.each(Object.entries(DEMO_CASES))('%s with random edits is either refused in sentences or judged', (name, make) => {
    const demo = make();
    const tables = tablesOf(demo);
    let judged = 0;
    let refused = 0;
    for (let round = 0; round < ROUNDS; round += 1) {
      const noise = noiseFor('random edits', `${name} ${round}`);
      const json = mutate(demo.document, noise, 1 + Math.floor(noise.uniform() * MOST_CHANGES));
      const one = parseCase(json);
      if (Array.isArray(one)) {
        refused += 1;
        expect(one.length).toBeGreaterThan(0);
        for (const refusal of one) expect(sentence(refusal)).not.toMatch(/\n|undefined|\[object/);
        continue;
      }
      judged += 1;
      let assessment: ReturnType<typeof assess>;
      try {
        assessment = assess(one, tables);
      } catch (error) {
        throw new Error(`round ${round}: ${error instanceof Error ? error.stack : String(error)}`);
      }
      const parsed = assessmentSchema.safeParse(assessment);
      expect(parsed.error, `round ${round}`).toBeUndefined();
      // nothing found wrong is never said beside a failure or a doubtful word
      if (assessment.verdict.failure === 'Nothing found wrong')
        expect(
          assessment.findings.some(({ outcome, consequence }) => outcome === 'fail' && consequence !== 'informative'),
          `round ${round}`,
        ).toBe(false);
    }
    // both ways are walked, or the test tests nothing
    expect(judged).toBeGreaterThan(ROUNDS / 20);
    expect(refused).toBeGreaterThan(ROUNDS / 20);
  });
});
