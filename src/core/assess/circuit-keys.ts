import { CAMPAIGN_RECIPE } from '../evidence/computed/fault-campaign.ts';
import { SIMULATION_RECIPE } from '../evidence/computed/simulation.ts';
import type { Level, NoModel } from '../model/model.ts';
import type { planFaults, SimulationPlan } from '../model/plans.ts';
import { digestOf } from '../result/digest.ts';

type FaultPlan = Exclude<ReturnType<typeof planFaults>, NoModel>;

/** What the operating points of a circuit hang on: the circuit as it is run, with everything assumed in it, and the recipe. */
export function simulationKey({ model, points }: SimulationPlan): string {
  const { circuit, level } = model;
  const runs = points.map(({ choice, mains, plan: { windowS, mostS, closeS } }) => ({ choice, mains, windowS, mostS, closeS }));
  return digestOf({ recipe: SIMULATION_RECIPE, circuit, level: plain(level), runs });
}

/** The same for a campaign of faults. */
export function campaignKey({ model, plan }: FaultPlan, faults: readonly string[]): string {
  return digestOf({ recipe: CAMPAIGN_RECIPE, plan, level: plain(model.level), faults });
}

/** A level without its name, which changes nothing. */
const plain = ({ port, id, volts, amps }: Level): Omit<Level, 'name'> => ({ port, id, volts, amps });
