import { storedEnergy } from '../../formula/board/stored-energy.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';
import { bulkFacts } from './bulk-facts.ts';

/** What waits behind the rectifier of this unit at the highest mains; null before the board is read. */
export interface StoredEnergy {
  readonly energy: Derived;
  readonly crest: Derived;
  /** The capacitors that hold it, as they are marked on the board. */
  readonly parts: readonly string[];
}

export function storedEnergyOf(bench: Bench, setting: SettingFacts): StoredEnergy | null {
  const capacitance = bulkCapacitance(bench);
  const bulk = bulkFacts(bench);
  if ('because' in capacitance || typeof bulk === 'string') return null;
  const crest = derive(peakOfMains, { rms: setting.high }, 'board/crest-of-highest-mains');
  return { energy: derive(storedEnergy, { capacitance, crest }, 'board/stored-energy'), crest, parts: bulk.map(({ part }) => part.ref) };
}
