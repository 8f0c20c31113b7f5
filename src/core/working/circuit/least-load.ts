import type { Recognised } from '../../circuit/recognise/recognise.ts';
import { derive } from '../../formula/derive.ts';
import { bleederCurrent } from '../../formula/feedback/bleeder-current.ts';
import { power } from '../../formula/load/power.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { dividerResistance } from './divider-resistance.ts';
import type { SetPoint } from './set-points.ts';

export interface LeastLoad {
  /** Ids of the resistors across the output. */
  readonly parts: readonly string[];
  readonly current: Derived;
  readonly power: Derived;
}

/** What resistors across the output draw at one of its voltages with nothing connected; null without one, or where a value is not known. */
export function leastLoad(bench: Bench, { jobs, graph }: Recognised, { id, value }: SetPoint): LeastLoad | null {
  const links = graph.links.filter(({ parts }) => parts.length > 0 && parts.every((part) => jobs.get(part)?.job === 'outputBleeder'));
  if (links.length === 0) return null;
  const resistance = dividerResistance(
    bench,
    links.map(({ parts }) => parts),
    'circuit/bleeder',
  );
  if ('opened' in resistance) return null;
  const current = derive(bleederCurrent, { output: value, resistance: resistance.here }, `circuit/bleeder-current/${id}`);
  return {
    parts: links.flatMap(({ parts }) => parts),
    current,
    power: derive(power, { voltage: value, current }, `circuit/bleeder-power/${id}`),
  };
}
