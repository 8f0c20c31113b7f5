import type { Json } from '../../app/casebook/change.ts';

interface EntryOf {
  readonly chapter: string;
  /** Kind of exhibit to add; null where the chapter has its entry already. */
  readonly kind: string | null;
  readonly more?: Readonly<Record<string, Json>>;
}

/** Where each proposed measurement is entered, and what is added for it. */
export const ENTRY_OF: Readonly<Record<string, EntryOf>> = {
  label: { chapter: 'label', kind: 'label' },
  plug: { chapter: 'label', kind: 'body' },
  enclosure: { chapter: 'label', kind: 'body' },
  coldResistance: { chapter: 'touch', kind: 'cold', more: { quantity: 'resistance' } },
  coldInsulation: { chapter: 'touch', kind: 'cold', more: { quantity: 'insulation' } },
  coldCapacitance: { chapter: 'touch', kind: 'cold', more: { quantity: 'capacitance' } },
  touchBothWays: { chapter: 'touch', kind: 'touch', more: { quantity: 'touchCurrentRms' } },
  outputToEarth: { chapter: 'touch', kind: 'touch', more: { quantity: 'voltageToEarth' } },
  plugDischarge: { chapter: 'touch', kind: 'touch', more: { quantity: 'pinsAfterUnplugging', after: '2 s' } },
  idleVoltage: { chapter: 'load', kind: 'sweep' },
  sweep: { chapter: 'load', kind: 'sweep' },
  sweepWithInput: { chapter: 'load', kind: 'sweep' },
  sweepAtEnds: { chapter: 'load', kind: 'sweep' },
  sweepBeyond: { chapter: 'load', kind: 'sweep' },
  portsTogether: { chapter: 'load', kind: 'sweep' },
  idlePower: { chapter: 'load', kind: 'sweep' },
  advertised: { chapter: 'load', kind: 'advertised' },
  idleAndStarts: { chapter: 'load', kind: 'event', more: { what: 'start' } },
  transient: { chapter: 'load', kind: 'event', more: { what: 'step' } },
  short: { chapter: 'load', kind: 'event', more: { what: 'short' } },
  ripple: { chapter: 'load', kind: 'ripple' },
  spotOutside: { chapter: 'heat', kind: 'spots' },
  spotWinding: { chapter: 'heat', kind: 'spots' },
  spotMaterial: { chapter: 'heat', kind: 'spots' },
  spotParts: { chapter: 'heat', kind: 'spots' },
  soak: { chapter: 'heat', kind: 'soak' },
  soakLogged: { chapter: 'heat', kind: 'soak' },
  distanceAir: { chapter: 'board', kind: 'distance', more: { path: 'air' } },
  distanceSurface: { chapter: 'board', kind: 'distance', more: { path: 'surface' } },
  bridgingParts: { chapter: 'board', kind: null },
  optocoupler: { chapter: 'board', kind: null },
  circuit: { chapter: 'circuit', kind: null },
  circuitRun: { chapter: 'faults', kind: null },
  faultRun: { chapter: 'faults', kind: null },
  capacitorValues: { chapter: 'board', kind: null },
  bulkCapacitor: { chapter: 'board', kind: null },
  firstPart: { chapter: 'board', kind: 'board' },
  inrushParts: { chapter: 'board', kind: null },
  workmanship: { chapter: 'board', kind: 'board' },
  stack: { chapter: 'transformer', kind: 'stack' },
  workingVoltage: { chapter: 'transformer', kind: 'workingVoltage' },
};
