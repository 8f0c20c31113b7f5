import type { Conditions } from '../../evidence/conditions.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';

/** At the label load, at the worst load it sustains, shorted, or at some lesser load. */
export type LoadState = 'tested' | 'labelLoad' | 'worstSustained' | 'shorted';

const NEAR_THE_WORST = 0.06; // share below the current held within which a load counts as the worst sustained
const AT_THE_CLAIM = 0.02; // share within which a load counts as the label load

/**
 * What the loads stand for together: shorted as soon as one output is; else the label load or the worst sustained one only if every output
 * that has a budget of its own is loaded so.
 */
export function stateOfLoads(levels: readonly LevelFacts[], under: Conditions): LoadState {
  const loads = under.loads ?? [];
  if (loads.some(({ draws }) => typeof draws === 'object' && draws.state === 'short')) return 'shorted';
  const budgets = budgetsOf(levels);
  const states = budgets.map(
    (ports) =>
      loads
        .filter(({ port }) => ports.has(port))
        .map((load) => stateOfLoad(levels, load))
        .sort(byGravity)[0] ?? 'tested',
  );
  if (states.length === 0 || states.includes('tested')) return 'tested';
  return states.includes('worstSustained') ? 'worstSustained' : 'labelLoad';
}

const GRAVITY = ['worstSustained', 'labelLoad', 'tested'] as const;
type InUse = (typeof GRAVITY)[number];
const byGravity = (a: InUse, b: InUse): number => GRAVITY.indexOf(a) - GRAVITY.indexOf(b);

function stateOfLoad(levels: readonly LevelFacts[], load: NonNullable<Conditions['loads']>[number]): InUse {
  if (typeof load.draws === 'object') return 'tested';
  const own = levels.filter(({ port }) => port.id === load.port);
  const level = own.find((one) => one.level.id === load.level) ?? own[0];
  const drawn = parseQuantity(load.draws, 'current');
  if (level === undefined || isRefusal(drawn)) return 'tested';
  if (level.claim !== null && level.claim.value > 0 && drawn.value >= level.claim.value * (1 - AT_THE_CLAIM)) return 'labelLoad';
  // a sweep that merely stopped early says nothing of the most the unit sustains
  const held = Math.max(0, ...level.nearest.flatMap((one) => (one.held === null || one.held.side !== undefined ? [] : [one.held.value])));
  return held > 0 && drawn.value >= held * (1 - NEAR_THE_WORST) ? 'worstSustained' : 'tested';
}

/** Ports that share a budget, together; every other port by itself. */
function budgetsOf(levels: readonly LevelFacts[]): Set<string>[] {
  const budgets: Set<string>[] = [];
  for (const { port } of levels) {
    const together = [port.id, ...(port.sharesWith ?? [])];
    const known = budgets.find((ports) => together.some((id) => ports.has(id)));
    if (known === undefined) budgets.push(new Set(together));
    else for (const id of together) known.add(id);
  }
  return budgets;
}
