import type { FaultCampaign, FaultOutcome } from '../../evidence/computed/fault-campaign.ts';
import type { OperatingPoint, Simulation } from '../../evidence/computed/simulation.ts';
import type { SiUnit } from '../../quantity/unit.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';

/** Results of the traced circuit that were kept and still belong to it. */
export interface RunFacts {
  readonly simulations: readonly Simulation[];
  readonly campaigns: readonly FaultCampaign[];
}
export const NO_RUNS: RunFacts = { simulations: [], campaigns: [] };

/** A run at one level of a port, as a subject: "usb-c~5v". */
export interface RunSubject<R> {
  readonly id: string;
  readonly about: string;
  readonly run: R;
}

export function subjectsOf<R extends Simulation | FaultCampaign>(runs: readonly R[]): RunSubject<R>[] {
  return runs.map((run) => ({ id: `${run.level.port}~${run.level.id}`, about: run.level.name, run }));
}

/**
 * Standard doubt of a simulated value as a share of it: what the assumed capacitances, resistances and leakages can move. Conventions of this
 * project, graded common practice; a mean output hangs on set parts alone, a peak on all of them.
 */
const DOUBT = { mean: 0.02, peak: 0.05, current: 0.1, power: 0.1 } as const;

/** A number of a run. Its doubt is a convention; a run that ended while it still rose gives a value that is at least so much. */
export function simulatedValue(id: string, value: number, unit: SiUnit, kind: keyof typeof DOUBT, side?: 'above'): Derived {
  const source = cite('house', 'run of the traced circuit', 'reasoned');
  const form = doubtOf({ id: `simulated/${id}`, u: DOUBT[kind] * Math.abs(value), means: 'simulated' });
  return given(
    'constant',
    value,
    unit,
    { id: `simulated/${id}`, name: 'estimate-simulated', symbol: 'x', source },
    side === undefined ? { form } : { side },
  );
}

/** A run of which nothing can be said: it found no state, spent its steps, or lost energy on the way. */
export const isUsable = (point: OperatingPoint): boolean => point.outcome === 'completed' && point.balanced;
export const hasResult = (one: FaultOutcome): boolean => one.state !== 'noResult' && one.balanced;
