import { derive } from '../../formula/derive.ts';
import { bodyCurrent } from '../../formula/insulation/body-current.ts';
import { bodyImpedance } from '../../table/iec-60479-1/1994/body-impedance.ts';
import { lookUp } from '../../table/look-up.ts';
import type { Note, StepNode } from '../../trace/step.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';

/**
 * What a person gets when the weakest path conducts: a range of currents at the mains, from the impedances of the body that few and most people
 * have, and in which form the mains arrives. A range and never a zone: duration, path and shoes decide what it does.
 */
export function personNote(bench: Bench, setting: SettingFacts): { note: Note; steps: StepNode[] } | null {
  const [few, most] = (['few', 'most'] as const).map((column) => {
    const impedance = lookUp(bodyImpedance, setting.nominal, column, `barrier/person/impedance-${column}`, 'Z');
    return impedance === null ? null : derive(bodyCurrent, { voltage: setting.nominal, impedance }, `barrier/person/current-${column}`);
  });
  if (few == null || most == null) return null;
  const args = { least: most.value, greatest: few.value, mains: setting.nominal.value };
  const steps = [few.step, most.step];
  const kinds = new Set(
    exhibitsOf(bench, 'board').flatMap(({ struck, rectifier }) => (struck === undefined ? (findRead(rectifier) ?? []) : [])),
  );
  if (kinds.size === 1 && (kinds.has('bridge') || kinds.has('doubler'))) return { note: { key: 'personChopped', args }, steps };
  if (kinds.size === 1 && kinds.has('singleDiode')) return { note: { key: 'personByPlugWay', args }, steps };
  return { note: { key: 'personEither', args }, steps };
}
