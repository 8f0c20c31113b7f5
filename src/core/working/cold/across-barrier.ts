import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { bridgingCurrent } from '../../formula/insulation/bridging-current.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import type { Derived } from '../../trace/derived.ts';
import { uncertaintyOf } from '../../trace/leaf.ts';
import type { Note } from '../../trace/step.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { bridgingPaths } from '../board/bridging-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { TouchReading } from '../touch/touch-facts.ts';

const USUAL_SPREAD = 0.25; // tolerance of the parts and of the meter together; common practice
const WINDINGS_F = 300e-12; // what the windings of a small transformer may add by themselves; common practice
const CLEARLY = 2; // standard uncertainties

/** Resistors that are recorded across the barrier, each way as one value. */
export function resistorsAcross(bench: Bench): number[] {
  return bridgingPaths(bench).flatMap(({ parts }) => {
    const values = parts.map((part) => (findRead(part.kind) === 'resistor' ? sizeOf(part, 'resistance') : null));
    return values.some((value) => value === null) ? [] : [(values as number[]).reduce((sum, value) => sum + value, 0)];
  });
}

/** Is this resistance what the recorded resistors across the barrier have, one of them or all side by side? */
export function explainedBy(bench: Bench, ohms: number): boolean {
  const across = resistorsAcross(bench);
  const together = across.length === 0 ? [] : [1 / across.reduce((sum, value) => sum + 1 / value, 0)];
  return [...across, ...together].some((value) => Math.abs(ohms - value) <= USUAL_SPREAD * value);
}

/** A capacitance across the barrier before power: what it would pass at the highest mains, and whether the recorded parts and the touch current agree. */
export function capacitanceAcross(
  bench: Bench,
  setting: SettingFacts,
  touch: readonly TouchReading[],
  capacitance: Derived,
  id: string,
): { current: Derived; notes: Note[] } {
  const current = derive(bridgingCurrent, { frequency: setting.highFrequency, capacitance, voltage: setting.high }, `cold/${id}/current`);
  const notes: Note[] = [{ key: 'coldCapacitance', args: { farads: capacitance.value, amperes: current.value } }];
  if (capacitance.side !== undefined) return { current, notes };
  const across = capacitorsAcross(bench);
  if (across !== null) {
    const [most, least] = [across * (1 + USUAL_SPREAD) + WINDINGS_F, across * (1 - USUAL_SPREAD)];
    const key =
      capacitance.value > most ? 'coldCapacitanceMore' : capacitance.value < least ? 'coldCapacitanceLess' : 'coldCapacitanceAgrees';
    notes.push({ key, args: { recorded: across } });
  }
  const felt = touch.flatMap((reading) => (reading.current === null || reading.peak ? [] : [reading.current]));
  const more = felt.filter(
    ({ value, form }) => value - CLEARLY * (uncertaintyOf(form) ?? Number.POSITIVE_INFINITY) > current.value * (1 + USUAL_SPREAD),
  );
  if (more.length > 0) notes.push({ key: 'touchAboveCold', args: { amperes: Math.max(...more.map(({ value }) => value)) } });
  return { current, notes };
}

/** Sum of what bridges, two in series as such; null where nothing is recorded or a value is missing. */
function capacitorsAcross(bench: Bench): number | null {
  const paths = bridgingPaths(bench).filter(({ parts }) =>
    parts.every((part) => findRead(part.kind)?.toLowerCase().endsWith('capacitor') === true),
  );
  const each = paths.map(({ parts }) => {
    const values = parts.map((part) => sizeOf(part, 'capacitance'));
    return values.some((value) => value === null) ? null : 1 / (values as number[]).reduce((sum, value) => sum + 1 / value, 0);
  });
  return each.length === 0 || each.some((value) => value === null) ? null : (each as number[]).reduce((sum, value) => sum + value, 0);
}

function sizeOf(part: Part, kind: Kind): number | null {
  const text = findRead(part.measured) ?? findRead(part.value);
  const quantity = text === null ? null : parseQuantity(text, kind);
  return quantity === null || isRefusal(quantity) || quantity.value <= 0 ? null : quantity.value;
}
