import { CAMPAIGN_RECIPE, type FaultCampaign, faultCampaign } from '../evidence/computed/fault-campaign.ts';
import { SIMULATION_RECIPE, type Simulation, simulation } from '../evidence/computed/simulation.ts';
import { harmOf, levelsOf } from '../model/choices.ts';
import { faultsOf } from '../model/faults-of.ts';
import type { Level } from '../model/model.ts';
import { planFaults, planPoints } from '../model/plans.ts';
import type { Assessment } from '../result/assessment.ts';
import type { Facts } from '../working/facts.ts';
import { NO_RUNS, type RunFacts } from '../working/simulated/run-facts.ts';
import { campaignKey, simulationKey } from './circuit-keys.ts';
import type { Results } from './fresh-results.ts';

/** Kept runs of the traced circuit that still belong to it, and those that do not. The circuit is translated again for that; nothing is run. */
export function freshRuns(facts: Facts, results: Results): { runs: RunFacts; stale: Assessment['stale'] } {
  const { one, files } = facts.bench;
  if (!(one.computed ?? []).some(({ recipe }) => recipe === SIMULATION_RECIPE || recipe === CAMPAIGN_RECIPE))
    return { runs: NO_RUNS, stale: [] };
  const simulations: Simulation[] = [];
  const campaigns: FaultCampaign[] = [];
  const stale: Assessment['stale'] = [];
  const current = (level: Level): Level | null => levelsOf(facts).find(({ port, id }) => port === level.port && id === level.id) ?? null;
  for (const { id, recipe, key, file } of one.computed ?? []) {
    if (recipe !== SIMULATION_RECIPE && recipe !== CAMPAIGN_RECIPE) continue;
    const content = results.get(files.get(file)?.sha256 ?? '');
    const parsed = recipe === SIMULATION_RECIPE ? simulation.safeParse(content) : faultCampaign.safeParse(content);
    const level = parsed.success ? current(parsed.data.level) : null;
    if (!parsed.success || level === null || parsed.data.key !== key || keyNow(facts, level, recipe) !== key)
      stale.push({ computed: id, recipe });
    else if (parsed.data.recipe === SIMULATION_RECIPE) simulations.push(parsed.data);
    else campaigns.push(parsed.data);
  }
  return { runs: { simulations, campaigns }, stale };
}

function keyNow(facts: Facts, level: Level, recipe: string): string | null {
  if (recipe === SIMULATION_RECIPE) {
    const planned = planPoints(facts, level);
    return 'because' in planned ? null : simulationKey(planned);
  }
  const planned = planFaults(facts, level, harmOf(facts, level));
  if ('because' in planned || facts.circuit === null) return null;
  return campaignKey(planned, faultsOf(planned.model, facts.bench, facts.circuit.recognised.graph.sideOf).ids);
}
