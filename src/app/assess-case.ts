import { assess } from '../core/assess/assess.ts';
import type { Refusal } from '../core/quantity/refusal.ts';
import type { Assessment } from '../core/result/assessment.ts';
import type { CaseSource } from './case-source.ts';
import { type OpenCase, openCase } from './open-case.ts';

/** Opens and judges one case. */
export async function assessCase(source: CaseSource): Promise<{ open: OpenCase; assessment: Assessment } | Refusal[]> {
  const open = await openCase(source);
  if (Array.isArray(open)) return open;
  return { open, assessment: assess(open.one, open.tables, open.results) };
}
