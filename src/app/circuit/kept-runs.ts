import { freshRuns } from '../../core/assess/fresh-runs.ts';
import { openBench } from '../../core/working/bench/bench.ts';
import { gatherFacts } from '../../core/working/facts.ts';
import type { ReportRuns } from '../../present/report/run-section.ts';
import type { OpenCase } from '../open-case.ts';
import { measuredPoints } from './measured-points.ts';

/** Kept runs of the circuit that still belong to it, with what was measured beside; null without any. */
export function keptRuns(open: OpenCase): ReportRuns | null {
  if ((open.one.computed ?? []).length === 0) return null;
  const { runs } = freshRuns(gatherFacts(openBench(open.one, open.tables)), open.results);
  if (runs.simulations.length + runs.campaigns.length === 0) return null;
  return {
    simulations: runs.simulations.map((result) => ({ result, measured: measuredPoints(open, result) })),
    campaigns: runs.campaigns,
  };
}
