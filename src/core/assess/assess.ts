import type { Case } from '../evidence/case.ts';
import type { Assessment } from '../result/assessment.ts';
import { toRounded } from '../result/canonical.ts';
import { digestOf } from '../result/digest.ts';
import { openBench, type Tables } from '../working/bench/bench.ts';
import type { Results } from './fresh-results.ts';
import { judgeCase } from './judge-case.ts';

/**
 * Evidence in, Assessment out. Pure: the same case and the same tables give the same bytes. `tables` is what the importer read from the
 * attached files, `results` what computed exhibits keep, both by the SHA-256 of each file; nothing is opened here, and nothing slow is done again.
 */
export function assess(one: Case, tables: Tables, results: Results = new Map()): Assessment {
  return toRounded(judgeCase(openBench(one, tables), results, digestOf(one)));
}
