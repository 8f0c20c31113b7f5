import type { Simulation } from '../../core/evidence/computed/simulation.ts';
import { openBench } from '../../core/working/bench/bench.ts';
import { gatherFacts } from '../../core/working/facts.ts';
import type { OpenCase } from '../open-case.ts';

/** An operating point that was measured, beside the simulated one of that id. */
export interface MeasuredPoint {
  readonly id: string;
  readonly outputA: number;
  readonly outputV: number;
  readonly inputW: number | null;
}

/** How near in mains voltage and in load a reading must lie to be set beside a simulated point, as shares. House choices. */
const NEAR_MAINS = 0.05;
const NEAR_LOAD = 0.12;
const IDLE_A = 0.02;

/** The reading nearest to each simulated point, where there is one that is near enough. */
export function measuredPoints(
  open: Pick<OpenCase, 'one' | 'tables'>,
  { level, points }: Pick<Simulation, 'level' | 'points'>,
): MeasuredPoint[] {
  const { levels } = gatherFacts(openBench(open.one, open.tables));
  const own = levels.find((one) => one.port.id === level.port && one.level.id === level.id);
  return points.flatMap(({ id, mains, outputA }): MeasuredPoint[] => {
    if (outputA === null) return [];
    const rows = (own?.sweeps ?? [])
      .filter((sweep) => sweep.mains !== null && Math.abs(sweep.mains.value - mains.rmsV) <= NEAR_MAINS * mains.rmsV)
      .flatMap((sweep) => sweep.rows);
    const away = (amps: number): number => Math.abs(amps - outputA);
    const [nearest] = rows.toSorted((a, b) => away(a.current.value) - away(b.current.value));
    if (nearest === undefined || away(nearest.current.value) > Math.max(IDLE_A, NEAR_LOAD * outputA)) return [];
    return [{ id, outputA: nearest.current.value, outputV: nearest.voltage.value, inputW: nearest.inputPower?.value ?? null }];
  });
}
