import { describe, expect, it } from 'vitest';
import { caseOf, HAND_SOLVED } from '../barrier/hand-solved.ts';
import { findingOf, judge } from '../build-case.ts';

it('there are more than twenty of them', () => expect(HAND_SOLVED.length).toBeGreaterThan(20));

describe('barriers solved by hand come out the same', () => {
  it.each(HAND_SOLVED.map((row) => [row.title, row] as const))('%s', (_, row) => {
    const assessment = judge(caseOf(row));
    const finding = findingOf(assessment, 'shock/barrier@hand');
    expect([finding.outcome, finding.rung], JSON.stringify(finding.notes)).toEqual([row.outcome, row.rung]);
    if (row.weakest !== undefined) expect(assessment.barrier?.atBest?.ways).toEqual(row.weakest);
  });
});
