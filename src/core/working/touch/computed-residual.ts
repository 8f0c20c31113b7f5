import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { residualVoltage } from '../../formula/touch/residual-voltage.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { PinCapacitance } from './pin-capacitance.ts';
import { MOMENT_S } from './residual-facts.ts';

/** What the recorded bleeder and capacitor leave after two seconds, from the crest of the highest mains. A cross-check: the reading outranks it. */
export function computedResidual(bench: Bench, setting: SettingFacts, capacitance: PinCapacitance): Derived | null {
  const bleeder = capacitance.state === 'known' ? bleederOf(bench) : null;
  if (capacitance.state !== 'known' || bleeder === null) return null;
  const start = derive(peakOfMains, { rms: setting.high }, 'touch/pins/highest-crest');
  const after = given('constant', MOMENT_S, 's', { id: 'touch/pins/computed-moment', name: 'setting-moment', symbol: 't' });
  return derive(residualVoltage, { start, after, resistance: bleeder, capacitance: capacitance.actual }, 'touch/pins/computed-residual');
}

/** One bleeder, or several in one chain or all side by side, by the nets they share; anything else is not guessed. */
function bleederOf(bench: Bench): Derived | null {
  const ids = exhibitsOf(bench, 'board').flatMap((board) => (board.struck === undefined ? (findRead(board.bleeders) ?? []) : []));
  const parts = [...new Set(ids)].map((id) => bench.parts.get(id));
  if (parts.length === 0) return null;
  const values = parts.map((part) => {
    const text = part === undefined ? null : (findRead(part.measured) ?? findRead(part.value));
    const quantity = text === null ? null : parseQuantity(text, 'resistance');
    return quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0 ? null : quantity.value;
  });
  if (values.some((value) => value === null)) return null;
  const ohms = values as number[];
  const joined = parts.length === 1 ? 'single' : howJoined(parts as Part[]);
  if (joined === null) return null;
  const total = joined === 'sideBySide' ? 1 / ohms.reduce((sum, ohm) => sum + 1 / ohm, 0) : ohms.reduce((sum, ohm) => sum + ohm, 0);
  return given('typed', total, 'Ω', { id: 'touch/pins/bleeder', name: 'bleeder', symbol: 'R', field: `/parts/${parts[0]!.id}/value` });
}

function howJoined(parts: readonly Part[]): 'sideBySide' | 'chain' | null {
  const nets = parts.map((part) => (part.pins ?? []).map(({ net }) => findRead(net)));
  if (nets.some((own) => own.length !== 2 || own.includes(null) || own[0] === own[1])) return null;
  const counts = new Map<string | null, number>();
  for (const net of nets.flat()) counts.set(net, (counts.get(net) ?? 0) + 1);
  const found = [...counts.values()].sort((a, b) => a - b);
  if (counts.size === 2) return 'sideBySide';
  // a chain of n has n + 1 nets: two ends met once, the others twice
  return counts.size === parts.length + 1 && found.filter((one) => one === 1).length === 2 && found.at(-1) === 2 ? 'chain' : null;
}
