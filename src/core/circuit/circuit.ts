/** What a traced part is. The same words as in a case, so that nothing has to be translated. */
export const CIRCUIT_KINDS = [
  'resistor',
  'fusibleResistor',
  'fuse',
  'ntc',
  'varistor',
  'ceramicCapacitor',
  'filmCapacitor',
  'electrolyticCapacitor',
  'capacitor',
  'inductor',
  'commonModeChoke',
  'diode',
  'bridgeRectifier',
  'zener',
  'led',
  'bipolarTransistor',
  'mosfet',
  'transformer',
  'controller',
  'shuntReference',
  'optocoupler',
  'negotiationChip',
  'connector',
  'jumper',
  'heatSink',
  'load',
  'other',
] as const;
export type CircuitKind = (typeof CIRCUIT_KINDS)[number];

export const CIRCUIT_SIDES = ['mains', 'output', 'earth', 'touchable', 'floating'] as const;
export type CircuitSide = (typeof CIRCUIT_SIDES)[number];

export interface CircuitPin {
  /** As in `pinsOf`: "A", "K", "+"; of a transformer "P.1" for the dot end of winding P and "P.2" for its other end. */
  readonly pin: string;
  /** Id of the net; null where nobody could follow the track. */
  readonly net: string | null;
}

export interface CircuitPart {
  readonly id: string;
  readonly ref: string;
  /** Null where nobody knows what it is. */
  readonly kind: CircuitKind | null;
  readonly pins: readonly CircuitPin[];
}

export interface CircuitNet {
  readonly id: string;
  readonly name: string;
  /** Null where nobody said. */
  readonly side: CircuitSide | null;
}

/** Parts and nets as traced: what is on the board, nothing worked out. */
export interface Circuit {
  readonly parts: readonly CircuitPart[];
  readonly nets: readonly CircuitNet[];
}

/** Parts whose place is across the barrier: they are made with two sides. */
export const TWO_SIDED: ReadonlySet<CircuitKind | null> = new Set(['transformer', 'optocoupler']);

export const CAPACITORS: ReadonlySet<CircuitKind | null> = new Set([
  'ceramicCapacitor',
  'filmCapacitor',
  'electrolyticCapacitor',
  'capacitor',
]);
export const RESISTORS: ReadonlySet<CircuitKind | null> = new Set(['resistor', 'fusibleResistor']);
