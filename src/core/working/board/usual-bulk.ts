import { usualCapacitance } from '../../formula/board/usual-capacitance.ts';
import { derive } from '../../formula/derive.ts';
import { bulkPerWatt } from '../../table/bench/2026/bulk-per-watt.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { unitNameplate } from '../load/power-facts.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';

export interface UsualBulk {
  readonly found: Derived;
  readonly power: Derived;
  readonly least: Derived;
  readonly most: Derived;
}

/** Lowest mains from which the makers' smaller figure holds; their notes begin at 180 V. */
const EUROPEAN_FROM_V = 180;

/** What is there beside what makers take for as many watts. Null where the capacitance or what is printed for the outputs is not known. */
export function usualBulk(bench: Bench, setting: SettingFacts, levels: readonly LevelFacts[]): UsualBulk | null {
  const found = bulkCapacitance(bench);
  const power = unitNameplate(levels);
  if ('because' in found || power === null || power.value <= 0) return null;
  const row = setting.low.value >= EUROPEAN_FROM_V ? 'europeanOnly' : 'fromAmerican';
  const of = (column: 'least' | 'most'): Derived =>
    derive(
      usualCapacitance,
      { perWatt: getCell(bulkPerWatt, row, column, `board/bulk-per-watt/${column}`, 'k'), power },
      `board/usual-capacitance/${column}`,
    );
  return { found, power, least: of('least'), most: of('most') };
}
