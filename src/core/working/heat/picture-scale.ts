import type { ExhibitOf } from '../../evidence/case.ts';
import { readingsOfUnit, type UnitReading } from '../../quantity/unit.ts';
import type { ReadTable } from '../bench/bench.ts';

/** Why a picture gives no temperatures. */
export type PictureTrouble = 'pictureHoldsNoNumbers' | 'pictureIsATable' | 'pictureUnitUnknown' | 'pictureUnitsDiffer' | 'pictureInDoubt';

export const UNIT_ASKED = 'unit'; // the one question about a file that the exhibit itself answers

/**
 * How a number of the file becomes kelvin, by the scale that the picture states: × factor + offset is a temperature in its unit. Where the file
 * states a unit of its own it has to be the same one; any other question that the file leaves open keeps the picture shut.
 */
export function pictureScale(
  { scale }: Pick<ExhibitOf<'thermalPicture'>, 'scale'>,
  table: ReadTable | undefined,
): ((value: number) => number) | PictureTrouble {
  if (table === undefined) return 'pictureHoldsNoNumbers';
  if (table.shape === 'columns') return 'pictureIsATable';
  if (table.columns.some(({ doubts }) => doubts.some((code) => code !== UNIT_ASKED))) return 'pictureInDoubt';
  const unit = temperatureUnit(scale.unit);
  if (unit === undefined) return 'pictureUnitUnknown';
  const stated = table.columns[0]?.unit ?? null;
  // a raw count is no temperature: what the file calls "1" is what the factor is for
  if (stated !== null && stated !== '1' && !isSameUnit(temperatureUnit(stated), unit)) return 'pictureUnitsDiffer';
  const { factor, offset } = unit.unit;
  return (value) => (value * (scale.factor ?? 1) + (scale.offset ?? 0) + offset) * factor * unit.prefix;
}

function isSameUnit(a: UnitReading | undefined, b: UnitReading): boolean {
  return a?.unit.factor === b.unit.factor && a.unit.offset === b.unit.offset;
}

function temperatureUnit(text: string): UnitReading | undefined {
  return readingsOfUnit(text).find((reading) => reading.unit.kind === 'temperature');
}
