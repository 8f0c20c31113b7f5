import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { BridgingPath } from '../board/bridging-facts.ts';
import { strengthOfParts } from '../board/bridging-worth.ts';
import type { PairFacts } from '../insulation/pair-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { strengthOfReading } from './distance-strength.ts';
import { type BarrierWay, fixed } from './strength.ts';

/**
 * Ways between earth and either side of the barrier: distances and parts. They are no paths. Earth protects as long as it is connected, which nobody
 * sees on a bench, so they are shown beside the map and judged pair by pair.
 */
export function earthWays(
  bench: Bench,
  setting: SettingFacts,
  pairs: readonly PairFacts[],
  bridging: readonly BridgingPath[],
): BarrierWay[] {
  const isEarth = (id: string | null): boolean => id !== null && findRead(bench.conductors.get(id)?.side) === 'earth';
  const distances = pairs
    .filter(({ ends }) => ends.some(isEarth))
    .flatMap((pair) =>
      (['air', 'surface'] as const).flatMap((path): BarrierWay[] => {
        const [weakest] = pair[path]
          .filter(({ opened }) => opened.state !== 'struck')
          .map((reading) => strengthOfReading(bench, setting, pair, pair, path, reading))
          .toSorted((a, b) => a.high - b.high || a.low - b.low);
        return weakest === undefined
          ? []
          : [{ id: `${path}:${pair.id}`, ends: pair.ends, kind: path, about: pair.about, strength: weakest }];
      }),
    );
  const parts = bridging.flatMap((path): BarrierWay[] => {
    const [from, to] = path.ends;
    if (path.farEnd !== 'known' || to === null || !isEarth(to)) return [];
    const { low, high, notLooked } = strengthOfParts(path);
    const fields = path.parts.flatMap(({ id }) => [`/parts/${id}/kind`, `/parts/${id}/safetyClass`]);
    return [
      { id: `part:${path.id}`, ends: [from, to], kind: 'part', about: path.about, strength: fixed(low, high, { notLooked, fields }) },
    ];
  });
  return [...distances, ...parts].sort((a, b) => (a.id < b.id ? -1 : 1));
}
