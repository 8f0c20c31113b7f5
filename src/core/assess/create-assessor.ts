import type { Case } from '../evidence/case.ts';
import { Memory } from '../recall/memory.ts';
import type { Assessment } from '../result/assessment.ts';
import { createRounding } from '../result/canonical.ts';
import { createDigest } from '../result/digest.ts';
import { type Bench, openBench, type Tables } from '../working/bench/bench.ts';
import type { Facts } from '../working/facts.ts';
import type { Results } from './fresh-results.ts';
import { judgeCase } from './judge-case.ts';

/** As `assess`: the same case and the same files, the same bytes. */
export type Assessor = (one: Case, tables: Tables, results?: Results) => Assessment;

/**
 * `assess` that remembers: what read nothing that changed since the case was judged last is not judged again, and whatever did not move is the
 * same object in both Assessments. Parts of a case must not be changed in place; `parseCase` with what it remembers hands out the same objects for parts that
 * did not change, without which nothing is saved. One assessor is for one case and its revisions.
 */
export function createAssessor(memory = new Memory()): Assessor {
  const digestOf = createDigest();
  const toRounded = createRounding();
  const noResults: Results = new Map();
  let before: Bench | undefined;
  return (one, tables, results = noResults) => {
    const bench = openBench(one, tables, before);
    before = bench;
    memory.begin();
    const watched = (name: string, facts: Facts): Facts => memory.open(name, facts, { inside: false });
    return toRounded(judgeCase(memory.open('bench', bench, { inside: true }), results, digestOf(one), watched));
  };
}
