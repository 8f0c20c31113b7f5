import type { Port } from '../../evidence/sample.ts';
import { recall } from '../../recall/recall.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { heldCurrent } from './held-current.ts';
import { companyOf } from './other-loads.ts';
import { readSweep, type Sweep } from './read-sweep.ts';
import { type Window, windowOf } from './window-of.ts';

/** A sweep with the current it holds inside the window; null where there is no window. */
export interface Run {
  readonly sweep: Sweep;
  readonly held: Derived | null;
}

/** One voltage level of one port with its claim, its window and every sweep of it. */
export interface LevelFacts {
  /** "out-1~5v". */
  readonly id: string;
  readonly about: string;
  readonly port: Port;
  readonly level: Port['levels'][number];
  readonly claim: Derived | null;
  readonly window: Window | null;
  readonly sweeps: readonly Sweep[];
  /** There are sweeps of it, and all are struck. */
  readonly onlyStruck: boolean;
  /** The sweeps of this port alone nearest to the nominal mains, of both orders and starts: the worst of them counts, they are never averaged. */
  readonly nearest: readonly Run[];
  /** The same with neighbours loaded: a shared budget may then be spent, which is a question of its own. */
  readonly inCompany: readonly Run[];
}

export function levelFacts(bench: Bench, setting: SettingFacts): LevelFacts[] {
  const all = exhibitsOf(bench, 'sweep').map((exhibit) => recall(readSweep, bench, exhibit));
  const inCompany = (sweep: Sweep): boolean => companyOf(bench, sweep.exhibit, sweep.port) !== '';
  const sweeps = all.filter(({ exhibit }) => exhibit.struck === undefined);
  return bench.one.ports.flatMap((port) =>
    port.levels.map((level) => {
      const own = sweeps.filter((sweep) => sweep.port === port.id && sweep.level === level.id);
      const printed = findRead(level.printed);
      const window = windowOf(port, level);
      const held = (sweep: Sweep): Run => ({ sweep, held: window === null ? null : heldCurrent(sweep, window) });
      return {
        id: `${port.id}~${level.id}`,
        about: `${nameOf(bench, port.id)}, ${level.voltage}`,
        port,
        level,
        claim:
          printed === null
            ? null
            : deriveTyped(printed, 'current', `/ports/${port.id}/levels/${level.id}/printed`, 'claimedCurrent', 'I_c'),
        window,
        sweeps: own,
        onlyStruck: own.length === 0 && all.some((sweep) => sweep.port === port.id && sweep.level === level.id),
        nearest: nearestTo(
          setting.nominal.value,
          own.filter((sweep) => !inCompany(sweep)),
        ).map(held),
        inCompany: nearestTo(setting.nominal.value, own.filter(inCompany)).map(held),
      };
    }),
  );
}

const SAME_MAINS = 0.02; // share of the nominal voltage within which two runs count as at the same mains

/** The runs at the mains nearest to `nominal`; runs whose mains is not stated only when no other exists. */
function nearestTo(nominal: number, sweeps: readonly Sweep[]): Sweep[] {
  const known = sweeps.filter((sweep) => sweep.mains !== null && sweep.rows.length > 0);
  if (known.length === 0) return sweeps.filter((sweep) => sweep.rows.length > 0);
  const away = (sweep: Sweep): number => Math.abs((sweep.mains?.value ?? 0) - nominal);
  const least = Math.min(...known.map(away));
  return known.filter((sweep) => away(sweep) <= least + SAME_MAINS * nominal);
}
