import type { Part } from '../../evidence/sample.ts';
import { impulseOfClass } from '../../formula/board/impulse-of-class.ts';
import { derive } from '../../formula/derive.ts';
import { impulse } from '../../table/iec-60384-14/2013/impulse.ts';
import { ratedImpulseVoltage } from '../../table/iec-60664-1/2007/rated-impulse-voltage.ts';
import { findCell, lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import type { Facts } from '../facts.ts';
import { enteredMains } from '../insulation/clearance-limits.ts';
import { bestValue } from './part-quantity.ts';

const BY_CAPACITANCE = new Set(['X1', 'X2', 'Y2']); // the others stand the same whatever their size

/** The impulse that a part of a safety class has stood, beside what the mains brings; null where the class has none or the size is not known. */
export function impulseStood(
  { bench, setting }: Pick<Facts, 'bench' | 'setting'>,
  part: Part,
  safetyClass: string,
): { volts: Derived; notes: Note[] } | null {
  const printed = findCell(impulse, safetyClass, 'volts', `board/impulse-of-${safetyClass.toLowerCase()}`, 'U_1');
  const capacitance = bestValue(bench, part, 'capacitance', 'capacitance', 'C').at;
  const comes = lookUp(ratedImpulseVoltage, enteredMains(setting), setting.overvoltageCategory.word, 'insulation/rated-impulse', 'V_imp', {
    category: setting.overvoltageCategory,
  });
  if (printed === null || comes === null) return null;
  if (!BY_CAPACITANCE.has(safetyClass)) return { volts: printed, notes: noteOf(printed, comes) };
  if (capacitance === null || capacitance.side !== undefined || capacitance.value <= 0) return null;
  const volts = derive(impulseOfClass, { impulse: printed, capacitance }, `board/${part.id}/impulse`);
  return { volts, notes: noteOf(volts, comes) };
}

function noteOf(volts: Derived, comes: Derived): Note[] {
  return [{ key: volts.value >= comes.value ? 'impulseStood' : 'impulseTooLow', args: { volts: volts.value, comes: comes.value } }];
}
