import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';

/** Voltages that nobody measures while tracing: value and half width in V, and what they are. All from memory of data sheets. */
const DROPS = {
  led: { volts: 1.2, half: 0.15, symbol: 'V_F' },
  signalDiode: { volts: 0.7, half: 0.1, symbol: 'V_d' },
  base: { volts: 0.65, half: 0.1, symbol: 'V_be' },
  schottky: { volts: 0.4, half: 0.15, symbol: 'V_f' },
} as const;

/** The usual drop of a junction at the currents of a small adapter. */
export function dropOf(what: keyof typeof DROPS): Derived {
  const { volts, half, symbol } = DROPS[what];
  const source = cite('bench', `usual drop at small currents, within ${half} V`, 'memory');
  const form = doubtOf({ id: `drop/${what}`, u: rectangular(half), means: 'estimate' });
  return given('constant', volts, 'V', { id: `circuit/drop-${what}`, name: `estimate-drop-${what}`, symbol, source }, { form });
}
