import type { CircuitKind } from '../circuit.ts';

/** One short word per kind, as written in brackets behind a reference: "U3 (reference)". Part of the format. */
export const KIND_WORDS: Readonly<Record<CircuitKind, string>> = {
  resistor: 'resistor',
  fusibleResistor: 'fusible',
  fuse: 'fuse',
  ntc: 'ntc',
  varistor: 'varistor',
  ceramicCapacitor: 'ceramic',
  filmCapacitor: 'film',
  electrolyticCapacitor: 'electrolytic',
  capacitor: 'capacitor',
  inductor: 'inductor',
  commonModeChoke: 'choke',
  diode: 'diode',
  bridgeRectifier: 'bridge',
  zener: 'zener',
  led: 'led',
  bipolarTransistor: 'bipolar',
  mosfet: 'mosfet',
  transformer: 'transformer',
  controller: 'controller',
  shuntReference: 'reference',
  optocoupler: 'optocoupler',
  negotiationChip: 'negotiation',
  connector: 'connector',
  jumper: 'link',
  heatSink: 'heatsink',
  load: 'load',
  other: 'other',
};

/** Letters that boards print before a number; the longest that fits counts. Common practice (IEC 81346-2 has letters of its own). */
const LETTERS: Readonly<Record<string, CircuitKind>> = {
  R: 'resistor',
  FR: 'fusibleResistor',
  F: 'fuse',
  RT: 'ntc',
  NTC: 'ntc',
  TH: 'ntc',
  RV: 'varistor',
  MOV: 'varistor',
  C: 'capacitor',
  CX: 'filmCapacitor',
  CY: 'ceramicCapacitor',
  EC: 'electrolyticCapacitor',
  L: 'inductor',
  LF: 'commonModeChoke',
  D: 'diode',
  BD: 'bridgeRectifier',
  DB: 'bridgeRectifier',
  BR: 'bridgeRectifier',
  ZD: 'zener',
  DZ: 'zener',
  LED: 'led',
  T: 'transformer',
  TR: 'transformer',
  J: 'connector',
  CN: 'connector',
  JP: 'jumper',
  W: 'jumper',
  HS: 'heatSink',
};

export function kindOfWord(word: string): CircuitKind | null {
  const low = word.toLowerCase();
  for (const [kind, own] of Object.entries(KIND_WORDS)) if (own === low) return kind as CircuitKind;
  return null;
}

/** What the letters of a reference say; a transistor and a chip tell themselves only by their pins. */
export function kindOfReference(ref: string, pinNames: readonly string[]): CircuitKind | null {
  const letters = /^[A-Za-z]+/.exec(ref)?.[0].toUpperCase() ?? '';
  const named = new Set(pinNames);
  const has = (...pins: readonly string[]): boolean => pinNames.length > 0 && pins.every((pin) => named.has(pin));
  if (letters === 'Q') return has('B', 'C') || has('C', 'E') ? 'bipolarTransistor' : has('D') || has('G') ? 'mosfet' : null;
  if (letters === 'U' || letters === 'IC') return has('A', 'K', 'C', 'E') ? 'optocoupler' : has('R', 'A', 'K') ? 'shuntReference' : null;
  if (letters === 'C' && (has('+') || has('-'))) return 'electrolyticCapacitor';
  return Object.hasOwn(LETTERS, letters) ? (LETTERS[letters] ?? null) : null;
}
