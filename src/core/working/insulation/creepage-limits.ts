import { derive } from '../../formula/derive.ts';
import { notBelowClearance } from '../../formula/insulation/not-below-clearance.ts';
import { reinforcedCreepage } from '../../formula/insulation/reinforced-creepage.ts';
import { roundUpCreepage } from '../../formula/insulation/round-up-creepage.ts';
import { creepage as creepageTable } from '../../table/iec-62368-1/2018/creepage.ts';
import { coveringRow, getCell, lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { DistanceLimits } from './clearance-limits.ts';

/**
 * Required creepage of a pair at its own rms working voltage. Fail line: basic by interpolation, rounded up to 0.1 mm, doubled for
 * reinforced, never below the clearance. Comfort line: twice the table row that covers the working voltage. Null outside the table.
 */
export function creepageLimits(
  pairId: string,
  working: Derived,
  group: 'I' | 'II' | 'III',
  degree: string,
  clearance: DistanceLimits,
): DistanceLimits | null {
  const at = `insulation/${pairId}/creepage`;
  const column = degree === '1' ? 'PD1' : `PD${degree}_${group}`;
  const raw = lookUp(creepageTable, working, column, `${at}/table`, 'd');
  if (raw === null) return null;
  const rounded = derive(roundUpCreepage, { distance: raw }, `${at}/rounded`);
  const doubled = derive(reinforcedCreepage, { basic: rounded }, `${at}/doubled`);
  const basic = derive(notBelowClearance, { creepage: rounded, clearance: clearance.basic }, `${at}/basic`);
  const reinforced = derive(notBelowClearance, { creepage: doubled, clearance: clearance.reinforced }, `${at}/reinforced`);
  const row = coveringRow(creepageTable, working.value);
  const comfort =
    row === null ? null : derive(reinforcedCreepage, { basic: getCell(creepageTable, row, column, `${at}/row`, 'd_b') }, `${at}/comfort`);
  return { basic, reinforced, others: comfort === null ? [] : [{ name: 'comfort', at: comfort }] };
}
