import { coatedBoard } from '../../table/iec-62368-1/2018/coated-board.ts';
import { lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { DistanceLimits } from './clearance-limits.ts';
import type { DistanceReading } from './pair-facts.ts';

/**
 * The distance that would do on a lacquered board if its coating had stood the tests of the annex: a line to compare with, where somebody
 * measured the peak. Plain solder mask has none, and potting is another matter.
 */
export function coatedLines(
  { coating }: DistanceReading,
  peak: Derived | null,
  basicEnough: boolean,
  at: string,
): DistanceLimits['others'] {
  if (coating !== 'lacquer' || peak === null) return [];
  const line = lookUp(coatedBoard, peak, basicEnough ? 'basic' : 'reinforced', `${at}/coated-board`, 'd');
  return line === null ? [] : [{ name: 'coatedBoard', at: line }];
}
